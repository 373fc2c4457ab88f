#include "session/Closing.h"

#include "base/Language.h"

#include <fmt/format.h>

namespace brinebell {

namespace {

// Fits the longest text that an event takes, with room to spare.
constexpr std::size_t kMostWords = 1500;

template <class Name>
void addPart(std::string& words, std::string_view what, const std::vector<int>& items, Name name) {
    if (items.empty()) {
        return;
    }
    words += fmt::format("{}{}: ", words.empty() ? "" : "; ", what);
    for (std::size_t k = 0; k < items.size(); ++k) {
        const std::string next = name(static_cast<std::size_t>(items[k]));
        if (words.size() + next.size() > kMostWords) {
            words += core::say("and {} more", items.size() - k);
            return;
        }
        words += next;
        words += k + 1 < items.size() ? ", " : "";
    }
}

}  // namespace

bool heatsItsStation(ActivityKind kind) {
    return kind != ActivityKind::Rest && kind != ActivityKind::Lift;
}

bool canBeLeftOn(const Station& station) {
    return station.kind == StationKind::Burner || station.kind == StationKind::Oven;
}

OpenEnds openEndsOf(const Network& network, const State& state) {
    OpenEnds open;
    for (std::size_t t = 0; t < network.talk.size(); ++t) {
        if (network.talk[t].mustSay && !state.said[t]) {
            open.points.push_back(static_cast<int>(t));
        }
    }
    for (std::size_t l = 0; l < state.loads.size(); ++l) {
        const LoadPhase phase = state.loads[l].phase;
        if (phase != LoadPhase::Cooling && phase != LoadPhase::SealsChecked && phase != LoadPhase::SetAside) {
            open.loads.push_back(static_cast<int>(l));
        }
    }
    for (std::size_t s = 0; s < state.lit.size(); ++s) {
        if (state.lit[s]) {
            open.hot.push_back(static_cast<int>(s));
        }
    }
    for (std::size_t q = 0; q < state.questions.size(); ++q) {
        if (!state.questions[q].answered) {
            open.questions.push_back(static_cast<int>(q));
        }
    }
    return open;
}

std::string leftOpenWords(const Network& network, const OpenEnds& open) {
    std::string words;
    addPart(words, core::say("safety points left unsaid"), open.points,
            [&](std::size_t t) { return network.talk[t].text; });
    addPart(words, core::say("not said to be off"), open.hot, [&](std::size_t s) { return network.stations[s].name; });
    return words.empty() ? words : core::say("closed with {}", words);
}

}  // namespace brinebell
