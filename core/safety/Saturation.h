// Saturation.h — the saturation line of water, over the whole range of its standard.
//
// Source: IAPWS R7-97(2012), Revised Release on the IAPWS Industrial Formulation 1997, equation (31) with the
//         coefficients of table 34. The release gives table 36 for checking a program.
#pragma once

#include "base/Result.h"
#include "quantity/Quantities.h"

namespace brinebell {

/// Saturation temperature at absolute pressure `p`. Range: 611.213 Pa to 22.064 MPa; outside,
/// Error{OutOfRange}.
Result<Temperature> saturationTemperature(Pressure p);

}  // namespace brinebell
