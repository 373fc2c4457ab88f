// SafetyNotice.h — the plain words about what this program is and whom it defers to, in one place.
//
// README.md carries the statement (a test holds it to that), and batch records and labels end with it. Pages of paper
// have room for the footnote only.
#pragma once

#include <string_view>

namespace brinebell {

std::string_view safetyStatement();
std::string_view safetyFootnote();

}  // namespace brinebell
