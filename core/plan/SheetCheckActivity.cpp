#include <algorithm>
#include <array>

#include "plan/SheetChecking.h"

namespace brinebell {

// ---- one activity

void SheetChecking::checkActivity(std::size_t i) {
    checkPast(i);
    if (isOver(i)) {
        if (m_firstPiece[i * kWorks] != m_firstPiece[(i + 1) * kWorks]) {
            complain("{}: hands work on what is over", name(i));
        }
        return;
    }
    for (const int before : activity(i).after) {
        if (isAhead(i) && start(i) < end(before)) {
            complain("{} starts at {} before {} ends at {}", name(i), start(i).count(), name(before),
                     end(before).count());
        }
    }
    checkLength(i);
    static constexpr std::array<std::array<bool, kWorks>, 4> kAllowed{{
        {false, false, false, false},  // None
        {true, false, false, false},   // Throughout: work
        {false, true, false, true},    // Ends: start and end
        {false, true, true, true},     // Pulses: start, looks and end
    }};
    for (const HandWork work : {HandWork::Work, HandWork::Start, HandWork::Pulse, HandWork::End}) {
        if (!kAllowed[static_cast<std::size_t>(activity(i).hands)][static_cast<std::size_t>(work)] &&
            !pieces(i, work).empty()) {
            complain("{}: it is given a kind of hand work that it does not need", name(i));
        }
    }
    switch (activity(i).hands) {
        case HandsNeed::None:
            break;
        case HandsNeed::Throughout:
            checkThroughout(i);
            break;
        case HandsNeed::Pulses:
            checkLooks(i);
            [[fallthrough]];
        case HandsNeed::Ends:
            checkStartWork(i);
            checkEndWork(i);
            break;
    }
}

void SheetChecking::checkPast(std::size_t i) {
    const ActivityProgress& was = lived(i);
    if (was.started && start(i) != *was.started) {
        complain("{} started at {} and the sheet says {}", name(i), was.started->count(), start(i).count());
    }
    if (was.ended && end(i) != *was.ended) {
        complain("{} ended at {} and the sheet says {}", name(i), was.ended->count(), end(i).count());
    }
    if (isUnderway(i) && end(i) <= m_progress.now) {
        complain("{} is under way and the sheet ends it at {}, which is past", name(i), end(i).count());
    }
    if (isAhead(i) && start(i) < m_progress.now) {
        complain("{} has not started and the sheet starts it at {}, which is past", name(i), start(i).count());
    }
}

// What has no hands at its end, or none at all, ends by itself; the rest may end late, never early.
void SheetChecking::checkLength(std::size_t i) {
    const Seconds least = start(i) + activity(i).duration.likely;
    if (end(i) < least) {
        complain("{} takes {} s, less than its {} s", name(i), (end(i) - start(i)).count(),
                 activity(i).duration.likely.count());
    }
    const bool endsByItself = activity(i).hands != HandsNeed::Throughout && endWorkOf(activity(i)) == Seconds::zero();
    const Seconds due = isUnderway(i) ? std::max(least, m_progress.now + Seconds(1)) : least;
    if (endsByItself && end(i) > due) {
        complain("{}: it ends by itself at {} and the sheet says {}", name(i), due.count(), end(i).count());
    }
}

void SheetChecking::checkThroughout(std::size_t i) {
    const Pieces work = pieces(i, HandWork::Work);
    Seconds sum{};
    for (std::size_t k = 0; k < work.size(); ++k) {
        sum += work[k].to - work[k].from;
        if (k > 0 && work[k].from < work[k - 1].to) {
            complain("{}: two hands do the same piece of work at {}", name(i), work[k].from.count());
        }
        if (work[k].ordinal != static_cast<int>(k) + 1) {
            complain("{}: piece {} is numbered {}", name(i), k + 1, work[k].ordinal);
        }
    }
    const Seconds likely = activity(i).duration.likely;
    const Seconds needed = isUnderway(i) ? workLeft(lived(i), likely, m_progress.now) : likely;
    if (sum != needed) {
        complain("{}: hands work on it for {} s in all, and it needs {} s", name(i), sum.count(), needed.count());
    }
    if (!activity(i).mayPause && work.size() > 1) {
        complain("{}: it may not be left, and is done in {} pieces", name(i), work.size());
    }
    if (!work.empty() && (work.back().to != end(i) || (isAhead(i) && work.front().from != start(i)))) {
        complain("{}: its hand work does not reach from its start to its end", name(i));
    }
}

void SheetChecking::checkStartWork(std::size_t i) {
    const Pieces work = pieces(i, HandWork::Start);
    const Seconds length = activity(i).handsAtStart;
    if (isUnderway(i)) {
        // Whether it was set up already cannot be told from outside; no more than what was left of it can be.
        const Seconds left = start(i) + length - m_progress.now;
        if (work.size() > 1 || (work.size() == 1 && work[0].to - work[0].from > left)) {
            complain("{}: it is set up again for longer than the {} s that are left of it", name(i), left.count());
        }
        return;
    }
    if (work.size() != (length > Seconds::zero() ? 1U : 0U)) {
        complain("{}: it is set up {} times", name(i), work.size());
    } else if (!work.empty() && (work[0].from != start(i) || work[0].to - work[0].from != length)) {
        complain("{}: its setting up is not the {} s right at its start", name(i), length.count());
    }
}

void SheetChecking::checkEndWork(std::size_t i) {
    const Pieces work = pieces(i, HandWork::End);
    const Seconds length = endWorkOf(activity(i));
    if (work.size() != (length > Seconds::zero() ? 1U : 0U)) {
        complain("{}: it is ended {} times by hand", name(i), work.size());
    } else if (!work.empty() && (work[0].to != end(i) || work[0].to - work[0].from != length)) {
        complain("{}: its end work is not the {} s right at its end", name(i), length.count());
    } else if (!work.empty() && work[0].from < lastSeen(i)) {
        complain("{}: it is ended at {}, while hands are still on it", name(i), work[0].from.count());
    }
}

// When its setting up or its last look ends, whichever is later.
Seconds SheetChecking::lastSeen(std::size_t i) const {
    const Pieces settingUp = pieces(i, HandWork::Start), looks = pieces(i, HandWork::Pulse);
    const Seconds setUp = settingUp.empty() ? start(i) : settingUp.back().to;
    return looks.empty() ? setUp : std::max(setUp, looks.back().to);
}

// Late looks are added up; the sheet must own up to every second of them.
void SheetChecking::checkLooks(std::size_t i) {
    const PulseRule& rule = *activity(i).pulse;
    Seconds seen = start(i) + activity(i).handsAtStart;
    if (isUnderway(i)) {
        const Pieces settingUp = pieces(i, HandWork::Start);
        seen = settingUp.empty() ? lived(i).lastPulse.value_or(seen) : settingUp.back().to;
    }
    const auto addLate = [&](const HandSpan& look) {
        m_lateLooks += std::max(Seconds::zero(), look.from - seen - rule.gapHigh);
    };
    int ordinal = 0;
    for (const HandSpan& look : pieces(i, HandWork::Pulse)) {
        if (look.to - look.from != rule.takes) {
            complain("{}: the look at {} takes {} s, not {} s", name(i), look.from.count(),
                     (look.to - look.from).count(), rule.takes.count());
        }
        if (look.ordinal != ++ordinal) {
            complain("{}: look {} is numbered {}", name(i), ordinal, look.ordinal);
        }
        if (look.from - seen < rule.gapLow) {
            complain("{}: the look at {} comes only {} s after the one before, not {} s", name(i), look.from.count(),
                     (look.from - seen).count(), rule.gapLow.count());
        }
        addLate(look);
        seen = look.to;
    }
    for (const HandSpan& last : pieces(i, HandWork::End)) {
        addLate(last);
    }
}

void SheetChecking::checkReason(std::size_t i) {
    const StartReason reason = m_sheet.reasons[i];
    const int other = m_sheet.waitedFor[i];
    if ((reason == StartReason::Underway) != !isAhead(i)) {
        complain("{}: the sheet has it wrong whether it is under way", name(i));
    }
    if (reason == StartReason::ClassStart && start(i) != m_progress.now) {
        complain("{} is said to start with the class, and starts at {}", name(i), start(i).count());
    }
    if (reason == StartReason::After &&
        (std::find(activity(i).after.begin(), activity(i).after.end(), other) == activity(i).after.end() ||
         end(other) != start(i))) {
        complain("{} is said to follow activity {}, and does not", name(i), other);
    }
    if (reason == StartReason::Station &&
        std::none_of(m_sheet.stations.begin(), m_sheet.stations.end(),
                     [&](const StationSpan& s) { return s.stationHold == other && s.to == start(i); })) {
        complain("{} is said to wait for hold {}, which ends at another time", name(i), other);
    }
}

}  // namespace brinebell
