// Holds the translations to the sources, and the window to its language. lupdate is the reader of the sources, so a
// text that is new in app/ or core/ and not yet translated fails here.
#include "Languages.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QMap>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <vector>

#include "base/Language.h"
#include "bridge/Words.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

struct Message {
    QString context;
    QString source;
    QStringList translations;  ///< more than one where the number decides
    bool unfinished = false;
};

/// One text, or one for each form of the number.
QStringList readTranslations(QXmlStreamReader& xml) {
    QString plain;
    QStringList forms;
    while (!xml.atEnd()) {
        const auto token = xml.readNext();
        if (token == QXmlStreamReader::EndElement) {
            break;
        }
        if (token == QXmlStreamReader::StartElement) {
            forms << xml.readElementText();
        } else if (token == QXmlStreamReader::Characters) {
            plain += xml.text();
        }
    }
    return !forms.isEmpty() ? forms : plain.isEmpty() ? QStringList() : QStringList(plain);
}

std::vector<Message> messagesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    std::vector<Message> messages;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (xml.name() == QLatin1String("message")) {
            messages.push_back({context, {}, {}, false});
        } else if (xml.name() == QLatin1String("source")) {
            messages.back().source = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            messages.back().unfinished = xml.attributes().hasAttribute(QStringLiteral("type"));
            messages.back().translations = readTranslations(xml);
        }
    }
    EXPECT_FALSE(xml.hasError()) << path.toStdString() << ": " << xml.errorString().toStdString();
    return messages;
}

/// What a text has to keep in every language: places for values.
QStringList placesIn(const QString& text) {
    static const QRegularExpression kPlace(QStringLiteral("%L?[0-9]|%n|\\{[^}]*\\}"));
    QStringList places;
    for (auto found = kPlace.globalMatch(text); found.hasNext();) {
        places << found.next().captured();
    }
    places.sort();
    return places;
}

int mnemonicsIn(QString text) {
    return static_cast<int>(text.remove(QStringLiteral("&&")).count(QLatin1Char('&')));
}

QStringList translationFiles() {
    const QDir folder(QStringLiteral(BRINEBELL_SOURCE_DIR "/resources/translations"));
    QStringList files;
    for (const QString& name : folder.entryList({QStringLiteral("brinebell_*.ts")}, QDir::Files)) {
        files << folder.filePath(name);
    }
    return files;
}

/// English again, whatever a test did.
class LanguagesTest : public ::testing::Test {
protected:
    ~LanguagesTest() override { putOnLanguage(*qApp, QStringLiteral("en"), QLocale::c()); }
};

TEST(TranslationFiles, AreThereForEveryLanguageButEnglish) {
    EXPECT_EQ(translationFiles().size(), languageCodes().size() - 1);
    EXPECT_EQ(languageCodes().front(), QStringLiteral("en"));
}

TEST(TranslationFiles, TranslateEveryTextOfTheSources) {
    const QTemporaryDir folder;
    for (const QString& path : translationFiles()) {
        const QString copy = folder.filePath(QFileInfo(path).fileName());
        ASSERT_TRUE(QFile::copy(path, copy));
        QProcess update;
        update.start(QStringLiteral(BRINEBELL_SOURCE_DIR "/resources/translations/update"), {copy});
        ASSERT_TRUE(update.waitForFinished(120'000));
        ASSERT_EQ(update.exitCode(), 0) << update.readAllStandardError().toStdString();
        const std::vector<Message> messages = messagesOf(copy);
        EXPECT_GT(messages.size(), 1'300U);
        for (const Message& message : messages) {
            EXPECT_FALSE(message.unfinished || message.translations.isEmpty())
                << path.toStdString() << ": " << message.context.toStdString() << ": \"" << message.source.toStdString()
                << "\" is not translated; run resources/translations/update and translate it";
        }
    }
}

TEST(TranslationFiles, KeepThePlacesOfValuesAndTheKeysOfButtons) {
    for (const QString& path : translationFiles()) {
        for (const Message& message : messagesOf(path)) {
            for (const QString& text : message.translations) {
                const std::string where = (message.context + QStringLiteral(": ") + message.source).toStdString();
                EXPECT_EQ(placesIn(text), placesIn(message.source)) << where << " -> " << text.toStdString();
                EXPECT_EQ(mnemonicsIn(text), mnemonicsIn(message.source)) << where;
                EXPECT_EQ(text.startsWith(QLatin1Char(' ')), message.source.startsWith(QLatin1Char(' '))) << where;
                EXPECT_EQ(text.endsWith(QLatin1Char(' ')), message.source.endsWith(QLatin1Char(' '))) << where;
            }
        }
    }
}

TEST_F(LanguagesTest, CoreAndWindowSpeakTheLanguageThatIsPutOn) {
    putOnLanguage(*qApp, QStringLiteral("es"), QLocale::c());
    EXPECT_EQ(QCoreApplication::translate("brinebell::MainWindow", "Leave the board?"),
              QStringLiteral("¿Salir del tablero?"));
    EXPECT_EQ(core::say("Take the weight off"), "Quite la pesa");
    const auto length = readLength("4,200");
    ASSERT_FALSE(length.has_value());
    EXPECT_NE(length.error().message.find("falta la unidad"), std::string::npos) << length.error().message;
    putOnLanguage(*qApp, QStringLiteral("en"), QLocale::c());
    EXPECT_EQ(core::say("Take the weight off"), "Take the weight off");
}

TEST_F(LanguagesTest, NumbersFollowTheDesktopWhereItSpeaksTheLanguage) {
    const QLocale mexico(QLocale::Spanish, QLocale::Mexico);
    EXPECT_EQ(localeFor(QStringLiteral("es"), mexico), mexico);
    EXPECT_EQ(localeFor(QStringLiteral("es"), QLocale(QLocale::English, QLocale::UnitedStates)).language(),
              QLocale::Spanish);
    EXPECT_EQ(localeFor(QStringLiteral("es"), QLocale::c()).decimalPoint(), QStringLiteral(","));
}

TEST_F(LanguagesTest, AChoiceGoesBeforeTheDesktopAndEnglishIsLeftForTheRest) {
    EXPECT_EQ(languageFor(QStringLiteral("es"), {QStringLiteral("en-US")}), QStringLiteral("es"));
    EXPECT_EQ(languageFor(QStringLiteral("system"), {QStringLiteral("fr-FR"), QStringLiteral("es-MX")}),
              QStringLiteral("es"));
    EXPECT_EQ(languageFor({}, {QStringLiteral("fr")}), QStringLiteral("en"));
    EXPECT_EQ(nativeName(QStringLiteral("es")), QStringLiteral("español"));
}

}  // namespace
}  // namespace brinebell
