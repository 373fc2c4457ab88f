// Languages.h — the languages of the window, and how one is put on.
//
// A language is one compiled translation, `:/i18n/brinebell_<code>.qm`, made of resources/translations/*.ts by the
// build. English is what the sources are written in and has none. core/ speaks through the same translation
// (base/Language.h), so that reasons, findings and papers come in the language of the window.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

class QCoreApplication;

namespace brinebell {

/// Codes of all languages, English first: "en", "es".
QStringList languageCodes();

/// What a language calls itself: "español".
QString nativeName(const QString& code);

/// The code that `choice` stands for: itself when there is such a language, else the first of the desktop's languages
/// that there is, else English.
QString languageFor(const QString& choice, const QStringList& desktopLanguages);

/// The locale of numbers and dates in a language: the desktop's own where it speaks that language, else that
/// language's in the desktop's country where there is one, else the language's.
QLocale localeFor(const QString& code, const QLocale& desktop);

/// Puts a language on before any page is made: Qt's translators, core's voice and the default locale. An earlier one is
/// taken off. The desktop's own buttons are translated where Qt's translations are installed.
void putOnLanguage(QCoreApplication& application, const QString& code, const QLocale& desktop = QLocale::system());

}  // namespace brinebell
