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

struct RecordLine {
    std::string label;
    std::string value;
    bool open = false;  ///< nobody recorded it: on paper there is room to write
};

/// What belongs together under one title; the last section, of the safety notice, has none.
struct RecordSection {
    std::string title;
    std::vector<RecordLine> lines;
};

/// The record itself. Error: Corrupt when the events do not replay.
Result<std::vector<RecordSection>> batchRecordSections(const SessionRecord& record);

/// The same as one text. Error: Corrupt when the events do not replay.
Result<std::string> batchRecord(const SessionRecord& record);

/// What stands on the label of every jar of one load.
struct JarLabel {
    bool rehearsal = false;
    std::string contents;
    std::string noLabel;  ///< why these jars get none; then only `contents` is filled besides
    int jars = 0;         ///< that get it: the sealed ones once the seals are checked, before that all that were lifted
    bool sealsChecked = false;
    Millis cannedUtc{};
    Millis sealsUtc{};      ///< when they were checked, or until when they are to be
    std::string shelfLife;  ///< as the recipe words it; empty: it does not say
    std::string canned;     ///< day, UTC
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
