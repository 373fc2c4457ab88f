#include "plan/BackTiming.h"

#include <algorithm>

#include "plan/Durations.h"

namespace brinebell {

namespace {

// What the canner itself takes: to heat, to come to pressure, and to lose it again.
bool heats(ActivityKind kind) {
    return kind == ActivityKind::Preheat || kind == ActivityKind::HeatUp || kind == ActivityKind::Pressurise ||
           kind == ActivityKind::CoolDown;
}

/// start(to) >= start(from) + length.
struct SequenceArc {
    std::size_t from, to;
    Seconds length;
};

class SequenceOfSheet {
public:
    SequenceOfSheet(const Network& network, const RunSheet& sheet, std::vector<Seconds> lengths)
        : m_network(network), m_sheet(sheet), m_lengths(std::move(lengths)) {
        addOrder();
        addHands();
        addStations();
        m_sequenceArcs = m_arcs.size();
        addLimits();
    }

    // Every start as late as the ends allow. With lengths other than the sheet's, a hold limit can pull against them
    // without end; what starts at the latest is then told by the sequence alone.
    std::vector<Seconds> latestStarts(Seconds classEnd, Seconds kitchenEnd) const {
        const auto all = latestStarts(classEnd, kitchenEnd, m_arcs.size());
        return all ? *all : latestStarts(classEnd, kitchenEnd, m_sequenceArcs).value_or(startsAsPlanned());
    }

private:
    std::vector<Seconds> startsAsPlanned() const {
        std::vector<Seconds> starts;
        for (const ActivitySpan& span : m_sheet.activities) {
            starts.push_back(span.start);
        }
        return starts;
    }

    // By the first `arcs` arcs; none when they pull in a circle.
    std::optional<std::vector<Seconds>> latestStarts(Seconds classEnd, Seconds kitchenEnd, std::size_t arcs) const {
        const std::size_t n = m_lengths.size();
        std::vector<Seconds> latest(n);
        for (std::size_t i = 0; i < n; ++i) {
            const bool closing = static_cast<int>(i) == m_network.closing;
            latest[i] = (closing ? std::min(classEnd, kitchenEnd) : kitchenEnd) - m_lengths[i];
        }
        bool changed = true;
        for (std::size_t round = 0; round <= n && changed; ++round) {
            changed = false;
            for (std::size_t k = 0; k < arcs; ++k) {
                const SequenceArc& arc = m_arcs[k];
                const Seconds bound = latest[arc.to] - arc.length;
                if (bound < latest[arc.from]) {
                    latest[arc.from] = bound;
                    changed = true;
                }
            }
        }
        if (changed) {
            return std::nullopt;
        }
        return latest;
    }

    void addOrder() {
        for (std::size_t i = 0; i < m_lengths.size(); ++i) {
            for (const int before : m_network.activities[i].after) {
                const auto b = static_cast<std::size_t>(before);
                m_arcs.push_back({b, i, m_lengths[b]});
            }
        }
    }

    // Where a piece of hand work begins in its activity; end work hangs on the end.
    Seconds offsetOf(const HandSpan& span, Seconds moment) const {
        const auto i = static_cast<std::size_t>(span.activity);
        const ActivitySpan& whole = m_sheet.activities[i];
        return span.work == HandWork::End ? m_lengths[i] - (whole.end - moment) : moment - whole.start;
    }

    void addHands() {
        std::vector<const HandSpan*> last(static_cast<std::size_t>(1 + m_network.helpers), nullptr);
        for (const HandSpan& span : m_sheet.hands) {
            const HandSpan*& before = last[static_cast<std::size_t>(span.hand)];
            if (before != nullptr && before->activity != span.activity) {
                m_arcs.push_back({static_cast<std::size_t>(before->activity), static_cast<std::size_t>(span.activity),
                                  offsetOf(*before, before->to) - offsetOf(span, span.from)});
            }
            before = &span;
        }
    }

    void addStations() {
        std::vector<const StationSpan*> last(m_network.stations.size(), nullptr);
        for (const StationSpan& span : m_sheet.stations) {
            const StationSpan*& before = last[static_cast<std::size_t>(span.station)];
            if (before != nullptr) {
                for (const int first : usersOf(*before)) {
                    for (const int next : usersOf(span)) {
                        m_arcs.push_back({static_cast<std::size_t>(first), static_cast<std::size_t>(next),
                                          m_lengths[static_cast<std::size_t>(first)]});
                    }
                }
            }
            before = &span;
        }
    }

    const std::vector<int>& usersOf(const StationSpan& span) const {
        return m_network.stationHolds[static_cast<std::size_t>(span.stationHold)].activities;
    }

    // start(to) <= end(from) + at most; where the sheet stretches a limit, no more than it does.
    void addLimits() {
        for (const HoldLimit& limit : m_network.limits) {
            const auto from = static_cast<std::size_t>(limit.from), to = static_cast<std::size_t>(limit.to);
            const Seconds wait = m_sheet.activities[to].start - m_sheet.activities[from].end;
            m_arcs.push_back({to, from, -m_lengths[from] - std::max(limit.atMost, wait)});
        }
    }

    const Network& m_network;
    const RunSheet& m_sheet;
    std::vector<Seconds> m_lengths;
    std::vector<SequenceArc> m_arcs;         ///< those of the limits last
    std::size_t m_sequenceArcs = 0;  ///< all but those
};

}  // namespace

std::vector<Seconds> heatingLengths(const Network& network) {
    const DurationDraw draw(network);
    std::vector<Seconds> lengths(network.activities.size());
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        if (heats(network.activities[i].kind)) {
            lengths[i] = draw.quantile(static_cast<int>(i), kHeatingShare);
        }
    }
    return lengths;
}

BackTiming backTimingOf(const Network& network, const RunSheet& sheet, const std::vector<Seconds>& heating) {
    std::vector<Seconds> lengths;
    for (const ActivitySpan& span : sheet.activities) {
        lengths.push_back(span.end - span.start);
    }
    BackTiming timing;
    const SequenceOfSheet asPlanned(network, sheet, lengths);
    timing.slack = asPlanned.latestStarts(sheet.classEnd, sheet.kitchenEnd);
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        timing.slack[i] -= sheet.activities[i].start;
        if (!heating.empty() && heating[i] > Seconds::zero()) {
            lengths[i] = heating[i];
        }
    }
    const SequenceOfSheet fromTheSlot(network, sheet, lengths);
    // A kitchen without an end of its own is bounded by the class where the closing comes last, and not at all
    // otherwise.
    const Seconds kitchenSlot =
        network.kitchenSlot.value_or(std::max(network.slot, sheet.kitchenEnd + network.slot - sheet.classEnd));
    timing.latestStart = fromTheSlot.latestStarts(network.slot, kitchenSlot);
    for (const Load& load : network.loads) {
        timing.latestLoadIn.push_back(timing.latestStart[static_cast<std::size_t>(load.lower)]);
    }
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        if (network.activities[i].kind == ActivityKind::Preheat &&
            (!timing.latestHeatOn || timing.latestStart[i] < *timing.latestHeatOn)) {
            timing.latestHeatOn = timing.latestStart[i];
        }
    }
    return timing;
}

}  // namespace brinebell
