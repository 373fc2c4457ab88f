#include "kitchen/CannerHeating.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "quantity/ReadQuantity.h"
#include "safety/BoilingPoint.h"

namespace brinebell {

namespace {

constexpr Temperature kRawPack = Temperature::fromCelsius(24);
constexpr Temperature kHotPack = Temperature::fromCelsius(70);

Temperature boilingPointIn(const Venue& venue) {
    // The venue's reader takes no altitude for which there is no boiling point.
    return boilingPointAt(venue.altitude ? venue.altitude->height : Length{}).value();
}

PotOfWater potOf(const Venue& venue, const Canner& canner) {
    PotOfWater pot;
    pot.water = canner.water->water;
    pot.start = canner.water->start;
    pot.lid = canner.water->lid;
    pot.room = venue.room;
    return pot;
}

Temperature preheatTarget(const Venue& venue, Pack pack) {
    return std::min(preheatTemperature(pack), boilingPointIn(venue));
}

PotOfWater loadedPot(const Venue& venue, const Canner& canner, int jars, JarSize jar, Pack pack, bool filled) {
    PotOfWater pot = potOf(venue, canner);
    pot.start = preheatTarget(venue, pack);
    pot.jars = jars;
    pot.jar = jar;
    pot.jarsAt = filled && pack == Pack::Hot ? kHotPack : kRawPack;
    return pot;
}

Warming warmingOf(const PotOfWater& pot, Temperature to) {
    return {heatCapacityOf(pot), lossOf(pot.lid).likely, mixedTemperature(pot), to, pot.room};
}

std::string neverHot(const Canner& canner, const Burner& burner, Temperature target, const NeverBoils& never) {
    return core::say("{} at {:.0f} W does not bring {} to {:.0f} °C within {}; it takes at least {:.0f} W",
                     quotedText(canner.burner), burner.power.watts(), quotedText(canner.id), target.celsius(),
                     printDuration(kLongestHeating), std::ceil(never.needed.watts()));
}

}  // namespace

Temperature preheatTemperature(Pack pack) {
    return Temperature::fromFahrenheit(pack == Pack::Raw ? 140 : 180);
}

std::optional<Burner> burnerOf(const Venue& venue, const Canner& canner) {
    const auto found = std::find_if(venue.stations.begin(), venue.stations.end(),
                                    [&](const Station& station) { return station.id == canner.burner; });
    if (found == venue.stations.end() || found->heat == HeatKind::None || !found->power) {
        return std::nullopt;
    }
    return Burner{found->heat, *found->power};
}

HeatingTime preheatTime(const Venue& venue, const Canner& canner, Pack pack) {
    if (canner.heatToPreheat) {
        return *canner.heatToPreheat;
    }
    assert(canner.water && burnerOf(venue, canner));
    return timeToHeat(potOf(venue, canner), *burnerOf(venue, canner), preheatTarget(venue, pack));
}

HeatingTime boilTime(const Venue& venue, const Canner& canner, int jars, JarSize jar, Pack pack, bool filled) {
    if (canner.heatToBoil) {
        return *canner.heatToBoil;
    }
    assert(canner.water && burnerOf(venue, canner));
    return timeToHeat(loadedPot(venue, canner, jars, jar, pack, filled), *burnerOf(venue, canner),
                      boilingPointIn(venue));
}

Warming preheatWarming(const Venue& venue, const Canner& canner, Pack pack) {
    return warmingOf(potOf(venue, canner), preheatTarget(venue, pack));
}

Warming boilWarming(const Venue& venue, const Canner& canner, int jars, JarSize jar, Pack pack) {
    return warmingOf(loadedPot(venue, canner, jars, jar, pack, true), boilingPointIn(venue));
}

std::optional<std::string> whyNeverHot(const Venue& venue, const Canner& canner) {
    if (canner.heatToPreheat && canner.heatToBoil) {
        return std::nullopt;
    }
    if (!canner.water) {
        return core::say("{} has neither heating times nor water", quotedText(canner.id));
    }
    const std::optional<Burner> burner = burnerOf(venue, canner);
    if (!burner) {
        return core::say(
            "{} has no heat and power to work heating times out from; write both there, or "
            "heat_to_preheat and heat_to_boil at the canner",
            quotedText(canner.burner));
    }
    std::optional<NeverBoils> worst;
    Temperature target;
    const auto look = [&](const HeatingTime& time, Temperature to) {
        if (!time && (!worst || time.error().needed > worst->needed)) {
            worst = time.error();
            target = to;
        }
    };
    // The coldest and fullest load asks for most.
    const Temperature boil = boilingPointIn(venue);
    for (const JarCapacity& capacity : canner.capacity) {
        look(boilTime(venue, canner, capacity.jars, capacity.jar, Pack::Raw), boil);
    }
    look(preheatTime(venue, canner, Pack::Hot), std::min(preheatTemperature(Pack::Hot), boil));
    return worst ? std::optional(neverHot(canner, *burner, target, *worst)) : std::nullopt;
}

}  // namespace brinebell
