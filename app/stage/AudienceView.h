// AudienceView.h — what the room sees: dish, step, process countdown, the safety point of the moment. Plain values.
//
// Nothing private stands on it: no notes, no advice, no points that are still to be said, no word of being late.
#pragma once

#include <QString>

#include "bridge/Words.h"

namespace brinebell {

struct AudienceView {
    QString dish;
    QString step;
    QString countdown;       ///< of the canner, or of what ends next; empty when nothing counts
    QString countdownWords;  ///< what counts, and the time of day at which it ends
    QString safety;          ///< empty when the moment has none
    bool operator==(const AudienceView&) const = default;
};

AudienceView audienceView(const Guide& guide, const Moment& moment);

}  // namespace brinebell
