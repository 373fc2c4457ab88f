// ReadProcessTables.cpp — from the file to ProcessTables::Entry, refusing what a published table cannot be.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "document/Document.h"
#include "safety/ProcessTables.h"

namespace brinebell {
namespace {

using Band = ProcessTables::Band;
using Entry = ProcessTables::Entry;
using Status = ProcessTables::Status;

// Wider than any published figure, narrow enough to catch a slipped digit.
constexpr int kMostFeet = 20'000;
constexpr int kMostMinutes = 300;
constexpr int kMostPsi = 15;  // AIB 539 (1994): above 15 psi is not recommended
constexpr double kLeastHeadspaceInches = 0.25;
constexpr double kMostHeadspaceInches = 2;
constexpr std::size_t kMaxTableBytes = 1024 * 1024;

Result<Status> statusFromText(std::string_view text) {
    if (text == "current") {
        return Status::Current;
    }
    if (text == "extension-variant") {
        return Status::ExtensionVariant;
    }
    if (text == "superseded") {
        return Status::Superseded;
    }
    if (text == "do-not-use") {
        return Status::DoNotUse;
    }
    return fail(
        ErrorCode::InvalidInput,
        fmt::format("\"{}\" is not a status; known are current, extension-variant, superseded, do-not-use", text));
}

Result<Confidence> confidenceFromText(std::string_view text) {
    if (text == "seen") {
        return Confidence::Seen;
    }
    if (text == "memory") {
        return Confidence::Memory;
    }
    return fail(ErrorCode::InvalidInput, fmt::format("\"{}\" is not a confidence; known are seen, memory", text));
}

/// A reader that takes one word and no other.
auto only(std::string_view wanted) {
    return [wanted](std::string_view text) -> Result<bool> {
        if (text == wanted) {
            return true;
        }
        return fail(ErrorCode::InvalidInput, fmt::format("must be \"{}\", found \"{}\"", wanted, text));
    };
}

std::string rangeText(const Band& band) {
    return band.toFeet ? fmt::format("{}-{}", band.fromFeet, *band.toFeet) : fmt::format("{}+", band.fromFeet);
}

std::string rangesText(const std::vector<Band>& bands) {
    std::string text;
    for (const Band& band : bands) {
        text += (text.empty() ? "" : ", ") + rangeText(band);
    }
    return text;
}

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (const std::string& part : parts) {
        text += (text.empty() ? "" : ", ") + part;
    }
    return text;
}

class TableReader {
public:
    explicit TableReader(Document& document) : m_root(document.root()) {}

    std::vector<Entry> read() {
        m_root.integer("schema", 1, 1);
        m_root.textOr("compiled", "");
        readUnits();
        readSources();
        readSchemes();
        for (const Table& table : m_root.tables("process")) {
            readEntry(table);
        }
        if (m_entries.empty()) {
            m_root.fault("process", ErrorCode::InvalidInput, "process: no entry at all");
        }
        readConflicts();
        readTestCases();
        return std::move(m_entries);
    }

private:
    // Other units would make every figure wrong, so the file has to say them and they have to be these.
    void readUnits() {
        const Table units = m_root.table("units");
        units.parsed("time", only("minute"));
        units.parsed("altitude", only("foot"));
        units.parsed("headspace", only("inch"));
        units.parsed("pressure", only("psi gauge"));
    }

    void readSources() {
        for (const Table& source : m_root.tables("source")) {
            source.text("id");
            source.text("title");
            source.textOr("note", "");
        }
    }

    void readSchemes() {
        for (const Table& scheme : m_root.tables("bands")) {
            scheme.text("id");
            scheme.text("use");
            scheme.integers("psi_low_acid", 1, kMostPsi);
            scheme.integers("psi_fruit", 1, kMostPsi);
            m_schemes.insert(joined(scheme.texts("ranges")));
        }
    }

    // The reasoning kept beside the figures: for people; only its shape is checked.
    void readConflicts() {
        for (const Table& conflict : m_root.tables("conflict")) {
            conflict.text("topic");
            conflict.texts("figures");
            conflict.texts("seen_at");
            conflict.text("use");
        }
    }

    void readTestCases() {
        for (const Table& test : m_root.tables("test_case")) {
            test.text("name");
            test.integer("altitude_ft", 0, kMostFeet);
            test.integerOr("expect_minutes", 1, kMostMinutes, 0);
            test.integerOr("expect_psi", 1, kMostPsi, 0);
            test.booleanOr("expect_sterile_jars", false);
            test.booleanOr("expect_steam_canner_ok", false);
            test.booleanOr("expect_refusal", false);
            test.parsed("confidence", confidenceFromText);
            test.textOr("note", "");
            const std::string process = test.has("rule") ? test.text("rule") : test.text("process");
            if (!test.has("rule") && !process.empty() && !m_ids.contains(process)) {
                test.fault("process", ErrorCode::InvalidInput, fmt::format("process: no entry \"{}\"", process));
            }
        }
    }

    void readEntry(const Table& table) {
        Entry entry;
        readIdentity(table, entry);
        readJars(table, entry);
        entry.method = table.parsed("method", methodFromText).value_or(Method::BoilingWater);
        if (entry.method == Method::AtmosphericSteam) {
            table.fault("method", ErrorCode::InvalidInput,
                        "method: steam canners have no tables of their own; they go by boiling-water");
        }
        const double inches = table.number("headspace_in", kLeastHeadspaceInches, kMostHeadspaceInches);
        entry.headspace = Length::fromNanometres(std::llround(inches * Length::kNanometresPerInch));
        entry.headspaceNote = table.textOr("headspace_note", "");
        entry.acidify = table.textOr("acidify", "");
        entry.sterileJarsRequired = table.booleanOr("sterile_jars_required", false);
        entry.bands = isPressure(entry.method) ? readPressures(table) : readTimes(table);
        checkScheme(table, entry);
        checkUnambiguous(table, entry);
        m_entries.push_back(std::move(entry));
    }

    void readIdentity(const Table& table, Entry& entry) {
        entry.id = table.text("id");
        entry.product = entry.id.substr(0, entry.id.find('.'));
        if (!entry.id.empty() && !m_ids.insert(entry.id).second) {
            table.fault("id", ErrorCode::InvalidInput, fmt::format("id: a second entry \"{}\"", entry.id));
        }
        entry.title = table.text("product");
        table.text("group");
        entry.source = table.text("source");
        entry.note = table.textOr("note", "");
        entry.status = table.parsedIf("status", statusFromText).value_or(Status::Current);
        entry.confidence = table.parsed("confidence", confidenceFromText).value_or(Confidence::Memory);
        if (table.textOr("seen_at", "").empty() && entry.confidence == Confidence::Seen) {
            table.fault("confidence", ErrorCode::InvalidInput, "confidence: \"seen\" needs a seen_at");
        }
        table.texts("also_seen_at");
    }

    void readJars(const Table& table, Entry& entry) {
        const std::string pack = table.text("pack");
        entry.hotPack = pack == "hot" || pack == "hot or raw";
        entry.rawPack = pack == "raw" || pack == "hot or raw";
        if (!pack.empty() && !entry.hotPack && !entry.rawPack) {
            table.fault("pack", ErrorCode::InvalidInput,
                        fmt::format("pack: \"{}\" is not one of hot, raw, hot or raw", pack));
        }
        const std::vector<std::string> words = table.texts("jars");
        for (const std::string& word : words) {
            const auto size = jarSizeFromText(word);
            if (!size) {
                table.fault("jars", size.error().code, "jars: " + size.error().message);
            } else if (std::find(entry.jars.begin(), entry.jars.end(), *size) != entry.jars.end()) {
                table.fault("jars", ErrorCode::InvalidInput, fmt::format("jars: \"{}\" twice", word));
            } else {
                entry.jars.push_back(*size);
            }
        }
        if (words.empty()) {
            table.fault("jars", ErrorCode::InvalidInput, "jars: no size listed");
        }
    }

    static Band readEdges(const Table& row) {
        Band band;
        band.fromFeet = static_cast<int>(row.integer("from_ft", 0, kMostFeet));
        if (row.has("to_ft")) {
            band.toFeet = static_cast<int>(row.integer("to_ft", 0, kMostFeet));
        }
        return band;
    }

    std::vector<Band> readTimes(const Table& table) {
        std::vector<Band> bands;
        const std::vector<Table> rows = table.tables("times");
        for (const Table& row : rows) {
            Band band = readEdges(row);
            band.time = std::chrono::minutes(row.integer("minutes", 1, kMostMinutes));
            // A figure that could not be read is 0 here; its fault has been told.
            if (!bands.empty() && band.time.count() > 0 && band.time < bands.back().time) {
                row.fault("minutes", ErrorCode::InvalidInput,
                          fmt::format("minutes: {} falls below the {} of the band beneath", band.time.count(),
                                      bands.back().time.count()));
            }
            bands.push_back(band);
        }
        checkEdges(table, "times", rows, bands);
        return bands;
    }

    std::vector<Band> readPressures(const Table& table) {
        std::vector<Band> bands;
        const std::chrono::minutes time(table.integer("minutes", 1, kMostMinutes));
        const std::vector<Table> rows = table.tables("pressure");
        for (const Table& row : rows) {
            Band band = readEdges(row);
            band.time = time;
            band.allowed = row.booleanOr("allowed", true);
            if (band.allowed) {
                band.gaugePsi = static_cast<int>(row.integer("psi", 1, kMostPsi));
                checkRises(row, bands, *band.gaugePsi);
            }
            bands.push_back(band);
        }
        checkEdges(table, "pressure", rows, bands);
        return bands;
    }

    static void checkRises(const Table& row, const std::vector<Band>& beneath, int psi) {
        if (beneath.empty()) {
            return;
        }
        if (!beneath.back().allowed) {
            row.fault("from_ft", ErrorCode::InvalidInput, "an allowed band above one that is not allowed");
        } else if (psi > 0 && psi < *beneath.back().gaugePsi) {
            row.fault("psi", ErrorCode::InvalidInput,
                      fmt::format("psi: {} falls below the {} of the band beneath", psi, *beneath.back().gaugePsi));
        }
    }

    // From sea level up without a hole or an overlap; only the top band may be open.
    static void checkEdges(const Table& table, std::string_view key, const std::vector<Table>& rows,
                           const std::vector<Band>& bands) {
        if (rows.empty()) {
            table.fault(key, ErrorCode::InvalidInput, fmt::format("{}: no band at all", key));
        }
        int next = 0;
        for (std::size_t i = 0; i < bands.size(); ++i) {
            const Band& band = bands[i];
            if (band.fromFeet != next) {
                rows[i].fault("from_ft", ErrorCode::InvalidInput,
                              fmt::format("from_ft: {} {} the band beneath; must be {}", band.fromFeet,
                                          band.fromFeet > next ? "leaves a hole above" : "overlaps", next));
            }
            if (band.toFeet && *band.toFeet <= band.fromFeet) {
                rows[i].fault("to_ft", ErrorCode::InvalidInput,
                              fmt::format("to_ft: {} is not above from_ft {}", *band.toFeet, band.fromFeet));
            }
            if (!band.toFeet && i + 1 != bands.size()) {
                rows[i].fault("", ErrorCode::InvalidInput, "to_ft: missing; only the top band may be open");
                return;
            }
            next = band.toFeet.value_or(0) + 1;
        }
    }

    // A slip that moves both edges of a band the same way leaves no hole; the listed schemes catch it.
    // Variants of state services have bands of their own.
    void checkScheme(const Table& table, const Entry& entry) const {
        const std::string ranges = rangesText(entry.bands);
        if (!m_schemes.empty() && entry.status == Status::Current && !m_schemes.contains(ranges)) {
            table.fault(isPressure(entry.method) ? "pressure" : "times", ErrorCode::InvalidInput,
                        fmt::format("no scheme in [[bands]] has the ranges {}", ranges));
        }
    }

    // Two current entries may answer one query only as a choice of pressures.
    void checkUnambiguous(const Table& table, const Entry& entry) const {
        for (const Entry& other : m_entries) {
            if (overlap(entry, other) && !differInPressure(entry, other)) {
                table.fault("id", ErrorCode::InvalidInput,
                            fmt::format("id: \"{}\" and \"{}\" answer for the same product, pack, jar and method",
                                        entry.id, other.id));
            }
        }
    }

    static bool overlap(const Entry& a, const Entry& b) {
        const bool samePack = (a.hotPack && b.hotPack) || (a.rawPack && b.rawPack);
        const bool sameJar = std::any_of(a.jars.begin(), a.jars.end(), [&](JarSize jar) {
            return std::find(b.jars.begin(), b.jars.end(), jar) != b.jars.end();
        });
        return a.status == Status::Current && b.status == Status::Current && a.product == b.product &&
               a.method == b.method && samePack && sameJar;
    }

    static bool differInPressure(const Entry& a, const Entry& b) {
        if (rangesText(a.bands) != rangesText(b.bands)) {
            return false;
        }
        return std::equal(a.bands.begin(), a.bands.end(), b.bands.begin(), [](const Band& x, const Band& y) {
            return !x.allowed || !y.allowed || x.gaugePsi != y.gaugePsi;
        });
    }

    Table m_root;
    std::set<std::string> m_schemes;
    std::set<std::string> m_ids;
    std::vector<Entry> m_entries;
};

}  // namespace

FileResult<ProcessTables> ProcessTables::read(std::string_view toml, const std::string& name) {
    auto document = Document::parse(toml, name, kMaxTableBytes);
    if (!document) {
        return tl::unexpected(std::move(document.error()));
    }
    ProcessTables tables;
    tables.m_entries = TableReader(*document).read();
    if (auto faults = document->finish(); !faults.empty()) {
        return tl::unexpected(std::move(faults));
    }
    return tables;
}

}  // namespace brinebell
