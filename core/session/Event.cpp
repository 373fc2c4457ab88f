#include "session/Event.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <utility>

namespace brinebell {

namespace {

// The words are stored in logbooks: never change one, only add.
constexpr auto kEventWords = std::to_array<std::pair<EventKind, std::string_view>>({
    {EventKind::SessionStarted, "session-started"},
    {EventKind::ActivityStarted, "activity-started"},
    {EventKind::ActivityFinished, "activity-finished"},
    {EventKind::ActivitySkipped, "activity-skipped"},
    {EventKind::PulseDone, "pulse-done"},
    {EventKind::BoilSeen, "boil-seen"},
    {EventKind::BoilLost, "boil-lost"},
    {EventKind::GapFound, "gap-found"},
    {EventKind::BoilVouched, "boil-vouched"},
    {EventKind::HeatOff, "heat-off"},
    {EventKind::LoadSetAside, "load-set-aside"},
    {EventKind::SealsChecked, "seals-checked"},
    {EventKind::PointSaid, "point-said"},
    {EventKind::NoteAdded, "note-added"},
    {EventKind::QuestionsBegan, "questions-began"},
    {EventKind::QuestionsEnded, "questions-ended"},
    {EventKind::ReadingTaken, "reading-taken"},
    {EventKind::QuestionParked, "question-parked"},
    {EventKind::QuestionAnswered, "question-answered"},
    {EventKind::SwapMade, "swap-made"},
    {EventKind::JarCounted, "jar-counted"},
    {EventKind::StationOff, "station-off"},
    {EventKind::Undone, "undone"},
    {EventKind::ClassEnded, "class-ended"},
    {EventKind::SessionClosed, "session-closed"},
    {EventKind::WaterChecked, "water-checked"},
    {EventKind::SteamSeen, "steam-seen"},
    {EventKind::SteamLost, "steam-lost"},
    {EventKind::VentClosed, "vent-closed"},
    {EventKind::PressureReached, "pressure-reached"},
    {EventKind::PressureLost, "pressure-lost"},
    {EventKind::PressureGone, "pressure-gone"},
    {EventKind::JarsWent, "jars-went"},
    {EventKind::FigureReported, "figure-reported"},
});

constexpr std::array<std::pair<Cause, std::string_view>, 8> kCauseWords{{
    {Cause::Key, "key"},
    {Cause::HeldKey, "held-key"},
    {Cause::Pedal, "pedal"},
    {Cause::Mouse, "mouse"},
    {Cause::Clock, "clock"},
    {Cause::Recovery, "recovery"},
    {Cause::Rehearsal, "rehearsal"},
    {Cause::Console, "console"},
}};

template <class Words, class Value>
std::string_view wordFor(const Words& words, Value value) {
    const auto* found = std::find_if(words.begin(), words.end(), [value](const auto& w) { return w.first == value; });
    assert(found != words.end());
    return found->second;
}

template <class Value, class Words>
std::optional<Value> valueFor(const Words& words, std::string_view text) {
    const auto* found = std::find_if(words.begin(), words.end(), [text](const auto& w) { return w.second == text; });
    if (found == words.end()) {
        return std::nullopt;
    }
    return found->first;
}

}  // namespace

std::string_view toText(EventKind kind) {
    return wordFor(kEventWords, kind);
}
std::string_view toText(Cause cause) {
    return wordFor(kCauseWords, cause);
}
std::optional<EventKind> eventKindFromText(std::string_view text) {
    return valueFor<EventKind>(kEventWords, text);
}
std::optional<Cause> causeFromText(std::string_view text) {
    return valueFor<Cause>(kCauseWords, text);
}

}  // namespace brinebell
