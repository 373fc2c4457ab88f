#include "Languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>
#include <array>
#include <string>

#include "base/Language.h"

namespace brinebell {
namespace {

constexpr auto kEnglish = "en";

struct Language {
    const char* code;
    const char* name;  ///< QLocale would add the country
};
constexpr std::array<Language, 2> kLanguages{{{kEnglish, "English"}, {"es", "español"}}};

std::string inWindowLanguage(const char* english) {
    return QCoreApplication::translate("core", english).toStdString();
}

// One translator for our words and one for Qt's; they live as long as the program.
QTranslator& ours() {
    static QTranslator translator;
    return translator;
}
QTranslator& ofQt() {
    static QTranslator translator;
    return translator;
}

}  // namespace

QStringList languageCodes() {
    QStringList codes;
    for (const Language& language : kLanguages) {
        codes << QString::fromUtf8(language.code);
    }
    return codes;
}

QString nativeName(const QString& code) {
    for (const Language& language : kLanguages) {
        if (code == QLatin1String(language.code)) {
            return QString::fromUtf8(language.name);
        }
    }
    return code;
}

QString languageFor(const QString& choice, const QStringList& desktopLanguages) {
    const QStringList codes = languageCodes();
    if (codes.contains(choice)) {
        return choice;
    }
    for (const QString& language : desktopLanguages) {
        const QString code = language.left(language.indexOf(QLatin1Char('-')));
        if (codes.contains(code)) {
            return code;
        }
    }
    return QString::fromLatin1(kEnglish);
}

QLocale localeFor(const QString& code, const QLocale& desktop) {
    const QLocale own(code);
    if (desktop.language() == own.language()) {
        return desktop;
    }
    // Spanish in the United States writes numbers otherwise than Spanish in Spain.
    const QLocale there(own.language(), desktop.territory());
    return desktop.language() != QLocale::C && there.territory() == desktop.territory() ? there : own;
}

void putOnLanguage(QCoreApplication& application, const QString& code, const QLocale& desktop) {
    application.removeTranslator(&ours());
    application.removeTranslator(&ofQt());
    core::speakThrough(nullptr);
    QLocale::setDefault(localeFor(code, desktop));
    if (code == QLatin1String(kEnglish)) {
        return;
    }
    if (ofQt().load(QLocale(code), QStringLiteral("qtbase"), QStringLiteral("_"),
                    QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        application.installTranslator(&ofQt());
    }
    if (ours().load(QStringLiteral(":/i18n/brinebell_%1.qm").arg(code))) {
        application.installTranslator(&ours());
        core::speakThrough(inWindowLanguage);
    }
}

}  // namespace brinebell
