#include "console/CommandLine.h"

#include <fmt/format.h>

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <algorithm>
#include <charconv>
#include <cstdint>
#include <sstream>
#include <string_view>
#include <system_error>

#include "base/UtcText.h"
#include "logbook/Logbook.h"

namespace brinebell {

namespace {

constexpr const char* kFooter =
    "Exit status: 0 done; 1 the input is wrong, or there is no such tested value; 2 usage;\n"
    "3 the machine (disk, rights).\n"
    "Process times come from published tables only; nothing here computes or shortens one.";

constexpr const char* kAltitudeHelp = "with its unit: \"4,200 ft\", \"1280 m\"; never rounded down";

// Validators give the reason against a value, or nothing.

std::string isFileName(const std::string& value) {
    return value.empty() ? "a file name must not be empty" : "";
}

std::string isSeed(const std::string& value) {
    std::uint64_t seed = 0;
    const char* end = value.data() + value.size();
    const auto [stop, fault] = std::from_chars(value.data(), end, seed);
    return fault == std::errc() && stop == end ? "" : "must be a whole number from 0 to 18446744073709551615";
}

// "2026-09-17"; the years and days that utcFromText() knows.
std::optional<Millis> startOf(const std::string& day) {
    const Result<Millis> start = utcFromText(day + "T00:00:00Z");
    return start ? std::optional(*start) : std::nullopt;
}

std::string isDay(const std::string& value) {
    return startOf(value) ? "" : "must be a day as in 2026-09-17";
}

// Not a number is within no range, which comparisons alone would not tell.
CLI::Validator within(double least, double most) {
    return CLI::Validator(
        [=](const std::string& value) {
            double number = 0;
            const char* end = value.data() + value.size();
            const auto [stop, fault] = std::from_chars(value.data(), end, number);
            const bool sound = fault == std::errc() && stop == end && number >= least && number <= most;
            return sound ? std::string() : fmt::format("must be a number from {} to {}", least, most);
        },
        fmt::format("{} to {}", least, most));
}

// Owns the parser and the options it fills while a command line is read.
class Reader {
public:
    Reader();
    CommandLine read(int argc, const char* const* argv);

private:
    CLI::App* addVerb(const char* name, const char* what);
    void addCheck();
    void addProcessTime();
    void addBoilingPoint();
    void addSheet();
    void addForecast();
    void addMakeAhead();
    void addRehearse();
    void addRecords();
    Verb chosen() const;

    CLI::App m_app{"Brinebell in a terminal: published process times, run sheets, rehearsals and the logbook.",
                   "brinebell-console"};
    bool m_json = false;
    CheckOptions m_check;
    ProcessTimeOptions m_processTime;
    BoilingPointOptions m_boilingPoint;
    SheetOptions m_sheet;
    ForecastVerbOptions m_forecast;
    MakeAheadVerbOptions m_makeAhead;
    RehearseOptions m_rehearse;
    RecordsOptions m_records;
    std::string m_export;
    std::string m_from, m_until, m_kind;
    bool m_batchRecord = false;
    bool m_labels = false;
};

Reader::Reader() {
    m_app.require_subcommand(1);
    m_app.set_version_flag("--version", "brinebell-console " BRINEBELL_VERSION);
    m_app.footer(kFooter);
    addCheck();
    addProcessTime();
    addBoilingPoint();
    addSheet();
    addForecast();
    addMakeAhead();
    addRehearse();
    addRecords();
}

CLI::App* Reader::addVerb(const char* name, const char* what) {
    CLI::App* verb = m_app.add_subcommand(name, what);
    verb->add_flag("--json", m_json, "print one JSON document on standard output and nothing else");
    verb->footer(kFooter);
    return verb;
}

void Reader::addCheck() {
    CLI::App* verb = addVerb("check", "Read recipe, venue or class files and report every fault");
    verb->add_option("FILE", m_check.files, "TOML files")->required();
}

void Reader::addProcessTime() {
    CLI::App* verb = addVerb("process-time", "The published process time or pressure, its band and source");
    verb->add_option("--product", m_processTime.product, "product key, as in \"marinated-peppers\"")->required();
    verb->add_option("--pack", m_processTime.pack, "hot or raw")->required();
    verb->add_option("--jar", m_processTime.jar,
                     "quarter-pint, half-pint, 12-ounce, pint, 1-1/2-pint, quart or half-gallon")
        ->required();
    verb->add_option("--altitude", m_processTime.altitude, kAltitudeHelp)->required();
    verb->add_option("--method", m_processTime.method,
                     "boiling-water, atmospheric-steam, pressure-dial or pressure-weighted")
        ->capture_default_str();
    verb->add_option("--confirmed-by", m_processTime.confirmedBy,
                     "who held a from-memory table entry against the published page");
}

void Reader::addBoilingPoint() {
    CLI::App* verb = addVerb("boiling-point", "The temperature at which water boils; explains, never sets, a time");
    auto* from = verb->add_option_group("from", "What is known of the place");
    from->add_option("--altitude", m_boilingPoint.altitude, kAltitudeHelp);
    from->add_option("--pressure", m_boilingPoint.pressure,
                     "absolute, at the place itself and not reduced to sea level: \"86.8 kPa\", \"25.6 inHg\"");
    from->require_option(1);
    verb->add_flag("--why", m_boilingPoint.why,
                   "why a higher kitchen needs more minutes: an illustration; the published table rules");
}

void Reader::addSheet() {
    CLI::App* verb = addVerb("sheet", "The run sheet of a class: when everything starts, and why then");
    verb->add_option("CLASS", m_sheet.file, "class file")->required();
    verb->add_option("--seed", m_sheet.seed,
                     "of the search and of the runs that compare sheets; the same seed gives the same sheet")
        ->check(isSeed)
        ->capture_default_str();
    verb->add_option("--conflicts", m_sheet.conflicts, "how long each search may go on, the same on every machine")
        ->check(CLI::Range(std::int64_t{1}, kMostConflicts))
        ->capture_default_str();
    verb->add_option("--seconds", m_sheet.seconds, "stop searching after this time; gives up that sameness")
        ->check(within(0.001, kMostSeconds));
}

void Reader::addForecast() {
    CLI::App* verb = addVerb("forecast", "How a class is likely to end when things take as long as they really may");
    verb->add_option("CLASS", m_forecast.file, "class file")->required();
    verb->add_option("--runs", m_forecast.runs, "simulated classes")
        ->check(CLI::Range(1, kMostRuns))
        ->capture_default_str();
    verb->add_option("--seed", m_forecast.seed,
                     "the same seed gives the same answer; 1 is what the sheet was chosen by")
        ->check(isSeed)
        ->capture_default_str();
    verb->add_option("--correlation", m_forecast.correlation, "how far a slow day is slow in everything the hands do")
        ->check(within(0, 1))
        ->capture_default_str();
    verb->add_option("--threads", m_forecast.threads, "0: one for each core; the answer is the same for any number")
        ->check(CLI::Range(0, kMostThreads))
        ->capture_default_str();
}

void Reader::addMakeAhead() {
    CLI::App* verb = addVerb("make-ahead", "The smallest set of stages to make before class so that it fits its slot");
    verb->add_option("CLASS", m_makeAhead.file, "class file")->required();
    verb->add_option("--confidence", m_makeAhead.confidence, "share of simulated classes that must end in the slot")
        ->check(within(0.01, 0.99))
        ->capture_default_str();
    verb->add_option("--runs", m_makeAhead.runs, "simulated classes for each set of stages")
        ->check(CLI::Range(1, kMostRunsOfASet))
        ->capture_default_str();
    verb->add_option("--seed", m_makeAhead.seed, "the same seed gives the same answer")
        ->check(isSeed)
        ->capture_default_str();
}

void Reader::addRehearse() {
    m_rehearse.log = defaultLogbookPath();
    CLI::App* verb = addVerb("rehearse", "Play a whole class on a virtual clock, into a logbook");
    verb->add_option("CLASS", m_rehearse.file, "class file")->required();
    verb->add_option("--seed", m_rehearse.seed, "the same seed gives the same events")
        ->check(isSeed)
        ->capture_default_str();
    verb->add_option("--log", m_rehearse.log, "logbook file; made when it is not there")
        ->check(isFileName)
        ->capture_default_str();
    verb->add_flag("--lose-boil", m_rehearse.loseBoil, "a drill: the first load's boil is lost half-way");
    verb->add_flag("--progress", m_rehearse.progress, "print every event as it happens")
        ->excludes(verb->get_option("--json"));
}

void Reader::addRecords() {
    m_records.log = defaultLogbookPath();
    CLI::App* verb = addVerb("records", "List sessions, show one, or give it as CSV, JSON, batch record or labels");
    verb->add_option("--log", m_records.log, "logbook file")->check(isFileName)->capture_default_str();
    verb->add_option("--session", m_records.session, "session id or the start of one; without it, the newest");
    verb->add_option("--output", m_records.output, "write to this file instead of standard output")->check(isFileName);
    verb->add_option("--dish", m_records.filter.dish, "list only sessions with a dish of this name, or a part of it");
    verb->add_option("--place", m_records.filter.place, "list only sessions in a venue of this name, or a part of it");
    verb->add_option("--from", m_from, "list only sessions that started on this day (UTC) or later")->check(isDay);
    verb->add_option("--until", m_until, "list only sessions that started on this day (UTC) or earlier")->check(isDay);
    verb->add_option("--kind", m_kind, "list only classes or only rehearsals")
        ->check(CLI::IsMember({"class", "rehearsal"}));
    auto* view = verb->add_option_group("as", "What to give in place of the list");
    view->add_option("--import", m_records.import, "bring in sessions from exported documents and other logbooks")
        ->check(isFileName);
    view->add_option("--export", m_export, "csv or json")->check(CLI::IsMember({"csv", "json"}));
    view->add_flag("--batch-record", m_batchRecord, "what an extension office asks for");
    view->add_flag("--labels", m_labels, "text for the labels, one block a load");
    view->require_option(0, 1);
    // Days are written with four, two and two digits, so they compare as text does.
    verb->callback([this] {
        if (!m_from.empty() && !m_until.empty() && m_from > m_until) {
            throw CLI::ValidationError("--from", fmt::format("{} is later than --until {}", m_from, m_until));
        }
    });
}

Verb Reader::chosen() const {
    if (m_app.got_subcommand("check")) {
        return m_check;
    }
    if (m_app.got_subcommand("process-time")) {
        return m_processTime;
    }
    if (m_app.got_subcommand("boiling-point")) {
        return m_boilingPoint;
    }
    if (m_app.got_subcommand("sheet")) {
        return m_sheet;
    }
    if (m_app.got_subcommand("forecast")) {
        return m_forecast;
    }
    if (m_app.got_subcommand("make-ahead")) {
        return m_makeAhead;
    }
    if (m_app.got_subcommand("rehearse")) {
        return m_rehearse;
    }
    RecordsOptions options = m_records;
    options.filter.from = startOf(m_from);
    options.filter.until = startOf(m_until);
    if (options.filter.until) {
        *options.filter.until += std::chrono::days(1);
    }
    if (!m_kind.empty()) {
        options.filter.rehearsal = m_kind == "rehearsal";
    }
    if (!m_export.empty()) {
        options.view = m_export == "csv" ? RecordsView::Csv : RecordsView::Json;
    } else if (m_batchRecord) {
        options.view = RecordsView::BatchRecord;
    } else if (m_labels) {
        options.view = RecordsView::Labels;
    } else if (options.session || options.output) {
        options.view = RecordsView::Session;
    }
    return options;
}

CommandLine Reader::read(int argc, const char* const* argv) {
    try {
        m_app.parse(argc, argv);
    } catch (const CLI::ParseError& stop) {
        if (stop.get_exit_code() == 0) {
            // Help or the version, which the parser writes to a stream of our choice.
            std::ostringstream text;
            m_app.exit(stop, text, text);
            Reply reply;
            reply.text = text.str();
            return {reply, false};
        }
        // The parser stops at the first fault, which may come before it has seen the flag.
        const bool json =
            std::any_of(argv + 1, argv + argc, [](const char* word) { return std::string_view(word) == "--json"; });
        return {failure({{ErrorCode::InvalidInput, std::string(stop.what()) + " (see --help)", {}}}, ExitStatus::Usage),
                json};
    }
    return {chosen(), m_json};
}

}  // namespace

CommandLine readCommandLine(int argc, const char* const* argv) {
    return Reader().read(argc, argv);
}

}  // namespace brinebell
