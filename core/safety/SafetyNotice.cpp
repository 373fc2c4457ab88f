#include "safety/SafetyNotice.h"

#include "base/Language.h"

namespace brinebell {

const char* safetyStatement() {
    return core::mark(
        "Brinebell is a timer, not an authority. It defers to the published tables of the USDA Complete Guide to "
        "Home Canning and the National Center for Home Food Preservation, to your local codes, to your county "
        "extension "
        "office, and to licensed practice. Hold every time and amount against the printed page before you teach "
        "from it. When in doubt about a jar, nobody tastes it: discard it as your extension office advises.");
}

const char* safetyFootnote() {
    return core::mark(
        "Follow the tested recipe and the published process time for your altitude, jar size and pack. Local codes, "
        "your extension office and licensed practice come before this sheet. If in doubt about a jar, do not taste "
        "it.");
}

}  // namespace brinebell
