// PlanWords.cpp — the part of Words that speaks of plans: what a sheet is worth and what could be made ahead.
#include <algorithm>

#include "bridge/TimeText.h"
#include "bridge/Words.h"
#include "plan/Chance.h"

namespace brinebell {

namespace {

// What is left of time is never shown as more than it is.
QString wholeMinutes(Seconds span) {
    return spanText(span < Seconds(60) ? span : std::chrono::floor<std::chrono::minutes>(span));
}

}  // namespace

QString Words::searching(const PlanProgress& progress) {
    if (progress.shortest == Seconds::zero()) {
        return tr("Searching for the shortest sheet");
    }
    return tr("Searching: best so far %1, at least %2")
        .arg(sheetTime(progress.shortest), sheetTime(progress.lowerBound));
}

QString Words::quality(const PlannedSheet& planned) {
    QString words = sentence(toQt(qualityInWords(planned)));
    if (planned.stretches) {
        words += QLatin1Char('\n') + tr("No sheet was found that keeps every limit");
    }
    return planned.stopped ? words + QLatin1Char('\n') + tr("The search was stopped") : words;
}

QString Words::ends(const Forecast& ahead, const Network& network) {
    const auto at = [&](Seconds end) { return timeOfDay(network.startUtc + end); };
    return tr("In the slot: %1\nHalf of %2 runs end by %3\n8 in 10 end by %4")
        .arg(toQt(printShare(ahead.classEnd.chance)))
        .arg(ahead.runs)
        .arg(at(ahead.classEnd.p50), at(ahead.classEnd.p80));
}

QString Words::deadline(const Deadline& deadline, const Network& network) {
    const QString what = deadline.load < 0 ? tr("Heat on") : tr("%1 in").arg(sentence(load(deadline.load, network)));
    const QString spare = deadline.spare() >= Seconds::zero() ? tr("%1 to spare").arg(wholeMinutes(deadline.spare()))
                                                              : tr("%1 TOO LATE").arg(spanText(deadline.spare()));
    return tr("%1 %2  ·  %3").arg(what, timeOfDay(network.startUtc + deadline.latest), spare);
}

QString Words::driver(const LatenessDriver& driver, const Network& network) {
    const int bound = network.activities[static_cast<std::size_t>(driver.activity)].load;
    const QString what = activity(driver.activity, network);
    return tr("%1  %2").arg(spanText(driver.ifSlow), bound < 0 ? what : tr("%1, %2").arg(what, load(bound, network)));
}

QString Words::slack(Seconds slack) {
    return slack <= Seconds::zero() ? tr("◆ critical") : wholeMinutes(slack);
}

QString Words::makeAhead(const MakeAheadAnswer& answer) {
    if (!answer.fits && answer.stopped) {
        return tr("Nothing tried so far makes this class fit its slot. The nearest to it is shown.");
    }
    if (!answer.fits) {
        return tr("Nothing that can be made ahead makes this class fit its slot. The nearest to it is shown.");
    }
    if (answer.chosen.empty()) {
        return answer.dropped.empty() ? tr("The class fits its slot with nothing made ahead.")
                                      : tr("The class fits its slot with nothing made ahead and some talk left out.");
    }
    const QString words = answer.chosen.size() == 1
                              ? tr("Make one stage ahead and the class fits its slot")
                              : tr("Make %1 stages ahead and the class fits its slot").arg(answer.chosen.size());
    return answer.smallest ? tr("%1; nothing smaller does.").arg(words) : tr("%1.").arg(words);
}

QString Words::makeAheadEnds(const MakeAheadAnswer& answer, const ClassPlan& plan) {
    const auto at = [&](Seconds end) { return timeOfDay(plan.startUtc + end); };
    QString words = tr("8 in 10 classes end by %1 with nothing made ahead").arg(at(answer.endWithout));
    if (!answer.chosen.empty() || !answer.dropped.empty()) {
        words += tr(", and by %1 with what is marked").arg(at(answer.end));
    }
    words += tr("; the room must be empty at %1.").arg(at(answer.slot));
    QStringList dropped;
    for (const ClassTalk& talk : plan.talk) {
        if (std::find(answer.dropped.begin(), answer.dropped.end(), "class/" + talk.point.id) != answer.dropped.end()) {
            dropped << toQt(talk.point.text);
        }
    }
    return dropped.isEmpty() ? words
                             : words + QLatin1Char('\n') + tr("Leave out: %1").arg(dropped.join(QLatin1Char(' ')));
}

}  // namespace brinebell
