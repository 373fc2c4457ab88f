// A document from elsewhere; what holds together is exported and read back, as the logbook and its review do.
#include "fuzz/Harness.h"
#include "logbook/BatchRecord.h"
#include "logbook/Export.h"
#include "logbook/Import.h"
#include "logbook/ImportCheck.h"

void brinebell::fuzz::tryInput(std::string_view bytes) {
    const auto record = sessionFromJson(bytes);
    mustHold(record || !record.error().message.empty(), "a document is read or refused with a reason");
    if (!record || whyNotImported(*record)) {
        return;
    }
    mustHold(reviewOf(*record).has_value(), "what is imported can be reviewed");
    mustHold(!eventsCsv(*record).empty(), "what is imported can be exported");
    const auto again = sessionFromJson(sessionJson(*record));
    mustHold(again && again->events == record->events, "what is exported is read back the same");
}
