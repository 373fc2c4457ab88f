#include "logbook/Import.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <limits>
#include <nlohmann/json.hpp>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "base/UtcText.h"
#include "logbook/ImportCheck.h"
#include "plan/SnakeCaseKeys.h"

namespace brinebell {

using nlohmann::json;

namespace {

constexpr std::string_view kLogbookBeginning = "SQLite format 3";
constexpr int kDeepestDocument = 32;

// What a document must hold, told by name when it does not.
class Fields {
public:
    Fields(const json& object, std::string what) : m_object(object), m_what(std::move(what)) {}

    template <class T>
    T get(const char* key) const {
        const auto found = m_object.is_object() ? m_object.find(key) : m_object.end();
        if (!m_object.is_object() || found == m_object.end()) {
            throw core::say("{} has no \"{}\"", m_what, key);
        }
        try {
            return found->template get<T>();
        } catch (const json::exception&) {
            throw core::say("\"{}\" of {} is of the wrong kind", key, m_what);
        }
    }
    bool isNull(const char* key) const { return get<json>(key).is_null(); }
    Millis moment(const char* key) const {
        const auto text = get<std::string>(key);
        const Result<Millis> read = utcFromText(text);
        if (!read) {
            throw core::say("\"{}\" of {} is not a moment: {}", key, m_what, quotedText(text));
        }
        return *read;
    }
    int count(const char* key) const {
        const auto value = get<std::int64_t>(key);
        if (value < 0 || value > std::numeric_limits<int>::max()) {
            throw core::say("\"{}\" of {} is out of range: {}", key, m_what, value);
        }
        return static_cast<int>(value);
    }

private:
    const json& m_object;
    std::string m_what;
};

bool isSessionId(const std::string& id) {
    return id.size() == 32 && id.find_first_not_of("0123456789abcdef") == std::string::npos;
}

template <class T>
T known(const std::optional<T>& word, const std::string& text, const std::string& what) {
    if (!word) {
        throw core::say("{} is not known: {}", what, quotedText(text));
    }
    return *word;
}

Event eventFrom(const json& object, const Network& network, std::size_t number) {
    const Fields fields(object, core::say("event {}", number));
    Event event;
    event.sequence = fields.get<std::int64_t>("sequence");
    const auto kind = fields.get<std::string>("kind"), cause = fields.get<std::string>("cause"),
               boot = fields.get<std::string>("boot_id");
    event.kind = known(eventKindFromText(kind), kind, core::say("the kind of event {}", number));
    event.cause = known(causeFromText(cause), cause, core::say("the cause of event {}", number));
    event.at.bootId = known(bootIdFromText(boot), boot, core::say("the boot identity of event {}", number));
    event.at.utc = fields.moment("at_utc");
    event.at.boot = Millis(fields.get<std::int64_t>("boot_ms"));
    if (!fields.isNull("activity")) {
        const auto key = fields.get<std::string>("activity");
        event.activity = known(findActivity(network, key), key, core::say("the activity of event {}", number));
    }
    if (!fields.isNull("load")) {
        event.load = fields.count("load");
        if (static_cast<std::size_t>(event.load) >= network.loads.size()) {
            throw core::say("the load of event {} is not one of the session's {}", number, network.loads.size());
        }
    }
    event.value = fields.get<std::int64_t>("value");
    if (!isReckonable(event.at)) {
        throw core::say("\"boot_ms\" of event {} is out of range: {}", number, event.at.boot.count());
    }
    if (event.value < -kLargestEventValue || event.value > kLargestEventValue) {
        throw core::say("\"value\" of event {} is out of range: {}", number, event.value);
    }
    event.sealed = fields.count("sealed");
    event.unsealed = fields.count("unsealed");
    event.broken = fields.count("broken");
    event.text = fields.get<std::string>("text");
    return event;
}

SessionRecord recordFrom(const json& document) {
    const Fields whole(document, "the document");
    const auto session = whole.get<json>("session");
    const Fields fields(session, "the session");
    const Result<Network> network = networkFromJson(withProgramKeys(whole.get<json>("network")).dump());
    if (!network) {
        throw core::say("the network is not sound: {}", network.error().message);
    }
    SessionRecord record;
    record.network = *network;
    record.info.id = fields.get<std::string>("id");
    if (!isSessionId(record.info.id)) {
        throw core::say("the id of the session is not one of ours: {}", quotedText(record.info.id));
    }
    record.info.classId = network->classId;
    record.info.title = network->title;
    record.info.venue = network->venueName;
    record.info.teacher = network->teacher;
    record.info.rehearsal = fields.get<bool>("rehearsal");
    record.info.startedUtc = fields.moment("started_utc");
    if (!fields.isNull("closed_utc")) {
        record.info.closedUtc = fields.moment("closed_utc");
    }
    const auto events = whole.get<json::array_t>("events");
    for (const json& event : events) {
        record.events.push_back(eventFrom(event, record.network, record.events.size() + 1));
    }
    record.info.events = static_cast<std::int64_t>(record.events.size());
    return record;
}

Result<std::string> textOf(const std::string& file) {
    std::error_code fault;
    const std::uintmax_t size = std::filesystem::file_size(file, fault);
    if (fault) {
        return fail(ErrorCode::Io, "the file cannot be read: " + fault.message());
    }
    if (size > kMostImportBytes) {
        return fail(ErrorCode::OutOfRange,
                    core::say("the file is longer than {} MiB", kMostImportBytes / (1024 * 1024)));
    }
    std::ifstream stream(file, std::ios::binary);
    std::string text(static_cast<std::size_t>(size), '\0');
    if (!stream.read(text.data(), static_cast<std::streamsize>(size))) {
        return fail(ErrorCode::Io, core::say("the file cannot be read"));
    }
    return text;
}

bool isLogbook(const std::string& file) {
    std::ifstream stream(file, std::ios::binary);
    std::string beginning(kLogbookBeginning.size(), '\0');
    stream.read(beginning.data(), static_cast<std::streamsize>(beginning.size()));
    return stream && beginning == kLogbookBeginning;
}

class Importer {
public:
    explicit Importer(Logbook& into) : m_into(into) {}

    void take(const std::string& file) {
        if (isLogbook(file)) {
            takeLogbook(file);
            return;
        }
        const Result<std::string> text = textOf(file);
        const Result<SessionRecord> record = text ? sessionFromJson(*text) : tl::unexpected(text.error());
        if (!record) {
            refuse(file, {}, record.error());
            return;
        }
        put(file, *record);
    }
    ImportReport report() && { return std::move(m_report); }

private:
    void takeLogbook(const std::string& file) {
        const Result<Logbook> other = Logbook::openReadOnly(file);
        const auto sessions = other ? other->sessions() : tl::unexpected(other.error());
        if (!sessions) {
            refuse(file, {}, sessions.error());
            return;
        }
        for (const SessionInfo& info : *sessions) {
            const Result<SessionRecord> record = other->session(info.id);
            if (record) {
                put(file, *record);
            } else {
                refuse(file, info.id, record.error());
            }
        }
    }

    void put(const std::string& file, const SessionRecord& record) {
        if (const std::optional<Error> why = whyNotImported(record)) {
            refuse(file, record.info.id, *why);
            return;
        }
        const Result<bool> added = m_into.add(record);
        if (!added) {
            refuse(file, record.info.id, added.error());
        } else {
            (*added ? m_report.added : m_report.known).push_back(record.info.id);
        }
    }

    void refuse(const std::string& file, const std::string& session, Error error) {
        error.where = {file};
        m_report.refused.push_back({session, std::move(error)});
    }

    Logbook& m_into;
    ImportReport m_report;
};

}  // namespace

Result<SessionRecord> sessionFromJson(std::string_view text) {
    if (text.size() > kMostImportBytes) {
        return fail(ErrorCode::OutOfRange, core::say("the document is too long"));
    }
    // What follows walks the document by recursion; no session nests deeper than a few levels.
    const auto notTooDeep = [](int depth, json::parse_event_t, const json&) {
        if (depth > kDeepestDocument) {
            throw core::say("it nests deeper than {} levels", kDeepestDocument);
        }
        return true;
    };
    try {
        const json document = json::parse(text, notTooDeep, false);
        if (document.is_discarded()) {
            return fail(ErrorCode::Corrupt, core::say("this is not a whole JSON document"));
        }
        return recordFrom(document);
    } catch (const std::string& fault) {
        return fail(ErrorCode::Corrupt, fault);
    } catch (const json::exception& fault) {
        return fail(ErrorCode::Corrupt, core::say("this is not a session: {}", fault.what()));
    }
}

ImportReport importFiles(Logbook& into, const std::vector<std::string>& files) {
    Importer importer(into);
    for (const std::string& file : files) {
        importer.take(file);
    }
    return std::move(importer).report();
}

}  // namespace brinebell
