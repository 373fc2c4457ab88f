// TimeText.h — times as the board and the desk show them. Countdowns round up, so none ever shows less than
// is left.
#pragma once

#include <QString>
#include <string_view>

#include "base/Clock.h"

namespace brinebell {

/// UTF-8 from core/ as text for Qt.
inline QString toQt(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// Whole seconds that hold `left`, rounded up; zero once it is over.
Seconds secondsLeft(Millis left);

QString countdown(Millis left);        ///< "12:05", "1:02:05"; "0:00" once it is over
QString countUp(Millis passed);         ///< "2:13" that have passed; never more than have
QString boardCountdown(Millis left);   ///< "12:05", "75:00"; from 100 minutes on "1 h 40", minutes rounded up
QString spanText(Seconds span);        ///< "45 s", "12 min", "1 h 05 min"; minutes rounded up above one minute
QString timeOfDay(Millis utc);         ///< "19:12" or "7:12 pm" (Customs.h), in the machine's time zone
QString dayAndTime(Millis utc);        ///< "12 Sep 2026, 19:12" in the machine's time zone
QString sheetTime(Seconds fromStart);  ///< "0:05", "1:20" in hours and minutes from the start; below zero "-0:10"
QString aheadOrBehind(Seconds forecast, Seconds planned);  ///< "on time", "3 min behind", "2 min ahead"

}  // namespace brinebell
