#include <algorithm>
#include <numeric>

#include "plan/SheetModel.h"

// The way back: from the values of a schedule to a policy, and from a sheet to values a search can begin with.

namespace brinebell {

Tick SheetModel::valueOf(const Moment& moment, const std::vector<Tick>& values) const {
    return moment.offset + (moment.variable >= 0 ? values[static_cast<std::size_t>(moment.variable)] : 0);
}

Policy SheetModel::policyOf(const std::vector<Tick>& values) const {
    const auto holds = [&values](Variable truth) { return values[static_cast<std::size_t>(truth)] != 0; };
    const auto wishFor = [&](const Piece& piece) {
        PlannedPiece planned;
        if (m_network.helpers > 0) {
            if (piece.presenter && holds(*piece.presenter)) {
                planned.hand = WantedHand::Presenter;
            } else if (piece.helper && holds(*piece.helper)) {
                planned.hand = WantedHand::Helper;
            }
        }
        for (const Piece::Inside& inside : piece.inside) {
            if (holds(inside.truth)) {
                planned.interrupts = true;
                const Piece& work = m_pieces[static_cast<std::size_t>(inside.work)];
                const bool presenters = !work.presenter || holds(*work.presenter);
                planned.hand = presenters ? WantedHand::Presenter : WantedHand::Helper;
            }
        }
        return planned;
    };

    Policy policy;
    policy.activities.resize(m_placed.size());
    std::vector<Tick> begin(m_placed.size());
    for (std::size_t i = 0; i < m_placed.size(); ++i) {
        const Placed& placed = m_placed[i];
        ActivityPlan& plan = policy.activities[i];
        begin[i] = valueOf(placed.start, values);
        if (!placed.fresh) {
            continue;
        }
        plan.gates = {Gate{-1, toSeconds(begin[i])}};
        Tick lastLook = begin[i] + ticks(m_network.activities[i].handsAtStart);
        if (placed.startPiece) {
            plan.start = wishFor(m_pieces[*placed.startPiece]);
        }
        for (const std::size_t p : placed.looks) {
            const Piece& look = m_pieces[p];
            if (look.present && !holds(*look.present)) {
                break;
            }
            plan.looks.push_back(wishFor(look));
            plan.looks.back().after = toSeconds(valueOf(look.start, values) - lastLook);
            lastLook = valueOf(look.end, values);
        }
        if (placed.endPiece) {
            plan.end = wishFor(m_pieces[*placed.endPiece]);
            plan.end.after = toSeconds(valueOf(placed.end, values) - begin[i]) - durationOf(i);
        }
    }
    policy.order.resize(m_placed.size());
    std::iota(policy.order.begin(), policy.order.end(), 0);
    // Of two that start together the one that must come first is listed first; a zero-length wait has that too.
    std::stable_sort(policy.order.begin(), policy.order.end(), [&](int a, int b) {
        return begin[static_cast<std::size_t>(a)] < begin[static_cast<std::size_t>(b)];
    });
    std::vector<int> byStart(m_holdStart.size());
    std::iota(byStart.begin(), byStart.end(), 0);
    std::stable_sort(byStart.begin(), byStart.end(), [&](int a, int b) {
        return valueOf(m_holdStart[static_cast<std::size_t>(a)], values) <
               valueOf(m_holdStart[static_cast<std::size_t>(b)], values);
    });
    policy.holdRank.resize(byStart.size());
    for (std::size_t rank = 0; rank < byStart.size(); ++rank) {
        policy.holdRank[static_cast<std::size_t>(byStart[rank])] = static_cast<int>(rank);
    }
    return policy;
}

std::vector<Tick> SheetModel::hintFrom(const RunSheet& sheet) const {
    std::vector<Tick> values(m_model.variables.size());
    for (std::size_t v = 0; v < values.size(); ++v) {
        values[v] = m_model.variables[v].low;
    }
    const auto set = [&values](const Moment& moment, Tick value) {
        if (moment.variable >= 0) {
            values[static_cast<std::size_t>(moment.variable)] = value - moment.offset;
        }
    };
    const auto setTruth = [&values](const std::optional<Variable>& truth, bool value) {
        if (truth) {
            values[static_cast<std::size_t>(*truth)] = value ? 1 : 0;
        }
    };
    for (std::size_t i = 0; i < m_placed.size(); ++i) {
        if (m_placed[i].open) {
            set(m_placed[i].end, ticks(sheet.activities[i].end));
            set(m_placed[i].start, ticks(sheet.activities[i].start));
        }
    }
    // Whose work goes on after `span`, on the same hand: the span is inside it.
    const auto workAround = [&](const HandSpan& span) {
        for (const std::size_t w : m_pausable) {
            const int activity = m_pieces[w].activity;
            bool before = false, after = false;
            for (const HandSpan& other : sheet.hands) {
                if (other.activity == activity && other.hand == span.hand) {
                    before = before || other.to <= span.from;
                    after = after || other.from >= span.to;
                }
            }
            if (before && after) {
                return activity;
            }
        }
        return -1;
    };
    const auto place = [&](const Piece& piece, const HandSpan& span) {
        const int around = piece.work == HandWork::Work ? -1 : workAround(span);
        bool isInside = false;
        for (const Piece::Inside& inside : piece.inside) {
            const bool here = m_pieces[static_cast<std::size_t>(inside.work)].activity == around;
            setTruth(inside.truth, here);
            isInside = isInside || here;
        }
        setTruth(piece.present, true);
        setTruth(piece.presenter, !isInside && span.hand == 0);
        setTruth(piece.helper, !isInside && span.hand > 0);
    };
    std::vector<std::size_t> looked(m_placed.size());
    for (const HandSpan& span : sheet.hands) {
        const auto i = static_cast<std::size_t>(span.activity);
        const Placed& placed = m_placed[i];
        if (!placed.open) {
            continue;
        }
        if ((span.work == HandWork::Work || span.work == HandWork::Start) && placed.startPiece && span.ordinal <= 1) {
            place(m_pieces[*placed.startPiece], span);
        } else if (span.work == HandWork::End && placed.endPiece) {
            place(m_pieces[*placed.endPiece], span);
        } else if (span.work == HandWork::Pulse && looked[i] < placed.looks.size()) {
            const Piece& look = m_pieces[placed.looks[looked[i]++]];
            set(look.start, ticks(span.from));
            place(look, span);
        }
    }
    // A look that does not take place stands where the one before it does.
    for (std::size_t i = 0; i < m_placed.size(); ++i) {
        for (std::size_t k = std::max<std::size_t>(looked[i], 1); k < m_placed[i].looks.size(); ++k) {
            set(m_pieces[m_placed[i].looks[k]].start, valueOf(m_pieces[m_placed[i].looks[k - 1]].start, values));
        }
    }
    for (std::size_t h = 0; h < m_holdStart.size(); ++h) {
        if (m_holdStart[h].variable >= 0) {
            Tick start = m_horizon;
            for (const int i : m_network.stationHolds[h].activities) {
                start = std::min(start, ticks(sheet.activities[static_cast<std::size_t>(i)].start));
            }
            set(m_holdStart[h], start);
        }
    }
    if (m_model.objective >= 0 && m_wishes.aim != SheetWishes::Aim::Stretching) {
        const bool whole = m_wishes.aim == SheetWishes::Aim::KitchenEnd;
        values[static_cast<std::size_t>(m_model.objective)] = ticks(whole ? sheet.kitchenEnd : sheet.classEnd);
    }
    return values;
}

std::vector<Seconds> SheetModel::stretchedLimits(const std::vector<Tick>& values) const {
    std::vector<Seconds> allowed;
    for (std::size_t l = 0; l < m_network.limits.size(); ++l) {
        allowed.push_back(m_wishes.limitAtMost.empty() ? m_network.limits[l].atMost : m_wishes.limitAtMost[l]);
    }
    // A wait that may exceed one level is held by the next; past the last one, by nothing but the horizon.
    for (std::size_t k = 0; k < m_levels.size(); ++k) {
        if (values[static_cast<std::size_t>(m_levels[k].truth)] != 0) {
            const bool more = k + 1 < m_levels.size() && m_levels[k + 1].limit == m_levels[k].limit;
            allowed[m_levels[k].limit] = more ? m_levels[k + 1].before : toSeconds(m_horizon);
        }
    }
    return allowed;
}

}  // namespace brinebell
