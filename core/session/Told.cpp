#include "session/Told.h"

#include <algorithm>

#include "session/AfterClass.h"
#include "session/QuestionPause.h"
#include "session/Reading.h"

namespace brinebell {

namespace {

using Answer = std::variant<ToldEvent, Refusal>;

bool isThere(int index, std::size_t count) {
    return index >= 0 && static_cast<std::size_t>(index) < count;
}

bool isNoneOrThere(int index, std::size_t count) {
    return index == -1 || isThere(index, count);
}

bool isRunning(const ActivityState& lived) {
    return lived.started && !lived.ended;
}

// By the number of the event that parked it.
std::vector<ParkedQuestion>::iterator openQuestion(State& state, std::int64_t sequence) {
    return std::find_if(state.questions.begin(), state.questions.end(),
                        [&](const ParkedQuestion& q) { return q.sequence == sequence && !q.answered; });
}

Answer refuse(RefusalReason reason, int other = -1) {
    return Refusal{reason, other, {}};
}

Answer takeReading(const Network& network, const Command& command) {
    const auto unit = readingUnitFromText(command.text);
    if (!unit) {
        return refuse(RefusalReason::UnknownUnit);
    }
    if (!isInRange(*unit, command.value)) {
        return refuse(RefusalReason::ReadingOutOfRange, static_cast<int>(*unit));
    }
    if (!isNoneOrThere(command.activity, network.activities.size())) {
        return refuse(RefusalReason::NoSuchActivity);
    }
    if (!isNoneOrThere(command.load, network.loads.size())) {
        return refuse(RefusalReason::NoSuchLoad);
    }
    return ToldEvent{EventKind::ReadingTaken, command.value, command.activity, command.load, command.text};
}

Answer countJar(const Network& network, const State& state, const Command& command) {
    if (!isThere(command.activity, network.activities.size())) {
        return refuse(RefusalReason::NoSuchActivity);
    }
    const auto i = static_cast<std::size_t>(command.activity);
    if (network.activities[i].jars == 0) {
        return refuse(RefusalReason::NotPerJar);
    }
    if (!isRunning(state.activities[i])) {
        return refuse(state.activities[i].ended ? RefusalReason::AlreadyDone : RefusalReason::NotRunning);
    }
    if (state.activities[i].jarsDone >= network.activities[i].jars) {
        return refuse(RefusalReason::AllJarsCounted);
    }
    return ToldEvent{EventKind::JarCounted, state.activities[i].jarsDone + 1, command.activity, -1, {}};
}

Answer makeSwap(const Network& network, const Command& command) {
    if (!isThere(command.activity, network.activities.size())) {
        return refuse(RefusalReason::NoSuchActivity);
    }
    if (command.text.empty()) {
        return refuse(RefusalReason::TextMissing);
    }
    return ToldEvent{EventKind::SwapMade, 0, command.activity, -1, command.text};
}

Answer seeHeatOff(const Network& network, const State& state, const Command& command) {
    if (command.value < 0 || static_cast<std::size_t>(command.value) >= network.stations.size()) {
        return refuse(RefusalReason::NoSuchStation);
    }
    if (!state.lit[static_cast<std::size_t>(command.value)]) {
        return refuse(RefusalReason::HeatNotOn, static_cast<int>(command.value));
    }
    return ToldEvent{EventKind::StationOff, command.value, -1, -1, {}};
}

bool isCooledOrCooling(const LoadState& load) {
    return load.phase == LoadPhase::Cooling || load.phase == LoadPhase::SealsChecked;
}

bool hasUnsealed(const LoadState& load) {
    return load.phase == LoadPhase::SealsChecked && load.unsealed > 0;
}

Answer tellJarsWent(const State& state, const Command& command) {
    if (!isThere(command.load, state.loads.size())) {
        return refuse(RefusalReason::NoSuchLoad);
    }
    const LoadState& load = state.loads[static_cast<std::size_t>(command.load)];
    if (!isCooledOrCooling(load)) {
        return refuse(RefusalReason::NotCooling);
    }
    if (!jarsPlaceFromText(command.text)) {
        return refuse(RefusalReason::UnknownPlace);
    }
    if (command.value != kWholeLoad && !hasUnsealed(load)) {
        return refuse(RefusalReason::NoUnsealedJars);
    }
    const std::int64_t which = command.value == kWholeLoad ? kWholeLoad : kUnsealedJars;
    return ToldEvent{EventKind::JarsWent, which, -1, command.load, command.text};
}

Answer reportFigure(const Command& command) {
    const auto figure = reportFigureFromText(command.text);
    if (!figure) {
        return refuse(RefusalReason::UnknownFigure);
    }
    if (command.value < 0 || command.value > mostOf(*figure)) {
        return refuse(RefusalReason::FigureOutOfRange, static_cast<int>(*figure));
    }
    return ToldEvent{EventKind::FigureReported, command.value, -1, -1, command.text};
}

bool isSoundPlace(const State& state, const Event& event) {
    if (!isThere(event.load, state.loads.size()) || !jarsPlaceFromText(event.text)) {
        return false;
    }
    const LoadState& load = state.loads[static_cast<std::size_t>(event.load)];
    return (event.value == kWholeLoad && isCooledOrCooling(load)) ||
           (event.value == kUnsealedJars && hasUnsealed(load));
}

bool isSoundFigure(const Event& event) {
    const auto figure = reportFigureFromText(event.text);
    return figure && event.value >= 0 && event.value <= mostOf(*figure);
}

bool countsOn(const Network& network, State& state, const Event& event, UndoRecord& undo) {
    if (!isThere(event.activity, network.activities.size())) {
        return false;
    }
    const auto i = static_cast<std::size_t>(event.activity);
    ActivityState& lived = state.activities[i];
    if (!isRunning(lived) || event.value != lived.jarsDone + 1 || event.value > network.activities[i].jars) {
        return false;
    }
    undo.activities.emplace_back(event.activity, lived);
    ++lived.jarsDone;
    return true;
}

bool isSoundReading(const Network& network, const Event& event) {
    const auto unit = readingUnitFromText(event.text);
    return unit && isInRange(*unit, event.value) && isNoneOrThere(event.activity, network.activities.size()) &&
           isNoneOrThere(event.load, network.loads.size());
}

}  // namespace

bool isTakenBack(EventKind kind) {
    return kind == EventKind::QuestionAnswered || kind == EventKind::SwapMade || kind == EventKind::JarCounted ||
           kind == EventKind::StationOff;
}

Answer decideTold(const Network& network, const State& state, const Command& command, Millis elapsed) {
    switch (command.kind) {
        case CommandKind::PauseForQuestions:
            return inQuestions(state) ? refuse(RefusalReason::AlreadyInQuestions)
                                      : ToldEvent{EventKind::QuestionsBegan, 0, -1, -1, {}};
        case CommandKind::ResumeFromQuestions:
            if (!inQuestions(state)) {
                return refuse(RefusalReason::NotInQuestions);
            }
            return ToldEvent{EventKind::QuestionsEnded, (elapsed - state.pauses.back().began).count(), -1, -1, {}};
        case CommandKind::TakeReading:
            return takeReading(network, command);
        case CommandKind::ParkQuestion:
            return command.text.empty() ? refuse(RefusalReason::TextMissing)
                                        : ToldEvent{EventKind::QuestionParked, 0, -1, -1, command.text};
        case CommandKind::AnswerQuestion: {
            const bool open = std::any_of(state.questions.begin(), state.questions.end(),
                                          [&](const auto& q) { return q.sequence == command.value && !q.answered; });
            return open ? ToldEvent{EventKind::QuestionAnswered, command.value, -1, -1, {}}
                        : refuse(RefusalReason::NoSuchQuestion);
        }
        case CommandKind::MakeSwap:
            return makeSwap(network, command);
        case CommandKind::CountJar:
            return countJar(network, state, command);
        case CommandKind::TellJarsWent:
            return tellJarsWent(state, command);
        case CommandKind::ReportFigure:
            return reportFigure(command);
        default:
            return seeHeatOff(network, state, command);
    }
}

bool applyTold(const Network& network, State& state, const Event& event, Millis elapsed, UndoRecord* undo) {
    switch (event.kind) {
        case EventKind::QuestionsBegan:
            if (inQuestions(state)) {
                return false;
            }
            state.pauses.push_back({elapsed, std::nullopt});
            return true;
        case EventKind::QuestionsEnded:
            if (!inQuestions(state)) {
                return false;
            }
            state.pauses.back().ended = elapsed;
            return true;
        case EventKind::ReadingTaken:
            return isSoundReading(network, event);
        case EventKind::QuestionParked:
            state.questions.push_back({event.sequence, elapsed, event.text, false});
            return !event.text.empty();
        case EventKind::QuestionAnswered: {
            const auto question = openQuestion(state, event.value);
            if (question == state.questions.end()) {
                return false;
            }
            question->answered = true;
            undo->questions.push_back(static_cast<int>(question - state.questions.begin()));
            return true;
        }
        case EventKind::SwapMade:
            if (!isThere(event.activity, network.activities.size())) {
                return false;
            }
            undo->activities.emplace_back(event.activity, state.activities[static_cast<std::size_t>(event.activity)]);
            state.activities[static_cast<std::size_t>(event.activity)].swapped = true;
            return true;
        case EventKind::JarCounted:
            return countsOn(network, state, event, *undo);
        case EventKind::JarsWent:
            return isSoundPlace(state, event);
        case EventKind::FigureReported:
            return isSoundFigure(event);
        default: {
            const bool known = event.value >= 0 && static_cast<std::size_t>(event.value) < state.lit.size();
            if (!known || !state.lit[static_cast<std::size_t>(event.value)]) {
                return false;
            }
            undo->lit.emplace_back(static_cast<int>(event.value), true);
            state.lit[static_cast<std::size_t>(event.value)] = false;
            return true;
        }
    }
}

}  // namespace brinebell
