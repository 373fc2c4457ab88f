// CannerWords.h — what is said at the canner, by its method: values of the published rules in the texts of the steps.
//
// Source: NCHFP, using boiling water canners (water 1 in over the lids, 2 in where the process is over 30 minutes); AIB
// 539 (2015) for pressure canners (2 to 3 in of water, ten minutes of venting, pressure that falls by itself); NCHFP
// (2015) and MSU Extension for atmospheric steam canners. A column of 8 in or more is the stricter of two published
// lengths. From memory: the water of a pressure canner at the same preheat temperatures as a boiling-water canner's,
// and ten minutes between the last of the pressure and the lid.
#pragma once

#include <string>

#include "plan/Network.h"

namespace brinebell {

struct CannerWords {
    std::string preheat;     ///< detail of setting it on
    std::string lower;       ///< detail of lowering
    std::string waterCheck;  ///< what is confirmed before heat counts
    std::string heatUp, heatUpLookFor;
    std::string process;  ///< detail of the count
    std::string rest, restDetail;
    std::string lift;  ///< "Lift", or what comes before it as well
};

/// `boil` is the boiling point at the venue's altitude.
CannerWords cannerWords(const Load& load, Temperature boil);

/// What comes on at the end of venting, and what is then waited for: "put the 10 psi weight on".
std::string closeVentWords(const Load& load);
std::string atPressureWords(const Load& load);

}  // namespace brinebell
