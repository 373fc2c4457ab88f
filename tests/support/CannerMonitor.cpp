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
        const bool pressure = m_load.pressure.has_value();
        const auto seen =
            lastOf(pressure ? EventKind::PressureReached : EventKind::BoilSeen, m_history.cbegin(), m_history.cend());
        if (seen == m_history.cend()) {
            complain(pressure ? "without pressure" : "without a boil");
            return m_found;
        }
        const long long required = std::chrono::milliseconds(m_load.processTime).count();
        if (!pressure && seen->event.value < required) {
            complain(fmt::format("after a count of {} ms; the published time is {} ms", seen->event.value, required));
        }
        if (pressure && seen->event.value < m_load.pressure->gaugePsi) {
            complain(fmt::format("after a count at {} psi, below the published pressure", seen->event.value));
        }
        const auto off =
            std::find_if(seen, m_history.cend(), [](const Timed& t) { return t.event.kind == EventKind::HeatOff; });
        if (off == m_history.cend()) {
            complain("with the heat on");
            return m_found;
        }
        if (std::any_of(seen, m_history.cend(), [](const Timed& t) { return isLoss(t.event.kind); })) {
            complain("after a lost boil");
        }
        const long long counted = pressure ? required : std::max<long long>(seen->event.value, required);
        if (off->at - seen->at < counted) {
            complain(fmt::format("after {} ms of boil", off->at - seen->at));
        }
        checkGaps(seen, off, counted);
        checkRest(off);
        const auto heat = pressure ? checkVenting(seen) : seen;
        if (heat != m_history.cend()) {
            checkWater(heat);
        }
        return m_found;
    }

    static bool isLoss(EventKind kind) {
        return kind == EventKind::BoilLost || kind == EventKind::SteamLost || kind == EventKind::PressureLost;
    }

private:
    using Place = std::vector<Timed>::const_iterator;

    Place lastOf(EventKind kind, Place from, Place before) const {
        Place found = m_history.cend();
        for (Place t = from; t != before; ++t) {
            found = t->event.kind == kind ? t : found;
        }
        return found;
    }

    // K-State Extension, PNW 421: ten minutes of steady steam before the vent is closed.
    Place checkVenting(Place reached) {
        constexpr long long kVenting = 600'000;
        const auto steam = lastOf(EventKind::SteamSeen, m_history.cbegin(), reached);
        if (steam == m_history.cend()) {
            complain("without venting");
            return steam;
        }
        const auto closed = lastOf(EventKind::VentClosed, steam, reached);
        if (closed == m_history.cend()) {
            complain("with the vent open");
            return steam;
        }
        if (closed->at - steam->at < kVenting) {
            complain(fmt::format("after {} ms of venting", closed->at - steam->at));
        }
        if (std::any_of(steam, reached, [](const Timed& t) { return t.event.kind == EventKind::SteamLost; })) {
            complain("after lost steam");
        }
        checkGaps(steam, closed, kVenting);
        return steam;
    }

    // Five minutes after the heat is off; under pressure ten after the last of the pressure.
    void checkRest(Place off) {
        Place from = off;
        if (m_load.pressure) {
            from = std::find_if(off, m_history.cend(),
                                [](const Timed& t) { return t.event.kind == EventKind::PressureGone; });
            if (from == m_history.cend()) {
                complain("under pressure");
                return;
            }
        }
        if (m_lift.at - from->at < (m_load.pressure ? 600'000 : 300'000)) {
            complain(fmt::format("after {} ms of rest", m_lift.at - from->at));
        }
    }

    void checkWater(Place heat) {
        if (m_load.waterCheck.empty()) {
            return;
        }
        const auto checked = lastOf(EventKind::WaterChecked, m_history.cbegin(), heat);
        if (checked == m_history.cend()) {
            complain("with water that nobody confirmed");
        } else if (m_load.method == Method::AtmosphericSteam &&
                   std::any_of(checked, heat, [](const Timed& t) { return isLoss(t.event.kind); })) {
            complain("with water that nobody confirmed after the steam was lost");
        }
    }

    void checkGaps(Place seen, Place off, long long length) {
        const long long counted = seen->at + length;
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
        if (Lift::isLoss(event.kind) || event.kind == EventKind::LoadSetAside) {
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
