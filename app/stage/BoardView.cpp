#include "stage/BoardView.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "Customs.h"
#include "bridge/TimeText.h"
#include "session/CannerSteps.h"

namespace brinebell {

namespace {

struct BoardWords {
    Q_DECLARE_TR_FUNCTIONS(BoardWords)
};

const Activity& activityAt(const Moment& moment, int index) {
    return moment.network.activities[static_cast<std::size_t>(index)];
}

QString joined(const std::vector<std::string>& texts, const QString& between) {
    QStringList list;
    for (const std::string& text : texts) {
        list << toQt(text);
    }
    return list.join(between);
}

/// In the units of whoever stands there; the network keeps them as the recipe has them.
std::vector<std::string> shownAmounts(const Activity& activity) {
    std::vector<std::string> lines = activity.amounts;
    for (std::string& line : lines) {
        line = shownLine(line, customs().shownAs);
    }
    return lines;
}

/// The cautions of the activity, or nothing where there is none.
QString cautionsOf(int index, const Moment& moment) {
    return index < 0 ? QString() : joined(activityAt(moment, index).cautions, QStringLiteral("  "));
}

ActionView activityView(const QString& kicker, int index, const Moment& moment) {
    const Activity& activity = activityAt(moment, index);
    ActionView view;
    view.kicker = kicker;
    view.title = toQt(activity.title);
    view.lookFor =
        activity.lookFor.empty() ? toQt(activity.detail) : BoardWords::tr("Until: %1").arg(toQt(activity.lookFor));
    const ActivityState& lived = moment.state.activities[static_cast<std::size_t>(index)];
    if (activity.jars > 0 && lived.started && !lived.ended) {
        const QString jars = BoardWords::tr("%1 of %2 jars done").arg(lived.jarsDone).arg(activity.jars);
        view.lookFor = view.lookFor.isEmpty() ? jars : jars + QStringLiteral(". ") + view.lookFor;
    }
    view.amounts = joined(shownAmounts(activity), QStringLiteral("  ·  "));
    view.aside = cautionsOf(index, moment);
    return view;
}

QString jarsAndLooks(const Activity& activity, const ActivityState& state) {
    if (activity.pulse && state.started) {
        return BoardWords::tr("look %1").arg(state.pulses + 1);
    }
    return activity.jars > 0 && !state.started ? BoardWords::tr("%1 jars").arg(activity.jars) : QString();
}

/// What else is in somebody's hands, in one line; empty when nothing is.
QString alsoUnderWay(const Guide& guide, int shown, const Moment& moment) {
    QStringList others;
    for (const int activity : guide.handsOn) {
        if (activity != shown) {
            QStringList words{Words::inSentence(Words::activity(activity, moment.network)),
                              jarsAndLooks(activityAt(moment, activity),
                                           moment.state.activities[static_cast<std::size_t>(activity)])};
            words.removeAll(QString());
            others << words.join(QStringLiteral(", "));
        }
    }
    return others.isEmpty() ? QString() : BoardWords::tr("Also under way: %1.").arg(others.join(QStringLiteral("; ")));
}

bool isInHand(const Guide& guide, int activity) {
    return std::find(guide.handsOn.begin(), guide.handsOn.end(), activity) != guide.handsOn.end();
}

QString finishKicker(const Guide& guide, int activity, const Moment& moment) {
    if (isInHand(guide, activity)) {
        return BoardWords::tr("My hands now");
    }
    return activityAt(moment, activity).endsBySight ? BoardWords::tr("Watch for the end")
                                                    : BoardWords::tr("Its time is over");
}

ActionView tapView(const Guide& guide, const Moment& moment) {
    const Prompt& tap = *guide.tap;
    switch (tap.kind) {
        case PromptKind::StartSession:
            return {BoardWords::tr("Ready"),
                    toQt(moment.network.title),
                    BoardWords::tr("The next press starts the clock."),
                    {},
                    {}};
        case PromptKind::StartActivity:
        case PromptKind::StartLift:
            return activityView(BoardWords::tr("Start now"), tap.activity, moment);
        case PromptKind::DoPulse: {
            ActionView view = activityView(BoardWords::tr("Look now"), tap.activity, moment);
            if (const auto& pulse = activityAt(moment, tap.activity).pulse) {
                view.title = toQt(pulse->action);
            }
            return view;
        }
        case PromptKind::FinishActivity:
            return activityView(finishKicker(guide, tap.activity, moment), tap.activity, moment);
        case PromptKind::SayPoint:
            // Its beginning stands large, to be known by; all of it small, to be read.
            return {BoardWords::tr("Say now"),
                    toQt(moment.network.talk[static_cast<std::size_t>(tap.talk)].text),
                    {},
                    {},
                    toQt(moment.network.talk[static_cast<std::size_t>(tap.talk)].text)};
        case PromptKind::TurnHeatOff:
            return {BoardWords::tr("Now"),
                    moment.network.loads[static_cast<std::size_t>(tap.load)].pressure
                        ? BoardWords::tr("Turn the heat off, touch nothing else")
                        : BoardWords::tr("Turn the heat off, take the canner lid off"),
                    BoardWords::tr("%1 has had its whole process time.")
                        .arg(Words::sentence(Words::load(tap.load, moment.network))),
                    {},
                    {}};
        case PromptKind::ResumeFromQuestions: {
            if (guide.handsOn.empty()) {
                return {BoardWords::tr("Questions"), BoardWords::tr("Answer the class"), {}, {}, {}};
            }
            return activityView(BoardWords::tr("Questions. Then back to"), guide.handsOn.front(), moment);
        }
        case PromptKind::ConfirmOff:
            return {BoardWords::tr("Look"),
                    BoardWords::tr("See that it is off: %1")
                        .arg(Words::station(static_cast<int>(tap.command.value), moment.network)),
                    {},
                    {},
                    {}};
        case PromptKind::EndClass:
        case PromptKind::CloseSession:
        case PromptKind::SeeBoil:
        case PromptKind::CheckWater:
        case PromptKind::SeeSteam:
        case PromptKind::CloseVent:
        case PromptKind::SeePressure:
        case PromptKind::SeeZero:
        case PromptKind::VouchBoil:
        case PromptKind::ConfirmRemedy:
            break;
    }
    return {BoardWords::tr("Now"), Words::sentence(Words::prompt(tap, moment)), {}, {}, {}};
}

/// What a held prompt about a sight waits for; null for every other prompt.
const Activity* awaitedBy(const Prompt& hold, const Moment& moment) {
    const bool sees = hold.kind == PromptKind::SeeBoil || hold.kind == PromptKind::SeeSteam ||
                      hold.kind == PromptKind::SeePressure || hold.kind == PromptKind::SeeZero;
    if (!sees || hold.load < 0) {
        return nullptr;
    }
    const auto l = static_cast<std::size_t>(hold.load);
    const auto sight = awaitedSight(moment.network.loads[l], moment.state.loads[l]);
    return sight ? &activityAt(moment, sight->activity) : nullptr;
}

// What is watched for in a canner, as the step that it ends says it.
ActionView sightView(const Prompt& hold, const Moment& moment) {
    const Activity* ends = awaitedBy(hold, moment);
    return {BoardWords::tr("Hands free"),
            sightWords(hold, moment),
            ends != nullptr ? toQt(ends->detail) : QString(),
            {},
            {}};
}

ActionView liftView(const Prompt& hold, const Moment& moment) {
    const Load& load = moment.network.loads[static_cast<std::size_t>(hold.load)];
    // Steam that is left under the lid of a pressure canner scalds: how it is opened goes before all else.
    return {BoardWords::tr("Now"),
            load.pressure ? BoardWords::tr("Open the lid away from the face, then lift")
                          : Words::sentence(Words::prompt(hold, moment)),
            BoardWords::tr("Straight up, an inch apart, bands alone"),
            {},
            cautionsOf(load.lift, moment)};
}

ActionView holdView(const Prompt& hold, const Moment& moment) {
    switch (hold.kind) {
        case PromptKind::CheckWater:
            return {BoardWords::tr("Look now"),
                    toQt(moment.network.loads[static_cast<std::size_t>(hold.load)].waterCheck),
                    BoardWords::tr("The heat counts for nothing before this is confirmed."),
                    {},
                    {}};
        case PromptKind::SeeSteam:
        case PromptKind::SeePressure:
        case PromptKind::SeeZero:
        case PromptKind::SeeBoil:
            return sightView(hold, moment);
        case PromptKind::VouchBoil:
            return {BoardWords::tr("Answer first"),
                    BoardWords::tr("Did it hold?"),
                    BoardWords::tr("Hold = yes: %1").arg(Words::inSentence(Words::prompt(hold, moment))),
                    {},
                    BoardWords::tr("If nobody can say so: L, lost, counts again from the full time.")};
        case PromptKind::StartLift:
            return liftView(hold, moment);
        default:
            return {BoardWords::tr("Now"), Words::sentence(Words::prompt(hold, moment)), {}, {}, {}};
    }
}

/// Waits are for talking: the first thing that may be said and has not been.
QString freeTalk(const Moment& moment) {
    for (std::size_t i = 0; i < moment.network.talk.size(); ++i) {
        const NetworkTalk& talk = moment.network.talk[i];
        const bool said = i < moment.state.said.size() && moment.state.said[i];
        if (!said && !talk.mustSay && talk.activity < 0) {
            return BoardWords::tr("A moment to say: %1").arg(toQt(talk.text));
        }
    }
    return BoardWords::tr("Nothing wants your hands. The board will call.");
}

/// Things that cannot wait for a load to be lifted.
bool isUrgent(PromptKind kind) {
    return kind == PromptKind::TurnHeatOff || kind == PromptKind::DoPulse;
}

bool belongsTo(const Cue& cue, const StationStrip& strip) {
    return (cue.activity >= 0 && cue.activity == strip.activity) || (cue.load >= 0 && cue.load == strip.load);
}

Urge urgeOf(CueKind kind) {
    switch (kind) {
        case CueKind::Tick:
        case CueKind::Soon:
            return Urge::Soon;
        case CueKind::Due:
        case CueKind::End:
            return Urge::Due;
        case CueKind::Stop:
            return Urge::Stop;
    }
    return Urge::Soon;
}

/// By how much the class ends past its slot; zero or less within it, and where it has none.
Seconds lateBy(const Guide& guide, const Moment& moment) {
    return moment.network.slot > Seconds::zero() ? guide.classEnd - moment.network.slot : Seconds::zero();
}

/// Null while nobody has asked: an answer from a class on time does not mean that nothing would help a late one.
const std::vector<Remedy>* remediesKnown(const OutlookAnswer* ahead) {
    return ahead != nullptr && ahead->late ? &ahead->outlook.remedies : nullptr;
}

constexpr Millis kOverFrom{60'000};  // under a minute the zero of a countdown says it as well

void addTimes(TileView& view, const StationStrip& strip, const Moment& moment) {
    const ActivityState& state = moment.state.activities[static_cast<std::size_t>(strip.activity)];
    const Activity& activity = activityAt(moment, strip.activity);
    const QString until = activity.lookFor.empty() ? BoardWords::tr("until it is seen")
                                                   : BoardWords::tr("until: %1").arg(toQt(activity.lookFor));
    const std::optional<Millis> due = strip.nextLook ? strip.nextLook : strip.endsAt;
    if (due && moment.elapsed - *due >= kOverFrom) {
        view.isOver = true;
        view.big =
            BoardWords::tr("over by %1 min")
                .arg(static_cast<qlonglong>(std::chrono::floor<std::chrono::minutes>(moment.elapsed - *due).count()));
        view.note = BoardWords::tr("since %1").arg(timeOfDay(moment.utcAt(*due)));
    } else if (strip.nextLook) {
        view.big = boardCountdown(*strip.nextLook - moment.elapsed);
        view.note = BoardWords::tr("look %1 at %2").arg(state.pulses + 1).arg(timeOfDay(moment.utcAt(*strip.nextLook)));
    } else if (strip.endsAt) {
        view.big = boardCountdown(*strip.endsAt - moment.elapsed);
        view.note = BoardWords::tr("to %1").arg(timeOfDay(moment.utcAt(*strip.endsAt)));
    } else if (strip.waitsForSight) {
        view.big = BoardWords::tr("watch");
        view.note = until;
    } else if (state.started) {
        view.big = BoardWords::tr("on");
        view.note = BoardWords::tr("since %1").arg(timeOfDay(moment.utcAt(*state.started)));
    }
}

QString swapWords(const SwapAdvice& advice) {
    QStringList lines;
    if (!advice.allowed.empty()) {
        lines << BoardWords::tr("✓ for %1: %2")
                     .arg(toQt(advice.ingredient), joined(advice.allowed, QStringLiteral("; ")));
    }
    if (!advice.refused.empty()) {
        lines << BoardWords::tr("✗ NOT for %1: %2")
                     .arg(toQt(advice.ingredient), joined(advice.refused, QStringLiteral("; ")));
    }
    return lines.join(QLatin1Char('\n'));
}

/// Before work begins its amounts are wanted, and then its end-point.
QString liveLine(const ActionView& view, const Guide& guide, const Moment& moment) {
    const int index = shownActivity(guide);
    if (index < 0) {
        return view.lookFor;
    }
    const Activity& activity = activityAt(moment, index);
    const ActivityState& state = moment.state.activities[static_cast<std::size_t>(index)];
    QStringList parts{jarsAndLooks(activity, state)};
    const bool starts = guide.tap && guide.tap->kind == PromptKind::StartActivity && !state.started;
    if (activity.pulse && state.started) {
        parts << BoardWords::tr("keep going until: %1").arg(toQt(activity.lookFor));
    } else if (starts && !view.amounts.isEmpty()) {
        parts << view.amounts;
    } else {
        parts << (view.lookFor.isEmpty() ? view.amounts : view.lookFor);
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

ActionView bareAction(const Guide& guide, const Moment& moment) {
    const bool stop = !guide.cues.empty() && guide.cues.front().kind == CueKind::Stop;
    if (stop && guide.hold) {
        return holdView(*guide.hold, moment);
    }
    const bool liftNow = guide.hold && guide.hold->kind == PromptKind::StartLift;
    if (liftNow && !(guide.tap && isUrgent(guide.tap->kind))) {
        return holdView(*guide.hold, moment);
    }
    if (guide.tap) {
        ActionView view = tapView(guide, moment);
        const bool asking = guide.tap->kind == PromptKind::ResumeFromQuestions && !guide.handsOn.empty();
        const QString also = alsoUnderWay(guide, asking ? guide.handsOn.front() : guide.tap->activity, moment);
        view.aside = view.aside.isEmpty() || also.isEmpty() ? view.aside + also : also + QLatin1Char(' ') + view.aside;
        return view;
    }
    if (!guide.handsOn.empty()) {
        return activityView(BoardWords::tr("My hands now"), guide.handsOn.front(), moment);
    }
    if (guide.hold) {
        return holdView(*guide.hold, moment);
    }
    return {BoardWords::tr("Hands free"), BoardWords::tr("Wait and talk"), freeTalk(moment), {}, {}, {}};
}

}  // namespace

int shownActivity(const Guide& guide) {
    const bool held = guide.hold && (guide.hold->kind == PromptKind::StartLift ||
                                     (!guide.cues.empty() && guide.cues.front().kind == CueKind::Stop));
    if (held && !(guide.tap && isUrgent(guide.tap->kind))) {
        return -1;
    }
    if (guide.tap) {
        return guide.tap->kind == PromptKind::TurnHeatOff || guide.tap->kind == PromptKind::SayPoint
                   ? -1
                   : guide.tap->activity;
    }
    return guide.handsOn.empty() ? -1 : guide.handsOn.front();
}

ActionView actionView(const Guide& guide, const Moment& moment) {
    ActionView view = bareAction(guide, moment);
    view.live = liveLine(view, guide, moment);
    return view;
}

QString sightWords(const Prompt& hold, const Moment& moment) {
    const Activity* ends = awaitedBy(hold, moment);
    if (ends == nullptr) {
        return {};
    }
    return ends->lookFor.empty() ? BoardWords::tr("Watch for the rolling boil")
                                 : BoardWords::tr("Watch for: %1").arg(Words::inSentence(toQt(ends->lookFor)));
}

QString detailsOf(const ActionView& view) {
    // Cautions first: what is left away at the end for want of room should be what a glance at the pot tells, too.
    QStringList parts{view.aside, view.live.contains(view.amounts) ? QString() : view.amounts,
                      view.live.contains(view.lookFor) ? QString() : view.lookFor};
    parts.removeAll(QString());
    return parts.join(QStringLiteral("  ·  "));
}

StepView stepView(const Guide& guide, const Moment& moment) {
    const int index = shownActivity(guide);
    if (index < 0) {
        const ActionView view = actionView(guide, moment);
        return {view.title, {}, {}, view.lookFor, view.aside, pointsView(guide, moment).list};
    }
    const Activity& activity = activityAt(moment, index);
    StepView view;
    view.title = toQt(activity.title);
    view.amounts = joined(shownAmounts(activity), QStringLiteral("\n"));
    QStringList swaps;
    for (const SwapAdvice& advice : moment.network.swaps) {
        if (advice.activity == index) {
            swaps << swapWords(advice);
        }
    }
    view.swaps = swaps.join(QLatin1Char('\n'));
    QStringList look{activity.lookFor.empty() ? QString() : BoardWords::tr("Until: %1").arg(toQt(activity.lookFor)),
                     toQt(activity.detail)};
    look.removeAll(QString());
    view.lookFor = look.join(QLatin1Char('\n'));
    view.cautions = joined(activity.cautions, QStringLiteral("\n"));
    view.points = pointsView(guide, moment).list;
    return view;
}

QString nextView(const Guide& guide, const Moment& moment) {
    if (!guide.next) {
        return BoardWords::tr("nothing more");
    }
    const bool lifting =
        guide.hold && guide.hold->kind == PromptKind::StartLift && !(guide.tap && isUrgent(guide.tap->kind));
    const int named =
        lifting ? moment.network.loads[static_cast<std::size_t>(guide.hold->load)].lift : shownActivity(guide);
    if (*guide.next == named) {
        return {};
    }
    const int rest = guide.tap && guide.tap->kind == PromptKind::TurnHeatOff
                         ? moment.network.loads[static_cast<std::size_t>(guide.tap->load)].rest
                         : -1;
    // The rest begins with the very press that is named now; what follows it is the waiting.
    return *guide.next == rest ? BoardWords::tr("let the jars rest for %1").arg(spanText(kRestBeforeLifting))
                               : Words::activity(*guide.next, moment.network);
}

TileView tileView(const StationStrip& strip, const Guide& guide, const Moment& moment) {
    TileView view;
    view.name = toQt(moment.network.stations[static_cast<std::size_t>(strip.station)].name);
    if (strip.activity < 0) {
        view.what = strip.stationHold < 0 ? BoardWords::tr("free") : BoardWords::tr("kept");
    } else {
        view.urge = Urge::Running;
        view.what = Words::activity(strip.activity, moment.network);
        addTimes(view, strip, moment);
    }
    if (strip.load >= 0) {
        const LoadPhase phase = moment.state.loads[static_cast<std::size_t>(strip.load)].phase;
        const Method method = moment.network.loads[static_cast<std::size_t>(strip.load)].method;
        view.what = QStringLiteral("%1: %2").arg(Words::sentence(Words::load(strip.load, moment.network)),
                                                 Words::phase(phase, method));
    }
    // Cues stand most urgent first.
    const auto cue = std::find_if(guide.cues.begin(), guide.cues.end(),
                                  [&](const Cue& standing) { return belongsTo(standing, strip); });
    if (cue != guide.cues.end()) {
        view.urge = urgeOf(cue->kind);
        view.badge = Words::cueKind(cue->kind);
    }
    return view;
}

ClockView clockView(const Guide& guide, const std::optional<LatestMoment>& latest, const OutlookAnswer* ahead,
                    const Moment& moment) {
    const auto at = [&](Seconds fromStart) { return timeOfDay(moment.utcAt(fromStart)); };
    ClockView view;
    view.now = timeOfDay(moment.utc);
    view.classEnd = at(guide.classEnd);
    view.classPlanned = BoardWords::tr("planned %1").arg(at(guide.plannedClassEnd));
    view.kitchenEnd = at(guide.kitchenEnd);
    view.kitchenPlanned = BoardWords::tr("planned %1").arg(at(guide.plannedKitchenEnd));
    view.latest = latest ? at(latest->at) : QStringLiteral("–");
    view.latestWords = BoardWords::tr("every load\nis in");
    if (latest) {
        const Seconds left = latest->at - std::chrono::floor<Seconds>(moment.elapsed);
        view.latestPresses = left < Words::kLatestSoon;
        view.latestWords = Words::latest(*latest, moment.network) + QLatin1Char('\n') + Words::untilLatest(left);
    }
    view.standing =
        moment.state.started ? aheadOrBehind(guide.classEnd, guide.plannedClassEnd) : BoardWords::tr("not started");
    view.spread = ahead != nullptr ? Words::spread(ahead->outlook.ahead, moment) : QString();
    view.late = Words::late(lateBy(guide, moment), remediesKnown(ahead), moment.network);
    return view;
}

RemedyView remedyView(const Guide& guide, const OutlookAnswer* ahead, const Moment& moment) {
    const Seconds late = lateBy(guide, moment);
    RemedyView view;
    view.head = late > Seconds::zero()
                    ? BoardWords::tr("%1. What would help:").arg(Words::late(late, nullptr, moment.network))
                    : BoardWords::tr("The class ends in its slot");
    if (late <= Seconds::zero()) {
        view.list = BoardWords::tr("Nothing has to be changed.");
        return view;
    }
    const std::vector<Remedy>* remedies = remediesKnown(ahead);
    if (remedies == nullptr) {
        view.list = BoardWords::tr("What would help has not been worked out.");
        return view;
    }
    QStringList lines;
    for (const Remedy& remedy : *remedies) {
        QString line =
            BoardWords::tr("%1: class ends %2")
                .arg(Words::sentence(Words::remedy(remedy, moment.network)), timeOfDay(moment.utcAt(remedy.classEnd)));
        for (const int talk : remedy.talk) {
            line += QStringLiteral("\n   – ") + toQt(moment.network.talk[static_cast<std::size_t>(talk)].text);
        }
        lines << line;
    }
    view.list = lines.isEmpty() ? BoardWords::tr("Nothing left to change saves time.") : lines.join(QLatin1Char('\n'));
    return view;
}

QString cuesView(const Guide& guide, const Moment& moment) {
    QStringList lines;
    for (const Cue& cue : guide.cues) {
        lines << QStringLiteral("%1  %2").arg(Words::cueKind(cue.kind), Words::cue(cue, moment));
    }
    return lines.join(QStringLiteral("   |   "));
}

PointsView pointsView(const Guide& guide, const Moment& moment) {
    int said = 0;
    for (std::size_t i = 0; i < moment.network.talk.size() && i < moment.state.said.size(); ++i) {
        said += moment.network.talk[i].mustSay && moment.state.said[i] ? 1 : 0;
    }
    PointsView view;
    const auto& talk = moment.network.talk;
    if (std::none_of(talk.begin(), talk.end(), [](const NetworkTalk& point) { return point.mustSay; })) {
        return view;
    }
    view.head = BoardWords::tr("Must be said: %1 open, %2 said").arg(guide.openPoints.size()).arg(said);
    QStringList lines;
    for (std::size_t i = 0; i < guide.openPoints.size() && i < kPointsShown; ++i) {
        lines << QStringLiteral("☐ %1  %2")
                     .arg(QString::number(i + 1), toQt(talk[static_cast<std::size_t>(guide.openPoints[i])].text));
    }
    view.list = guide.openPoints.empty() ? BoardWords::tr("✓ All of it is said.") : lines.join(QLatin1Char('\n'));
    return view;
}

}  // namespace brinebell
