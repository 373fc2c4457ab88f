// SoundControl.h — everything that sounds goes through here: what was set, the tones, the names after them.
//
// Lifetime: speaker, voice and settings outlive it; each may be null, and is then done without.
#pragma once

#include <QObject>
#include <QTimer>

#include "session/Cue.h"
#include "sound/CueSpeaker.h"
#include "sound/SoundSettings.h"

class QSettings;

namespace brinebell {

class SpokenNames;

class SoundControl final : public QObject {
    Q_OBJECT

public:
    /// Reads the settings and hands them to the speaker.
    SoundControl(CueSpeaker* speaker, SpokenNames* voice, QSettings* store, QObject* parent = nullptr);

    /// Sounds a cue of a session; `words` are said after its tone where names are spoken.
    void sound(const Cue& cue, const QString& words);

    /// Sounds one to be known by ear, exactly as it would sound in class.
    void tryOut(CueSound sound, const QString& words);

    void lookAgain();

    const SoundSettings& settings() const { return m_settings; }
    void setSettings(const SoundSettings& settings);

    /// False once settings could not be written: they hold until the program ends.
    bool areKept() const { return m_areKept; }

    SoundState state() const;
    std::vector<SoundDevice> devices() const;
    QString whyNoNames() const;  ///< empty: names can be spoken

    /// What the board must say of sound; empty while cues sound as they were set.
    QString standingWords() const;

signals:
    void changed();  ///< the state, the devices or the settings

private:
    void sayAfter(CueSound sound, const QString& words);

    CueSpeaker* m_speaker;
    SpokenNames* m_voice;
    QSettings* m_store;
    SoundSettings m_settings;
    bool m_areKept = true;
    QTimer m_beforeWords;
    QString m_words;
};

}  // namespace brinebell
