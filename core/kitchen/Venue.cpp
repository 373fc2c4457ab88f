#include "kitchen/Venue.h"

#include <algorithm>

#include "base/Language.h"
#include "document/Fields.h"

namespace brinebell {
namespace {

constexpr WordTable<StationKind, 6> kStationWords{{{"burner", StationKind::Burner},
                                               {"oven", StationKind::Oven},
                                               {"sink", StationKind::Sink},
                                               {"board", StationKind::Board},
                                               {"counter", StationKind::Counter},
                                               {"canner", StationKind::Canner}}};
constexpr WordTable<HeatKind, 4> kHeatWords{{{"none", HeatKind::None},
                                         {"gas", HeatKind::Gas},
                                         {"electric", HeatKind::Electric},
                                         {"induction", HeatKind::Induction}}};

}  // namespace

std::string_view toText(StationKind kind) {
    return wordFor(kStationWords, kind);
}
Result<StationKind> stationKindFromText(std::string_view text) {
    return wordReader(kStationWords)(text);
}
std::string_view toText(HeatKind kind) {
    return wordFor(kHeatWords, kind);
}
Result<HeatKind> heatKindFromText(std::string_view text) {
    return wordReader(kHeatWords)(text);
}

int capacityFor(const Canner& canner, JarSize jar) {
    const auto found = std::find_if(canner.capacity.begin(), canner.capacity.end(),
                                    [jar](const JarCapacity& capacity) { return capacity.jar == jar; });
    return found == canner.capacity.end() ? 0 : found->jars;
}

std::optional<std::string> whyNotForClasses(const Canner& canner) {
    const int quarts = capacityFor(canner, JarSize::Quart);
    if (!isPressure(canner.method) || quarts == 0 || quarts >= kLeastPressureQuarts) {
        return std::nullopt;
    }
    return core::say("{} holds fewer than {} quarts; times were not tested in so small a pressure canner", canner.name,
                     kLeastPressureQuarts);
}

}  // namespace brinebell
