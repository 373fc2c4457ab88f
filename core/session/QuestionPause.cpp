#include "session/QuestionPause.h"

#include <algorithm>

#include "session/Session.h"

namespace brinebell {

Millis pausedBetween(const State& state, Millis from, Millis to) {
    Millis sum{};
    const auto add = [&](Millis began, Millis ended) {
        sum += std::max(Millis::zero(), std::min(ended, to) - std::max(began, from));
    };
    for (const QuestionPause& pause : state.pauses) {
        add(pause.began, pause.ended.value_or(to));
    }
    return sum;
}

Millis pausedIn(const Network& network, const State& state, int activity, Millis elapsed) {
    const auto i = static_cast<std::size_t>(activity);
    const ActivityState& lived = state.activities[i];
    if (network.activities[i].hands != HandsNeed::Throughout || !lived.started) {
        return Millis::zero();
    }
    return pausedBetween(state, *lived.started, lived.ended.value_or(elapsed));
}

Millis questionTime(const State& state, Millis elapsed) {
    return pausedBetween(state, Millis::zero(), elapsed);
}

bool bringsHandsBack(const Network& network, const Command& command) {
    switch (command.kind) {
        case CommandKind::Start:
        case CommandKind::Finish:
        case CommandKind::CountJar:
            return command.activity >= 0 && static_cast<std::size_t>(command.activity) < network.activities.size() &&
                   network.activities[static_cast<std::size_t>(command.activity)].hands == HandsNeed::Throughout;
        case CommandKind::EndClass:
        case CommandKind::CloseSession:
            return true;
        default:
            return false;
    }
}

}  // namespace brinebell
