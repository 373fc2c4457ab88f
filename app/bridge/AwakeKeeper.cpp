#include "bridge/AwakeKeeper.h"

namespace brinebell {

QString standingWords(const AwakeState& state) {
    if (!state.isWanted || state.isAsking) {
        return {};
    }
    if (!state.isScreenKept) {
        return AwakeKeeper::tr("The screen may sleep");
    }
    if (!state.isMachineKept) {
        return AwakeKeeper::tr("The laptop may fall asleep");
    }
    return {};
}

}  // namespace brinebell
