#include "explore/Explorer.h"

#include <fmt/format.h>

#include <algorithm>
#include <ctime>
#include <unordered_map>
#include <unordered_set>

#include "explore/Hearing.h"
#include "explore/StateDigest.h"
#include "explore/World.h"

namespace brinebell::explore {

namespace {

constexpr std::uint32_t kNone = 0xffffffffU;
constexpr Millis kNap{10'001};  // just over kWatchGap of the runner
constexpr Millis kCrash{3'000};
constexpr Millis kRestart{20'000};

/// How a state was first reached.
struct Node {
    std::uint32_t parent = kNone;
    std::uint32_t event = kNone;  ///< of m_events; a step makes one event or none
    std::int16_t happening = -1;  ///< a Happening, or -1: a press
    std::uint16_t depth = 0;
    bool closed = false;
    bool lifted = false;    ///< every load was
    bool setAside = false;  ///< some load was
    Millis at{};
    std::uint64_t exactly = 0;  ///< of the State that was lived
};

class Exploring {
public:
    Exploring(const ExploredClass& explored, const Machine& machine, std::size_t mostStates)
        : m_explored(explored), m_machine(machine), m_most(mostStates) {}

    Report run();

private:
    void begin();
    void expand(std::uint32_t from);
    void press(const Command& command, std::uint32_t from, const World& world);
    void happen(Happening happening, std::uint32_t from, const World& world);
    bool take(World& world, std::vector<Event> events, Node& node);
    void arrive(World world, Node node);
    World rebuilt(std::uint32_t node);
    std::vector<std::uint32_t> pathTo(std::uint32_t node) const;
    std::optional<Millis> nextInstant(const World& world) const;
    std::optional<Millis> nextEdge(const World& world) const;
    std::optional<Millis> nextChange(const World& world) const;
    void listen(const World& world);
    void proveReachable(bool Node::*goal, bool Node::*exempt, const char* what);
    void fail(Invariant invariant, std::string what, std::uint32_t parent, const Node* last = nullptr);
    std::string lineOf(const Node& node) const;
    void count(Invariant invariant) { ++m_report.checks[static_cast<std::size_t>(invariant) - 1]; }

    const ExploredClass& m_explored;
    const Machine& m_machine;
    std::size_t m_most;
    Report m_report;
    std::vector<Node> m_nodes;
    std::vector<Event> m_events;
    std::unordered_map<std::uint64_t, std::uint32_t> m_seen;
    std::unordered_set<std::uint64_t> m_heard;
    std::vector<std::pair<std::uint32_t, std::uint32_t>> m_ways;
};

Report Exploring::run() {
    const std::clock_t begun = std::clock();
    m_seen.reserve(std::min<std::size_t>(m_most, 4'000'000));
    begin();
    std::uint32_t next = 0;
    while (!m_report.found && next < m_nodes.size() && m_nodes.size() < m_most) {
        expand(next++);
    }
    m_report.complete = !m_report.found && next == m_nodes.size();
    if (m_report.complete) {
        proveReachable(&Node::closed, nullptr, "no way leads from here to the end of the session");
    }
    if (m_report.complete && !m_report.found) {
        proveReachable(&Node::lifted, &Node::setAside, "no way leads from here to jars that are lifted");
    }
    m_report.states = m_nodes.size();
    m_report.transitions = m_ways.size();
    m_report.seconds = static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
    return std::move(m_report);
}

void Exploring::begin() {
    World world(m_explored);
    Command start;
    start.kind = CommandKind::StartSession;
    start.value = 1;
    Decision decision = m_machine.decide(m_explored.network, world.state, start, world.stamp());
    Node node;
    if (take(world, std::get<std::vector<Event>>(std::move(decision)), node)) {
        arrive(std::move(world), node);
    }
}

std::vector<std::uint32_t> Exploring::pathTo(std::uint32_t node) const {
    std::vector<std::uint32_t> path;
    for (; node != kNone; node = m_nodes[node].parent) {
        path.push_back(node);
    }
    std::reverse(path.begin(), path.end());
    return path;
}

// The log of the state is replayed as after a crash, and must give what was lived.
World Exploring::rebuilt(std::uint32_t index) {
    World world(m_explored);
    std::vector<Event> log;
    for (const std::uint32_t step : pathTo(index)) {
        const Node& node = m_nodes[step];
        world.state.lastSequence = static_cast<std::int64_t>(log.size());
        if (node.happening >= 0) {
            world.pass(static_cast<Happening>(node.happening), node.at);
        }
        if (node.event != kNone) {
            log.push_back(m_events[node.event]);
            world.took(log.back());
        }
    }
    Result<State> replayed = m_machine.replay(m_explored.network, log);
    count(Invariant::ReplayIsLiving);
    Digest digest;
    if (replayed) {
        addExactly(digest, *replayed);
    }
    if (!replayed || digest.value() != m_nodes[index].exactly) {
        fail(Invariant::ReplayIsLiving, "replaying the log of this state gives another", index);
    } else {
        world.state = std::move(*replayed);
    }
    return world;
}

void Exploring::expand(std::uint32_t from) {
    const World world = rebuilt(from);
    if (m_report.found) {
        return;
    }
    m_report.depth = std::max<std::size_t>(m_report.depth, m_nodes[from].depth);
    for (const Command& command : m_explored.presses) {
        if (world.allows(m_explored.bounds, command.kind)) {
            press(command, from, world);
        }
    }
    for (int h = 0; h < kHappenings; ++h) {
        if (world.allows(m_explored.bounds, static_cast<Happening>(h))) {
            happen(static_cast<Happening>(h), from, world);
        }
    }
}

void Exploring::press(const Command& command, std::uint32_t from, const World& world) {
    if (m_report.found) {
        return;
    }
    Decision decision = m_machine.decide(m_explored.network, world.state, command, world.stamp());
    if (std::holds_alternative<Refusal>(decision)) {
        ++m_report.refusals;
        if (command.kind == CommandKind::SetAside) {
            count(Invariant::EndIsReachable);
            if (!world.state.closed && world.shadow.mayBeSetAside(command.load)) {
                fail(Invariant::EndIsReachable, "a load in work cannot be set aside", from);
            }
        }
        return;
    }
    Node node;
    node.parent = from;
    node.at = world.now();
    World next = world;
    if (take(next, std::get<std::vector<Event>>(std::move(decision)), node)) {
        arrive(std::move(next), node);
    }
}

void Exploring::happen(Happening happening, std::uint32_t from, const World& world) {
    Millis to = world.now();
    if (happening == Happening::Wait) {
        const auto instant = nextInstant(world);
        if (!instant) {
            return;
        }
        to = *instant;
    } else if (happening == Happening::SleepOver) {
        const auto edge = nextEdge(world);
        if (!edge || *edge - to < kNap) {
            return;
        }
        to = *edge + Millis(1);
    } else if (isUnwatched(happening)) {
        to += happening == Happening::Nap ? kNap : happening == Happening::Crash ? kCrash : kRestart;
    }
    if (m_report.found) {
        return;
    }
    Node node;
    node.parent = from;
    node.happening = static_cast<std::int16_t>(happening);
    node.at = to;
    World next = world;
    next.pass(happening, to);
    if (isUnwatched(happening)) {
        Command report;
        report.kind = CommandKind::ReportGap;
        report.value = next.gap(happening, world.now());
        Decision decision = m_machine.decide(m_explored.network, next.state, report, next.stamp());
        if (std::holds_alternative<Refusal>(decision)) {
            fail(Invariant::LiftOnlyAfterBoilAndRest, "time unwatched is not taken note of", from, &node);
            return;
        }
        if (!take(next, std::get<std::vector<Event>>(std::move(decision)), node)) {
            return;
        }
    }
    arrive(std::move(next), node);
}

/// Applies what was decided. False when it broke a rule.
bool Exploring::take(World& world, std::vector<Event> events, Node& node) {
    for (const Event& event : events) {
        node.event = static_cast<std::uint32_t>(m_events.size());
        m_events.push_back(event);
        const auto wrong = world.shadow.judge(event, world.now(), m_report.checks);
        Result<State> next = m_machine.apply(m_explored.network, std::move(world.state), event);
        if (wrong || !next || events.size() != 1) {
            fail(wrong ? wrong->invariant : Invariant::ReplayIsLiving,
                 wrong ? wrong->what : "what was decided cannot be applied", node.parent, &node);
            return false;
        }
        world.state = std::move(*next);
        m_report.lifts +=
            event.kind == EventKind::ActivityStarted &&
                    m_explored.network.activities[static_cast<std::size_t>(event.activity)].kind == ActivityKind::Lift
                ? 1U
                : 0U;
        world.took(event);
    }
    return true;
}

void Exploring::arrive(World world, Node node) {
    const auto [place, isNew] =
        m_seen.try_emplace(world.digest(m_explored), static_cast<std::uint32_t>(m_nodes.size()));
    if (node.parent != kNone && place->second != node.parent) {
        m_ways.emplace_back(node.parent, place->second);
    }
    if (!isNew) {
        if (node.event != kNone) {
            m_events.pop_back();
        }
        return;
    }
    Digest exactly;
    addExactly(exactly, world.state);
    node.exactly = exactly.value();
    node.depth = node.parent == kNone ? 0 : static_cast<std::uint16_t>(m_nodes[node.parent].depth + 1);
    node.closed = world.state.closed;
    node.lifted = true;
    for (int l = 0; l < static_cast<int>(m_explored.network.loads.size()); ++l) {
        node.lifted = node.lifted && world.shadow.isLifted(l);
        node.setAside = node.setAside || world.shadow.isSetAside(l);
    }
    m_report.closed += node.closed ? 1U : 0U;
    m_nodes.push_back(node);
    const Millis elapsed = m_machine.elapsedAt(world.state, world.stamp());
    if (const auto wrong = world.shadow.compare(m_machine, world.state, elapsed, world.now(), m_report.checks)) {
        fail(wrong->invariant, wrong->what, place->second);
        return;
    }
    listen(world);
}

// Sets of cues are few, so each is listened to once.
void Exploring::listen(const World& world) {
    const Millis elapsed = m_machine.elapsedAt(world.state, world.stamp());
    const std::vector<Cue> standing = m_machine.cuesAt(m_explored.network, world.state, elapsed);
    Digest digest;
    for (const Cue& cue : standing) {
        digest.add(static_cast<int>(cue.kind));
        digest.add(static_cast<int>(cue.reason));
        digest.add(cue.activity);
        digest.add(std::min(elapsed - cue.since, Millis(30'000)));
    }
    if (!m_heard.insert(digest.value()).second) {
        return;
    }
    count(Invariant::DueCueRepeats);
    if (auto wrong = notHeardAgain(standing, elapsed)) {
        fail(Invariant::DueCueRepeats, std::move(*wrong), static_cast<std::uint32_t>(m_nodes.size() - 1));
    }
}

// ---- time
// -----------------------------------------------------------------------------------------------------------

// What the cues say of the next moment is asked as well: it may be one that the shadow knows nothing of.
std::optional<Millis> Exploring::nextChange(const World& world) const {
    const Millis elapsed = m_machine.elapsedAt(world.state, world.stamp());
    const auto change = m_machine.nextChange(m_explored.network, world.state, elapsed);
    return change ? std::optional(world.now() + (*change - elapsed)) : std::nullopt;
}

std::optional<Millis> Exploring::nextInstant(const World& world) const {
    std::optional<Millis> next = nextChange(world);
    std::vector<Millis> edges;
    world.shadow.addEdges(world.now(), edges);
    for (const Millis edge : edges) {
        for (const Millis instant : {edge - Millis(1), edge, edge + Millis(1)}) {
            if (instant > world.now() && (!next || instant < *next)) {
                next = instant;
            }
        }
    }
    return next;
}

std::optional<Millis> Exploring::nextEdge(const World& world) const {
    std::optional<Millis> next = nextChange(world);
    std::vector<Millis> edges;
    world.shadow.addEdges(world.now(), edges);
    for (const Millis edge : edges) {
        if (edge > world.now() && (!next || edge < *next)) {
            next = edge;
        }
    }
    return next;
}

// ---- the way to the end
// -----------------------------------------------------------------------------------------------

// Backwards from every state that has the goal; what is left over has no way to it.
void Exploring::proveReachable(bool Node::*goal, bool Node::*exempt, const char* what) {
    std::vector<std::uint32_t> first(m_nodes.size() + 1, 0), sources(m_ways.size());
    for (const auto& [from, to] : m_ways) {
        ++first[to + 1];
    }
    for (std::size_t n = 1; n < first.size(); ++n) {
        first[n] += first[n - 1];
    }
    std::vector<std::uint32_t> place = first;
    for (const auto& [from, to] : m_ways) {
        sources[place[to]++] = from;
    }
    std::vector<bool> reaches(m_nodes.size());
    std::vector<std::uint32_t> open;
    for (std::uint32_t n = 0; n < m_nodes.size(); ++n) {
        if (m_nodes[n].*goal) {
            reaches[n] = true;
            open.push_back(n);
        }
    }
    while (!open.empty()) {
        const std::uint32_t n = open.back();
        open.pop_back();
        for (std::uint32_t k = first[n]; k < first[n + 1]; ++k) {
            if (!reaches[sources[k]]) {
                reaches[sources[k]] = true;
                open.push_back(sources[k]);
            }
        }
    }
    for (std::uint32_t n = 0; n < m_nodes.size(); ++n) {
        count(Invariant::EndIsReachable);
        if (!reaches[n] && (exempt == nullptr || !(m_nodes[n].*exempt))) {
            fail(Invariant::EndIsReachable, what, n);  // nodes stand in the order of their distance
            return;
        }
    }
}

// ---- telling
// ---------------------------------------------------------------------------------------------------------

std::string Exploring::lineOf(const Node& node) const {
    std::string text;
    if (node.happening >= 0) {
        text = toText(static_cast<Happening>(node.happening));
    }
    if (node.event != kNone) {
        const Event& event = m_events[node.event];
        text += text.empty() ? "" : ": ";
        text += brinebell::toText(event.kind);
        if (event.activity >= 0) {
            text += " " + m_explored.network.activities[static_cast<std::size_t>(event.activity)].title;
        }
        if (event.kind == EventKind::GapFound || event.kind == EventKind::Undone) {
            text += fmt::format(" {}", event.value);
        }
    }
    const auto ms = node.at.count();
    return fmt::format("{:>4}:{:02}.{:03}  {}", ms / 60'000, ms / 1000 % 60, ms % 1000, text);
}

void Exploring::fail(Invariant invariant, std::string what, std::uint32_t parent, const Node* last) {
    if (m_report.found) {
        return;
    }
    Found found{{invariant, std::move(what)}, {}};
    for (const std::uint32_t step : parent == kNone ? std::vector<std::uint32_t>{} : pathTo(parent)) {
        found.trace.push_back(lineOf(m_nodes[step]));
    }
    if (last != nullptr) {
        found.trace.push_back(lineOf(*last));
    }
    m_report.found = std::move(found);
}

}  // namespace

Report exploreAll(const ExploredClass& explored, const Machine& machine, std::size_t mostStates) {
    return Exploring(explored, machine, mostStates).run();
}

}  // namespace brinebell::explore
