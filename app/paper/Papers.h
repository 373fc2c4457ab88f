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

/// What the class leader reports afterwards: place, hours planned and taught, people and hours as they were told
/// (ReportFigure), jars by canner and by their seals, questions, points said, and a list of those who came to fill in.
/// What nobody told stands as a line to write on. Error: Corrupt.
Result<Paper> classReportPaper(const SessionRecord& record);

}  // namespace brinebell
