// CannerHeating.h — how long a canner takes to preheat and to come to the boil: as its venue says, or worked out.
//
// Sources: water at 140 °F for a raw pack and 180 °F for a hot pack before the jars go in: NCHFP, using boiling-water
// canners. Jars at about 24 °C in a raw pack and 70 °C in a hot pack when they are lowered are our estimates, as is
// that the water for a later load stands at the preheat temperature again: it is mostly hotter, so the time is an upper
// bound.
#pragma once

#include <optional>
#include <string>

#include "kitchen/TimeToBoil.h"

namespace brinebell {

Temperature preheatTemperature(Pack pack);

/// Heat and power of the burner the canner stands on; nothing where the venue does not say both.
std::optional<Burner> burnerOf(const Venue& venue, const Canner& canner);

/// Why its heating times cannot be worked out, or never end for the fullest and coldest load; nothing where all is
/// well. Without an altitude the boiling point is taken at sea level.
std::optional<std::string> whyNeverHot(const Venue& venue, const Canner& canner);

// The two below hold a time for every load that fits the canner when whyNeverHot() has nothing to say, and may be asked
// only then.

/// Cold water to the preheat temperature of `pack`, or to the boil where that is lower.
HeatingTime preheatTime(const Venue& venue, const Canner& canner, Pack pack);

/// From the moment that `jars` stand in the preheated water to the boil. `filled` is false for empty jars that are to
/// be sterilised: they hold water no warmer than a raw pack.
HeatingTime boilTime(const Venue& venue, const Canner& canner, int jars, JarSize jar, Pack pack, bool filled = true);

/// What is heated in preheatTime() and boilTime() with the likely loss, for reading a burner's power from a log. The
/// canner must have water.
Warming preheatWarming(const Venue& venue, const Canner& canner, Pack pack);
Warming boilWarming(const Venue& venue, const Canner& canner, int jars, JarSize jar, Pack pack);

}  // namespace brinebell
