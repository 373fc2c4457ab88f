// Told.h — what is told to the session rather than cooked: questions, readings, swaps, jars counted, heat seen off,
// where jars went, figures for the report.
//
// Half of decide() and apply(), kept apart from the canner's half; nothing in here reaches a count of the canner.
#pragma once

#include "session/Session.h"

namespace brinebell {

/// The one event that a command comes to, before it has a stamp and a number.
struct ToldEvent {
    EventKind kind = EventKind::NoteAdded;
    std::int64_t value = 0;
    int activity = -1;
    int load = -1;
    std::string text;
};

/// Whether a press of this kind can be taken back. Time that was spent on questions cannot, nor what was read.
bool isTakenBack(EventKind kind);

/// For the commands from PauseForQuestions to ReportFigure, in a session that has started.
std::variant<ToldEvent, Refusal> decideTold(const Network& network, const State& state, const Command& command,
                                            Millis elapsed);

/// False when the event does not fit the state. `undo` is the record of this press; null where none is kept.
/// For the events from QuestionsBegan to FigureReported.
bool applyTold(const Network& network, State& state, const Event& event, Millis elapsed, UndoRecord* undo);

}  // namespace brinebell
