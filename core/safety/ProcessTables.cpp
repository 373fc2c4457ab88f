// ProcessTables.cpp — the one way from a query to published minutes. Every step that narrows the choice says
// what was left when nothing fits.
#include "safety/ProcessTables.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <numeric>
#include <set>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "quantity/ReadQuantity.h"
#include "safety/PublishedText.h"

namespace brinebell {
namespace {

using Band = ProcessTables::Band;
using Entry = ProcessTables::Entry;

constexpr Length kHighestPublished = Length::fromFeet(10'000);
constexpr Length kNationalTablesEnd = Length::fromFeet(8'000);
// Utah State University Extension: a band from 8,001 to 10,000 ft, 5 minutes above the one beneath.
constexpr std::chrono::minutes kLongerAboveTheEnd{5};
constexpr std::chrono::minutes kSterilisesByItself{10};
constexpr std::size_t kMostSuggestions = 3;

/// Feet for messages, rounded up to a tenth, so that 8,000 ft and a nanometre does not print as 8000.
std::string feetText(Length altitude) {
    return fmt::format("{:.7g} ft", std::ceil(altitude.feet() * 10) / 10);
}

template <class Items, class ToWord>
std::string listed(const Items& items, ToWord toWord) {
    std::string text;
    for (const auto& item : items) {
        text += (text.empty() ? "" : ", ") + std::string(toWord(item));
    }
    return text;
}

/// Letters to insert, drop or replace to make one word of the other.
std::size_t editDistance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t replaced = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({row[j] + 1, row[j + 1] + 1, replaced});
        }
    }
    return row.back();
}

/// Names a person may have meant, nearest first: a few letters off, or holding the word.
std::vector<std::string> nearNames(const std::vector<std::string>& names, std::string_view word) {
    constexpr std::size_t kLongestWord = 64;  // beyond it nobody meant a product, and the distance takes long
    constexpr std::size_t kShortestPart = 4;
    if (word.size() > kLongestWord) {
        return {};
    }
    const std::size_t most = std::max<std::size_t>(2, word.size() / 5);
    std::vector<std::pair<std::size_t, std::string>> near;
    for (const std::string& name : names) {
        const std::size_t distance = editDistance(word, name);
        const bool holds = word.size() >= kShortestPart && name.find(word) != std::string::npos;
        if (distance <= most || holds) {
            near.emplace_back(distance, name);
        }
    }
    std::sort(near.begin(), near.end());
    near.resize(std::min(near.size(), kMostSuggestions));
    std::vector<std::string> result;
    for (auto& [distance, name] : near) {
        result.push_back(std::move(name));
    }
    return result;
}

bool takes(const Entry& entry, Pack pack) {
    return pack == Pack::Hot ? entry.hotPack : entry.rawPack;
}

bool takes(const Entry& entry, JarSize jar) {
    return std::find(entry.jars.begin(), entry.jars.end(), jar) != entry.jars.end();
}

/// The band of `altitude`: the first whose upper edge is not below it.
const Band* bandAt(const Entry& entry, Length altitude) {
    const auto found = std::find_if(entry.bands.begin(), entry.bands.end(), [&](const Band& band) {
        return !band.toFeet || altitude <= Length::fromFeet(*band.toFeet);
    });
    return found == entry.bands.end() ? nullptr : &*found;
}

tl::unexpected<Error> noTestedValue(std::string message) {
    return fail(ErrorCode::NoTestedValue, std::move(message));
}

/// One query on its way through the entries.
class Search {
public:
    Search(const ProcessTables& tables, const ProcessQuery& query) : m_tables(tables), m_query(query) {
        // A steam canner goes by the boiling-water table.
        m_method = query.method == Method::AtmosphericSteam ? Method::BoilingWater : query.method;
    }

    Result<std::vector<ProcessAnswer>> run() {
        return byProduct()
            .and_then([this] { return byMethod(); })
            .and_then([this] { return byPack(); })
            .and_then([this] { return byJar(); })
            .and_then([this] { return byConfidence(); })
            .and_then([this] { return byAltitude(); })
            .and_then([this] { return bySteamLimit(); })
            .map([this] { return answers(); });
    }

private:
    struct Row {
        const Entry* entry;
        const Band* band;
    };

    Result<void> byProduct() {
        bool isVariant = false;
        for (const Entry& entry : m_tables.entries()) {
            if (entry.product != m_query.product) {
                continue;
            }
            if (entry.status == ProcessTables::Status::Current) {
                m_rows.push_back({&entry, nullptr});
            } else {
                isVariant = true;
            }
        }
        if (!m_rows.empty()) {
            return {};
        }
        if (isVariant) {
            return noTestedValue(core::say("{} is kept for comparison only and never gives a time", m_query.product));
        }
        const auto near = nearNames(m_tables.products(), m_query.product);
        const std::string asked = m_query.product.substr(0, 64);
        return fail(
            ErrorCode::NotFound,
            core::say("no published process for \"{}\"", asked) +
                (near.empty() ? ""
                              : core::say("; near names: {}", listed(near, [](const auto& name) { return name; }))));
    }

    /// Keeps the rows that `fits`. When none does, fails with `what` and the words of all there were.
    template <class Fits, class Word>
    Result<void> keep(Fits fits, const std::string& what, Word wordsOf) {
        std::vector<Row> kept;
        std::set<std::string> words;
        for (const Row& row : m_rows) {
            if (fits(*row.entry)) {
                kept.push_back(row);
            }
            for (const std::string_view word : wordsOf(*row.entry)) {
                words.emplace(word);
            }
        }
        if (kept.empty()) {
            return noTestedValue(core::say("{} has no tested time for {}; listed: {}", m_query.product, what,
                                           listed(words, [](const auto& word) { return word; })));
        }
        m_rows = std::move(kept);
        return {};
    }

    Result<void> byMethod() {
        return keep([this](const Entry& entry) { return entry.method == m_method; },
                    std::string(toText(m_query.method)),
                    [](const Entry& entry) { return std::vector{toText(entry.method)}; });
    }

    Result<void> byPack() {
        return keep([this](const Entry& entry) { return takes(entry, m_query.pack); },
                    core::say("{} pack by {}", toText(m_query.pack), toText(m_query.method)),
                    [](const Entry& entry) {
                        std::vector<std::string_view> words;
                        for (const Pack pack : {Pack::Hot, Pack::Raw}) {
                            if (takes(entry, pack)) {
                                words.push_back(toText(pack));
                            }
                        }
                        return words;
                    });
    }

    // The listed size, or else the smallest listed that is larger.
    Result<void> byJar() {
        std::set<JarSize> sizes;
        for (const Row& row : m_rows) {
            sizes.insert(row.entry->jars.begin(), row.entry->jars.end());
        }
        const auto size = sizes.lower_bound(m_query.jar);
        if (size == sizes.end()) {
            return noTestedValue(core::say("{} has no tested time for a jar as large as a {} jar; listed: {}",
                                           m_query.product, toText(m_query.jar),
                                           listed(sizes, [](JarSize jar) { return toText(jar); })));
        }
        m_jar = *size;
        std::erase_if(m_rows, [this](const Row& row) { return !takes(*row.entry, m_jar); });
        return {};
    }

    /// Who held this entry against the page, if anybody did.
    std::optional<Confirmation> confirmationOf(const Entry& entry) const {
        if (holdsLetter(m_query.confirmedBy)) {
            return Confirmation{entry.id, m_query.confirmedBy, {}};
        }
        const auto found = std::find_if(m_query.confirmed.begin(), m_query.confirmed.end(), [&](const Confirmation& c) {
            return c.entry == entry.id && holdsLetter(c.by);
        });
        return found == m_query.confirmed.end() ? std::nullopt : std::optional(*found);
    }

    Result<void> byConfidence() {
        const Entry& first = *m_rows.front().entry;
        std::erase_if(m_rows, [this](const Row& row) {
            return row.entry->confidence == Confidence::Memory && !confirmationOf(*row.entry);
        });
        if (m_rows.empty()) {
            return noTestedValue(
                core::say("the figures of {} come from memory; they answer only when a named person has held them "
                          "against {}",
                          first.id, first.source));
        }
        return {};
    }

    Result<void> byAltitude() {
        if (m_query.altitude > kHighestPublished) {
            return noTestedValue(
                core::say("no published figure above 10,000 ft; the altitude is {}", feetText(m_query.altitude)));
        }
        const Entry& first = *m_rows.front().entry;
        const bool beyond = bandAt(first, m_query.altitude) == nullptr;
        for (Row& row : m_rows) {
            row.band = bandAt(*row.entry, m_query.altitude);
        }
        std::erase_if(m_rows, [](const Row& row) { return row.band == nullptr || !row.band->allowed; });
        if (!m_rows.empty()) {
            return {};
        }
        if (beyond) {
            return noTestedValue(core::say("the {} table of {} ends at {} ft; the altitude is {}", toText(first.method),
                                           m_query.product, *first.bands.back().toFeet, feetText(m_query.altitude)));
        }
        return noTestedValue(core::say("{} is not allowed at {}", first.id, feetText(m_query.altitude)));
    }

    bool isAboveTheEnd() const { return m_query.altitude > kNationalTablesEnd; }

    std::optional<std::chrono::minutes> longerPublished(const Band& band) const {
        return m_method == Method::BoilingWater && isAboveTheEnd() ? std::optional(band.time + kLongerAboveTheEnd)
                                                                   : std::nullopt;
    }

    // The water under the rack lasts 45 minutes. Above 8,000 ft that has to hold for the longer figure,
    // because that is the one a class uses.
    Result<void> bySteamLimit() {
        if (m_query.method != Method::AtmosphericSteam) {
            return {};
        }
        const Band& band = *m_rows.front().band;
        const std::chrono::minutes time = longerPublished(band).value_or(band.time);
        if (time > kSteamCannerLimit) {
            return noTestedValue(core::say("a steam canner may run at most {} minutes; {} takes {} at {}",
                                           kSteamCannerLimit.count(), m_rows.front().entry->id, time.count(),
                                           feetText(m_query.altitude)));
        }
        return {};
    }

    std::vector<std::string> cautions(const Row& row) const {
        std::vector<std::string> lines;
        if (m_jar != m_query.jar) {
            lines.push_back(
                core::say("no time is listed for {} jars; this is the time for {} jars, a rule known only "
                          "at second hand",
                          toText(m_query.jar), toText(m_jar)));
        }
        if (const auto confirmed = confirmationOf(*row.entry);
            confirmed && row.entry->confidence == Confidence::Memory) {
            lines.push_back(core::say("figures from memory, confirmed by {}{}", printableText(confirmed->by),
                                      confirmed->on.empty() ? "" : " on " + printableText(confirmed->on)));
        }
        if (const auto longer = longerPublished(*row.band)) {
            lines.push_back(
                core::say("above 8,000 ft Utah State University Extension publishes {} minutes; use the "
                          "longer time",
                          longer->count()));
        } else if (isAboveTheEnd()) {
            lines.push_back(
                core::say("above 8,000 ft some published tables end; the top band of this one has no upper edge"));
        }
        return lines;
    }

    ProcessAnswer answer(const Row& row) const {
        const Entry& entry = *row.entry;
        ProcessAnswer answer;
        answer.entryId = entry.id;
        answer.productTitle = entry.title;
        answer.time = row.band->time;
        answer.gaugePsi = row.band->gaugePsi;
        answer.bandFromFeet = row.band->fromFeet;
        answer.bandToFeet = row.band->toFeet;
        answer.source = entry.source;
        answer.note = entry.note;
        answer.confidence = entry.confidence;
        if (entry.confidence == Confidence::Memory) {
            answer.confirmed = confirmationOf(entry);
        }
        answer.sterileJarsRequired = entry.sterileJarsRequired && row.band->time < kSterilisesByItself;
        answer.headspace = entry.headspace;
        answer.headspaceNote = entry.headspaceNote;
        answer.acidify = entry.acidify;
        answer.cautions = cautions(row);
        answer.longerPublished = longerPublished(*row.band);
        return answer;
    }

    std::vector<ProcessAnswer> answers() const {
        std::vector<ProcessAnswer> result;
        for (const Row& row : m_rows) {
            result.push_back(answer(row));
        }
        std::stable_sort(result.begin(), result.end(), [](const ProcessAnswer& a, const ProcessAnswer& b) {
            return a.gaugePsi.value_or(0) < b.gaugePsi.value_or(0);
        });
        return result;
    }

    const ProcessTables& m_tables;
    const ProcessQuery& m_query;
    Method m_method;
    JarSize m_jar = JarSize::HalfGallon;
    std::vector<Row> m_rows;
};

ProcessTables readPublished() {
    auto tables = ProcessTables::read(publishedProcessTimes(), "process-times.toml");
    if (!tables) {
        for (const Error& fault : tables.error()) {
            std::fprintf(stderr, "%s\n", describe(fault).c_str());
        }
        std::abort();
    }
    return std::move(*tables);
}

}  // namespace

std::chrono::minutes timeToUse(const ProcessAnswer& answer) {
    return std::max(answer.time, answer.longerPublished.value_or(answer.time));
}

std::string bandText(const ProcessAnswer& answer) {
    if (answer.bandToFeet) {
        return core::say("{} to {}", printFeet(Length::fromFeet(answer.bandFromFeet)),
                           printFeet(Length::fromFeet(*answer.bandToFeet)));
    }
    return answer.bandFromFeet > 0 ? core::say("above {}", printFeet(Length::fromFeet(answer.bandFromFeet - 1)))
                                   : core::say("any altitude");
}

const ProcessTables& ProcessTables::published() {
    static const ProcessTables tables = readPublished();
    return tables;
}

Result<ProcessAnswer> ProcessTables::find(const ProcessQuery& query) const {
    return findAll(query).map([](std::vector<ProcessAnswer> answers) { return std::move(answers.front()); });
}

Result<std::vector<ProcessAnswer>> ProcessTables::findAll(const ProcessQuery& query) const {
    return Search(*this, query).run();
}

std::vector<std::string> ProcessTables::products() const {
    std::set<std::string> names;
    for (const Entry& entry : m_entries) {
        if (entry.status == Status::Current) {
            names.insert(entry.product);
        }
    }
    return {names.begin(), names.end()};
}

Result<std::chrono::minutes> jarSterilisingTime(Length altitude) {
    if (altitude > kHighestPublished) {
        return fail(ErrorCode::OutOfRange,
                    core::say("no published figure above 10,000 ft; the altitude is {}", feetText(altitude)));
    }
    constexpr std::chrono::minutes kAtMostOneThousandFeet{10};
    constexpr std::int64_t kStep = 1'000 * Length::kNanometresPerFoot;
    const std::int64_t further = std::max<std::int64_t>(0, altitude.nanometres() - kStep);
    return kAtMostOneThousandFeet + std::chrono::minutes((further + kStep - 1) / kStep);
}

}  // namespace brinebell
