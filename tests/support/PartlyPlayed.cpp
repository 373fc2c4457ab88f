#include "support/PartlyPlayed.h"

#include <algorithm>

namespace brinebell::support {

namespace {

std::vector<Seconds> drawnDurations(const Network& network, Random& random) {
    std::vector<Seconds> drawn;
    for (const Activity& a : network.activities) {
        drawn.push_back(a.duration.low + Seconds(random.below(static_cast<std::uint64_t>(
                                             (a.duration.high - a.duration.low).count() + 1))));
    }
    return drawn;
}

/// What has happened by `now` when everything went as `played` says.
Progress progressAt(const RunSheet& played, std::size_t holds, Seconds now) {
    Progress progress;
    progress.now = now;
    for (const ActivitySpan& span : played.activities) {
        ActivityProgress& a = progress.activities.emplace_back();
        if (span.start <= now) {
            a.started = span.start;
        }
        if (span.end <= now) {
            a.ended = span.end;
        }
    }
    for (const HandSpan& span : played.hands) {
        ActivityProgress& a = progress.activities[static_cast<std::size_t>(span.activity)];
        if (span.to <= now && (span.work == HandWork::Start || span.work == HandWork::Pulse)) {
            a.lastPulse = std::max(a.lastPulse.value_or(span.to), span.to);
        }
    }
    progress.stationOf.assign(holds, -1);
    for (const StationSpan& span : played.stations) {
        if (span.from <= now) {
            progress.stationOf[static_cast<std::size_t>(span.stationHold)] = span.station;
        }
    }
    return progress;
}

}  // namespace

Past pastOf(const Progress& progress) {
    Past past;
    past.now = progress.now.count();
    const auto plain = [](const std::optional<Seconds>& s) {
        return s ? std::optional<long long>(s->count()) : std::nullopt;
    };
    for (const ActivityProgress& a : progress.activities) {
        past.activities.push_back({plain(a.started), plain(a.ended), plain(a.lastPulse)});
    }
    return past;
}

Played playPartly(const Network& network, Random& random) {
    const std::vector<Seconds> drawn = drawnDurations(network, random);
    DispatchOptions options;
    options.durations = &drawn;
    Played played{dispatch(network, defaultOrder(network), {}, options), {}};
    const auto end = static_cast<std::uint64_t>(played.sheet.kitchenEnd.count());
    played.progress = progressAt(played.sheet, network.stationHolds.size(), Seconds(random.below(end + 1)));
    return played;
}

}  // namespace brinebell::support
