#include "soak/Teacher.h"

#include <algorithm>
#include <stdexcept>

#include "support/MemoryStore.h"

namespace brinebell::soak {

namespace {

constexpr Millis kLook{8'000};  // under the ten seconds after which time counts as unwatched

}  // namespace

bool Teacher::press(SessionRunner& runner, Command command, Cause cause) {
    m_last = std::move(command);
    return !runner.perform(m_last, cause);
}

bool Teacher::mishap(SessionRunner& runner) {
    Command command;
    switch (m_random.below(40)) {
        case 0:
            command.kind = CommandKind::AddNote;
            command.text = "the north burner is slow";
            break;
        case 1:
            command.kind = CommandKind::Undo;
            break;
        case 2:
            command.kind = CommandKind::TakeReading;
            command.value = 82'500;
            command.text = "celsius";
            break;
        case 3:
            command.kind = CommandKind::ParkQuestion;
            command.text = "may the lids be used again?";
            break;
        case 4:
            // Seldom, or the class would never end.
            if (m_random.below(4) > 0 || runner.network().loads.empty()) {
                return false;
            }
            command.kind = CommandKind::LoseBoil;
            command.load = static_cast<int>(m_random.below(runner.network().loads.size()));
            break;
        default:
            return false;
    }
    return runner.state().started && press(runner, command, Cause::Key);
}

void Teacher::act(SessionRunner& runner, const PassTime& passTime) {
    if (mishap(runner)) {
        return;
    }
    const Guide guide = runner.guide();
    for (const auto& [prompt, cause] : {std::pair(guide.hold, Cause::HeldKey), std::pair(guide.tap, Cause::Key)}) {
        if (!prompt) {
            continue;
        }
        Command command = prompt->command;
        if (prompt->kind == PromptKind::StartSession) {
            command.value = 1;
        }
        if (press(runner, command, cause)) {
            return;
        }
    }
    passTime(Millis(static_cast<std::int64_t>(m_random.below(static_cast<std::uint64_t>(kLook.count()))) + 1));
    runner.watch();
}

ManualClock clockOfClass() {
    return ManualClock(Stamp{kClassStart, std::chrono::hours(3), BootId{5, 1}});
}

std::vector<Press> taughtClass(const Network& network, std::uint64_t seed) {
    ManualClock clock = clockOfClass();
    support::MemoryStore store;
    SessionRunner runner(network, clock, store);
    Teacher teacher(seed);
    std::vector<Press> presses;
    Millis passed{};
    while (!runner.state().closed) {
        const std::size_t before = runner.events().size();
        teacher.act(runner, [&](Millis by) {
            clock.advance(by);
            passed += by;
        });
        if (runner.events().size() > before) {
            presses.push_back({passed, teacher.last(), runner.events().back().cause});
        }
        if (passed > std::chrono::hours(24)) {
            throw std::logic_error("the class came to a stand");
        }
    }
    return presses;
}

void play(SessionRunner& runner, ManualClock& clock, const std::vector<Press>& presses,
          const std::function<void()>& after) {
    Millis passed{};
    for (const Press& press : presses) {
        while (passed < press.at) {
            const Millis by = std::min(kLook, press.at - passed);
            clock.advance(by);
            passed += by;
            runner.watch();
            after();
        }
        if (runner.perform(press.command, press.cause)) {
            throw std::logic_error("a press was refused that had been taken");
        }
        after();
    }
}

}  // namespace brinebell::soak
