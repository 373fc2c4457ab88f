#include "sound/SpokenNames.h"

#include <QCoreApplication>

#ifdef BRINEBELL_SPEECH
#include <QTextToSpeech>
#endif

namespace brinebell {

namespace {

struct SpeechWords {
    Q_DECLARE_TR_FUNCTIONS(SpeechWords)
};

#ifdef BRINEBELL_SPEECH

class MachineVoice final : public SpokenNames {
public:
    QString whyNot() const override {
        const bool isThere = !QTextToSpeech::availableEngines().isEmpty() &&
                             m_speech.state() != QTextToSpeech::Error && !m_speech.availableVoices().isEmpty();
        return isThere ? QString() : SpeechWords::tr("no voice is installed on this machine");
    }
    void say(const QString& words, double volume) override {
        m_speech.stop();
        m_speech.setVolume(volume);
        m_speech.say(words);
    }
    void beSilent() override { m_speech.stop(); }

private:
    QTextToSpeech m_speech;
};

#else

class MachineVoice final : public SpokenNames {
public:
    QString whyNot() const override { return SpeechWords::tr("this program was built without speech"); }
    void say(const QString&, double) override {}
    void beSilent() override {}
};

#endif

}  // namespace

std::unique_ptr<SpokenNames> makeSpokenNames() {
    return std::make_unique<MachineVoice>();
}

}  // namespace brinebell
