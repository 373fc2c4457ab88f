// CueSpeaker.h — what the window knows of sound. A test hands in one that only remembers what it was asked.
//
// Sound never stands alone: every cue is on the screen as well, so a speaker that cannot sound says so and
// nothing waits.
#pragma once

#include <QObject>
#include <QString>
#include <vector>

#include "sound/CueTone.h"

namespace brinebell {

struct SoundState {
    enum class Kind {
        Ready,      ///< a device is there and the last cue, if any, went through
        Elsewhere,  ///< cues sound, but not on the chosen device: it is not there
        NoDevice,   ///< nothing to play on
        Fault,      ///< a device is there, but it did not take a cue or does not answer
    };
    Kind kind = Kind::NoDevice;
    QString reason;  ///< one sentence to show, without a full stop; empty when Ready
    bool operator==(const SoundState&) const = default;
};

/// An output that is there now.
struct SoundDevice {
    QString id;    ///< the sound server's name for it; stays the same when it is pulled out and put back
    QString name;  ///< for people
    bool isDefault = false;
    bool operator==(const SoundDevice&) const = default;
};

/// Threads: used from one thread, where its signals arrive too.
class CueSpeaker : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// Returns at once. One cue sounds at a time: a more urgent one cuts the running one off, another waits
    /// for its end.
    virtual void play(CueSound sound) = 0;

    /// 0 to 1; see cueLevel for what it does to the stop cue. Holds from the next cue on.
    virtual void setVolume(double volume) = 0;

    /// For filming. Holds from the next cue on.
    virtual void setQuiet(bool quiet) = 0;

    /// The output to use while it is there; empty, or while it is not there: the default one. Holds from the
    /// next cue on.
    virtual void setDevice(const QString& id) = 0;

    /// Looks for the sound service and its outputs afresh; cuts off what sounds.
    virtual void lookAgain() = 0;

    virtual SoundState state() const = 0;
    virtual std::vector<SoundDevice> devices() const = 0;

signals:
    void stateChanged(const brinebell::SoundState& state);
    void devicesChanged();
};

}  // namespace brinebell
