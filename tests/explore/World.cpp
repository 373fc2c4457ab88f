#include "explore/World.h"

#include <algorithm>

#include "explore/StateDigest.h"

namespace brinebell::explore {

namespace {

constexpr Millis kBeginsUtc{1'790'000'000'000};  // in September 2026

}  // namespace

std::string_view toText(Happening happening) {
    switch (happening) {
        case Happening::Wait:
            return "time passes";
        case Happening::Nap:
        case Happening::SleepOver:
            return "the machine has slept";
        case Happening::Crash:
            return "the program has crashed and replayed its log";
        case Happening::Restart:
            return "the machine was restarted";
        case Happening::WallForward:
            return "the wall clock is set an hour forward";
        case Happening::WallBack:
            return "the wall clock is set an hour back";
    }
    return {};
}

Stamp World::stamp() const {
    return {kBeginsUtc + m_now + m_wallShift, m_now - m_bootBegan, BootId{7, m_boot}};
}

void World::pass(Happening happening, Millis moment) {
    const Millis from = m_now;
    m_now = moment;
    if (happening == Happening::WallForward || happening == Happening::WallBack) {
        m_wallShift += std::chrono::hours(happening == Happening::WallForward ? 1 : -1);
        ++m_used.wallJumps;
        ++m_used.troubles;
    }
    if (happening == Happening::Restart) {
        m_bootBegan = m_now;
        ++m_boot;
        shadow.restarted(m_lastEvent, m_now);
    }
    if (isUnwatched(happening)) {
        shadow.unwatched(from, m_now, state.lastSequence + 1);
        ++m_used.gaps;
        ++m_used.troubles;
    }
}

// What the runner reports: after a crash it only knows of the last event, and within one run it watched until `from`.
std::int64_t World::gap(Happening happening, Millis from) const {
    const bool resumed = happening == Happening::Crash || happening == Happening::Restart;
    const Millis gap = resumed ? elapsedBetween(state.lastStamp, stamp()) : m_now - from;
    return std::max<std::int64_t>(gap.count(), 1);
}

void World::took(const Event& event) {
    shadow.add(event, m_now);
    m_lastEvent = m_now;
    m_wallShiftAtEvent = m_wallShift;
    m_used.looks += event.kind == EventKind::PulseDone ? 1 : 0;
    const int lost = event.kind == EventKind::BoilLost ? 1 : 0;
    const int undone = event.kind == EventKind::Undone ? 1 : 0;
    m_used.lostBoils += lost;
    m_used.undos += undone;
    m_used.troubles += lost + undone;
}

std::uint64_t World::digest(const ExploredClass& explored) const {
    Digest digest;
    const Bounds& bounds = explored.bounds;
    const int left = std::min(bounds.undos - m_used.undos, bounds.troubles - m_used.troubles);
    const auto undos = static_cast<std::size_t>(std::max(left, 0));
    addWhatMatters(digest, explored, state, undos);
    shadow.digest(digest, m_lastEvent, undos);
    digest.add(m_now - m_lastEvent);
    digest.add(m_wallShift - m_wallShiftAtEvent);
    for (const int used : {m_used.looks, m_used.lostBoils, m_used.gaps, m_used.wallJumps, m_used.undos}) {
        digest.add(used);
    }
    return digest.value();
}

bool World::allows(const Bounds& bounds, Happening happening) const {
    if (state.closed) {
        return false;
    }
    const bool anyLeft = m_used.troubles < bounds.troubles;
    if (happening == Happening::WallForward || happening == Happening::WallBack) {
        return anyLeft && m_used.wallJumps < bounds.wallJumps;
    }
    return happening == Happening::Wait || (anyLeft && m_used.gaps < bounds.gaps);
}

bool World::allows(const Bounds& bounds, CommandKind press) const {
    switch (press) {
        case CommandKind::Pulse:
            return m_used.looks < bounds.looks;
        case CommandKind::LoseBoil:
            return m_used.lostBoils < bounds.lostBoils && m_used.troubles < bounds.troubles;
        case CommandKind::Undo:
            return m_used.undos < bounds.undos && m_used.troubles < bounds.troubles;
        default:
            return true;
    }
}

}  // namespace brinebell::explore
