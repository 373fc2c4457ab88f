#include "logbook/Findings.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "kitchen/CannerHeating.h"
#include "logbook/History.h"
#include "safety/BoilingPoint.h"
#include "session/QuestionPause.h"

namespace brinebell {

namespace {

constexpr std::string_view kBurner = "burner/";

bool isFixedByRule(const Activity& activity) {
    return activity.kind == ActivityKind::Process || activity.kind == ActivityKind::Rest ||
           activity.kind == ActivityKind::Sterilise || activity.kind == ActivityKind::Vent;
}

bool isHeating(const Activity& activity) {
    return activity.kind == ActivityKind::Preheat || activity.kind == ActivityKind::HeatUp;
}

// What a sight at the canner ended, or a loss made begin again; -1 for other events.
int heatedBy(const Load& load, EventKind kind) {
    switch (kind) {
        case EventKind::BoilSeen:
        case EventKind::BoilLost:
        case EventKind::SteamSeen:
        case EventKind::SteamLost:
            return load.heatUp;
        case EventKind::PressureReached:
        case EventKind::PressureLost:
            return load.pressure->pressurise;
        case EventKind::PressureGone:
            return load.pressure->coolDown;
        default:
            return -1;
    }
}

bool isLoss(EventKind kind) {
    return kind == EventKind::BoilLost || kind == EventKind::SteamLost || kind == EventKind::PressureLost;
}

// What the log says of each activity beyond when it ran.
struct Marks {
    std::set<int> disturbed;  // taken back, remedied or pressed by nobody: it teaches nothing
};

Result<std::pair<State, Marks>> livedThrough(const SessionRecord& record) {
    Marks marks;
    const auto look = [&](const Moment& moment) {
        const Event& event = moment.event;
        const bool startsOrEnds = event.kind == EventKind::ActivityStarted || event.kind == EventKind::ActivityFinished;
        const bool remedied = event.kind == EventKind::ActivityStarted && event.value == 1;
        const bool simulated = startsOrEnds && event.cause == Cause::Rehearsal;
        if (event.activity >= 0 && (moment.undone || remedied || simulated)) {
            marks.disturbed.insert(event.activity);
        }
        const int heated =
            event.load >= 0 ? heatedBy(record.network.loads[static_cast<std::size_t>(event.load)], event.kind) : -1;
        if (heated >= 0 && (moment.undone || event.cause == Cause::Rehearsal || isLoss(event.kind))) {
            marks.disturbed.insert(heated);
        }
    };
    Result<State> state = relive(record, look);
    if (!state) {
        return tl::unexpected(state.error());
    }
    return std::pair(std::move(*state), std::move(marks));
}

bool isWhose(const SessionInfo& info, const std::string& teacher, const std::string& venue) {
    return info.teacher == teacher && info.venue == venue;
}

const Canner* cannerOf(const Venue& venue, const Network& network, const Activity& activity) {
    const int station = activity.load >= 0 ? network.loads[static_cast<std::size_t>(activity.load)].canner : -1;
    for (const Canner& canner : venue.canners) {
        const bool byLoad = station >= 0 && network.stations[static_cast<std::size_t>(station)].id == canner.id;
        if (byLoad || activity.key == canner.id + "/preheat") {
            return &canner;
        }
    }
    return nullptr;
}

// The load that a preheat is for is the first of its canner.
const Load* loadOf(const Network& network, const Activity& activity, const Canner& canner) {
    for (const Load& load : network.loads) {
        const bool here = network.stations[static_cast<std::size_t>(load.canner)].id == canner.id;
        const bool wanted =
            activity.load < 0 ? load.number == 1 : &load == &network.loads[static_cast<std::size_t>(activity.load)];
        if (here && wanted) {
            return &load;
        }
    }
    return nullptr;
}

// Hand work stands at the ends of a heat-up: the pot heats in between.
Seconds heatingTime(const Activity& activity, Seconds took) {
    return took - activity.handsAtStart - activity.handsAtEnd;
}

// Gathers what was seen by subject, in the order in which the subjects are first met.
class Gathering {
public:
    void add(const Subject& subject, const std::string& title, const SeenShare& seen, const std::string& session) {
        Pile& pile = m_piles[subject];
        if (pile.seen.empty()) {
            pile.title = title;
        }
        pile.seen.push_back(seen);
        pile.sessions.insert(session);
        if (seen.rehearsal) {
            pile.rehearsed.insert(session);
        }
    }
    std::optional<Finding> finding(const Subject& subject) const {
        const auto found = m_piles.find(subject);
        if (found == m_piles.end()) {
            return std::nullopt;
        }
        const Pile& pile = found->second;
        return Finding{subject, pile.title, learn(pile.seen), pile.sessions.size(), pile.rehearsed.size()};
    }

private:
    struct Pile {
        std::string title;
        std::vector<SeenShare> seen;
        std::set<std::string> sessions, rehearsed;
    };
    std::map<Subject, Pile> m_piles;
};

const Finding* findingAbout(const std::vector<Finding>& findings, const Subject& subject) {
    const auto found =
        std::find_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.subject == subject; });
    return found == findings.end() ? nullptr : &*found;
}

}  // namespace

Subject subjectOf(const Network& network, int index) {
    const Activity& activity = network.activities.at(static_cast<std::size_t>(index));
    // Jars weigh the same in every canner; heat does not.
    const bool anyCanner = activity.kind == ActivityKind::Lower || activity.kind == ActivityKind::Lift;
    std::string subject = activity.key;
    if (anyCanner) {
        subject.replace(0, subject.find('/'), "canner");
    }
    const std::size_t load = subject.find("/load-");
    if (load != std::string::npos) {
        const std::size_t end = std::min(subject.find('/', load + 1), subject.size());
        subject.erase(load, end - load);
    }
    return subject;
}

Result<std::vector<LivedStep>> livedSteps(const SessionRecord& record) {
    const auto through = livedThrough(record);
    if (!through) {
        return tl::unexpected(through.error());
    }
    const auto& [state, marks] = *through;
    std::vector<LivedStep> steps;
    for (std::size_t i = 0; i < record.network.activities.size(); ++i) {
        const Activity& activity = record.network.activities[i];
        const ActivityState& lived = state.activities[i];
        const int index = static_cast<int>(i);
        if (isFixedByRule(activity) || lived.skipped || lived.swapped || !lived.started || !lived.ended ||
            marks.disturbed.count(index) > 0 || activity.duration.likely <= Seconds::zero()) {
            continue;
        }
        // Work that was broken off for questions is taken up again slowly; even the rest of it is no measure.
        if (pausedIn(record.network, state, index, *lived.ended) > Millis::zero()) {
            continue;
        }
        const Seconds took = std::chrono::ceil<Seconds>(*lived.ended - *lived.started);
        if (took > Seconds::zero()) {
            const double share =
                static_cast<double>(took.count()) / static_cast<double>(activity.duration.likely.count());
            steps.push_back({subjectOf(record.network, index), index, took, {share, record.info.rehearsal}});
        }
    }
    return steps;
}

Result<std::vector<LivedHeating>> livedHeatings(const SessionRecord& record, const Venue& venue) {
    std::vector<LivedHeating> heatings;
    if (record.info.venue != venue.name) {
        return heatings;
    }
    const auto steps = livedSteps(record);
    if (!steps) {
        return tl::unexpected(steps.error());
    }
    for (const LivedStep& step : *steps) {
        const Activity& activity = record.network.activities[static_cast<std::size_t>(step.activity)];
        const Canner* canner = isHeating(activity) ? cannerOf(venue, record.network, activity) : nullptr;
        const Load* load = canner != nullptr ? loadOf(record.network, activity, *canner) : nullptr;
        if (load == nullptr || !canner->water || !burnerOf(venue, *canner)) {
            continue;
        }
        const Warming warming = activity.kind == ActivityKind::Preheat
                                    ? preheatWarming(venue, *canner, load->pack)
                                    : boilWarming(venue, *canner, load->jars, load->jar, load->pack);
        const Seconds heated = heatingTime(activity, step.took);
        const Burner burner = *burnerOf(venue, *canner);
        const double expected = burner.power.watts() * efficiencyOf(burner.heat).likely;
        if (heated > Seconds::zero() && warming.from < warming.to) {
            const Power intoPot = powerToWarmIn(warming, heated);
            heatings.push_back({std::string(kBurner) + canner->burner,
                                canner->burner,
                                intoPot,
                                {intoPot.watts() / expected, step.seen.rehearsal}});
        }
    }
    return heatings;
}

FindingChoice choiceOf(const Finding& finding, const std::string& teacher, const std::string& venue, bool accepted,
                       Millis decidedUtc) {
    return {teacher,           venue,    finding.subject, finding.title, finding.learned, finding.sessions,
            finding.rehearsed, accepted, decidedUtc};
}

std::vector<Finding> accepted(const std::vector<FindingChoice>& choices) {
    std::vector<Finding> findings;
    for (const FindingChoice& choice : choices) {
        if (choice.accepted) {
            findings.push_back({choice.subject, choice.title, choice.learned, choice.sessions, choice.rehearsed});
        }
    }
    return findings;
}

std::vector<Finding> findingsFor(const Network& network, const std::vector<SessionRecord>& sessions) {
    Gathering gathering;
    for (const SessionRecord& record : sessions) {
        const auto steps = isWhose(record.info, network.teacher, network.venueName)
                               ? livedSteps(record)
                               : Result<std::vector<LivedStep>>(std::vector<LivedStep>{});
        for (const LivedStep& step : steps.value_or(std::vector<LivedStep>{})) {
            const Activity& activity = record.network.activities[static_cast<std::size_t>(step.activity)];
            gathering.add(step.subject, activity.title, step.seen, record.info.id);
        }
    }
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        const Subject subject = subjectOf(network, static_cast<int>(i));
        std::optional<Finding> found = gathering.finding(subject);
        if (found && !isFixedByRule(network.activities[i]) && findingAbout(findings, subject) == nullptr) {
            found->title = network.activities[i].title;
            findings.push_back(std::move(*found));
        }
    }
    return findings;
}

std::vector<Finding> burnerFindings(const Venue& venue, const std::vector<SessionRecord>& sessions) {
    Gathering gathering;
    for (const SessionRecord& record : sessions) {
        for (const LivedHeating& heating : livedHeatings(record, venue).value_or(std::vector<LivedHeating>{})) {
            gathering.add(heating.subject, heating.station, heating.seen, record.info.id);
        }
    }
    std::vector<Finding> findings;
    for (const Station& station : venue.stations) {
        std::optional<Finding> found = gathering.finding(std::string(kBurner) + station.id);
        if (found) {
            found->title = station.name;
            findings.push_back(std::move(*found));
        }
    }
    return findings;
}

Network withFindings(Network network, const std::vector<Finding>& accepted) {
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        Activity& activity = network.activities[i];
        const Finding* finding = findingAbout(accepted, subjectOf(network, static_cast<int>(i)));
        if (finding == nullptr || isFixedByRule(activity)) {
            continue;
        }
        ThreePoint learned = guessFrom(activity.duration, finding->learned);
        // The hands need their time at the ends, however quick the rest was.
        const Seconds hands = activity.handsAtStart + endWorkOf(activity);
        learned.low = std::max(learned.low, hands);
        learned.likely = std::max(learned.likely, learned.low);
        learned.high = std::max(learned.high, learned.likely);
        activity.duration = learned;
    }
    return network;
}

Venue withFindings(Venue venue, const std::vector<Finding>& accepted) {
    for (Station& station : venue.stations) {
        const Finding* finding = findingAbout(accepted, std::string(kBurner) + station.id);
        if (finding != nullptr && station.power) {
            station.power = Power::fromWatts(station.power->watts() * finding->learned.median());
        }
    }
    return venue;
}

}  // namespace brinebell
