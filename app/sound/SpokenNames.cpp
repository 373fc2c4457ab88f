#include "sound/SpokenNames.h"

#include <QCoreApplication>
#include <QLocale>

#ifdef BRINEBELL_SPEECH
#include <QTextToSpeech>
#endif

namespace brinebell {

namespace {

struct SpeechWords {
    Q_DECLARE_TR_FUNCTIONS(SpeechWords)
};

#ifdef BRINEBELL_SPEECH

// The voice is fetched when it is first wanted: an engine takes 20 ms and 10 MB, and most classes go without.
class MachineVoice final : public SpokenNames {
public:
    QString whyNot() const override {
        const bool isThere = !QTextToSpeech::availableEngines().isEmpty() && speech().state() != QTextToSpeech::Error &&
                             !speech().availableVoices().isEmpty();
        return isThere ? QString() : SpeechWords::tr("no voice is installed on this machine");
    }
    void say(const QString& words, double volume) override {
        speech().stop();
        speech().setVolume(volume);
        speech().say(words);
    }
    void beSilent() override {
        if (m_speech) {
            m_speech->stop();
        }
    }

private:
    QTextToSpeech& speech() const {
        if (!m_speech) {
            m_speech = std::make_unique<QTextToSpeech>();
            // An engine's own choice may be any of its thousand voices. Without a language set, as in "C", names are
            // English.
            const QLocale window;
            m_speech->setLocale(window.language() == QLocale::C ? QLocale(QLocale::English, QLocale::UnitedStates)
                                                                : window);
        }
        return *m_speech;
    }

    mutable std::unique_ptr<QTextToSpeech> m_speech;
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
