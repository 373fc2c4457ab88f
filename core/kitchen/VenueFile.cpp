#include "kitchen/VenueFile.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "document/Fields.h"
#include "document/WholeFile.h"
#include "kitchen/CannerHeating.h"
#include "kitchen/VenueWriter.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

constexpr std::size_t kMaxStations = 40;
constexpr std::size_t kMaxCanners = 8;
constexpr std::int64_t kMaxLoad = 40;
// Where standardPressure() answers; beyond it somebody has mistaken feet and metres, or worse.
constexpr Length kLowestAltitude = Length::fromNanometres(-1'000'000'000'000);
constexpr Length kHighestAltitude = Length::fromNanometres(9'000'000'000'000);
constexpr Length kNearestScreen = Length::fromNanometres(300'000'000);
constexpr Length kFarthestScreen = Length::fromNanometres(15'000'000'000);
constexpr Temperature kColdestRoom = Temperature::fromCelsius(-20);
constexpr Temperature kHottestRoom = Temperature::fromCelsius(50);
constexpr Temperature kColdestWater = Temperature::fromCelsius(0);
constexpr Temperature kHottestWater = Temperature::fromCelsius(100);
constexpr double kLeastWaterLitres = 1;
constexpr double kMostWaterLitres = 100;

auto lengthWithin(Length least, Length most) {
    return [least, most](std::string_view text) -> Result<Length> {
        const auto length = readLength(text);
        if (length && (*length < least || *length > most)) {
            return fail(ErrorCode::OutOfRange, core::say("must be {} m to {} m, found {:.1f} m", least.metres(),
                                                         most.metres(), length->metres()));
        }
        return length;
    };
}

auto temperatureWithin(Temperature least, Temperature most) {
    return [least, most](std::string_view text) -> Result<Temperature> {
        const auto temperature = readTemperature(text);
        if (temperature && (*temperature < least || *temperature > most)) {
            return fail(ErrorCode::OutOfRange, core::say("must be {} °C to {} °C, found {:.1f} °C", least.celsius(),
                                                         most.celsius(), temperature->celsius()));
        }
        return temperature;
    };
}

// A litre of water weighs a kilogram, nearly enough for any heating time.
Result<Mass> readWater(std::string_view text) {
    const auto volume = readVolume(text);
    if (!volume) {
        return tl::unexpected<Error>(volume.error());
    }
    const double litres = volume->millilitres() / 1000;
    if (litres < kLeastWaterLitres || litres > kMostWaterLitres) {
        return fail(ErrorCode::OutOfRange,
                    core::say("must be {} L to {} L, found {:.1f} L", kLeastWaterLitres, kMostWaterLitres, litres));
    }
    return Mass::fromGrams(volume->millilitres());
}

std::optional<Altitude> readAltitude(const Table& head) {
    const auto height = head.parsedIf("altitude", lengthWithin(kLowestAltitude, kHighestAltitude));
    if (!head.has("altitude")) {
        if (head.has("altitude_from")) {
            head.fault("altitude_from", ErrorCode::InvalidInput, core::say("altitude_from: there is no altitude"));
        }
        return std::nullopt;
    }
    // An altitude nobody can trace is a guess, and a guess sets the process time.
    std::string from = head.text("altitude_from");
    return height ? std::optional(Altitude{*height, std::move(from)}) : std::nullopt;
}

Station readStation(const Table& table, UniqueIds& ids) {
    Station station;
    station.id = ids.read(table);
    station.name = table.text("name");
    station.kind = table.parsed("kind", stationKindFromText).value_or(StationKind::Counter);
    if (station.kind == StationKind::Canner) {
        table.fault("kind", ErrorCode::InvalidInput, core::say("kind: a canner is written as [[canner]]"));
    }
    station.heat = table.parsedIf("heat", heatKindFromText).value_or(HeatKind::None);
    station.power = table.parsedIf("power", readPower);
    return station;
}

std::vector<JarCapacity> readCapacity(const Table& table) {
    const std::vector<Table> rows = table.tables("capacity");
    std::vector<JarCapacity> capacity;
    for (const Table& row : rows) {
        const auto jar = row.parsed("jar", jarSizeFromText);
        const auto jars = static_cast<int>(row.integer("jars", 1, kMaxLoad));
        const auto isIt = [&](const JarCapacity& known) { return known.jar == jar; };
        if (jar && std::any_of(capacity.begin(), capacity.end(), isIt)) {
            row.fault("jar", ErrorCode::InvalidInput, core::say("jar: {} is there already", quotedText(toText(*jar))));
        } else if (jar) {
            capacity.push_back({*jar, jars});
        }
    }
    if (rows.empty()) {
        table.fault("capacity", ErrorCode::InvalidInput, core::say("capacity: at least one jar size is needed"));
    }
    return capacity;
}

void checkBurner(const Table& table, const Canner& canner, const std::vector<Station>& stations) {
    const auto isIt = [&](const Station& station) { return station.id == canner.burner; };
    const auto found = std::find_if(stations.begin(), stations.end(), isIt);
    if (found == stations.end()) {
        table.fault("burner", ErrorCode::NotFound,
                    core::say("burner: no station is called {}", quotedText(canner.burner)));
    } else if (found->kind != StationKind::Burner) {
        table.fault("burner", ErrorCode::InvalidInput,
                    core::say("burner: {} is a {}", quotedText(canner.burner), toText(found->kind)));
    }
}

std::optional<CannerWater> readCannerWater(const Table& table) {
    if (!table.has("water")) {
        for (const char* key : {"water_start", "lid"}) {
            if (table.has(key)) {
                table.fault(key, ErrorCode::InvalidInput, core::say("{}: there is no water", key));
            }
        }
        return std::nullopt;
    }
    CannerWater water;
    const auto mass = table.parsed("water", readWater);
    const auto start = table.parsedIf("water_start", temperatureWithin(kColdestWater, kHottestWater));
    water.start = start.value_or(water.start);
    water.lid = table.booleanOr("lid", water.lid);
    if (!mass || (table.has("water_start") && !start)) {
        return std::nullopt;
    }
    water.water = *mass;
    return water;
}

// Both ways to a heating time are named, because a venue without either is most often a venue just begun.
void readHeating(const Table& table, Canner& canner) {
    std::string missing;
    const auto read = [&](const char* key) -> std::optional<ThreePoint> {
        if (table.has(key)) {
            return readThreePoint(table, key, kLongestHeating);
        }
        missing += (missing.empty() ? "" : " and ") + std::string(key);
        return std::nullopt;
    };
    canner.heatToPreheat = read("heat_to_preheat");
    canner.heatToBoil = read("heat_to_boil");
    canner.water = readCannerWater(table);
    if (!missing.empty() && !table.has("water")) {
        table.fault("", ErrorCode::InvalidInput,
                    missing +
                        ": missing; write how long it takes, or how much water the canner holds, as in water = "
                        "\"12 L\", and it is worked out from the burner");
    }
}

// Only where everything else about it could be read: one fault is told once.
void checkHeating(const Table& table, const Canner& canner, const Venue& venue) {
    const bool worksOut = canner.water && !(canner.heatToPreheat && canner.heatToBoil);
    const bool given =
        (canner.heatToPreheat || !table.has("heat_to_preheat")) && (canner.heatToBoil || !table.has("heat_to_boil"));
    const bool burnerRead = std::any_of(venue.stations.begin(), venue.stations.end(), [&](const Station& station) {
        return station.id == canner.burner && station.kind == StationKind::Burner;
    });
    if (!worksOut || !given || !burnerRead) {
        return;
    }
    if (const auto why = whyNeverHot(venue, canner)) {
        table.fault("burner", ErrorCode::OutOfRange, "burner: " + *why);
    }
}

Canner readCanner(const Table& table, const Venue& venue, UniqueIds& ids) {
    Canner canner;
    canner.id = ids.read(table);
    canner.name = table.text("name");
    canner.method = table.parsed("method", methodFromText).value_or(Method::BoilingWater);
    const auto burner = table.parsed("burner", readIdentifier);
    canner.burner = burner.value_or("");
    if (burner) {
        checkBurner(table, canner, venue.stations);
    }
    canner.capacity = readCapacity(table);
    readHeating(table, canner);
    checkHeating(table, canner, venue);
    return canner;
}

Venue readAll(Document& document) {
    const Table root = document.root();
    checkFormat(root);
    Venue venue;
    const Table head = root.table("venue");
    venue.id = head.parsed("id", readIdentifier).value_or("");
    venue.name = head.text("name");
    venue.altitude = readAltitude(head);
    venue.readingDistance =
        head.parsed("reading_distance", lengthWithin(kNearestScreen, kFarthestScreen)).value_or(Length{});
    venue.room = head.parsedIf("room", temperatureWithin(kColdestRoom, kHottestRoom)).value_or(venue.room);
    venue.confirmed = readConfirmations(root);
    // A name alone once vouched for every entry; which one was held against the page must be said.
    if (head.has("confirmed_by")) {
        head.fault(
            "confirmed_by", ErrorCode::InvalidInput,
            core::say("confirmed_by: say which entry was confirmed, in a table [[confirmed]] with entry, by and on"));
    }
    // A canner is a station too once a class is planned, so their ids must differ.
    UniqueIds ids;
    const std::vector<Table> stations = root.tables("station");
    checkCount(root, "station", stations.size(), kMaxStations);
    for (const Table& table : stations) {
        venue.stations.push_back(readStation(table, ids));
    }
    const std::vector<Table> canners = root.tables("canner");
    checkCount(root, "canner", canners.size(), kMaxCanners);
    for (const Table& table : canners) {
        venue.canners.push_back(readCanner(table, venue, ids));
    }
    return venue;
}

}  // namespace

FileResult<Venue> readVenue(std::string_view toml, const std::string& name) {
    auto venue = readDocument(toml, name, readAll);
    if (venue) {
        venue->file = name;
    }
    return venue;
}

FileResult<Draft<Venue>> draftOfVenue(std::string_view toml, const std::string& name) {
    auto draft = readDraft(toml, name, readAll);
    if (draft) {
        draft->value.file = name;
    }
    return draft;
}

FileResult<Venue> readVenueFile(const std::string& path) {
    return readFileWith(path, readVenue);
}

}  // namespace brinebell
