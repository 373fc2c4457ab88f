// BoardView.h — what stands on the board, worked out from the guide as plain values. No widgets, no clock.
#pragma once

#include <QString>
#include <vector>

#include "bridge/OutlookWorker.h"
#include "bridge/Words.h"

namespace brinebell {

/// What the presenter's hands do now.
struct ActionView {
    QString kicker;     ///< "My hands now", "Start now", "Hands free"
    QString title;      ///< verb first
    QString lookFor;    ///< the end-point, or what is waited for
    QString amounts;    ///< for this batch
    QString aside;      ///< what helpers have in hand; cautions
    QString live = {};  ///< the one line of it that is read from the counter: jars, looks, end-point or amount
    bool operator==(const ActionView&) const = default;
};
ActionView actionView(const Guide& guide, const Moment& moment);

/// The activity that the action is about; -1 where it is about none.
int shownActivity(const Guide& guide);

/// "Watch for: the gauge at 11 psi": the boil, steam, pressure or zero that `hold` stands for; empty for anything else.
QString sightWords(const Prompt& hold, const Moment& moment);

/// The parts of the action that are read by stepping up, in the order in which they are wanted.
QString detailsOf(const ActionView& view);

/// What comes after this, or that nothing does; empty where it is what the action names already.
QString nextView(const Guide& guide, const Moment& moment);

/// By rising urgency. It changes weight and shape of a tile, and puts a word on it; never its place.
enum class Urge { Idle, Running, Soon, Due, Stop };

struct TileView {
    QString name;   ///< of the station
    QString what;   ///< on it now
    QString big;    ///< a countdown, or one word
    QString note;   ///< the end time, or what it waits for
    QString badge;  ///< "DUE"; empty when nothing is wanted
    Urge urge = Urge::Idle;
    bool isOver = false;  ///< `big` says by how much its time is over
    bool operator==(const TileView&) const = default;
};
TileView tileView(const StationStrip& strip, const Guide& guide, const Moment& moment);

struct ClockView {
    QString now;
    QString classEnd;
    QString classPlanned;
    QString kitchenEnd;
    QString kitchenPlanned;
    QString latest;              ///< the time that must not be missed next; a dash when there is none
    QString latestWords;         ///< what for, and how long still
    bool latestPresses = false;  ///< under five minutes off, or past
    QString standing;            ///< "3 min behind"
    QString spread;              ///< of the class end; empty before the first forecast
    QString late;                ///< past the slot, with what helps most; empty within it
    bool operator==(const ClockView&) const = default;
};
/// `ahead` is null before the first answer, and where nobody looks ahead.
ClockView clockView(const Guide& guide, const std::optional<LatestMoment>& latest, const OutlookAnswer* ahead,
                    const Moment& moment);

/// All there is to know of the step in hand, for the presenter who steps up to the screen.
struct StepView {
    QString title;
    QString amounts;  ///< each ingredient on a line
    QString swaps;    ///< what may stand in for it, and what may not
    QString lookFor;  ///< end-point, and how it is done
    QString cautions;
    QString points;  ///< the next few open points, in full
    bool operator==(const StepView&) const = default;
};
StepView stepView(const Guide& guide, const Moment& moment);

/// All that would help a late class.
struct RemedyView {
    QString head;
    QString list;  ///< most first, one a line
    bool operator==(const RemedyView&) const = default;
};
RemedyView remedyView(const Guide& guide, const OutlookAnswer* ahead, const Moment& moment);

/// Every cue that stands, most urgent first, in one text; empty when none does.
QString cuesView(const Guide& guide, const Moment& moment);

struct PointsView {
    QString head;  ///< "To say: 3 open, 2 said"; empty, as the list is, in a class without points
    QString list;  ///< the next few open points, numbered
    bool operator==(const PointsView&) const = default;
};
inline constexpr std::size_t kPointsShown = 2;
PointsView pointsView(const Guide& guide, const Moment& moment);

}  // namespace brinebell
