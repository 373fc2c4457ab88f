#include "Choices.h"

#include <QCoreApplication>

#include "Languages.h"
#include "Settings.h"
#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

Customs& customsNow() {
    static Customs now;
    return now;
}

QString oneOf(const QString& word, const QStringList& words) {
    return words.contains(word) ? word : QString();
}

}  // namespace

const Customs& customs() {
    return customsNow();
}

void putOnCustoms(const Customs& customs) {
    customsNow() = customs;
}

Choices readChoices() {
    const QSettings kept = settings();
    const auto word = [&](const char* key) { return kept.value(QLatin1String(key)).toString(); };
    Choices choices;
    choices.language = oneOf(word("language"), languageCodes());
    choices.units = oneOf(word("units"), {QStringLiteral("us"), QStringLiteral("metric")});
    choices.clock = oneOf(word("clock"), {QStringLiteral("12"), QStringLiteral("24")});
    choices.decimal = oneOf(word("decimal"), {QStringLiteral("point"), QStringLiteral("comma")});
    if (const auto distance = readLength(word("distance").toStdString()); distance && *distance > Length()) {
        choices.distance = *distance;
    }
    return choices;
}

void keepChoices(const Choices& choices) {
    QSettings kept = settings();
    const auto keep = [&](const char* key, const QString& word) {
        word.isEmpty() ? kept.remove(QLatin1String(key)) : kept.setValue(QLatin1String(key), word);
    };
    keep("language", choices.language);
    keep("units", choices.units);
    keep("clock", choices.clock);
    keep("decimal", choices.decimal);
    keep("distance", QString::fromStdString(exactText(choices.distance)));
}

bool isFirstStart() {
    return settings().allKeys().isEmpty();
}

// A desktop without a language (LANG=C) says nothing about customs either.
Customs customsFor(const Choices& choices, const QLocale& desktop) {
    const QLocale place = desktop.language() == QLocale::C ? QLocale(QLocale::English, QLocale::UnitedStates) : desktop;
    Customs customs;
    const bool metric = choices.units.isEmpty() ? place.measurementSystem() == QLocale::MetricSystem
                                                : choices.units == QLatin1String("metric");
    customs.shownAs.units = metric ? Units::Metric : Units::UsCustomary;
    customs.shownAs.decimalComma = localeWithDecimal(QLocale(), choices.decimal).decimalPoint() == QLatin1String(",");
    customs.twelveHours = choices.clock.isEmpty()
                              ? place.timeFormat(QLocale::ShortFormat).contains(QLatin1Char('a'), Qt::CaseInsensitive)
                              : choices.clock == QLatin1String("12");
    return customs;
}

QLocale localeWithDecimal(const QLocale& locale, const QString& decimal) {
    const QString mark = decimal == QLatin1String("comma")   ? QStringLiteral(",")
                         : decimal == QLatin1String("point") ? QStringLiteral(".")
                                                             : locale.decimalPoint();
    if (locale.decimalPoint() == mark) {
        return locale;
    }
    for (const QLocale& other : QLocale::matchingLocales(locale.language(), locale.script(), QLocale::AnyTerritory)) {
        // One that groups by the other of the two marks, as the numbers of core/ do.
        if (other.decimalPoint() == mark && other.groupSeparator() == (mark == QLatin1String(",") ? "." : ",")) {
            return other;
        }
    }
    return locale;
}

void putOnChoices(QCoreApplication& application, const Choices& choices, const QLocale& desktop,
                  const QStringList& desktopLanguages) {
    putOnLanguage(application, languageFor(choices.language, desktopLanguages), desktop);
    QLocale::setDefault(localeWithDecimal(QLocale(), choices.decimal));
    putOnCustoms(customsFor(choices, desktop));
}

}  // namespace brinebell
