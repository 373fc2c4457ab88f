#include "console/EventText.h"

#include <fmt/format.h>

#include "quantity/ReadQuantity.h"
#include "session/AfterClass.h"
#include "session/Reading.h"

namespace brinebell {

namespace {

std::string loadWords(const Event& event, std::string words) {
    return fmt::format("load {}: {}", event.load + 1, words);
}

std::string withText(std::string words, const std::string& text) {
    return text.empty() ? words : fmt::format("{}: {}", words, text);
}

std::string activityWords(const Network& network, const Event& event, const char* verb) {
    return fmt::format("{} {}", verb, network.activities.at(static_cast<std::size_t>(event.activity)).title);
}

std::string durationWords(std::int64_t milliseconds) {
    return printDuration(std::chrono::ceil<Seconds>(Millis(milliseconds)));
}

const Load& loadOf(const Network& network, const Event& event) {
    return network.loads.at(static_cast<std::size_t>(event.load));
}

const char* boilWords(const Network& network, const Event& event) {
    return loadOf(network, event).method == Method::AtmosphericSteam ? "full column of steam" : "rolling boil";
}

std::string processWords(const Network& network, const Event& event) {
    return printDuration(loadOf(network, event).processTime);
}

std::string readingWords(const Network& network, const Event& event) {
    const auto unit = readingUnitFromText(event.text);
    const std::string read = unit ? printReading(*unit, event.value) : event.text;
    const std::string of = event.activity >= 0 ? activityWords(network, event, ", at:") : "";
    return event.load >= 0 ? loadWords(event, "read " + read + of) : "read " + read + of;
}

}  // namespace

std::string eventText(const Network& network, const Event& event) {
    switch (event.kind) {
        case EventKind::SessionStarted:
            return event.value == 2 ? "the rehearsal starts" : "the class starts";
        case EventKind::ActivityStarted:
            return activityWords(network, event, "begin");
        case EventKind::ActivityFinished:
            return withText(activityWords(network, event, "done "), event.text);
        case EventKind::ActivitySkipped:
            return withText(activityWords(network, event, "skip "), event.text);
        case EventKind::PulseDone:
            return activityWords(network, event, "look ");
        case EventKind::WaterChecked:
            return withText(loadWords(event, "confirmed"), event.text);
        case EventKind::BoilSeen:
            return loadWords(event, fmt::format("a {} is seen; {} from here", boilWords(network, event),
                                                durationWords(event.value)));
        case EventKind::BoilLost:
            return loadWords(event, fmt::format("the {} is lost; the count starts again from the full time",
                                                boilWords(network, event)));
        case EventKind::SteamSeen:
            return loadWords(event,
                             fmt::format("steady steam is seen; {} of venting from here", durationWords(event.value)));
        case EventKind::SteamLost:
            return loadWords(event, "the steam is lost; the venting starts again from the full time");
        case EventKind::VentClosed:
            return loadWords(event, "vented; the vent is closed");
        case EventKind::PressureReached:
            return loadWords(event,
                             fmt::format("{} psi reached; {} from here", event.value, processWords(network, event)));
        case EventKind::PressureLost:
            return loadWords(event, "the pressure is lost; the count starts again from the full time");
        case EventKind::PressureGone:
            return loadWords(event, "no pressure is left; ten minutes before the lid opens");
        case EventKind::GapFound:
            return fmt::format("nobody watched for {}", durationWords(event.value));
        case EventKind::BoilVouched:
            return withText(loadWords(event, "it held while nobody watched"), event.text);
        case EventKind::HeatOff:
            return loadWords(event, loadOf(network, event).pressure ? "the time is done; heat off, the pressure falls"
                                                                    : "the time is done; heat off, lid off, rest");
        case EventKind::LoadSetAside:
            return withText(loadWords(event, "set aside"), event.text);
        case EventKind::SealsChecked:
            return loadWords(event, fmt::format("{} sealed, {} not sealed, {} broken{}", event.sealed, event.unsealed,
                                                event.broken, event.value == 1 ? " (before 12 h of cooling)" : ""));
        case EventKind::PointSaid:
            return withText("said ", network.talk.at(static_cast<std::size_t>(event.value)).text);
        case EventKind::NoteAdded:
            return withText("note", event.text);
        case EventKind::QuestionsBegan:
            return "questions; the hands stop, the pots run on";
        case EventKind::QuestionsEnded:
            return fmt::format("back from questions after {}", durationWords(event.value));
        case EventKind::ReadingTaken:
            return readingWords(network, event);
        case EventKind::QuestionParked:
            return withText("a question put off", event.text);
        case EventKind::QuestionAnswered:
            return fmt::format("the question of event {} is answered", event.value);
        case EventKind::SwapMade:
            return withText(activityWords(network, event, "swap in"), event.text);
        case EventKind::JarCounted:
            return fmt::format("{}: {} of {} jars", activityWords(network, event, "count"), event.value,
                               network.activities.at(static_cast<std::size_t>(event.activity)).jars);
        case EventKind::StationOff:
            return fmt::format("{} is off", network.stations.at(static_cast<std::size_t>(event.value)).name);
        case EventKind::JarsWent:
            return withText(
                loadWords(event, event.value == kWholeLoad ? "where its jars went" : "where its unsealed jars went"),
                event.text);
        case EventKind::FigureReported:
            return fmt::format("for the report, {}: {}", event.text, event.value);
        case EventKind::Undone:
            return fmt::format("event {} is taken back", event.value);
        case EventKind::ClassEnded:
            return withText("the class ends", event.text);
        case EventKind::SessionClosed:
            return withText("the kitchen is closed", event.text);
    }
    return "";
}

}  // namespace brinebell
