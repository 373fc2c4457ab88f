// Findings.h — what past sessions say about how long things really take for one teacher in one kitchen.
//
// A finding is a share of the guess, so that nine jars teach something about five. Left out, because they teach
// nothing: process counts and rests (fixed by rule), what was skipped, taken back or finished by a simulated
// presenter, a heat-up whose boil was lost, and hand work during which the teacher stopped for questions. The model of
// learning stands in plan/LearnedTime.h.
// Burners: the power that must have gone into the pot by the equation of kitchen/TimeToBoil.h, against what the
// venue's burner and its likely efficiency promise.
#pragma once

#include <string>
#include <vector>

#include "kitchen/Venue.h"
#include "logbook/Logbook.h"
#include "plan/LearnedTime.h"

namespace brinebell {

/// What is learned about: "chile-salsa/roast" of any load, "canner/lower" of any canner, "canner-1/heat-up" of that
/// one, "burner/front-left" for its power.
using Subject = std::string;

Subject subjectOf(const Network& network, int activity);

/// One activity as it was lived, against its guess.
struct LivedStep {
    Subject subject;
    int activity = -1;
    Seconds took{};
    SeenShare seen;
    bool operator==(const LivedStep&) const = default;
};

/// All that this session teaches. Error: Corrupt when the events do not replay.
Result<std::vector<LivedStep>> livedSteps(const SessionRecord& record);

/// Power into the pot that a logged heat-up tells of, against what was to be expected of its burner.
struct LivedHeating {
    Subject subject;  ///< "burner/…"
    std::string station;
    Power intoPot;
    SeenShare seen;  ///< of the power expected; more than 1 is a stronger burner
};

/// Heat-ups of canners of `venue` whose water is known; none where the session was in another kitchen.
Result<std::vector<LivedHeating>> livedHeatings(const SessionRecord& record, const Venue& venue);

/// What is offered to the next plan.
struct Finding {
    Subject subject;
    std::string title;  ///< of the step, or the name of the burner
    LearnedShare learned;
    std::size_t sessions = 0;   ///< it was seen in
    std::size_t rehearsed = 0;  ///< of them
};

/// As a teacher said it, with the figures that stood there then.
FindingChoice choiceOf(const Finding& finding, const std::string& teacher, const std::string& venue, bool accepted,
                       Millis decidedUtc);
/// Those of `choices` that were accepted, as the findings they were.
std::vector<Finding> accepted(const std::vector<FindingChoice>& choices);

/// Everything learned from sessions by `network`'s teacher in `network`'s venue about the activities of `network`, in
/// its order; one for each subject that was seen. Sessions that do not replay are left out.
std::vector<Finding> findingsFor(const Network& network, const std::vector<SessionRecord>& sessions);

/// The same about the burners of `venue`.
std::vector<Finding> burnerFindings(const Venue& venue, const std::vector<SessionRecord>& sessions);

/// `network` with the guesses of every subject in `accepted` replaced by what was learned. Process times, rests and
/// the boiling of empty jars stay as they are.
Network withFindings(Network network, const std::vector<Finding>& accepted);

/// `venue` with the power of every burner in `accepted` as it was fitted.
Venue withFindings(Venue venue, const std::vector<Finding>& accepted);

}  // namespace brinebell
