// SmallClass.h — a class small enough to reason about: a tray to turn, a pot to boil, jars, one canner.
#pragma once

#include "plan/Network.h"

namespace brinebell::support {

/// Opening, then a tray looked at every 1–2 min and a pot that boils on its burner; jars are filled from both
/// and go through the canner in `loads` loads of 15 min; closing. One must-say point belongs to the tray, one
/// to any time, and one may be dropped. One helper.
Network smallClass(int loads = 1);

/// A tray looked at every 1–2 min and a brine brought to the boil, which may wait 5 min (a safety limit) for the one
/// load that goes into the canner after both.
Network trayBoilAndLoad();

/// The canner alone: the shortest way from lowering to lifting, for walks that visit every state.
/// One that is not a boiling-water canner asks for its water; a pressure canner wants 11 psi after 10 min of venting.
Network cannerOnly(Method method = Method::BoilingWater);

}  // namespace brinebell::support
