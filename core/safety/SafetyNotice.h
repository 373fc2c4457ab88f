// SafetyNotice.h — the plain words about what this program is and whom it defers to, in one place.
//
// README.md carries the statement (a test holds it to that), and batch records and labels end with it. Pages of paper
// have room for the footnote only.
#pragma once

namespace brinebell {

/// In English; `core::say` it where it is shown.
const char* safetyStatement();
const char* safetyFootnote();

}  // namespace brinebell
