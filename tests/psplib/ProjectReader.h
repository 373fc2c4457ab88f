// ProjectReader.h — reads the open PSPLIB formats: `.sm` (single mode, ProGen) and `.sch` (maximum lags, ProGen/max).
//
// Source:  Kolisch & Sprecher, "PSPLIB - a project scheduling problem library", EJOR 96 (1997); Schwindt, report
// WIOR-543
//          (1998) for ProGen/max. Both layouts from memory.
// Lenient: blanks, rules of stars and dashes, unknown header lines. Strict: numbers, counts, ranges.
#pragma once

#include <string>
#include <string_view>

#include "base/Result.h"
#include "psplib/Project.h"

namespace brinebell::psplib {

/// Which of the two formats, the text itself tells. Error: InvalidInput with the line.
Result<Project> readProject(std::string_view text, const std::string& fileName);

std::string writeSingleMode(const Project& project);
std::string writeMaximumLags(const Project& project);

}  // namespace brinebell::psplib
