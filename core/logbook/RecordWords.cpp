#include "logbook/RecordWords.h"

#include "base/Language.h"

namespace brinebell {

std::string notRecorded() {
    return core::say("not recorded");
}

std::string meansWords(Cause cause) {
    switch (cause) {
        case Cause::Key:
            return core::say("by a key");
        case Cause::HeldKey:
            return core::say("by a held key");
        case Cause::Pedal:
            return core::say("by the pedal");
        case Cause::Mouse:
            return core::say("by the mouse");
        case Cause::Clock:
            return core::say("by the clock");
        case Cause::Recovery:
            return core::say("on taking the session up again");
        case Cause::Rehearsal:
            return core::say("by the rehearsal");
        case Cause::Console:
            return core::say("by the console");
    }
    return core::say("");
}

std::string pressWords(EventKind kind) {
    switch (kind) {
        case EventKind::SessionStarted:
            return core::say("the start of the session");
        case EventKind::ActivityStarted:
            return core::say("the start of");
        case EventKind::ActivityFinished:
            return core::say("the end of");
        case EventKind::ActivitySkipped:
            return core::say("the passing over of");
        case EventKind::PulseDone:
            return core::say("a look at");
        case EventKind::WaterChecked:
            return core::say("the water confirmed,");
        case EventKind::SteamSeen:
            return core::say("steam seen,");
        case EventKind::SteamLost:
            return core::say("steam lost,");
        case EventKind::VentClosed:
            return core::say("the vent closed,");
        case EventKind::PressureReached:
            return core::say("pressure reached,");
        case EventKind::PressureLost:
            return core::say("pressure lost,");
        case EventKind::PressureGone:
            return core::say("pressure gone,");
        case EventKind::BoilSeen:
            return core::say("a boil seen,");
        case EventKind::BoilLost:
            return core::say("a boil lost,");
        case EventKind::GapFound:
            return core::say("time nobody watched");
        case EventKind::BoilVouched:
            return core::say("a boil vouched for,");
        case EventKind::HeatOff:
            return core::say("heat off,");
        case EventKind::LoadSetAside:
            return core::say("the setting aside of");
        case EventKind::SealsChecked:
            return core::say("a seal check,");
        case EventKind::PointSaid:
            return core::say("a point said:");
        case EventKind::NoteAdded:
            return core::say("a note:");
        case EventKind::QuestionsBegan:
            return core::say("questions,");
        case EventKind::QuestionsEnded:
            return core::say("the end of questions,");
        case EventKind::ReadingTaken:
            return core::say("a reading,");
        case EventKind::QuestionParked:
            return core::say("a question put off:");
        case EventKind::QuestionAnswered:
            return core::say("a question answered,");
        case EventKind::SwapMade:
            return core::say("a swap in");
        case EventKind::JarCounted:
            return core::say("a jar counted in");
        case EventKind::StationOff:
            return core::say("the heat seen off,");
        case EventKind::JarsWent:
            return core::say("where jars went,");
        case EventKind::FigureReported:
            return core::say("a figure for the report,");
        case EventKind::Undone:
            return core::say("an undoing");
        case EventKind::ClassEnded:
            return core::say("the end of the class");
        case EventKind::SessionClosed:
            return core::say("the closing of the session");
    }
    return core::say("");
}

std::string placeWords(const std::optional<JarsPlace>& place) {
    if (!place) {
        return notRecorded();
    }
    switch (*place) {
        case JarsPlace::Refrigerated:
            return core::say("refrigerated");
        case JarsPlace::Frozen:
            return core::say("frozen");
        case JarsPlace::Reprocessed:
            return core::say("processed again within 24 hours, for the full time, with new lids");
        case JarsPlace::Discarded:
            return core::say("discarded");
        case JarsPlace::Shown:
            return core::say("kept to be shown");
        case JarsPlace::Eaten:
            return core::say("eaten");
        case JarsPlace::TakenHome:
            return core::say("taken home");
        case JarsPlace::TakenHomeUnchecked:
            return core::say("taken home before the seals were tested; told how to test them");
    }
    return notRecorded();
}

std::string methodWords(Method method) {
    switch (method) {
        case Method::BoilingWater:
            return core::say("boiling-water");
        case Method::AtmosphericSteam:
            return core::say("atmospheric-steam");
        case Method::PressureDial:
            return core::say("pressure-dial");
        case Method::PressureWeighted:
            return core::say("pressure-weighted");
    }
    return {};
}

std::string packWords(Pack pack) {
    return pack == Pack::Hot ? core::say("hot") : core::say("raw");
}

std::string jarWords(JarSize jar) {
    switch (jar) {
        case JarSize::QuarterPint:
            return core::say("quarter-pint");
        case JarSize::HalfPint:
            return core::say("half-pint");
        case JarSize::TwelveOunce:
            return core::say("12-ounce");
        case JarSize::Pint:
            return core::say("pint");
        case JarSize::PintAndHalf:
            return core::say("1-1/2-pint");
        case JarSize::Quart:
            return core::say("quart");
        case JarSize::HalfGallon:
            return core::say("half-gallon");
    }
    return {};
}

}  // namespace brinebell
