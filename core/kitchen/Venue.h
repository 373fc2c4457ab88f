// Venue.h — a kitchen: how high it lies, what stands in it, and how far the screen is from the counter.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/Quantities.h"
#include "safety/Confirmation.h"
#include "safety/Jar.h"

namespace brinebell {

enum class StationKind { Burner, Oven, Sink, Board, Counter, Canner };
enum class HeatKind { None, Gas, Electric, Induction };

struct Station {
    std::string id;
    std::string name;
    StationKind kind = StationKind::Counter;
    HeatKind heat = HeatKind::None;
    std::optional<Power> power;
    bool operator==(const Station&) const = default;
};

struct JarCapacity {
    JarSize jar = JarSize::Pint;
    int jars = 0;  ///< of this size in one load
    bool operator==(const JarCapacity&) const = default;
};

/// What heating times are worked out from where nobody has measured them.
struct CannerWater {
    Mass water;                                        ///< before the jars go in
    Temperature start = Temperature::fromCelsius(15);  ///< as it comes from the tap
    bool lid = true;
    bool operator==(const CannerWater&) const = default;
};

/// Invariant: where a heating time is missing there is `water`, and the burner has heat and power. See CannerHeating.h.
struct Canner {
    std::string id;
    std::string name;
    Method method = Method::BoilingWater;
    std::string burner;  ///< id of the burner it stands on
    std::vector<JarCapacity> capacity;
    std::optional<ThreePoint> heatToPreheat;  ///< water for the first load, cold to the preheat temperature
    std::optional<ThreePoint> heatToBoil;     ///< loaded and preheated, to a full rolling boil
    std::optional<CannerWater> water;
    bool operator==(const Canner&) const = default;
};

struct Altitude {
    Length height;
    std::string howKnown;  ///< "survey map", "county extension office"
    bool operator==(const Altitude&) const = default;
};

struct Venue {
    std::string id;
    std::string name;
    std::optional<Altitude> altitude;  ///< a venue without one may be kept, but no class runs in it
    Length readingDistance;            ///< from the counter to the screen
    Temperature room = Temperature::fromCelsius(20);
    std::vector<Station> stations;
    std::vector<Canner> canners;
    std::vector<Confirmation> confirmed;  ///< of table entries that rest on memory
    std::string file;
};

std::string_view toText(StationKind kind);  ///< "burner", "oven", "sink", "board", "counter", "canner"
Result<StationKind> stationKindFromText(std::string_view text);
std::string_view toText(HeatKind kind);  ///< "none", "gas", "electric", "induction"
Result<HeatKind> heatKindFromText(std::string_view text);

/// Jars of this size in one load; 0 when the canner does not list the size.
int capacityFor(const Canner& canner, JarSize jar);

/// The smallest pressure canner that times were tested in holds four quarts upright; small pressure saucepans heat and
/// cool too fast. Source: NCHFP; AIB 539 (1994), recommended canners.
inline constexpr int kLeastPressureQuarts = 4;

/// Why no class can be run with this canner; nothing where one can.
std::optional<std::string> whyNotForClasses(const Canner& canner);

}  // namespace brinebell
