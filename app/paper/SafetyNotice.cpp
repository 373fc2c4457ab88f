#include "paper/SafetyNotice.h"

#include <QCoreApplication>
#include <string>

#include "safety/SafetyNotice.h"

namespace brinebell {

QString safetyNotice() {
    return QCoreApplication::translate("Paper", std::string(safetyFootnote()).c_str());
}

}  // namespace brinebell
