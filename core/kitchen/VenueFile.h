// VenueFile.h — reads a venue from its TOML file. The format is described field by field in DEVELOPERS.md.
//
// A missing altitude is not a fault here (a teacher may not know it yet): the class reader refuses such a venue. An
// altitude needs its unit ("4,200 ft", "1280 m") and how it is known, and lies between -1,000 m and 9,000 m. A canner
// on a burner that is not there, a capacity over 40 jars, two stations or canners with one id, more than 40 stations
// and more than 8 canners are faults. A canner says how long it heats, or holds `water` on a burner whose heat and
// power are known (see CannerHeating.h); a burner that would never bring that water to the boil is a fault.
#pragma once

#include <string>
#include <string_view>

#include "base/Result.h"
#include "kitchen/Venue.h"

namespace brinebell {

FileResult<Venue> readVenue(std::string_view toml, const std::string& name);
FileResult<Venue> readVenueFile(const std::string& path);

}  // namespace brinebell
