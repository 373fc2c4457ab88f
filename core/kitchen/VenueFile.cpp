#include "kitchen/VenueFile.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "base/QuotedText.h"
#include "document/Fields.h"
#include "document/WholeFile.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

constexpr std::size_t kMaxStations = 40;
constexpr std::size_t kMaxCanners = 8;
constexpr std::int64_t kMaxLoad = 40;
constexpr Seconds kMaxHeating = std::chrono::hours(3);
// Where standardPressure() answers; beyond it somebody has mistaken feet and metres, or worse.
constexpr Length kLowestAltitude = Length::fromNanometres(-1'000'000'000'000);
constexpr Length kHighestAltitude = Length::fromNanometres(9'000'000'000'000);
constexpr Length kNearestScreen = Length::fromNanometres(300'000'000);
constexpr Length kFarthestScreen = Length::fromNanometres(15'000'000'000);

auto lengthWithin(Length least, Length most) {
    return [least, most](std::string_view text) -> Result<Length> {
        const auto length = readLength(text);
        if (length && (*length < least || *length > most)) {
            return fail(ErrorCode::OutOfRange, fmt::format("must be {} m to {} m, found {:.1f} m", least.metres(),
                                                           most.metres(), length->metres()));
        }
        return length;
    };
}

std::optional<Altitude> readAltitude(const Table& head) {
    const auto height = head.parsedIf("altitude", lengthWithin(kLowestAltitude, kHighestAltitude));
    if (!head.has("altitude")) {
        if (head.has("altitude_from")) {
            head.fault("altitude_from", ErrorCode::InvalidInput, "altitude_from: there is no altitude");
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
        table.fault("kind", ErrorCode::InvalidInput, "kind: a canner is written as [[canner]]");
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
            row.fault("jar", ErrorCode::InvalidInput,
                      fmt::format("jar: {} is there already", quotedText(toText(*jar))));
        } else if (jar) {
            capacity.push_back({*jar, jars});
        }
    }
    if (rows.empty()) {
        table.fault("capacity", ErrorCode::InvalidInput, "capacity: at least one jar size is needed");
    }
    return capacity;
}

void checkBurner(const Table& table, const Canner& canner, const std::vector<Station>& stations) {
    const auto isIt = [&](const Station& station) { return station.id == canner.burner; };
    const auto found = std::find_if(stations.begin(), stations.end(), isIt);
    if (found == stations.end()) {
        table.fault("burner", ErrorCode::NotFound,
                    fmt::format("burner: no station is called {}", quotedText(canner.burner)));
    } else if (found->kind != StationKind::Burner) {
        table.fault("burner", ErrorCode::InvalidInput,
                    fmt::format("burner: {} is a {}", quotedText(canner.burner), toText(found->kind)));
    }
}

Canner readCanner(const Table& table, const std::vector<Station>& stations, UniqueIds& ids) {
    Canner canner;
    canner.id = ids.read(table);
    canner.name = table.text("name");
    canner.method = table.parsed("method", methodFromText).value_or(Method::BoilingWater);
    const auto burner = table.parsed("burner", readIdentifier);
    canner.burner = burner.value_or("");
    if (burner) {
        checkBurner(table, canner, stations);
    }
    canner.capacity = readCapacity(table);
    canner.heatToPreheat = readThreePoint(table, "heat_to_preheat", kMaxHeating).value_or(ThreePoint{});
    canner.heatToBoil = readThreePoint(table, "heat_to_boil", kMaxHeating).value_or(ThreePoint{});
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
    venue.confirmedBy = head.texts("confirmed_by");
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
        venue.canners.push_back(readCanner(table, venue.stations, ids));
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

FileResult<Venue> readVenueFile(const std::string& path) {
    return readFileWith(path, readVenue);
}

}  // namespace brinebell
