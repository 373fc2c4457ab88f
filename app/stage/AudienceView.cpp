#include "stage/AudienceView.h"

#include <algorithm>

#include "bridge/TimeText.h"
#include "stage/BoardView.h"

namespace brinebell {

namespace {

struct AudienceWords {
    Q_DECLARE_TR_FUNCTIONS(AudienceWords)
};

/// The count of a canner goes before all others; then what ends first.
const StationStrip* shownCount(const Guide& guide) {
    const StationStrip* found = nullptr;
    for (const StationStrip& strip : guide.strips) {
        const bool better = found == nullptr || (strip.load >= 0 && found->load < 0) ||
                            ((strip.load >= 0) == (found->load >= 0) && strip.endsAt < found->endsAt);
        if (strip.endsAt && better) {
            found = &strip;
        }
    }
    return found;
}

QString heatingSafety(const Load& load) {
    switch (load.method) {
        case Method::BoilingWater:
            // How deep the water has to stand follows from the process, so it is never said in general.
            return load.waterCheck.empty() ? AudienceWords::tr("The time counts only from a full rolling boil.")
                                           : AudienceWords::tr("The time counts only from a full rolling boil: %1.")
                                                 .arg(Words::inSentence(toQt(load.waterCheck)));
        case Method::AtmosphericSteam:
            return AudienceWords::tr("The time counts only from a full column of steam.");
        case Method::PressureDial:
        case Method::PressureWeighted:
            return AudienceWords::tr("Before any pressure builds, steam must drive the air out for ten minutes.");
    }
    return {};
}

QString countSafety(Method method) {
    switch (method) {
        case Method::BoilingWater:
            return AudienceWords::tr("If the boil stops, the whole time starts again.");
        case Method::AtmosphericSteam:
            return AudienceWords::tr("If the steam stops, the whole time starts again.");
        case Method::PressureDial:
        case Method::PressureWeighted:
            return AudienceWords::tr("If the pressure falls below the table's, the whole time starts again.");
    }
    return {};
}

QString phaseSafety(LoadPhase phase, const Load& load) {
    const Method method = load.method;
    switch (phase) {
        case LoadPhase::Lowered:
            return heatingSafety(load);
        case LoadPhase::Venting:
            return AudienceWords::tr("Steam drives the air out for ten full minutes before the vent is closed.");
        case LoadPhase::Pressurising:
            return method == Method::PressureWeighted
                       ? AudienceWords::tr("The time counts only once the weight jiggles or rocks as its maker says.")
                       : AudienceWords::tr("The time counts only once the gauge shows the pressure of the table.");
        case LoadPhase::Timing:
            return countSafety(method);
        case LoadPhase::LosingPressure:
            return AudienceWords::tr("The pressure falls by itself: nothing cools the canner, nothing opens it.");
        case LoadPhase::Resting:
            return isPressure(method)
                       ? AudienceWords::tr(
                             "No pressure left: ten more minutes before the lid is opened, away from the face.")
                       : AudienceWords::tr("Heat off, lid off: the jars rest five minutes before they are lifted.");
        case LoadPhase::Lifting:
        case LoadPhase::Cooling:
            return AudienceWords::tr("Leave the bands alone: jars cool 12 to 24 hours before the seals are checked.");
        case LoadPhase::Filling:
        case LoadPhase::SealsChecked:
        case LoadPhase::SetAside:
            break;
    }
    return {};
}

QString loadSafety(std::size_t load, const Moment& moment) {
    return phaseSafety(moment.state.loads[load].phase, moment.network.loads[load]);
}

QString safetyOf(int activity, const StationStrip* count, const Moment& moment) {
    if (activity >= 0 && !moment.network.activities[static_cast<std::size_t>(activity)].cautions.empty()) {
        return toQt(moment.network.activities[static_cast<std::size_t>(activity)].cautions.front());
    }
    if (count != nullptr && count->load >= 0) {
        return loadSafety(static_cast<std::size_t>(count->load), moment);
    }
    for (std::size_t l = 0; l < moment.state.loads.size(); ++l) {
        const LoadPhase phase = moment.state.loads[l].phase;
        if (phase == LoadPhase::Lowered || phase == LoadPhase::Pressurising || phase == LoadPhase::LosingPressure) {
            return loadSafety(l, moment);
        }
    }
    return {};
}

}  // namespace

AudienceView audienceView(const Guide& guide, const Moment& moment) {
    const int shown = shownActivity(guide);
    const int activity = shown >= 0 || guide.handsOn.empty() ? shown : guide.handsOn.front();
    AudienceView view;
    view.dish = toQt(moment.network.title);
    if (activity >= 0) {
        const Activity& now = moment.network.activities[static_cast<std::size_t>(activity)];
        if (now.dish >= 0) {
            view.dish = toQt(moment.network.dishes[static_cast<std::size_t>(now.dish)].title);
        }
        view.step = toQt(now.title);
    } else if (guide.hold) {
        view.step = sightWords(*guide.hold, moment);
    }
    const StationStrip* count = shownCount(guide);
    if (count != nullptr) {
        const QString what = count->load >= 0 ? Words::sentence(Words::load(count->load, moment.network))
                                              : Words::activity(count->activity, moment.network);
        const QString end = timeOfDay(moment.utcAt(*count->endsAt));
        const Millis left = *count->endsAt - moment.elapsed;
        // What is over counts no longer; a room that reads 0:00 would wait for something.
        view.countdown = left > Millis::zero() ? boardCountdown(left) : AudienceWords::tr("over");
        view.countdownWords = left > Millis::zero() ? AudienceWords::tr("%1, to %2").arg(what, end)
                                                    : AudienceWords::tr("%1, since %2").arg(what, end);
    }
    view.safety = safetyOf(activity, count, moment);
    return view;
}

}  // namespace brinebell
