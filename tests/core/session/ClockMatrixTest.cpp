// Every disturbance of the clocks in every state of every kind of canner, against bookkeeping of our own.
//
// The bookkeeping knows only the true time that went by and the rules of DEVELOPERS.md, "The canner", point 3: a count
// goes by true time, sleep included; what nobody watched of a boil or a venting is asked about; across a restart of the
// machine no count moves on.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <ctime>
#include <functional>

#include "session/SessionRunner.h"
#include "support/MemoryStore.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr Millis kProcess = minutes(15);  // of support::cannerOnly()
constexpr Millis kVenting = minutes(10);  // K-State Extension (Post Rock District, 2022), PNW 421
constexpr Millis kCoolDown = minutes(30);
constexpr Millis kBefore = seconds(61);  // in the state before the disturbance, watched

// Zones written out, so that no zone files are needed.
constexpr const char* kMountain = "MST7MDT,M3.2.0,M11.1.0";
constexpr const char* kEast = "IST-5:30";
constexpr const char* kWest = "HST10";

// 2026-03-08 02:00 and 2026-11-01 02:00 in the mountain zone, in UTC.
constexpr Millis kSpringForward = seconds(1'772'960'400);
constexpr Millis kFallBack = seconds(1'793'520'000);
constexpr Millis kOrdinaryDay = seconds(1'790'000'000);

struct Disturbance {
    std::string name;
    Millis passes{};               ///< true time that it takes
    bool asleep = false;           ///< the machine sleeps through it
    bool dead = false;             ///< the program is not there meanwhile, and takes the session up afterwards
    bool restart = false;          ///< of the machine
    Millis wallStep{};             ///< the wall clock is set by this much
    const char* zone = kMountain;  ///< afterwards
    Millis at = kOrdinaryDay;      ///< UTC

    bool unwatched() const { return asleep || dead; }
};

std::vector<Disturbance> disturbances() {
    const auto wall = [](std::string name, Millis step) {
        return Disturbance{std::move(name), minutes(1), false, false, false, step};
    };
    const auto sleep = [](std::string name, Millis time, Millis step = {}) {
        return Disturbance{std::move(name), time, true, false, false, step};
    };
    const auto death = [](std::string name, bool restart, Millis step) {
        return Disturbance{std::move(name), minutes(2), false, true, restart, step};
    };
    return {
        {"a quiet minute", minutes(1)},
        wall("wall clock forward an hour", hours(1)),
        wall("wall clock back an hour", -hours(1)),
        {"daylight saving begins", minutes(1), false, false, false, {}, kMountain, kSpringForward},
        {"daylight saving ends", minutes(1), false, false, false, {}, kMountain, kFallBack},
        {"to a zone in the east", minutes(1), false, false, false, {}, kEast},
        {"to a zone in the west", minutes(1), false, false, false, {}, kWest},
        sleep("sleep of 10 s", seconds(10)),
        sleep("sleep of 10 min", minutes(10)),
        sleep("sleep of 10 h", hours(10)),
        sleep("sleep of 10 min, wall clock forward an hour", minutes(10), hours(1)),
        sleep("sleep of 10 min, wall clock back an hour", minutes(10), -hours(1)),
        death("program stopped 2 min", false, {}),
        death("program stopped 2 min, wall clock forward an hour", false, hours(1)),
        death("program stopped 2 min, wall clock back an hour", false, -hours(1)),
        death("machine restarted", true, {}),
        death("machine restarted, wall clock forward an hour", true, hours(1)),
        death("machine restarted, wall clock back an hour", true, -hours(1)),
    };
}

struct Canner {
    std::string name;
    Method method;
    std::vector<LoadPhase> phases;
};

std::vector<Canner> canners() {
    using enum LoadPhase;
    const std::vector<LoadPhase> open{Filling, Lowered, Timing, Resting, Lifting, Cooling};
    return {{"boiling water", Method::BoilingWater, open},
            {"steam", Method::AtmosphericSteam, open},
            {"pressure",
             Method::PressureDial,
             {Filling, Lowered, Venting, Pressurising, Timing, LosingPressure, Resting, Lifting, Cooling}}};
}

/// What the session is told of the clocks. The honest one passes everything on.
using Telling = std::function<Stamp(const Stamp&)>;

/// The clock of a machine, as somebody tells of it.
class ToldClock final : public Clock {
public:
    ToldClock(const ManualClock& machine, Telling telling, bool tellsSleep)
        : m_machine(machine), m_telling(std::move(telling)), m_tellsSleep(tellsSleep) {}
    Stamp now() const override { return m_telling(m_machine.now()); }
    Millis asleep() const override { return m_tellsSleep ? m_machine.asleep() : Millis::zero(); }

private:
    const ManualClock& m_machine;
    Telling m_telling;
    bool m_tellsSleep;
};

struct Teller {
    std::function<Telling(const ManualClock&)> telling = [](const ManualClock&) {
        return [](const Stamp& stamp) { return stamp; };
    };
    bool tellsSleep = true;
};

/// One cell of the matrix: a class with one load, brought to a state, disturbed, and lived on to the end of its count.
class Cell {
public:
    Cell(const Canner& canner, LoadPhase phase, const Disturbance& disturbance, const Teller& teller)
        : m_canner(canner),
          m_phase(phase),
          m_disturbance(disturbance),
          m_clock(m_machine, teller.telling(m_machine), teller.tellsSleep),
          m_runner(support::cannerOnly(canner.method), m_clock, m_store) {
        m_name = fmt::format("{}, phase {}, {}", canner.name, static_cast<int>(phase), disturbance.name);
    }

    std::vector<std::string> run() {
        setZone(kMountain);
        bringToPhase();
        live(kBefore);
        disturb();
        check();
        liveToTheEnd();
        if (replay(m_runner.network(), m_store.events) != Result<State>(m_runner.state())) {
            complain("the log does not replay to what was lived");
        }
        setZone(nullptr);
        return std::move(m_complaints);
    }

private:
    static void setZone(const char* zone) {
        zone != nullptr ? setenv("TZ", zone, 1) : unsetenv("TZ");
        tzset();
    }

    void complain(const std::string& what) { m_complaints.push_back(m_name + ": " + what); }

    std::optional<Refusal> press(CommandKind kind, int activity = -1, std::int64_t value = 0) {
        Command command;
        command.kind = kind;
        command.activity = activity;
        command.load = activity < 0 ? 0 : -1;
        command.value = value;
        return m_runner.perform(command, Cause::Key);
    }
    void must(CommandKind kind, int activity = -1, std::int64_t value = 0) {
        if (press(kind, activity, value)) {
            complain(fmt::format("press {} was refused", static_cast<int>(kind)));
        }
    }

    // The program looks at the clock every second.
    void live(Millis time) {
        for (; time >= seconds(1); time -= seconds(1)) {
            m_machine.advance(seconds(1));
            m_runner.watch();
        }
        m_machine.advance(time);
        m_runner.watch();
    }

    void bringToPhase() {
        const Load planned = m_runner.network().loads[0];
        const bool pressure = planned.pressure.has_value();
        // The moment at which a season changes falls into the disturbance.
        m_machine.setWallClock(m_disturbance.at - seconds(30) - kBefore - timeTo(m_phase));
        m_runner.watch();
        must(CommandKind::StartSession, -1, 1);
        if (m_phase >= LoadPhase::Lowered) {
            must(CommandKind::Start, planned.lower);
            must(CommandKind::Finish, planned.lower);
        }
        if (m_phase > LoadPhase::Lowered && !planned.waterCheck.empty()) {
            must(CommandKind::CheckWater);
        }
        if (m_phase >= LoadPhase::Venting && pressure) {
            must(CommandKind::SeeSteam);
        }
        if (m_phase >= LoadPhase::Pressurising && pressure) {
            live(kVenting);
            must(CommandKind::CloseVent);
        }
        if (m_phase >= LoadPhase::Timing) {
            pressure ? must(CommandKind::SeePressure, -1, planned.pressure->gaugePsi) : must(CommandKind::SeeBoil);
        }
        if (m_phase > LoadPhase::Timing) {
            live(kProcess);
            must(CommandKind::TurnHeatOff);
        }
        if (m_phase >= LoadPhase::Resting && pressure) {
            live(kCoolDown);
            must(CommandKind::SeeZero);
        }
        if (m_phase >= LoadPhase::Lifting) {
            live(rest());
            must(CommandKind::Start, planned.lift);
        }
        if (m_phase >= LoadPhase::Cooling) {
            must(CommandKind::Finish, planned.lift);
        }
        if (load().phase != m_phase) {
            complain("the state was not reached");
        }
    }

    void disturb() {
        const Millis passes = m_disturbance.passes;
        const std::time_t before = std::chrono::duration_cast<Seconds>(m_machine.now().utc).count();
        if (m_disturbance.asleep) {
            m_machine.sleep(passes);
        } else if (m_disturbance.dead) {
            m_machine.advance(passes);
        }
        if (m_disturbance.restart) {
            m_machine.reboot(BootId{3, 4}, seconds(20));
        }
        m_machine.setWallClock(m_machine.now().utc + m_disturbance.wallStep);
        setZone(m_disturbance.zone);
        if (m_disturbance.dead) {
            takeUp();
        } else if (m_disturbance.asleep) {
            m_runner.watch();
        } else {
            live(passes);
        }
        const std::time_t after = std::chrono::duration_cast<Seconds>(m_machine.now().utc).count();
        std::tm local{};
        const int wasSummer = localtime_r(&before, &local)->tm_isdst;
        if (m_disturbance.at != kOrdinaryDay && localtime_r(&after, &local)->tm_isdst == wasSummer) {
            complain("no change of season fell into the disturbance");
        }
        // The truth: a count goes by true time; but a restart takes away all that followed the newest event, the press
        // that began the count, since nothing in the log says that anybody watched it.
        m_counted = m_disturbance.restart ? Millis::zero() : kBefore + passes;
    }

    void takeUp() {
        auto again = SessionRunner::resume(m_runner.network(), m_store.events, m_clock, m_store);
        if (!again) {
            complain("the session is not taken up: " + again.error().message);
            return;
        }
        m_runner = std::move(*again);
        m_runner.watch();
    }

    /// How long bringToPhase() takes.
    Millis timeTo(LoadPhase phase) const {
        const bool pressure = m_canner.method == Method::PressureDial;
        Millis time{};
        time += phase >= LoadPhase::Pressurising && pressure ? kVenting : Millis::zero();
        time += phase > LoadPhase::Timing ? kProcess : Millis::zero();
        time += phase >= LoadPhase::Resting && pressure ? kCoolDown : Millis::zero();
        time += phase >= LoadPhase::Lifting ? rest() : Millis::zero();
        return time;
    }

    Millis rest() const { return m_canner.method == Method::PressureDial ? minutes(10) : minutes(5); }
    bool asksAbout() const { return m_phase == LoadPhase::Venting || m_phase == LoadPhase::Timing; }
    std::optional<Millis> required() const {
        switch (m_phase) {
            case LoadPhase::Venting:
                return kVenting;
            case LoadPhase::Timing:
                return kProcess;
            case LoadPhase::Resting:
                return rest();
            default:
                return std::nullopt;
        }
    }
    Millis shownLeft() const {
        switch (m_phase) {
            case LoadPhase::Venting:
                return ventLeft(load(), m_runner.elapsed());
            case LoadPhase::Timing:
                return processLeft(load(), m_runner.elapsed());
            default:
                return restLeft(load(), m_runner.elapsed());
        }
    }
    const LoadState& load() const { return m_runner.state().loads[0]; }

    void check() {
        if (load().phase != m_phase) {
            complain("the state changed by itself");
            return;
        }
        const auto count = required();
        if (count && std::max(shownLeft(), Millis::zero()) != std::max(*count - m_counted, Millis::zero())) {
            complain(fmt::format("{} ms are shown, true are {}", shownLeft().count(), (*count - m_counted).count()));
        }
        const bool asked = m_disturbance.unwatched() && asksAbout();
        if (asked != (load().unwatched > Millis::zero())) {
            complain(asked ? "unwatched time is not asked about" : "watched time is asked about");
        }
        const bool exactly = m_disturbance.asleep;  // a program that was dead cannot know how long it had watched
        if (asked && exactly && load().unwatched != m_disturbance.passes) {
            complain(fmt::format("{} ms are asked about", load().unwatched.count()));
        }
        const Guide guide = m_runner.guide();
        const auto vouches = [](const auto& p) { return p && p->kind == PromptKind::VouchBoil; };
        if (asked != (vouches(guide.tap) || vouches(guide.hold))) {
            complain("the board does not ask as it should");
        }
        std::size_t gaps = 0;
        for (const Event& event : m_runner.events()) {
            gaps += event.kind == EventKind::GapFound ? 1U : 0U;
        }
        if (gaps != (m_disturbance.unwatched() ? 1U : 0U)) {
            complain(fmt::format("{} gaps are in the log", gaps));
        }
    }

    // The press that ends the count is taken neither a millisecond early nor late, nor before somebody vouched.
    void liveToTheEnd() {
        const auto count = required();
        if (!count) {
            return;
        }
        const auto end = [this] {
            return m_phase == LoadPhase::Venting  ? press(CommandKind::CloseVent)
                   : m_phase == LoadPhase::Timing ? press(CommandKind::TurnHeatOff)
                                                  : press(CommandKind::Start, m_runner.network().loads[0].lift);
        };
        if (*count > m_counted) {
            live(*count - m_counted - Millis(1));
            if (!end()) {
                complain("the count ended early");
                return;
            }
            live(Millis(1));
        }
        if (m_disturbance.unwatched() && asksAbout()) {
            const auto refusal = end();
            if (!refusal || (refusal->reason != RefusalReason::BoilNotVouched &&
                             refusal->reason != RefusalReason::SteamNotVouched)) {
                complain("unwatched time counted without a word");
                return;
            }
            must(CommandKind::VouchBoil);
        }
        if (end()) {
            complain("the count did not end in time");
        }
    }

    const Canner& m_canner;
    LoadPhase m_phase;
    const Disturbance& m_disturbance;
    std::string m_name;
    std::vector<std::string> m_complaints;
    Millis m_counted{};
    ManualClock m_machine{Stamp{kOrdinaryDay, hours(30), BootId{1, 2}}};
    ToldClock m_clock;
    support::MemoryStore m_store;
    SessionRunner m_runner;
};

struct Outcome {
    std::size_t cells = 0;
    std::vector<std::string> complaints;

    std::string text() const { return fmt::format("{}", fmt::join(complaints, "\n")); }
};

Outcome runMatrix(const Teller& teller = {}) {
    Outcome outcome;
    for (const Canner& canner : canners()) {
        for (const LoadPhase phase : canner.phases) {
            for (const Disturbance& disturbance : disturbances()) {
                const auto found = Cell(canner, phase, disturbance, teller).run();
                outcome.complaints.insert(outcome.complaints.end(), found.begin(), found.end());
                ++outcome.cells;
            }
        }
    }
    return outcome;
}

}  // namespace

TEST(ClockMatrix, CountsAreRightInEveryCell) {
    const Outcome outcome = runMatrix();
    EXPECT_EQ(outcome.text(), "");
    // 6 states of an open canner twice and 9 of a pressure canner, 18 disturbances each.
    EXPECT_EQ(outcome.cells, 378U);
    RecordProperty("cells", static_cast<int>(outcome.cells));
    fmt::print("{} cells checked\n", outcome.cells);
}

// ---- machines with the clocks mixed up, each found by the matrix

TEST(ClockMatrix, CatchesElapsedTimeByTheWallClock) {
    Teller byTheWall;
    byTheWall.telling = [](const ManualClock&) {
        return [](const Stamp& stamp) { return Stamp{stamp.utc, stamp.utc - kOrdinaryDay + hours(30), stamp.bootId}; };
    };
    EXPECT_NE(runMatrix(byTheWall).text().find("wall clock back an hour"), std::string::npos);
}

TEST(ClockMatrix, CatchesAClockThatStopsAsleep) {
    Teller stopping;
    stopping.tellsSleep = false;
    stopping.telling = [](const ManualClock& machine) {
        return [&machine](const Stamp& stamp) { return Stamp{stamp.utc, stamp.boot - machine.asleep(), stamp.bootId}; };
    };
    EXPECT_NE(runMatrix(stopping).text().find("sleep of 10 min: unwatched time is not asked about"), std::string::npos);
}

TEST(ClockMatrix, CatchesARestartThatIsNotTold) {
    Teller sameBoot;
    sameBoot.telling = [](const ManualClock&) {
        return [](const Stamp& stamp) { return Stamp{stamp.utc, stamp.utc - kOrdinaryDay + hours(30), BootId{1, 2}}; };
    };
    EXPECT_NE(runMatrix(sameBoot).text().find("machine restarted:"), std::string::npos);
}

TEST(ClockMatrix, CatchesLocalTimeTakenForUtc) {
    Teller local;
    local.telling = [](const ManualClock&) {
        return [](const Stamp& stamp) {
            const std::time_t utc = std::chrono::duration_cast<Seconds>(stamp.utc).count();
            std::tm here{};
            localtime_r(&utc, &here);
            const Millis shifted = stamp.utc + seconds(here.tm_gmtoff);
            return Stamp{shifted, shifted - kOrdinaryDay + hours(40), stamp.bootId};
        };
    };
    const std::string found = runMatrix(local).text();
    EXPECT_NE(found.find("daylight saving begins"), std::string::npos);
    EXPECT_NE(found.find("daylight saving ends"), std::string::npos);
    EXPECT_NE(found.find("to a zone in the east"), std::string::npos);
}

}  // namespace brinebell
