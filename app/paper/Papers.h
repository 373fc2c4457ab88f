// Papers.h — the papers of a class, made from what was planned and what was lived.
#pragma once

#include "logbook/Logbook.h"
#include "paper/Paper.h"
#include "plan/RunSheet.h"

namespace brinebell {

/// For the counter, in large type: when, who, what, what to look for; then the points that must be said.
Paper runSheetPaper(const Network& network, const RunSheet& sheet);

/// For those who attend: each dish with its amounts, steps, cautions, process time and source, storage.
Paper handoutPaper(const Network& network);

/// The batch record, as core/logbook/BatchRecord.h tells it. Error: Corrupt.
Result<Paper> batchRecordPaper(const SessionRecord& record);

/// What the class leader reports afterwards: place, hours planned and taught, dishes, loads, points said; people
/// attending stand as a line to fill in when `attendance` is not known. Error: Corrupt.
Result<Paper> classReportPaper(const SessionRecord& record, std::optional<int> attendance);

}  // namespace brinebell
