// Choices.h — what a person chose about the whole window, as it is kept in the settings.
//
// An empty word means: as the desktop has it. What a file of settings says wrongly counts as not chosen.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include "Customs.h"

class QCoreApplication;

namespace brinebell {

struct Choices {
    QString language;                           ///< a code of Languages.h
    QString units;                              ///< "us", "metric"
    QString clock;                              ///< "12", "24"
    QString decimal;                            ///< "point", "comma"
    Length distance = Length::fromMetres(2.5);  ///< from the counter to the screen, in kitchens made from now on
    bool operator==(const Choices&) const = default;
};

Choices readChoices();
void keepChoices(const Choices& choices);

/// Nobody has used this window yet: its settings hold nothing at all.
bool isFirstStart();

/// What `choices` and the desktop come to.
Customs customsFor(const Choices& choices, const QLocale& desktop = QLocale::system());
/// The locale of dates and numbers: that of the language, with the decimal mark that was chosen.
QLocale localeWithDecimal(const QLocale& locale, const QString& decimal);

/// Puts language, locale and customs on. Pages that are made already keep theirs.
void putOnChoices(QCoreApplication& application, const Choices& choices, const QLocale& desktop = QLocale::system(),
                  const QStringList& desktopLanguages = QLocale::system().uiLanguages());

}  // namespace brinebell
