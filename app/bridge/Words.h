// Words.h — values from core/ put into translated words. The one place where a reason becomes a sentence.
//
// Every switch names every enumerator, so that a new one does not compile before it has words. Sentences are
// plain text; names and titles come from files and are never read as markup.
#pragma once

#include <QCoreApplication>
#include <QString>

#include "plan/Deadlines.h"
#include "plan/Forecast.h"
#include "plan/MakeAhead.h"
#include "plan/Planner.h"
#include "plan/Replan.h"
#include "session/Advice.h"
#include "session/Guide.h"
#include "session/LatestMoment.h"

namespace brinebell {

/// What a sentence about "now" needs. Lifetime: no longer than the session it was taken from.
struct Moment {
    const Network& network;
    const State& state;
    Millis elapsed{};
    Millis utc{};
    Millis utcAt(Millis sessionTime) const { return utc + (sessionTime - elapsed); }
};

class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
public:
    static QString prompt(const Prompt& prompt, const Moment& moment);  ///< what the press will do
    static QString refusal(const Refusal& refusal, const Moment& moment);
    static QString cue(const Cue& cue, const Moment& moment);
    static QString cueKind(CueKind kind);                              ///< "SOON", "DUE": a word beside a shape
    static QString event(const Event& event, const Network& network);  ///< "Load 1: rolling boil seen"
    /// What an undo took back, of the session's `events`: "Taken back — load 1: steam seen, venting".
    static QString takenBack(const Event& undone, const std::vector<Event>& events, const Network& network);
    static QString eventKind(EventKind kind);
    static QString cause(Cause cause);
    static QString phase(LoadPhase phase, Method method = Method::BoilingWater);
    static QString startReason(StartReason reason, int waitedFor, const Network& network);
    static QString handWork(HandWork work);

    // What a plan is worth. Times of day, at the class's own start.
    static QString searching(const PlanProgress& progress);
    static QString quality(const PlannedSheet& planned);
    static QString ends(const Forecast& ahead, const Network& network);
    static QString deadline(const Deadline& deadline, const Network& network);  ///< "Heat on 19:09 · 9 min to spare"
    static QString driver(const LatenessDriver& driver, const Network& network);
    static QString slack(Seconds slack);  ///< "◆ critical", "4 min"; whole minutes, rounded down
    static QString makeAhead(const MakeAheadAnswer& answer);
    static QString makeAheadEnds(const MakeAheadAnswer& answer, const ClassPlan& plan);

    // How a class that runs will end. Times of day, from the running session.
    static QString spread(const Forecast& ahead, const Moment& moment);  ///< "8 in 10 by 19:54; 83 % in the slot"
    static QString latest(const LatestMoment& latest, const Network& network);  ///< "latest heat-on"
    static constexpr Seconds kLatestSoon = std::chrono::minutes(5);
    static QString untilLatest(Seconds left);  ///< "in 12 min", "▲ SOON, 3 min", "■ PAST, 2 min"
    static QString remedy(const Remedy& remedy, const Network& network);  ///< "a second pair of hands saves 7 min"
    /// "12 min late: a second pair of hands saves 7 min"; empty within the slot.
    static QString late(Seconds by, const std::vector<Remedy>* remedies, const Network& network);
    static QString adviceFault(const AdviceFault& fault);

    static QString activity(int index, const Network& network);  ///< its title; a dash when there is none
    static QString station(int index, const Network& network);
    static QString reading(const Event& event);              ///< "82.5 °C"
    static QString load(int index, const Network& network);  ///< "load 1", "load 1 in Big canner"
    static QString jars(int count, JarSize size);            ///< "7 pints"
    static QString sentence(QString words);                  ///< first letter large
    static QString inSentence(QString words);                ///< first letter small, initialisms kept

private:
    static QString barredUndo(EventKind newest);
    static QString refusalWithDetail(const Refusal& refusal, const Moment& moment);
    // Of a load in its canner: CannerWords.cpp.
    static QString cannerPrompt(const Prompt& prompt, const Moment& moment);
    static QString vouchPrompt(int load, Millis gap, const Moment& moment);
    static QString cannerRefusal(const Refusal& refusal, const Moment& moment);
    static QString cannerCue(const Cue& cue, const Moment& moment);
};

}  // namespace brinebell
