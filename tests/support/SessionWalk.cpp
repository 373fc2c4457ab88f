#include "support/SessionWalk.h"

#include <array>
#include <stdexcept>

namespace brinebell::support {

namespace {

constexpr Millis kStartUtc{1'790'000'000'000};  // in September 2026

Command ofActivity(CommandKind kind, int activity) {
    Command command;
    command.kind = kind;
    command.activity = activity;
    return command;
}

Command ofLoad(CommandKind kind, int load) {
    Command command;
    command.kind = kind;
    command.load = load;
    return command;
}

/// Every command that a press on the board could be.
std::vector<Command> pressesFor(const Network& network) {
    std::vector<Command> presses;
    for (int i = 0; i < static_cast<int>(network.activities.size()); ++i) {
        presses.push_back(ofActivity(CommandKind::Start, i));
        presses.push_back(ofActivity(CommandKind::Finish, i));
        if (network.activities[static_cast<std::size_t>(i)].pulse) {
            presses.push_back(ofActivity(CommandKind::Pulse, i));
        }
    }
    for (int l = 0; l < static_cast<int>(network.loads.size()); ++l) {
        for (const CommandKind kind :
             {CommandKind::CheckWater, CommandKind::SeeBoil, CommandKind::SeeSteam, CommandKind::CloseVent,
              CommandKind::SeeZero, CommandKind::VouchBoil, CommandKind::TurnHeatOff}) {
            presses.push_back(ofLoad(kind, l));
        }
        const Load& load = network.loads[static_cast<std::size_t>(l)];
        Command pressure = ofLoad(CommandKind::SeePressure, l);
        pressure.value = load.pressure ? load.pressure->gaugePsi : 11;
        presses.push_back(pressure);
        Command seals = ofLoad(CommandKind::CheckSeals, l);
        seals.sealed = load.jars;
        seals.value = 1;
        presses.push_back(seals);
    }
    for (std::size_t t = 0; t < network.talk.size(); ++t) {
        Command say;
        say.kind = CommandKind::SayPoint;
        say.value = static_cast<std::int64_t>(t);
        presses.push_back(say);
    }
    return presses;
}

std::optional<Command> acceptedPress(const SessionWalk& walk, Random& random) {
    std::vector<Command> accepted;
    for (const Command& press : pressesFor(walk.network())) {
        const Decision decision = decide(walk.network(), walk.state(), press, walk.now(), Cause::Key);
        if (std::holds_alternative<std::vector<Event>>(decision)) {
            accepted.push_back(press);
        }
    }
    if (accepted.empty()) {
        return std::nullopt;
    }
    return accepted[random.below(accepted.size())];
}

/// Any command with any numbers, in and out of range.
Command anyCommand(const SessionWalk& walk, Random& random) {
    const auto upTo = [&](std::size_t n) { return static_cast<int>(random.below(n + 2)) - 1; };
    Command command;
    command.kind = static_cast<CommandKind>(random.below(static_cast<std::uint64_t>(CommandKind::CloseSession) + 1));
    // Of all kinds there are, what hurts most must not be met too seldom.
    if (random.below(12) == 0) {
        command.kind = CommandKind::LoseBoil;
    }
    command.activity = upTo(walk.network().activities.size());
    command.load = upTo(walk.network().loads.size());
    command.value = upTo(4);
    command.sealed = upTo(5);
    command.unsealed = upTo(5);
    command.broken = upTo(5);
    if (random.below(3) > 0) {
        command.text = std::string(random.below(200) == 0 ? 3000 : 5, 'x');
    }
    // Setting aside and skipping end a walk early, so they are rarer than the rest.
    const bool ends = command.kind == CommandKind::SetAside || command.kind == CommandKind::CloseSession ||
                      command.kind == CommandKind::Skip;
    if (ends && random.below(8) > 0) {
        command.kind = CommandKind::Undo;
    }
    if (command.kind == CommandKind::ReportGap) {  // nobody was watching at most since the last event
        const auto since = elapsedBetween(walk.state().lastStamp, walk.now()).count();
        command.value = static_cast<std::int64_t>(random.below(static_cast<std::uint64_t>(since) + 1));
    }
    return command;
}

void passTime(SessionWalk& walk, Random& random) {
    constexpr std::array<std::int64_t, 12> kWaits{0,       1,       999,     1'000,   20'000,  60'000,
                                                  119'999, 299'999, 300'000, 899'999, 900'000, 1'200'000};
    walk.wait(Millis(kWaits[random.below(kWaits.size())]));
    switch (random.below(40)) {
        case 0:
            walk.setWallClock(walk.now().utc - std::chrono::hours(random.below(30)));
            break;
        case 1:
            walk.setWallClock(walk.now().utc + std::chrono::hours(random.below(30)));
            break;
        case 2:
            walk.reboot(std::chrono::seconds(random.below(600)));
            break;
        default:
            break;
    }
}

}  // namespace

SessionWalk::SessionWalk(Network network)
    : m_network(std::move(network)),
      m_state(initialState(m_network)),
      m_clock(Stamp{kStartUtc, Millis(5'000'000), BootId{7, 1}}) {}

std::optional<Refusal> SessionWalk::send(const Command& command) {
    const Decision decision = decide(m_network, m_state, command, m_clock.now(), Cause::Key);
    if (const auto* refusal = std::get_if<Refusal>(&decision)) {
        return *refusal;
    }
    for (const Event& event : std::get<std::vector<Event>>(decision)) {
        Result<State> next = apply(m_network, m_state, event);
        if (!next) {
            throw std::logic_error(describe(next.error()));
        }
        m_state = std::move(*next);
        m_events.push_back(event);
    }
    return std::nullopt;
}

std::optional<Refusal> SessionWalk::send(CommandKind kind, int load, std::int64_t value, std::string text) {
    Command command = ofLoad(kind, load);
    command.value = value;
    command.text = std::move(text);
    return send(command);
}

std::optional<Refusal> SessionWalk::start(int activity) {
    return send(ofActivity(CommandKind::Start, activity));
}

std::optional<Refusal> SessionWalk::finish(int activity) {
    return send(ofActivity(CommandKind::Finish, activity));
}

void SessionWalk::reboot(Millis off) {
    m_clock.setWallClock(m_clock.now().utc + off);
    m_clock.reboot(BootId{7, ++m_boots}, Millis::zero());
    if (m_state.started && !m_state.closed) {
        const Millis gap = elapsedBetween(m_state.lastStamp, m_clock.now());
        send(CommandKind::ReportGap, -1, std::max<std::int64_t>(gap.count(), 1));
    }
}

void stepAtRandom(SessionWalk& walk, Random& random) {
    if (!walk.state().started) {
        walk.send(CommandKind::StartSession, -1, 1);
        return;
    }
    passTime(walk, random);
    if (random.below(10) < 7) {
        if (const auto press = acceptedPress(walk, random)) {
            walk.send(*press);
            return;
        }
    }
    walk.send(anyCommand(walk, random));
}

}  // namespace brinebell::support
