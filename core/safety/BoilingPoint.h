// BoilingPoint.h — temperature at which water boils, from altitude or from a barometer.
//
// Sources:  air pressure against altitude: ISO 2533:1975 standard atmosphere, layer 0 to 11 km (geopotential
// altitude
//           taken as altitude; the difference is under 0.1 % below 5 km).
//           boiling point against pressure: IAPWS-IF97 (2007 revision) saturation line, backward equation
//           (31). Checked in tests/core/safety/ against both standards' printed values and an independent
//           implementation.
// Use:      explains a process time; never computes, changes or shortens one.
#pragma once

#include "base/Result.h"
#include "quantity/Quantities.h"

namespace brinebell {

/// Air pressure at `altitude`. Range: -1,000 m to 9,000 m; outside, Error{OutOfRange}.
Result<Pressure> standardPressure(Length altitude);

/// Boiling point of pure water at absolute pressure `p`. Range: 30 to 1,000 kPa; outside, Error{OutOfRange}.
Result<Temperature> boilingPoint(Pressure p);

/// Both together: boiling point in a standard atmosphere at `altitude`.
Result<Temperature> boilingPointAt(Length altitude);

}  // namespace brinebell
