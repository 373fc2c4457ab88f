// RefusalWords.cpp — a refusal in words, for the console and the log. The window has words of its own.
#include <fmt/format.h>

#include "base/Language.h"
#include "quantity/ReadQuantity.h"
#include "session/Reading.h"
#include "session/Session.h"

namespace brinebell {

std::string describe(const Refusal& refusal, const Network& network) {
    const auto wait = [&] { return printDuration(std::chrono::ceil<Seconds>(refusal.wait)); };
    const auto title = [&] { return network.activities.at(static_cast<std::size_t>(refusal.other)).title; };
    const auto station = [&] { return network.stations.at(static_cast<std::size_t>(refusal.other)).name; };
    switch (refusal.reason) {
        case RefusalReason::NotStarted:
            return "the session has not started";
        case RefusalReason::AlreadyStarted:
            return "the session has started already";
        case RefusalReason::SessionIsClosed:
            return "the session is closed";
        case RefusalReason::NoSuchActivity:
            return "there is no such step";
        case RefusalReason::NoSuchLoad:
            return "there is no such load";
        case RefusalReason::AlreadyRunning:
            return "this is under way already";
        case RefusalReason::NotRunning:
            return "this is not under way";
        case RefusalReason::AlreadyDone:
            return "this is done already";
        case RefusalReason::MustFollow:
            return core::say("first \"{}\" must be done", title());
        case RefusalReason::StationTaken:
            return core::say("no station is free for {}",
                             network.stationHolds.at(static_cast<std::size_t>(refusal.other)).vessel);
        case RefusalReason::NotSkippable:
            return "nothing at the canner is skipped; set the load aside instead";
        case RefusalReason::NotAPulse:
            return "this needs no looking at";
        case RefusalReason::NotHeating:
            return "this load is not heating";
        case RefusalReason::NotThisCanner:
            return "this canner is not one that does so";
        case RefusalReason::WaterNotChecked:
            return "first confirm the water in the canner";
        case RefusalReason::NotVenting:
            return "this load is not being vented";
        case RefusalReason::VentingNotDone:
            return core::say("the venting is not over: {} to go", wait());
        case RefusalReason::SteamNotVouched:
            return core::say("nobody watched the steam for {}: confirm that it held, or vent again", wait());
        case RefusalReason::NotPressurising:
            return "this load is not coming to pressure";
        case RefusalReason::PressureTooLow:
            return core::say("the count starts at {} psi, not below", refusal.other);
        case RefusalReason::NotLosingPressure:
            return "no pressure is falling there";
        case RefusalReason::NotTiming:
            return "this load is not being timed";
        case RefusalReason::JustLost:
            return core::say("the pressure was lost just now; the steam is lost only if said again in {}", wait());
        case RefusalReason::ProcessNotDone:
            return core::say("the process time is not over: {} to go", wait());
        case RefusalReason::BoilNotVouched:
            return core::say("nobody watched the boil for {}: confirm that it held, or start again", wait());
        case RefusalReason::RestNotDone:
            return core::say("jars rest five minutes after the heat is off: {} to go", wait());
        case RefusalReason::LidNotYet:
            return core::say("the lid stays on for ten minutes after the pressure is gone: {} to go", wait());
        case RefusalReason::NothingToVouch:
            return "the boil was watched all the time";
        case RefusalReason::NotCooling:
            return "seals are checked after the jars have cooled";
        case RefusalReason::SealsTooEarly:
            return core::say("jars cool 12 to 24 hours before their seals are checked: {} to go", wait());
        case RefusalReason::CountMismatch:
            return "sealed, unsealed and broken do not add up to the jars of the load";
        case RefusalReason::NoSuchPoint:
            return "there is no such point";
        case RefusalReason::AlreadySaid:
            return "this was said already";
        case RefusalReason::NothingToUndo:
            return "there is nothing to take back";
        case RefusalReason::CannotUndoLostBoil:
            return core::say("{} is not taken back", toText(static_cast<EventKind>(refusal.other)));
        case RefusalReason::PressStays:
            return core::say("the newest press stays as it is: {}", toText(static_cast<EventKind>(refusal.other)));
        case RefusalReason::LoadsOpen:
            return core::say("load {} is not cooling yet; finish it or set it aside",
                             network.loads.at(static_cast<std::size_t>(refusal.other)).number);
        case RefusalReason::PointsOpen:
            return "there are safety points left to say";
        case RefusalReason::TextMissing:
            return "say why";
        case RefusalReason::TextTooLong:
            return "the text is too long: at most 2,000 characters";
        case RefusalReason::AlreadyInQuestions:
            return "the class is asking already";
        case RefusalReason::NotInQuestions:
            return "nobody is asking";
        case RefusalReason::UnknownUnit:
            return "a reading needs a unit that is known: celsius, fahrenheit, ph, psi-gauge or kpa-gauge";
        case RefusalReason::ReadingOutOfRange: {
            const auto unit = static_cast<ReadingUnit>(refusal.other);
            const ReadingRange range = readingRange(unit);
            return core::say("the reading is outside {} to {}", printReading(unit, range.low),
                             printReading(unit, range.high));
        }
        case RefusalReason::NotPerJar:
            return "this is not done jar by jar";
        case RefusalReason::AllJarsCounted:
            return "all its jars are counted";
        case RefusalReason::NoSuchQuestion:
            return "no such question is open";
        case RefusalReason::NoSuchStation:
            return "there is no such station";
        case RefusalReason::UnknownPlace:
            return "nobody knows such a place for jars";
        case RefusalReason::NoUnsealedJars:
            return "no jar of this load was found unsealed";
        case RefusalReason::UnknownFigure:
            return "the class report has no such figure";
        case RefusalReason::FigureOutOfRange:
            return "that figure is not one a class can have";
        case RefusalReason::HeatNotOn:
            return core::say("nothing is known to be on at {}", station());
        case RefusalReason::HeatMayBeOn:
            return core::say("nobody has said that {} is off", station());
        case RefusalReason::HoldPassed: {
            const HoldLimit& limit = network.limits.at(static_cast<std::size_t>(refusal.other));
            return core::say("\"{}\" has waited {} too long: {}",
                             network.activities.at(static_cast<std::size_t>(limit.from)).title, wait(), limit.remedy);
        }
        case RefusalReason::UseCannerKeys:
            return "the canner moves on by what is seen: boil, steam, pressure, heat off, lift";
    }
    return "refused";
}

}  // namespace brinebell
