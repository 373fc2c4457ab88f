#include "logbook/LoadHistory.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/UtcText.h"
#include "session/CannerSteps.h"

namespace brinebell {

namespace {

class LoadGathering {
public:
    explicit LoadGathering(std::size_t loads) : m_loads(loads) {}

    void see(const Moment& moment) {
        if (moment.event.kind == EventKind::GapFound) {
            seeGap(moment);
        } else if (moment.event.load >= 0 && !moment.undone) {
            seeLoad(moment, m_loads[static_cast<std::size_t>(moment.event.load)]);
        }
    }
    std::vector<LoadHistory> take() { return std::move(m_loads); }

private:
    static void seeLoad(const Moment& moment, LoadHistory& load) {
        switch (moment.event.kind) {
            case EventKind::WaterChecked:
                load.waters.push_back({moment.elapsed, moment.event.text});
                break;
            case EventKind::SteamSeen:
                load.ventings.push_back({moment.elapsed, moment.event.cause, std::nullopt, std::nullopt});
                break;
            case EventKind::VentClosed:
                load.ventings.back().closed = moment.elapsed;
                break;
            case EventKind::SteamLost:
                load.ventings.back().lost = moment.elapsed;
                break;
            case EventKind::BoilSeen:
                load.boils.push_back({moment.elapsed, moment.event.cause, 0, std::nullopt});
                break;
            case EventKind::PressureReached:
                load.boils.push_back(
                    {moment.elapsed, moment.event.cause, static_cast<int>(moment.event.value), std::nullopt});
                break;
            case EventKind::BoilLost:
            case EventKind::PressureLost:
                load.boils.back().lost = moment.elapsed;
                break;
            case EventKind::BoilVouched:
                vouch(moment, load);
                break;
            case EventKind::LoadSetAside:
                load.setAside = moment.elapsed;
                load.setAsideWhy = moment.event.text;
                break;
            case EventKind::SealsChecked:
                load.sealsChecked = moment.elapsed;
                load.sealsCheckedBy = moment.event.text;
                load.sealChecks.push_back({moment.elapsed, moment.event.sealed, moment.event.unsealed,
                                           moment.event.broken, moment.event.value == 1, cooledAt(moment),
                                           moment.event.text});
                break;
            case EventKind::JarsWent:
                (moment.event.value == kWholeLoad ? load.jarsWent : load.unsealedWent) =
                    jarsPlaceFromText(moment.event.text);
                break;
            default:
                break;
        }
    }

    static Millis cooledAt(const Moment& moment) {
        return moment.elapsed -
               moment.before.loads[static_cast<std::size_t>(moment.event.load)].lifted.value_or(moment.elapsed);
    }

    // The state knows which loads the gap concerned, and how much of it.
    void seeGap(const Moment& moment) {
        for (std::size_t l = 0; l < m_loads.size(); ++l) {
            const Millis added = moment.after.loads[l].unwatched - moment.before.loads[l].unwatched;
            if (added > Millis::zero()) {
                m_loads[l].gaps.push_back({moment.elapsed, added, false, {}});
            }
        }
    }

    // One answer covers every gap of this boil, or of this venting, that was still open.
    static void vouch(const Moment& moment, LoadHistory& load) {
        const auto& count = runningCount(moment.before.loads[static_cast<std::size_t>(moment.event.load)]);
        for (UnwatchedGap& gap : load.gaps) {
            if (!gap.vouched && count && gap.found >= count->started) {
                gap.vouched = true;
                gap.vouchedBy = moment.event.text;
            }
        }
    }

    std::vector<LoadHistory> m_loads;
};

}  // namespace

Result<SessionHistory> historyOf(const SessionRecord& record) {
    const std::size_t count = record.network.loads.size();
    LoadGathering gathering(count);
    Result<State> state = relive(record, [&](const Moment& moment) { gathering.see(moment); });
    if (!state) {
        return tl::unexpected(state.error());
    }
    SessionHistory history{std::move(*state), gathering.take()};
    for (std::size_t l = 0; l < count; ++l) {
        const auto lower = static_cast<std::size_t>(record.network.loads[l].lower);
        history.loads[l].state = history.state.loads[l];
        history.loads[l].lowered = history.state.activities[lower].ended;
    }
    return history;
}

bool isCanned(const LoadHistory& load) {
    return load.state.phase == LoadPhase::Cooling || load.state.phase == LoadPhase::SealsChecked;
}

bool isSealCheckOpen(const LoadHistory& load) {
    return load.state.phase == LoadPhase::Cooling && !load.jarsWent;
}

std::string lotOf(const SessionRecord& record, const State& state, std::size_t load) {
    std::string day = dayText(utcOf(state, state.loads[load].lifted.value_or(Millis::zero())));
    day.erase(std::remove(day.begin(), day.end(), '-'), day.end());
    return fmt::format("{}-{}-{}", day, load + 1, record.info.id.substr(0, 4));
}

std::string momentText(Millis utc) {
    std::string text = utcText(utc).substr(0, 19);
    text[10] = ' ';
    return text + " UTC";
}

std::string dayText(Millis utc) {
    return utcText(utc).substr(0, 10);
}

}  // namespace brinebell
