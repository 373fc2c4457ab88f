// SafetyNotice.h — the words at the foot of every printed page.
#pragma once

#include <QString>

namespace brinebell {

QString safetyNotice();

}  // namespace brinebell
