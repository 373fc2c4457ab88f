#include "bridge/Words.h"

#include <set>

#include "bridge/TimeText.h"
#include "session/Reading.h"

namespace brinebell {

namespace {

template <class Vector>
bool holds(const Vector& items, int index) {
    return index >= 0 && static_cast<std::size_t>(index) < items.size();
}

template <class Vector>
const auto& at(const Vector& items, int index) {
    return items[static_cast<std::size_t>(index)];
}

QString span(Millis time) {
    return spanText(secondsLeft(time));
}

/// Enough of a talking point to know it by; the board shows all of it beside.
QString firstWords(const QString& text) {
    constexpr qsizetype kEnough = 36;
    if (text.size() <= kEnough) {
        return text;
    }
    const qsizetype end = text.lastIndexOf(QLatin1Char(' '), kEnough);
    return text.left(end > 0 ? end : kEnough) + QStringLiteral(" …");
}

bool hasSeveralCanners(const Network& network) {
    std::set<int> canners;
    for (const Load& load : network.loads) {
        canners.insert(load.canner);
    }
    return canners.size() > 1;
}

}  // namespace

QString Words::sentence(QString words) {
    if (!words.isEmpty()) {
        words[0] = words[0].toUpper();
    }
    return words;
}

QString Words::inSentence(QString words) {
    const bool initialism = words.size() > 1 && words[1].isUpper();
    if (!words.isEmpty() && !initialism) {
        words[0] = words[0].toLower();
    }
    return words;
}

QString Words::activity(int index, const Network& network) {
    return holds(network.activities, index) ? toQt(at(network.activities, index).title) : QStringLiteral("–");
}

QString Words::station(int index, const Network& network) {
    return holds(network.stations, index) ? toQt(at(network.stations, index).name) : QStringLiteral("–");
}

QString Words::reading(const Event& event) {
    const auto unit = readingUnitFromText(event.text);
    return toQt(unit ? printReading(*unit, event.value) : event.text);
}

QString Words::load(int index, const Network& network) {
    if (!holds(network.loads, index)) {
        return tr("the load");
    }
    const Load& load = at(network.loads, index);
    if (hasSeveralCanners(network) && holds(network.stations, load.canner)) {
        return tr("load %1 in %2").arg(load.number).arg(toQt(at(network.stations, load.canner).name));
    }
    return tr("load %1").arg(load.number);
}

QString Words::jars(int count, JarSize size) {
    switch (size) {
        case JarSize::QuarterPint:
            return count == 1 ? tr("1 quarter-pint") : tr("%1 quarter-pints").arg(count);
        case JarSize::HalfPint:
            return count == 1 ? tr("1 half-pint") : tr("%1 half-pints").arg(count);
        case JarSize::TwelveOunce:
            return count == 1 ? tr("1 twelve-ounce jar") : tr("%1 twelve-ounce jars").arg(count);
        case JarSize::Pint:
            return count == 1 ? tr("1 pint") : tr("%1 pints").arg(count);
        case JarSize::PintAndHalf:
            return count == 1 ? tr("1 pint-and-a-half") : tr("%1 pint-and-a-halfs").arg(count);
        case JarSize::Quart:
            return count == 1 ? tr("1 quart") : tr("%1 quarts").arg(count);
        case JarSize::HalfGallon:
            return count == 1 ? tr("1 half-gallon") : tr("%1 half-gallons").arg(count);
    }
    return {};
}

namespace {

// What the recipe asks for when what leads to `activity` has waited too long.
QString remedyFor(int activity, const Network& network) {
    for (const HoldLimit& limit : network.limits) {
        if (limit.to == activity && limit.kind == LimitKind::Safety) {
            return toQt(limit.remedy);
        }
    }
    return {};
}

}  // namespace

QString Words::prompt(const Prompt& prompt, const Moment& moment) {
    const Network& network = moment.network;
    const QString title = inSentence(activity(prompt.activity, network));
    const QString loadName = load(prompt.load, network);
    switch (prompt.kind) {
        case PromptKind::StartSession:
            return tr("Start the class");
        case PromptKind::StartActivity:
            return tr("Start — %1").arg(title);
        case PromptKind::FinishActivity:
            return tr("Done — %1").arg(title);
        case PromptKind::DoPulse:
            if (holds(network.activities, prompt.activity) && at(network.activities, prompt.activity).pulse) {
                return tr("Done once — %1")
                    .arg(inSentence(toQt(at(network.activities, prompt.activity).pulse->action)));
            }
            return tr("Looked — %1").arg(title);
        case PromptKind::SayPoint:
            return tr("Said — %1")
                .arg(holds(network.talk, prompt.talk) ? firstWords(toQt(at(network.talk, prompt.talk).text))
                                                      : QString());
        case PromptKind::TurnHeatOff:
        case PromptKind::SeeBoil:
        case PromptKind::CheckWater:
        case PromptKind::SeeSteam:
        case PromptKind::CloseVent:
        case PromptKind::SeePressure:
        case PromptKind::SeeZero:
            return cannerPrompt(prompt, moment);
        case PromptKind::VouchBoil: {
            const Millis gap =
                holds(moment.state.loads, prompt.load) ? at(moment.state.loads, prompt.load).unwatched : Millis{};
            return vouchPrompt(prompt.load, gap, moment);
        }
        case PromptKind::StartLift: {
            if (!holds(network.loads, prompt.load)) {
                return tr("lift the jars");
            }
            const Load& lifted = at(network.loads, prompt.load);
            const QString what = jars(lifted.jars, lifted.jar);
            // A pressure canner is still shut, and its lid is the thing to say; the others stand open.
            return isPressure(lifted.method) ? tr("lid off, away from the face — lift %1 of %2").arg(what, loadName)
                                             : tr("lift %1 of %2, rested").arg(what, loadName);
        }
        case PromptKind::ConfirmRemedy:
            return tr("%1 — done; start: %2").arg(remedyFor(prompt.activity, network), title);
        case PromptKind::ResumeFromQuestions:
            return tr("Back to work — questions so far: %1")
                .arg(countUp(inQuestions(moment.state) ? moment.elapsed - moment.state.pauses.back().began : Millis{}));
        case PromptKind::ConfirmOff:
            return tr("Seen to be off — %1").arg(station(static_cast<int>(prompt.command.value), network));
        case PromptKind::EndClass:
            return tr("End the class — the room is free");
        case PromptKind::CloseSession:
            return tr("Close the session — the kitchen is done");
    }
    return {};
}

QString Words::refusal(const Refusal& refusal, const Moment& moment) {
    switch (refusal.reason) {
        case RefusalReason::NotStarted:
            return tr("The class has not started yet.");
        case RefusalReason::AlreadyStarted:
            return tr("The class has started already.");
        case RefusalReason::SessionIsClosed:
            return tr("This session is closed.");
        case RefusalReason::NoSuchActivity:
            return tr("There is no such step in this class.");
        case RefusalReason::NoSuchLoad:
            return tr("There is no such load in this class.");
        case RefusalReason::AlreadyRunning:
            return tr("That is running already.");
        case RefusalReason::NotRunning:
            return tr("That is not running.");
        case RefusalReason::AlreadyDone:
            return tr("That is done already.");
        case RefusalReason::NotSkippable:
            return tr("This step cannot be left out.");
        case RefusalReason::NotAPulse:
            return tr("Nothing there needs a look now and then.");
        case RefusalReason::NotHeating:
            return tr("No load is being brought to the boil there.");
        case RefusalReason::NotTiming:
            return tr("No process time is being counted there.");
        case RefusalReason::NothingToVouch:
            return tr("The boil was watched all the time; there is nothing to confirm.");
        case RefusalReason::NotCooling:
            return tr("Seals are checked once the jars have been lifted and cooled.");
        case RefusalReason::CountMismatch:
            return tr("Sealed, unsealed and broken jars do not add up to the jars of the load.");
        case RefusalReason::NoSuchPoint:
            return tr("There is no such talking point.");
        case RefusalReason::AlreadySaid:
            return tr("That point has been said.");
        case RefusalReason::NothingToUndo:
            return tr("There is nothing to take back.");
        case RefusalReason::PointsOpen:
            return tr("Points that must be said are still open.");
        case RefusalReason::TextMissing:
            return tr("A few words are needed here.");
        case RefusalReason::TextTooLong:
            return tr("That text is too long.");
        case RefusalReason::UseCannerKeys:
            return tr(
                "The canner moves on by what is seen: boil, steam or pressure seen or lost, heat off, jars lifted.");
        case RefusalReason::NotThisCanner:
        case RefusalReason::WaterNotChecked:
        case RefusalReason::NotVenting:
        case RefusalReason::VentingNotDone:
        case RefusalReason::SteamNotVouched:
        case RefusalReason::NotPressurising:
        case RefusalReason::PressureTooLow:
        case RefusalReason::NotLosingPressure:
        case RefusalReason::LidNotYet:
        case RefusalReason::SealsTooEarly:
        case RefusalReason::JustLost:
            return cannerRefusal(refusal, moment);
        case RefusalReason::AlreadyInQuestions:
            return tr("The class is asking already.");
        case RefusalReason::NotInQuestions:
            return tr("Nobody is asking just now.");
        case RefusalReason::UnknownUnit:
            return tr("A reading needs a unit: °C, °F, pH, psi or kPa.");
        case RefusalReason::NotPerJar:
            return tr("This step is not done jar by jar.");
        case RefusalReason::AllJarsCounted:
            return tr("All jars of this step are counted.");
        case RefusalReason::NoSuchQuestion:
            return tr("That question is not open.");
        case RefusalReason::NoSuchStation:
            return tr("There is no such station.");
        case RefusalReason::UnknownPlace:
            return tr("Nobody knows such a place for jars.");
        case RefusalReason::NoUnsealedJars:
            return tr("No jar of this load was found unsealed.");
        case RefusalReason::UnknownFigure:
            return tr("The class report has no such figure.");
        case RefusalReason::FigureOutOfRange:
            return tr("That figure is not one a class can have.");
        case RefusalReason::CannotUndoLostBoil:
            return barredUndo(static_cast<EventKind>(refusal.other));
        case RefusalReason::PressStays:
            return tr("The newest press stays as it is: %1. Nothing older is taken back past it.")
                .arg(eventKind(static_cast<EventKind>(refusal.other)));
        case RefusalReason::ReadingOutOfRange:
        case RefusalReason::HeatNotOn:
        case RefusalReason::HeatMayBeOn:
        case RefusalReason::MustFollow:
        case RefusalReason::StationTaken:
        case RefusalReason::ProcessNotDone:
        case RefusalReason::BoilNotVouched:
        case RefusalReason::RestNotDone:
        case RefusalReason::HoldPassed:
        case RefusalReason::LoadsOpen:
            return refusalWithDetail(refusal, moment);
    }
    return {};
}

QString Words::barredUndo(EventKind newest) {
    switch (newest) {
        case EventKind::SteamLost:
            return tr("Lost steam is not taken back: the canner vents again for the full time.");
        case EventKind::PressureLost:
            return tr("Lost pressure is not taken back: the count starts again from the full time.");
        case EventKind::LoadSetAside:
            return tr("A load that was set aside is not taken back.");
        default:
            return tr("A lost boil is not taken back: the count starts again from the full time.");
    }
}

QString Words::takenBack(const Event& undone, const std::vector<Event>& events, const Network& network) {
    for (const Event& taken : events) {
        if (taken.sequence == undone.value) {
            return tr("Taken back — %1").arg(inSentence(event(taken, network)));
        }
    }
    return event(undone, network);
}

QString Words::refusalWithDetail(const Refusal& refusal, const Moment& moment) {
    const Network& network = moment.network;
    switch (refusal.reason) {
        case RefusalReason::MustFollow:
            return tr("Not before this has ended: %1.").arg(activity(refusal.other, network));
        case RefusalReason::StationTaken:
            if (holds(network.stationHolds, refusal.other)) {
                return tr("No place is free for it: %1.").arg(toQt(at(network.stationHolds, refusal.other).vessel));
            }
            return tr("No place is free for it.");
        case RefusalReason::ProcessNotDone:
            return tr("The process time is not over: %1 to go, until %2.")
                .arg(countdown(refusal.wait), timeOfDay(moment.utc + refusal.wait));
        case RefusalReason::BoilNotVouched:
            return tr("%1 of this boil were not watched. Confirm that it held, or count again from the "
                      "start.")
                .arg(span(refusal.wait));
        case RefusalReason::RestNotDone:
            return tr("The jars rest first: %1 to go, until %2.")
                .arg(countdown(refusal.wait), timeOfDay(moment.utc + refusal.wait));
        case RefusalReason::ReadingOutOfRange: {
            const auto unit = static_cast<ReadingUnit>(refusal.other);
            const ReadingRange range = readingRange(unit);
            return tr("Not taken: a reading lies between %1 and %2.")
                .arg(toQt(printReading(unit, range.low)), toQt(printReading(unit, range.high)));
        }
        case RefusalReason::HeatNotOn:
            return tr("Nothing is known to be on: %1.").arg(station(refusal.other, network));
        case RefusalReason::HeatMayBeOn:
            return tr("Nobody has said yet that it is off: %1.").arg(station(refusal.other, network));
        case RefusalReason::HoldPassed: {
            const HoldLimit& limit = at(network.limits, refusal.other);
            return tr("%1 waited %2 too long. First: %3")
                .arg(activity(limit.from, network), span(refusal.wait), toQt(limit.remedy));
        }
        default:
            return tr("A load is still open: it is neither lifted nor set aside.");
    }
}

QString Words::cueKind(CueKind kind) {
    switch (kind) {
        case CueKind::Tick:
            return tr("LOOK");
        case CueKind::Soon:
            return tr("SOON");
        case CueKind::Due:
            return tr("DUE");
        case CueKind::End:
            return tr("TIME UP");
        case CueKind::Stop:
            return tr("ANSWER");
    }
    return {};
}

QString Words::cue(const Cue& cue, const Moment& moment) {
    const Network& network = moment.network;
    const QString title = inSentence(activity(cue.activity, network));
    const QString loadName = sentence(load(cue.load, network));
    const bool pulses = holds(network.activities, cue.activity) && at(network.activities, cue.activity).pulse;
    const QString look = pulses ? inSentence(toQt(at(network.activities, cue.activity).pulse->action)) : title;
    const bool isHeatUp =
        holds(network.activities, cue.activity) && at(network.activities, cue.activity).kind == ActivityKind::HeatUp;
    switch (cue.reason) {
        case CueReason::PulseWanted:
            return tr("A look is wanted: %1").arg(look);
        case CueReason::PulseLate:
            return tr("A look is overdue: %1").arg(look);
        case CueReason::TimeUp:
            return tr("Time is up: %1").arg(title);
        case CueReason::ProcessDone:
        case CueReason::RestDone:
        case CueReason::WaterUnchecked:
        case CueReason::VentSoon:
        case CueReason::VentDone:
        case CueReason::Unwatched:
            return cannerCue(cue, moment);
        case CueReason::BoilExpected:
            return isHeatUp ? cannerCue(cue, moment) : tr("Look for its end: %1").arg(title);
        case CueReason::ProcessSoon:
            return tr("%1: process time ends within a minute").arg(loadName);
        case CueReason::RestSoon:
            return tr("%1: rest ends within a minute").arg(loadName);
        case CueReason::HoldSoon:
            return tr("Cannot wait much longer: %1").arg(title);
        case CueReason::HoldOver:
            return tr("Has waited too long: %1").arg(title);
        case CueReason::ClassEndSoon:
            return tr("The class ends soon");
        case CueReason::ClassEndNow:
            return tr("The class should end now");
    }
    return {};
}

QString Words::eventKind(EventKind kind) {
    switch (kind) {
        case EventKind::SessionStarted:
            return tr("class started");
        case EventKind::ActivityStarted:
            return tr("started");
        case EventKind::ActivityFinished:
            return tr("done");
        case EventKind::ActivitySkipped:
            return tr("left out");
        case EventKind::PulseDone:
            return tr("looked after");
        case EventKind::WaterChecked:
            return tr("water confirmed");
        case EventKind::SteamSeen:
            return tr("steam seen, venting");
        case EventKind::SteamLost:
            return tr("steam lost");
        case EventKind::VentClosed:
            return tr("vent closed");
        case EventKind::PressureReached:
            return tr("pressure reached");
        case EventKind::PressureLost:
            return tr("pressure lost");
        case EventKind::PressureGone:
            return tr("no pressure left");
        case EventKind::BoilSeen:
            return tr("rolling boil seen");
        case EventKind::BoilLost:
            return tr("boil lost");
        case EventKind::GapFound:
            return tr("not watched");
        case EventKind::BoilVouched:
            return tr("boil vouched for");
        case EventKind::HeatOff:
            return tr("heat off, rest begins");
        case EventKind::LoadSetAside:
            return tr("set aside");
        case EventKind::SealsChecked:
            return tr("seals checked");
        case EventKind::PointSaid:
            return tr("said");
        case EventKind::NoteAdded:
            return tr("note");
        case EventKind::Undone:
            return tr("taken back");
        case EventKind::QuestionsBegan:
            return tr("questions began");
        case EventKind::QuestionsEnded:
            return tr("back from questions");
        case EventKind::ReadingTaken:
            return tr("read");
        case EventKind::QuestionParked:
            return tr("question put off");
        case EventKind::QuestionAnswered:
            return tr("question answered");
        case EventKind::SwapMade:
            return tr("swapped");
        case EventKind::JarCounted:
            return tr("jar done");
        case EventKind::StationOff:
            return tr("seen to be off");
        case EventKind::JarsWent:
            return tr("where jars went");
        case EventKind::FigureReported:
            return tr("figure for the report");
        case EventKind::ClassEnded:
            return tr("class ended");
        case EventKind::SessionClosed:
            return tr("session closed");
    }
    return {};
}

QString Words::event(const Event& event, const Network& network) {
    const QString what = eventKind(event.kind);
    switch (event.kind) {
        case EventKind::ActivityStarted:
        case EventKind::ActivityFinished:
        case EventKind::ActivitySkipped:
        case EventKind::PulseDone:
            return tr("%1: %2").arg(activity(event.activity, network), what);
        case EventKind::WaterChecked:
        case EventKind::SteamSeen:
        case EventKind::SteamLost:
        case EventKind::VentClosed:
        case EventKind::PressureReached:
        case EventKind::PressureLost:
        case EventKind::PressureGone:
        case EventKind::BoilSeen:
        case EventKind::BoilLost:
        case EventKind::BoilVouched:
        case EventKind::HeatOff:
        case EventKind::LoadSetAside:
        case EventKind::SealsChecked:
        case EventKind::JarsWent:
            return tr("%1: %2").arg(sentence(load(event.load, network)), what);
        case EventKind::FigureReported:
            return tr("%1: %2").arg(sentence(what), QString::number(event.value));
        case EventKind::GapFound:
            return tr("%1: %2").arg(sentence(what), span(Millis(event.value)));
        case EventKind::PointSaid: {
            const int index = static_cast<int>(event.value);
            return tr("%1: %2").arg(sentence(what),
                                    holds(network.talk, index) ? toQt(at(network.talk, index).text) : QString());
        }
        case EventKind::NoteAdded:
        case EventKind::QuestionParked:
            return tr("%1: %2").arg(sentence(what), toQt(event.text));
        case EventKind::QuestionsEnded:
            return tr("%1 after %2").arg(sentence(what), span(Millis(event.value)));
        case EventKind::ReadingTaken:
            return tr("%1: %2").arg(event.load >= 0       ? sentence(load(event.load, network))
                                    : event.activity >= 0 ? activity(event.activity, network)
                                                          : sentence(what),
                                    reading(event));
        case EventKind::SwapMade:
            return tr("%1: %2 — %3").arg(activity(event.activity, network), what, toQt(event.text));
        case EventKind::JarCounted:
            return tr("%1: %2, %3 of %4")
                .arg(activity(event.activity, network), what, QString::number(event.value),
                     QString::number(
                         holds(network.activities, event.activity) ? at(network.activities, event.activity).jars : 0));
        case EventKind::StationOff:
            return tr("%1: %2").arg(station(static_cast<int>(event.value), network), what);
        case EventKind::QuestionsBegan:
        case EventKind::QuestionAnswered:
            return sentence(what);
        case EventKind::Undone:
            return tr("Taken back: press no. %1").arg(static_cast<qlonglong>(event.value));
        case EventKind::SessionStarted:
        case EventKind::ClassEnded:
        case EventKind::SessionClosed:
            return sentence(what);
    }
    return {};
}

QString Words::cause(Cause cause) {
    switch (cause) {
        case Cause::Key:
            return tr("key");
        case Cause::HeldKey:
            return tr("held key");
        case Cause::Pedal:
            return tr("pedal");
        case Cause::Mouse:
            return tr("mouse");
        case Cause::Clock:
            return tr("clock");
        case Cause::Recovery:
            return tr("taken up again");
        case Cause::Rehearsal:
            return tr("rehearsal");
        case Cause::Console:
            return tr("terminal");
    }
    return {};
}

QString Words::startReason(StartReason reason, int waitedFor, const Network& network) {
    switch (reason) {
        case StartReason::ClassStart:
            return tr("at the start");
        case StartReason::After:
            return waitedFor < 0 ? tr("after what comes before") : tr("after: %1").arg(activity(waitedFor, network));
        case StartReason::Hands:
            return waitedFor < 0 ? tr("no hand was free")
                                 : tr("no hand was free: %1").arg(activity(waitedFor, network));
        case StartReason::Station:
            return holds(network.stationHolds, waitedFor)
                       ? tr("waits for a place: %1").arg(toQt(at(network.stationHolds, waitedFor).vessel))
                       : tr("waits for a place");
        case StartReason::HoldLimit:
            return holds(network.limits, waitedFor) ? tr("not earlier, so that it need not wait for: %1")
                                                          .arg(activity(at(network.limits, waitedFor).to, network))
                                                    : tr("not earlier, so that it need not wait");
        case StartReason::Pulses:
            return tr("looks at a tray come first");
        case StartReason::Underway:
            return tr("is under way");
    }
    return {};
}

QString Words::handWork(HandWork work) {
    switch (work) {
        case HandWork::Work:
            return tr("hands throughout");
        case HandWork::Start:
            return tr("hands at the start");
        case HandWork::Pulse:
            return tr("a look");
        case HandWork::End:
            return tr("hands at the end");
    }
    return {};
}

}  // namespace brinebell
