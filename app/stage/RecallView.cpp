#include "stage/RecallView.h"

#include <QCoreApplication>
#include <QStringList>

#include "bridge/TimeText.h"
#include "plan/ProcessSource.h"

namespace brinebell {

namespace {

constexpr int kDoneShown = 4;

struct RecallWords {
    Q_DECLARE_TR_FUNCTIONS(RecallWords)
};

QString lastDone(const std::vector<Event>& events, const Moment& moment) {
    QStringList lines;
    for (auto event = events.rbegin(); event != events.rend() && lines.size() < kDoneShown; ++event) {
        const Millis ago = moment.elapsed - elapsedBetween(moment.state.startedAt, event->at);
        lines << RecallWords::tr("%1 ago — %2").arg(spanText(secondsLeft(ago)), Words::event(*event, moment.network));
    }
    return lines.isEmpty() ? RecallWords::tr("Nothing yet.") : lines.join(QLatin1Char('\n'));
}

QString running(const Moment& moment) {
    QStringList lines;
    for (std::size_t i = 0; i < moment.state.activities.size(); ++i) {
        const ActivityState& state = moment.state.activities[i];
        if (state.started && !state.ended) {
            const Activity& activity = moment.network.activities[i];
            lines << RecallWords::tr("%1 — for %2")
                         .arg(Words::activity(static_cast<int>(i), moment.network),
                              spanText(secondsLeft(moment.elapsed - *state.started)));
            if (activity.kind == ActivityKind::Process) {
                lines << toQt(processSourceInWords(moment.network.loads[static_cast<std::size_t>(activity.load)]));
            }
        }
    }
    return lines.isEmpty() ? RecallWords::tr("Nothing.") : lines.join(QLatin1Char('\n'));
}

QString overdue(const Guide& guide, const Moment& moment) {
    QStringList lines;
    for (const Cue& cue : guide.cues) {
        if (cue.kind >= CueKind::Due) {
            lines << Words::cue(cue, moment);
        }
    }
    return lines.isEmpty() ? RecallWords::tr("Nothing.") : lines.join(QLatin1Char('\n'));
}

QString next(const Guide& guide, const Moment& moment) {
    QStringList lines;
    if (guide.tap) {
        lines << RecallWords::tr("Short press: %1").arg(Words::prompt(*guide.tap, moment));
    }
    if (guide.hold) {
        lines << RecallWords::tr("Held press: %1").arg(Words::prompt(*guide.hold, moment));
    }
    if (guide.next) {
        lines << RecallWords::tr("Then: %1").arg(Words::activity(*guide.next, moment.network));
    }
    return lines.isEmpty() ? RecallWords::tr("Wait; the board will call.") : lines.join(QLatin1Char('\n'));
}

}  // namespace

RecallView recallView(const std::vector<Event>& events, const Guide& guide, const Moment& moment) {
    return {lastDone(events, moment), running(moment), overdue(guide, moment), next(guide, moment)};
}

}  // namespace brinebell
