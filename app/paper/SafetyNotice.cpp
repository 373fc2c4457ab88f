#include "paper/SafetyNotice.h"

#include "base/Language.h"
#include "safety/SafetyNotice.h"

namespace brinebell {

QString safetyNotice() {
    return QString::fromStdString(core::say(safetyFootnote()));
}

}  // namespace brinebell
