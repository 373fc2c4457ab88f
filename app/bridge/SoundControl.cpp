#include "bridge/SoundControl.h"

#include <QSettings>

#include "sound/SpokenNames.h"

namespace brinebell {

namespace {

// Between the end of a tone and the first word: more than it takes a tone to be heard after it was asked for.
constexpr std::chrono::milliseconds kBeforeWords{300};

CueSound soundOf(CueKind kind) {
    switch (kind) {
        case CueKind::Tick:
            return CueSound::Tick;
        case CueKind::Soon:
            return CueSound::Soon;
        case CueKind::Due:
            return CueSound::Due;
        case CueKind::End:
            return CueSound::End;
        case CueKind::Stop:
            return CueSound::Stop;
    }
    return CueSound::Stop;
}

}  // namespace

SoundControl::SoundControl(CueSpeaker* speaker, SpokenNames* voice, QSettings* store, QObject* parent)
    : QObject(parent), m_speaker(speaker), m_voice(voice), m_store(store), m_beforeWords(this) {
    if (m_store != nullptr) {
        m_settings = readSoundSettings(*m_store);
    }
    m_beforeWords.setSingleShot(true);
    connect(&m_beforeWords, &QTimer::timeout, this, [this] { m_voice->say(m_words, m_settings.volume); });
    if (m_speaker != nullptr) {
        apply(m_settings, *m_speaker);
        connect(m_speaker, &CueSpeaker::stateChanged, this, &SoundControl::changed);
        connect(m_speaker, &CueSpeaker::devicesChanged, this, &SoundControl::changed);
    }
}

void SoundControl::sound(const Cue& cue, const QString& words) {
    tryOut(soundOf(cue.kind), words);
}

void SoundControl::tryOut(CueSound sound, const QString& words) {
    if (m_speaker != nullptr) {
        m_speaker->play(sound);
        sayAfter(sound, words);
    }
}

void SoundControl::sayAfter(CueSound sound, const QString& words) {
    if (m_voice == nullptr) {
        return;
    }
    m_voice->beSilent();
    m_beforeWords.stop();
    // The voice is asked last: asking fetches it, and a cue is no time for that unless it is to speak.
    if (m_settings.speaks && !m_settings.quiet && m_settings.volume > 0 && m_voice->whyNot().isEmpty()) {
        m_words = words;
        m_beforeWords.start(cueLength(sound) + kBeforeWords);
    }
}

void SoundControl::lookAgain() {
    if (m_speaker != nullptr) {
        m_speaker->lookAgain();
    }
}

void SoundControl::setSettings(const SoundSettings& settings) {
    if (settings == m_settings) {
        return;
    }
    m_settings = settings;
    if (m_store != nullptr) {
        m_areKept = writeSoundSettings(m_settings, *m_store);
    }
    if (m_speaker != nullptr) {
        apply(m_settings, *m_speaker);
    }
    emit changed();
}

SoundState SoundControl::state() const {
    return m_speaker != nullptr ? m_speaker->state() : SoundState{SoundState::Kind::NoDevice, tr("sound is not used")};
}

std::vector<SoundDevice> SoundControl::devices() const {
    return m_speaker != nullptr ? m_speaker->devices() : std::vector<SoundDevice>{};
}

QString SoundControl::whyNoNames() const {
    return m_voice != nullptr ? m_voice->whyNot() : tr("speech is not used");
}

QString SoundControl::standingWords() const {
    if (m_speaker == nullptr) {
        return {};
    }
    const SoundState state = m_speaker->state();
    switch (state.kind) {
        case SoundState::Kind::Ready:
            return {};
        case SoundState::Kind::Elsewhere:
            return tr("The chosen sound output is not there: cues come from the default one");
        case SoundState::Kind::NoDevice:
            return tr("No sound device: the screen shows every cue");
        case SoundState::Kind::Fault:
            return tr("No sound (%1): the screen shows every cue").arg(state.reason);
    }
    return {};
}

}  // namespace brinebell
