// ProcessTables.h — published, tested process times: the only place in the program from which minutes may come.
//
// Source:  resources/process-times.toml, built into the program; each entry names its own source.
// Rules (binding, from the head of that file):
//   1. The band is the first whose upper edge is not below the altitude. Never interpolated, never rounded down:
//      1,000 ft is in the low band, one nanometre more is in the next.
//   2. An entry resting on memory answers only when a named person has confirmed it.
//   3. Only the listed jar sizes; a smaller jar takes the time of the smallest listed that is larger than it (its
//      source is second-hand and the answer says so); a larger jar has no tested time.
//   4. A band marked not allowed, and an altitude beyond the last band, have no tested value. Above 10,000 ft no
//      published figure was found for any method, so nothing is answered there; below sea level the lowest band.
//   5. Superseded, extension-variant and do-not-use entries never answer.
//   6. A table whose minutes or pressures fall as altitude rises is refused when it is loaded.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/Result.h"
#include "quantity/Quantities.h"
#include "safety/Confirmation.h"
#include "safety/Jar.h"

namespace brinebell {

struct ProcessQuery {
    std::string product;  ///< the part of an entry's id before the first dot, e.g. "marinated-peppers"
    Pack pack = Pack::Hot;
    JarSize jar = JarSize::Pint;
    Length altitude;
    Method method = Method::BoilingWater;
    /// The person who held a from-memory entry against the published page. A text without a letter names nobody.
    std::string confirmedBy;
    /// The same for single entries, as venue and class files keep them; any other entry from memory stays silent.
    std::vector<Confirmation> confirmed{};
};

enum class Confidence { Seen, Memory };

struct ProcessAnswer {
    std::string entryId;
    std::string productTitle;
    std::chrono::minutes time{};  ///< the table's own, at a full boil or at pressure; see timeToUse()
    std::optional<int> gaugePsi;  ///< pressure canners only
    int bandFromFeet = 0;
    std::optional<int> bandToFeet;  ///< none: open top band
    std::string source;
    std::string note;
    Confidence confidence = Confidence::Seen;
    std::optional<Confirmation> confirmed;  ///< who vouched for an entry from memory; none for one that was seen
    bool sterileJarsRequired = false;       ///< the time is under 10 minutes and the table asks for it
    Length headspace;
    std::string headspaceNote;
    std::string acidify;                ///< acid that must go into each jar; empty where none
    std::vector<std::string> cautions;  ///< e.g. jar size taken from the next larger, above 8,000 ft
    /// Above 8,000 ft in a boiling-water canner one state service publishes 5 minutes more (Utah State Univ.
    /// Extension). A class uses the longer of the two.
    std::optional<std::chrono::minutes> longerPublished;
};

/// What a class uses: the longer of the times published for the altitude.
std::chrono::minutes timeToUse(const ProcessAnswer& answer);

/// The band in words: "1,001 ft to 6,000 ft", "above 6,000 ft" for an open one, "any altitude".
std::string bandText(const ProcessAnswer& answer);

class ProcessTables {
public:
    /// The tables built into the program. They are checked by a test; a fault in them ends the program.
    static const ProcessTables& published();

    /// Reads tables in the same format. `name` stands in the places of the faults.
    static FileResult<ProcessTables> read(std::string_view toml, const std::string& name);

    /// The one published time, or Error: NotFound (no such product, with near names), NoTestedValue (pack, jar,
    /// method, altitude or unconfirmed memory entry; the message says which and what is listed). Where a table
    /// gives a choice of pressures the lowest gauge pressure that is allowed at the altitude is answered; findAll
    /// gives every choice.
    Result<ProcessAnswer> find(const ProcessQuery& query) const;
    Result<std::vector<ProcessAnswer>> findAll(const ProcessQuery& query) const;

    /// Every product key with a current entry, sorted.
    std::vector<std::string> products() const;

    // One row of the file, kept for listing and for the tests that walk every band edge.
    struct Band {
        int fromFeet = 0;
        std::optional<int> toFeet;
        std::chrono::minutes time{};
        std::optional<int> gaugePsi;
        bool allowed = true;
    };
    enum class Status { Current, ExtensionVariant, Superseded, DoNotUse };
    struct Entry {
        std::string id;
        std::string product;
        std::string title;
        bool hotPack = false;
        bool rawPack = false;
        std::vector<JarSize> jars;
        Method method = Method::BoilingWater;
        Length headspace;
        std::string headspaceNote;
        std::string acidify;
        std::vector<Band> bands;
        bool sterileJarsRequired = false;
        std::string source;
        std::string note;
        Confidence confidence = Confidence::Memory;
        Status status = Status::Current;
    };
    const std::vector<Entry>& entries() const { return m_entries; }

private:
    std::vector<Entry> m_entries;
};

/// Minutes to boil empty jars that must be sterile: 10 up to 1,000 ft, and one more for every further 1,000 ft or
/// part of it: 11 from just above 1,000 ft, 14 at 4,200 ft. Source: MSU Extension 01600946, 10 minutes below
/// 1,000 ft and 1 more for each additional 1,000 ft. The guide does not say how a part-thousand rounds, so what lies
/// above the first thousand rounds up. (Rounding the whole altitude up, which the wording does not ask for, would
/// give 15 at 4,200 ft.) Error: OutOfRange above 10,000 ft.
Result<std::chrono::minutes> jarSterilisingTime(Length altitude);

/// Atmospheric steam canners: acid foods by a boiling-water table, at most 45 minutes after the altitude addition;
/// above 8,000 ft the longer published time has to keep that limit too. Source: NCHFP (2015). AIB 539 does not mark
/// which entries are acid foods; every boiling-water entry is one.
inline constexpr std::chrono::minutes kSteamCannerLimit{45};

}  // namespace brinebell
