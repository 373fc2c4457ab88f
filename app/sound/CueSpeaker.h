// CueSpeaker.h — what the window knows of sound. A test hands in one that only remembers what it was asked.
//
// Sound never stands alone: every cue is on the screen as well, so a speaker that cannot sound says so and
// nothing waits.
#pragma once

#include <QObject>
#include <QString>

#include "sound/CueTone.h"

namespace brinebell {

struct SoundState {
    enum class Kind {
        Ready,     ///< a device is there and the last cue, if any, went through
        NoDevice,  ///< nothing to play on
        Fault,     ///< a device is there, but it did not take a cue or does not answer
    };
    Kind kind = Kind::NoDevice;
    QString reason;  ///< one sentence to show, without a full stop; empty when Ready
    bool operator==(const SoundState&) const = default;
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

    virtual SoundState state() const = 0;

signals:
    void stateChanged(const brinebell::SoundState& state);
};

}  // namespace brinebell
