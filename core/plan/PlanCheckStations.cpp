#include <algorithm>
#include <map>

#include "base/Language.h"
#include "plan/PlanChecking.h"
#include "quantity/ReadQuantity.h"

// Whether there are burners, boards and the like enough for what must stand on them.

namespace brinebell {

namespace {

constexpr Seconds kUnreached = Seconds::min();

}  // namespace

// What may stand on the same stations is held against them, each with what may stand on a part of them only.
void PlanChecking::findStations() {
    std::map<std::vector<int>, std::vector<int>> holdsOf;
    for (const StationHold& hold : m_network.stationHolds) {
        std::vector<int> candidates = hold.candidates;
        std::sort(candidates.begin(), candidates.end());
        holdsOf[candidates];
    }
    for (auto& [candidates, holds] : holdsOf) {
        for (std::size_t h = 0; h < m_network.stationHolds.size(); ++h) {
            const std::vector<int>& wanted = m_network.stationHolds[h].candidates;
            if (std::all_of(wanted.begin(), wanted.end(), [&, &these = candidates](int s) {
                    return std::binary_search(these.begin(), these.end(), s);
                })) {
                holds.push_back(static_cast<int>(h));
            }
        }
        findStationTime(candidates, holds);
        findCrowds(candidates, holds);
    }
}

void PlanChecking::findStationTime(const std::vector<int>& candidates, const std::vector<int>& holds) {
    Seconds wanted{};
    for (const int h : holds) {
        wanted += leastTimeOf(m_network.stationHolds[static_cast<std::size_t>(h)]);
    }
    const Seconds slot = std::max(m_network.slot, m_network.kitchenSlot.value_or(m_network.slot));
    const Seconds there = slot * static_cast<std::int64_t>(candidates.size());
    if (wanted > there) {
        add(PlanFindingKind::StationsShort, Seconds::zero(), slot, -1,
            core::mark(
                "{} {} wanted for at least {} in all ({}), and the slot has {}; bring one more, or make a stage ahead"),
            stationsInWords(candidates), candidates.size() == 1 ? core::say("is") : core::say("are"),
            printDuration(wanted), vesselsInWords(holds), printDuration(there));
    }
}

// The first moment at which the order alone would put more on the stations than they hold, where something does wait
// for that. A crowd that costs nobody a wait is not worth a teacher's attention.
void PlanChecking::findCrowds(const std::vector<int>& candidates, const std::vector<int>& holds) {
    std::vector<std::pair<Seconds, int>> changes;  // -1 before +1: what ends makes room for what begins
    for (const int h : holds) {
        Seconds from = Seconds::max(), to{};
        for (const int user : m_network.stationHolds[static_cast<std::size_t>(h)].activities) {
            const Seconds start = m_byOrder[static_cast<std::size_t>(user)];
            from = std::min(from, start);
            to = std::max(to, start + activity(user).duration.likely);
        }
        changes.emplace_back(from, 1);
        changes.emplace_back(to, -1);
    }
    std::sort(changes.begin(), changes.end());
    int most = 0, now = 0;
    Seconds at{};
    for (const auto& [moment, by] : changes) {
        now += by;
        if (now > static_cast<int>(candidates.size()) && most == 0) {
            at = moment;
        }
        most = now > static_cast<int>(candidates.size()) ? std::max(most, now) : most;
    }
    for (int i = 0; most > 0 && i < count(); ++i) {
        const auto& mine = activity(i).stationHolds;
        const auto a = static_cast<std::size_t>(i);
        if (m_sheet.reasons[a] == StartReason::Station &&
            std::find_first_of(mine.begin(), mine.end(), holds.begin(), holds.end()) != mine.end()) {
            add(PlanFindingKind::StationsShort, at, span(i).start, i,
                core::mark("by their order alone {} things want {} at once from {} on: \"{}\" waits for it until {}; "
                           "bring one "
                           "more, or make a stage ahead"),
                most, stationsInWords(candidates), classTime(at), title(i), classTime(span(i).start));
            return;
        }
    }
}

// From its first start to its last end, when nothing but the order keeps its steps apart.
Seconds PlanChecking::leastTimeOf(const StationHold& hold) const {
    Seconds least{};
    for (const int first : hold.activities) {
        std::vector<Seconds> starts(m_network.activities.size(), kUnreached);
        starts[static_cast<std::size_t>(first)] = Seconds::zero();
        startAsSoonAsOrderAllows(starts);
        for (const int last : hold.activities) {
            if (const Seconds start = starts[static_cast<std::size_t>(last)]; start != kUnreached) {
                least = std::max(least, start + activity(last).duration.likely);
            }
        }
    }
    return least;
}

// Moves starts behind the ends of what they follow; what follows nothing that is reached stays where it is.
void PlanChecking::startAsSoonAsOrderAllows(std::vector<Seconds>& starts) const {
    for (bool moved = true; moved;) {
        moved = false;
        for (std::size_t i = 0; i < starts.size(); ++i) {
            for (const int before : m_network.activities[i].after) {
                const Seconds start = starts[static_cast<std::size_t>(before)];
                if (start != kUnreached && start + activity(before).duration.likely > starts[i]) {
                    starts[i] = start + activity(before).duration.likely;
                    moved = true;
                }
            }
        }
    }
}

std::string PlanChecking::stationsInWords(const std::vector<int>& stations) const {
    std::string text;
    for (std::size_t k = 0; k < stations.size(); ++k) {
        text += k == 0 ? std::string() : (k + 1 == stations.size() ? core::say(" and ") : std::string(", "));
        text += fmt::format("\"{}\"", m_network.stations[static_cast<std::size_t>(stations[k])].name);
    }
    return text;
}

std::string PlanChecking::vesselsInWords(const std::vector<int>& holds) const {
    std::vector<int> users;
    for (const int h : holds) {
        users.push_back(m_network.stationHolds[static_cast<std::size_t>(h)].activities.front());
    }
    return someTitles(users);
}

}  // namespace brinebell
