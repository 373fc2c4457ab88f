#include "session/Rehearsal.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "base/Random.h"
#include "plan/Replan.h"
#include "session/CannerSteps.h"

namespace brinebell {

namespace {

constexpr Millis kReaction{2'000};     ///< from seeing a prompt to answering it
constexpr Millis kLongestStep{8'000};  ///< the presenter looks at the board at least this often
constexpr Seconds kLater{30};          ///< a class later by less than this is not planned anew
constexpr Millis kGiveUp{std::chrono::hours(24)};

class Presenter {
public:
    Presenter(const Network& network, EventStore& store, const RehearsalOptions& options)
        : m_options(options),
          m_clock(Stamp{network.startUtc, Millis::zero(), BootId{0, 1}}),
          m_runner(network, m_clock, store) {
        Random random(options.seed);
        for (const Activity& a : network.activities) {
            const double seconds = random.triangular(static_cast<double>(a.duration.low.count()),
                                                     static_cast<double>(a.duration.likely.count()),
                                                     static_cast<double>(a.duration.high.count()));
            m_drawn.push_back(Seconds(static_cast<std::int64_t>(seconds + 0.5)));
        }
        m_runner.onEvents([this](std::span<const Event> events) {
            if (m_options.progress) {
                m_options.progress(m_runner, events);
            }
        });
    }

    Result<std::vector<Event>> play();

private:
    /// What the outlook comes to, as far as it is a reason to plan anew.
    struct Outcome {
        Seconds classEnd{};
        std::vector<int> broken;  ///< limits
    };
    bool press(const std::optional<Prompt>& prompt, Cause cause);
    bool loseBoil();
    Outcome outcome() const;
    void planAnew();
    Millis readyAt(const Prompt& prompt) const;
    Millis nextLook(const Guide& guide) const;
    void noteShown(const Guide& guide);
    Millis startedAt(int activity) const {
        return *m_runner.state().activities[static_cast<std::size_t>(activity)].started;
    }
    Millis drawn(int activity) const { return m_drawn[static_cast<std::size_t>(activity)]; }

    const RehearsalOptions& m_options;
    ManualClock m_clock;
    SessionRunner m_runner;
    std::vector<Seconds> m_drawn;
    std::optional<Prompt> m_tapShown, m_holdShown;
    Millis m_tapSince{}, m_holdSince{};
    bool m_boilLost = false;
    Outcome m_weighed;  ///< what the last planning anew came to
};

// When the presenter would answer a prompt: done things when they are done, said things when they are said.
Millis Presenter::readyAt(const Prompt& prompt) const {
    const bool held = m_holdShown && prompt == *m_holdShown;
    const Millis seen = (held ? m_holdSince : m_tapSince) + kReaction;
    switch (prompt.kind) {
        case PromptKind::StartSession:
            return Millis::zero();  // session time stands still until it starts
        case PromptKind::FinishActivity:
            return std::max(seen, startedAt(prompt.activity) + drawn(prompt.activity));
        case PromptKind::SeeBoil:
        case PromptKind::SeeSteam:
        case PromptKind::SeePressure:
        case PromptKind::SeeZero: {
            const auto l = static_cast<std::size_t>(prompt.load);
            const int ends = awaitedSight(m_runner.network().loads[l], m_runner.state().loads[l])->activity;
            return std::max(seen, startedAt(ends) + drawn(ends));
        }
        case PromptKind::SayPoint:
            return m_tapSince + m_runner.network().talk[static_cast<std::size_t>(prompt.talk)].length;
        case PromptKind::DoPulse:
            return m_tapSince +
                   Millis(m_runner.network().activities[static_cast<std::size_t>(prompt.activity)].pulse->takes);
        default:
            return seen;
    }
}

bool Presenter::press(const std::optional<Prompt>& prompt, Cause cause) {
    if (!prompt || readyAt(*prompt) > m_runner.elapsed()) {
        return false;
    }
    Command command = prompt->command;
    if (prompt->kind == PromptKind::StartSession) {
        command.value = 2;
    }
    return !m_runner.perform(command, cause).has_value();
}

// The drill: the first load's boil or pressure is lost half-way through its process time, once.
bool Presenter::loseBoil() {
    if (!m_options.loseBoilOnce || m_boilLost || m_runner.state().loads.empty()) {
        return false;
    }
    const LoadState& load = m_runner.state().loads.front();
    if (load.phase != LoadPhase::Timing || m_runner.elapsed() < *load.timingStarted + load.required / 2) {
        return false;
    }
    m_boilLost = true;
    Command command;
    command.kind = CommandKind::LoseBoil;
    command.load = 0;
    return !m_runner.perform(command, Cause::Rehearsal).has_value();
}

Presenter::Outcome Presenter::outcome() const {
    Outcome now{m_runner.outlook().classEnd, {}};
    for (const BrokenLimit& broken : m_runner.outlook().broken) {
        now.broken.push_back(broken.limit);
    }
    return now;
}

// Only where there is something to mend, and anew only when that has grown: a class that stays as late as it was when
// nothing better was found is not searched again after every press.
void Presenter::planAnew() {
    if (!m_options.replans || !m_runner.state().started || m_runner.state().closed) {
        return;
    }
    const Outcome now = outcome();
    const bool isLater = now.classEnd > std::max(m_runner.planned().classEnd, m_weighed.classEnd) + kLater;
    if (!isLater && (now.broken.empty() || now.broken == m_weighed.broken)) {
        return;
    }
    const Progress progress = progressOf(m_runner.network(), m_runner.state(), m_clock.now());
    m_runner.advise(replan(m_runner.network(), m_runner.policy(), progress));
    m_weighed = outcome();
}

void Presenter::noteShown(const Guide& guide) {
    const Millis now = m_runner.elapsed();
    if (guide.tap != m_tapShown) {
        m_tapShown = guide.tap;
        m_tapSince = now;
    }
    if (guide.hold != m_holdShown) {
        m_holdShown = guide.hold;
        m_holdSince = now;
    }
}

// The next moment at which anything can be different: an answer, a cue, the outlook's next start.
Millis Presenter::nextLook(const Guide& guide) const {
    const Millis now = m_runner.elapsed();
    Millis next = now + kLongestStep;
    const auto consider = [&](Millis moment) {
        if (moment > now) {
            next = std::min(next, moment);
        }
    };
    for (const auto& prompt : {guide.tap, guide.hold}) {
        if (prompt) {
            consider(readyAt(*prompt));
        }
    }
    if (const auto change = nextChange(m_runner.network(), m_runner.state(), now)) {
        consider(*change);
    }
    for (const ActivitySpan& span : m_runner.outlook().activities) {
        consider(span.start);
    }
    return next;
}

Result<std::vector<Event>> Presenter::play() {
    while (!m_runner.state().closed) {
        const Guide guide = m_runner.guide();
        noteShown(guide);
        const bool acted = loseBoil() || press(guide.hold, Cause::HeldKey) || press(guide.tap, Cause::Key);
        if (m_runner.fault()) {
            return tl::unexpected<Error>(*m_runner.fault());
        }
        if (acted) {
            planAnew();
            continue;
        }
        if (m_runner.elapsed() > kGiveUp) {
            return fail(ErrorCode::Refused,
                        core::say("the rehearsal came to a stand: nothing leads on to the end of the class"));
        }
        m_clock.advance(nextLook(guide) - m_runner.elapsed());
        m_runner.watch();
    }
    return m_runner.events();
}

}  // namespace

Result<std::vector<Event>> rehearse(const Network& network, EventStore& store, const RehearsalOptions& options) {
    return Presenter(network, store, options).play();
}

}  // namespace brinebell
