// BatchRecord.h — the batch record of a session as plain text: what an extension office or a curious cook
// asks for.
//
// Fields: 21 CFR 113.100 in the shape a class needs. The record says plainly what is not known yet (seal
// check due).
#pragma once

#include <string>
#include <vector>

#include "logbook/Logbook.h"

namespace brinebell {

/// Error: Corrupt when the events do not replay.
Result<std::string> batchRecord(const SessionRecord& record);

/// What stands on the label of every jar of one load.
struct JarLabel {
    bool rehearsal = false;
    std::string contents;
    std::string noLabel;  ///< why these jars get none; then only `contents` is filled besides
    int jars = 0;         ///< that get it: the sealed ones once the seals are checked, before that all that were lifted
    bool sealsChecked = false;
    std::string canned;  ///< day, UTC
    std::string lot;
    std::string madeAt;
    std::string bestBy;
    std::string allergens;
    std::string seals;
};

/// One for each load, in their order. Error: Corrupt when the events do not replay.
Result<std::vector<JarLabel>> labelsOf(const SessionRecord& record);

/// Label text, one block a load: contents, date, lot, best-by, allergens, "refrigerate after opening".
Result<std::string> labelText(const SessionRecord& record);

}  // namespace brinebell
