#include "support/CannerMonitor.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace brinebell::support {

namespace {

struct Timed {
    Event event;
    long long at = 0;    ///< ms since the first event
    long long from = 0;  ///< of a gap: where it begins, which is never before the press that came last
};

long long sinceBefore(const Event& before, const Event& event) {
    const bool sameBoot = before.at.bootId == event.at.bootId;
    const long long span = sameBoot ? (event.at.boot - before.at.boot).count() : (event.at.utc - before.at.utc).count();
    return span > 0 ? span : 0;
}

/// The load whose lift `event` begins, or -1.
int loadLifted(const Network& network, const Event& event) {
    for (std::size_t l = 0; l < network.loads.size(); ++l) {
        if (event.kind == EventKind::ActivityStarted && event.activity == network.loads[l].lift) {
            return static_cast<int>(l);
        }
    }
    return -1;
}

/// What stood when a lift began: everything before it that had not been taken back by then.
class Lift {
public:
    Lift(const Network& network, const std::vector<Timed>& standing, const Timed& lift, int load)
        : m_load(network.loads[static_cast<std::size_t>(load)]), m_index(load), m_lift(lift) {
        for (const Timed& t : standing) {
            if (t.event.kind == EventKind::GapFound || t.event.load == load) {
                m_history.push_back(t);
            }
        }
    }

    std::vector<std::string> violations() {
        const auto seen = lastOf(EventKind::BoilSeen, m_history.cend());
        if (seen == m_history.cend()) {
            complain("without a boil");
            return m_found;
        }
        const long long required = std::chrono::milliseconds(m_load.processTime).count();
        if (seen->event.value < required) {
            complain(fmt::format("after a count of {} ms; the published time is {} ms", seen->event.value, required));
        }
        const auto off =
            std::find_if(seen, m_history.cend(), [](const Timed& t) { return t.event.kind == EventKind::HeatOff; });
        if (off == m_history.cend()) {
            complain("with the heat on");
            return m_found;
        }
        if (std::any_of(seen, m_history.cend(), [](const Timed& t) { return t.event.kind == EventKind::BoilLost; })) {
            complain("after a lost boil");
        }
        if (off->at - seen->at < seen->event.value) {
            complain(fmt::format("after {} ms of boil", off->at - seen->at));
        }
        if (m_lift.at - off->at < 300'000) {
            complain(fmt::format("after {} ms of rest", m_lift.at - off->at));
        }
        checkGaps(seen, off);
        return m_found;
    }

private:
    using Place = std::vector<Timed>::const_iterator;

    Place lastOf(EventKind kind, Place before) const {
        Place found = m_history.cend();
        for (Place t = m_history.cbegin(); t != before; ++t) {
            found = t->event.kind == kind ? t : found;
        }
        return found;
    }

    void checkGaps(Place seen, Place off) {
        const long long counted = seen->at + seen->event.value;
        bool open = false;
        for (Place t = seen; t != off; ++t) {
            if (t->event.kind == EventKind::GapFound && t->event.value > 0 && t->from < counted) {
                open = true;
            } else if (t->event.kind == EventKind::BoilVouched) {
                open = false;
            }
        }
        if (open) {
            complain("though nobody vouched for the time it was unwatched");
        }
    }

    void complain(const std::string& what) {
        m_found.push_back(fmt::format("event {}: load {} is lifted {}", m_lift.event.sequence, m_index, what));
    }

    const Load& m_load;
    int m_index;
    const Timed& m_lift;
    std::vector<Timed> m_history;
    std::vector<std::string> m_found;
};

}  // namespace

std::vector<std::string> cannerViolations(const Network& network, const std::vector<Event>& events) {
    std::vector<std::string> found;
    std::vector<Timed> standing;
    long long now = 0;
    std::int64_t barrier = 0;
    for (std::size_t k = 0; k < events.size(); ++k) {
        const Event& event = events[k];
        const long long before = now;
        now += k > 0 ? sinceBefore(events[k - 1], event) : 0;
        if (event.kind == EventKind::Undone) {
            if (event.value <= barrier) {
                found.push_back(fmt::format("event {}: an undo reaches back over event {}", event.sequence, barrier));
            }
            std::erase_if(standing, [&](const Timed& t) { return t.event.sequence == event.value; });
            continue;
        }
        if (event.kind == EventKind::BoilLost || event.kind == EventKind::LoadSetAside) {
            barrier = event.sequence;
        }
        const Timed timed{event, now, std::max<long long>(before, now - event.value)};
        if (const int load = loadLifted(network, event); load >= 0) {
            const auto wrong = Lift(network, standing, timed, load).violations();
            found.insert(found.end(), wrong.begin(), wrong.end());
        }
        standing.push_back(timed);
    }
    return found;
}

std::size_t liftsIn(const Network& network, const std::vector<Event>& events) {
    std::set<std::int64_t> lifts;
    for (const Event& event : events) {
        if (loadLifted(network, event) >= 0) {
            lifts.insert(event.sequence);
        }
        if (event.kind == EventKind::Undone) {
            lifts.erase(event.value);
        }
    }
    return lifts.size();
}

}  // namespace brinebell::support
