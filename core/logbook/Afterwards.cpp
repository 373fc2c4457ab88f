#include "logbook/Afterwards.h"

#include <algorithm>

#include "logbook/LoadHistory.h"

namespace brinebell {

namespace {

void gather(const SessionRecord& record, const Stamp& now, std::vector<SealsOpen>& open) {
    const Result<SessionHistory> history = historyOf(record);
    if (!history) {
        return;
    }
    const Millis elapsed = elapsedAt(history->state, now);
    for (std::size_t l = 0; l < history->loads.size(); ++l) {
        const LoadHistory& lived = history->loads[l];
        if (!isSealCheckOpen(lived) || !lived.state.lifted) {
            continue;
        }
        const Load& planned = record.network.loads[l];
        SealsOpen found;
        found.session = record.info.id;
        found.title = record.info.title;
        found.place = record.info.venue;
        found.dish = record.network.dishes.at(static_cast<std::size_t>(planned.dish)).title;
        found.lot = lotOf(record, history->state, l);
        found.load = static_cast<int>(l);
        found.loads = static_cast<int>(history->loads.size());
        found.jars = planned.jars;
        found.liftedUtc = utcOf(history->state, *lived.state.lifted);
        found.cooled = elapsed - *lived.state.lifted;
        open.push_back(std::move(found));
    }
}

}  // namespace

SealsOpen::Standing SealsOpen::standing() const {
    if (cooled < kSealCheckFrom) {
        return Standing::Cooling;
    }
    return cooled <= kSealCheckBy ? Standing::Due : Standing::Late;
}

Result<std::vector<SealsOpen>> sealsOpen(const Logbook& logbook, const Stamp& now) {
    SessionFilter filter;
    filter.rehearsal = false;
    filter.from = now.utc - kAskForSeals;
    const Result<std::vector<SessionInfo>> sessions = logbook.sessions(filter);
    if (!sessions) {
        return tl::unexpected<Error>(sessions.error());
    }
    std::vector<SealsOpen> open;
    for (const SessionInfo& info : *sessions) {
        const Result<SessionRecord> record = logbook.session(info.id);
        if (record) {
            gather(*record, now, open);
        } else if (record.error().code != ErrorCode::Corrupt) {
            return tl::unexpected<Error>(record.error());
        }
    }
    std::stable_sort(open.begin(), open.end(),
                     [](const SealsOpen& a, const SealsOpen& b) { return a.liftedUtc < b.liftedUtc; });
    return open;
}

std::optional<std::int64_t> figureIn(const SessionRecord& record, ReportFigure figure) {
    const auto found = std::find_if(record.events.rbegin(), record.events.rend(), [&](const Event& event) {
        return event.kind == EventKind::FigureReported && event.text == toText(figure);
    });
    return found == record.events.rend() ? std::nullopt : std::optional(found->value);
}

Result<std::optional<Refusal>> tellAfterwards(Logbook& logbook, const std::string& session,
                                              std::span<const Command> commands, const Stamp& now, Cause cause) {
    // The lock first: what is read after it nobody else changes.
    const Result<std::unique_ptr<SessionLog>> log = logbook.reopen(session);
    if (!log) {
        return tl::unexpected<Error>(log.error());
    }
    const Result<SessionRecord> record = logbook.session(session);
    if (!record) {
        return tl::unexpected<Error>(record.error());
    }
    Result<State> state = replay(record->network, record->events);
    if (!state) {
        return tl::unexpected<Error>(state.error());
    }
    std::vector<Event> told;
    for (const Command& command : commands) {
        const Decision decision = decide(record->network, *state, command, now, cause);
        if (const auto* refusal = std::get_if<Refusal>(&decision)) {
            return *refusal;
        }
        for (const Event& event : std::get<std::vector<Event>>(decision)) {
            state = apply(record->network, std::move(*state), event);
            if (!state) {
                return tl::unexpected<Error>(state.error());
            }
            told.push_back(event);
        }
    }
    if (const Result<void> kept = (*log)->append(told); !kept) {
        return tl::unexpected<Error>(kept.error());
    }
    return std::optional<Refusal>();
}

}  // namespace brinebell
