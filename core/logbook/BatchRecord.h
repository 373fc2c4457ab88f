// BatchRecord.h — the batch record of a session as plain text: what an extension office or a curious cook
// asks for.
//
// Fields: 21 CFR 113.100 in the shape a class needs. The record says plainly what is not known yet (seal
// check due).
#pragma once

#include <string>

#include "logbook/Logbook.h"

namespace brinebell {

/// Error: Corrupt when the events do not replay.
Result<std::string> batchRecord(const SessionRecord& record);

/// Label text, one block a load: contents, date, lot, best-by, allergens, "refrigerate after opening".
Result<std::string> labelText(const SessionRecord& record);

}  // namespace brinebell
