#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "base/UtcText.h"
#include "console/EventText.h"
#include "console/FaultJson.h"
#include "console/TextTable.h"
#include "console/Verbs.h"
#include "document/Document.h"
#include "logbook/BatchRecord.h"
#include "logbook/Export.h"
#include "logbook/History.h"
#include "logbook/Import.h"
#include "logbook/TextSheet.h"

namespace brinebell {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kShortId = 8;  // characters of an id that tell one session from the others in a list

std::string stateWord(const SessionInfo& info) {
    return fmt::format("{}{}", info.rehearsal ? "rehearsal" : "class", info.closedUtc ? "" : ", not closed");
}

// ---- the list

Reply list(const Logbook& logbook, const std::vector<SessionInfo>& sessions) {
    TextTable table;
    Json rows = Json::array();
    table.addRow({"session", "started", "what", "title", "venue", "teacher", "events"});
    for (const SessionInfo& s : sessions) {
        table.addRow({s.id.substr(0, kShortId), utcText(s.startedUtc), stateWord(s), s.title, s.venue, s.teacher,
                      std::to_string(s.events)});
        rows.push_back({{"id", s.id},
                        {"class_id", s.classId},
                        {"title", s.title},
                        {"venue", s.venue},
                        {"teacher", s.teacher},
                        {"rehearsal", s.rehearsal},
                        {"started_utc", utcText(s.startedUtc)},
                        {"closed_utc", s.closedUtc ? Json(utcText(*s.closedUtc)) : Json(nullptr)},
                        {"events", s.events}});
    }
    Reply reply;
    reply.text = sessions.empty() ? "the logbook holds no such session yet\n" : table.print();
    reply.json = dump({{"log", logbook.path()}, {"sessions", std::move(rows)}});
    return reply;
}

// ---- one session

std::string sessionText(const SessionRecord& record) {
    const SessionInfo& info = record.info;
    TextSheet facts(10);
    facts.line("session", info.id);
    facts.line("class", info.title);
    facts.line("venue", fmt::format("{}, {}", info.venue, record.network.altitude));
    facts.line("teacher", info.teacher);
    facts.line("what", stateWord(info));
    facts.line("started", utcText(info.startedUtc));
    facts.line("closed", info.closedUtc ? utcText(*info.closedUtc) : "not yet");
    TextTable events;
    const std::vector<Millis> times = sessionTimes(record.events);
    for (std::size_t i = 0; i < record.events.size(); ++i) {
        const Event& event = record.events[i];
        events.addRow({std::to_string(event.sequence), clockText(std::chrono::floor<Seconds>(times[i])),
                       std::string(toText(event.cause)), eventText(record.network, event)});
    }
    return facts.text() + "\n" + events.print();
}

Reply document(const SessionRecord& record, const char* format, std::string text) {
    Reply reply;
    reply.json = dump({{"session", record.info.id}, {"format", format}, {"text", text}});
    reply.text = std::move(text);
    reply.exact = true;
    return reply;
}

Result<Reply> view(const SessionRecord& record, RecordsView wanted) {
    switch (wanted) {
        case RecordsView::Csv:
            return document(record, "csv", eventsCsv(record));
        case RecordsView::BatchRecord:
            return batchRecord(record).map(
                [&](std::string t) { return document(record, "batch-record", std::move(t)); });
        case RecordsView::Labels:
            return labelText(record).map([&](std::string t) { return document(record, "labels", std::move(t)); });
        case RecordsView::Json:
        case RecordsView::Session:
            break;
    }
    Reply reply;
    reply.json = sessionJson(record);
    reply.exact = wanted == RecordsView::Json;
    reply.text = reply.exact ? reply.json + "\n" : sessionText(record);
    return reply;
}

// The document is whole before the file is touched, and a file that cannot be written is left as it was.
Reply writeOut(const Reply& shown, const std::string& path) {
    if (const Result<void> written = writeFileWhole(path, shown.text); !written) {
        return storeFailure(written.error());
    }
    Reply reply;
    reply.text = fmt::format("{}: written\n", oneLine(path));
    reply.json = dump({{"output", path}, {"bytes", shown.text.size()}});
    return reply;
}

// ---- what is brought in

Reply importInto(const RecordsOptions& options) {
    Result<Logbook> logbook = Logbook::open(options.log);
    if (!logbook) {
        return storeFailure(logbook.error());
    }
    const ImportReport report = importFiles(*logbook, options.import);
    Reply reply;
    for (const ImportReport::Refusal& refusal : report.refused) {
        Error fault = refusal.error;
        if (!refusal.session.empty()) {
            fault.message = fmt::format("session {}: {}", refusal.session.substr(0, kShortId), fault.message);
        }
        reply.faults.push_back(fault);
    }
    reply.text = fmt::format("{} brought in, {} here already, {} refused\n", report.added.size(), report.known.size(),
                             report.refused.size());
    reply.json = dump({{"log", options.log},
                       {"added", report.added},
                       {"known", report.known},
                       {"refused", faultsToJson(reply.faults)}});
    reply.status = report.refused.empty() ? ExitStatus::Done : ExitStatus::WrongInput;
    return reply;
}

Result<Reply> answer(const RecordsOptions& options) {
    const Result<Logbook> logbook = Logbook::openReadOnly(options.log);
    if (!logbook) {
        return tl::unexpected(logbook.error());
    }
    const Result<std::vector<SessionInfo>> sessions = logbook->sessions(options.filter);
    if (!sessions) {
        return tl::unexpected(sessions.error());
    }
    if (!options.view) {
        return list(*logbook, *sessions);
    }
    if (sessions->empty()) {
        return fail(ErrorCode::NotFound, "the logbook holds no such session yet", {options.log, 0, 0});
    }
    const Result<SessionRecord> record = logbook->session(options.session.value_or(sessions->front().id));
    return record ? view(*record, *options.view) : tl::unexpected(record.error());
}

}  // namespace

Reply records(const RecordsOptions& options) {
    if (options.output && belongsToLogbook(*options.output, options.log)) {
        return failure({{ErrorCode::InvalidInput,
                         "--output must not be the logbook or one of the files that belong to it",
                         {*options.output, 0, 0}}});
    }
    if (!options.import.empty()) {
        return importInto(options);
    }
    const Result<Reply> shown = answer(options);
    if (!shown) {
        return inputFailure({shown.error()});
    }
    return options.output ? writeOut(*shown, *options.output) : *shown;
}

}  // namespace brinebell
