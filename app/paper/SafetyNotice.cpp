#include "paper/SafetyNotice.h"

#include <QCoreApplication>

namespace brinebell {

QString safetyNotice() {
    return QCoreApplication::translate(
        "Paper",
        "Follow the tested recipe and the published process time for your altitude, jar size and pack. Local codes, "
        "your "
        "extension office and licensed practice come before this sheet. If in doubt about a jar, do not taste it.");
}

}  // namespace brinebell
