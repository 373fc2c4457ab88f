#include "bridge/TimeText.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <cstdlib>

#include "Customs.h"

namespace brinebell {

namespace {

struct TimeWords {
    Q_DECLARE_TR_FUNCTIONS(TimeWords)
};

QString twoDigits(std::int64_t value) {
    return QStringLiteral("%1").arg(static_cast<qlonglong>(value), 2, 10, QLatin1Char('0'));
}

QDateTime localTime(Millis utc) {
    return QDateTime::fromMSecsSinceEpoch(utc.count());
}

}  // namespace

Seconds secondsLeft(Millis left) {
    return left <= Millis::zero() ? Seconds::zero() : std::chrono::ceil<Seconds>(left);
}

QString countdown(Millis left) {
    const std::int64_t total = secondsLeft(left).count();
    const std::int64_t hours = total / 3600;
    const std::int64_t minutes = total / 60 % 60;
    const QString seconds = twoDigits(total % 60);
    if (hours == 0) {
        return QStringLiteral("%1:%2").arg(static_cast<qlonglong>(minutes)).arg(seconds);
    }
    return QStringLiteral("%1:%2:%3").arg(static_cast<qlonglong>(hours)).arg(twoDigits(minutes), seconds);
}

QString countUp(Millis passed) {
    return countdown(std::chrono::floor<Seconds>(std::max(passed, Millis::zero())));
}

QString boardCountdown(Millis left) {
    constexpr std::int64_t kMostMinutes = 100;
    const std::int64_t total = secondsLeft(left).count();
    if (total < kMostMinutes * 60) {
        return QStringLiteral("%1:%2").arg(static_cast<qlonglong>(total / 60)).arg(twoDigits(total % 60));
    }
    const std::int64_t minutes = (total + 59) / 60;
    return TimeWords::tr("%1 h %2").arg(static_cast<qlonglong>(minutes / 60)).arg(twoDigits(minutes % 60));
}

QString spanText(Seconds span) {
    const std::int64_t total = std::abs(span.count());
    if (total < 60) {
        return TimeWords::tr("%1 s").arg(static_cast<qlonglong>(total));
    }
    const std::int64_t minutes = (total + 59) / 60;
    if (minutes < 60) {
        return TimeWords::tr("%1 min").arg(static_cast<qlonglong>(minutes));
    }
    return TimeWords::tr("%1 h %2 min").arg(static_cast<qlonglong>(minutes / 60)).arg(twoDigits(minutes % 60));
}

QString timeOfDay(Millis utc) {
    const QTime time = localTime(utc).time();
    if (!customs().twelveHours) {
        return time.toString(QStringLiteral("HH:mm"));
    }
    const QString clock = QStringLiteral("%1:%2").arg((time.hour() + 11) % 12 + 1).arg(twoDigits(time.minute()));
    return time.hour() < 12 ? TimeWords::tr("%1 am").arg(clock) : TimeWords::tr("%1 pm").arg(clock);
}

QString dayAndTime(Millis utc) {
    return QLocale().toString(localTime(utc), QStringLiteral("d MMM yyyy")) + QStringLiteral(", ") + timeOfDay(utc);
}

QString sheetTime(Seconds fromStart) {
    const std::int64_t minutes = std::abs(fromStart.count()) / 60;
    const QString sign = fromStart < Seconds::zero() ? QStringLiteral("-") : QString();
    return QStringLiteral("%1%2:%3").arg(sign).arg(static_cast<qlonglong>(minutes / 60)).arg(twoDigits(minutes % 60));
}

QString aheadOrBehind(Seconds forecast, Seconds planned) {
    const std::int64_t minutes = (std::abs((forecast - planned).count()) + 30) / 60;
    if (minutes == 0) {
        return TimeWords::tr("on time");
    }
    const QString text = forecast > planned ? TimeWords::tr("%1 min behind") : TimeWords::tr("%1 min ahead");
    return text.arg(static_cast<qlonglong>(minutes));
}

}  // namespace brinebell
