// The class report: what extension offices ask of a class. Source of the fields: requests of several offices, in our
// own words; demographic columns differ by state, so the list leaves room for two of one's own.
#include <QCoreApplication>
#include <algorithm>
#include <map>

#include "bridge/TimeText.h"
#include "logbook/Afterwards.h"
#include "logbook/Export.h"
#include "logbook/LoadHistory.h"
#include "logbook/RecordWords.h"
#include "paper/Papers.h"
#include "review/AfterWords.h"
#include "session/QuestionPause.h"

namespace brinebell {

namespace {

constexpr int kLinesWhenNobodyCounted = 12;
constexpr int kMostLines = 60;

QString reportWord(const char* text) {
    return QCoreApplication::translate("ClassReport", text);
}

QString toWriteOn() {
    return QStringLiteral("____________");
}

QString hoursOf(std::int64_t minutes) {
    return QStringLiteral("%1:%2").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString endedAfter(const std::optional<Seconds>& end) {
    return end ? sheetTime(*end) : reportWord(QT_TRANSLATE_NOOP("ClassReport", "not ended"));
}

bool isInMinutes(ReportFigure figure) {
    return figure == ReportFigure::TeacherMinutes || figure == ReportFigure::VolunteerMinutes;
}

using Rows = std::vector<QStringList>;

void addHours(Rows& rows, const SessionRecord& record, const Review& review) {
    rows.push_back(
        {reportWord(QT_TRANSLATE_NOOP("ClassReport", "Class, hours planned")), sheetTime(review.plannedClassEnd)});
    rows.push_back(
        {reportWord(QT_TRANSLATE_NOOP("ClassReport", "Class, hours taught")), endedAfter(review.actualClassEnd)});
    rows.push_back(
        {reportWord(QT_TRANSLATE_NOOP("ClassReport", "Kitchen, hours")), endedAfter(review.actualKitchenEnd)});
    for (const ReportFigure figure : kReportFigures) {
        const auto told = figureIn(record, figure);
        rows.push_back({figureName(figure), !told                 ? toWriteOn()
                                            : isInMinutes(figure) ? hoursOf(*told)
                                                                  : QString::number(*told)});
    }
    const auto people = figureIn(record, ReportFigure::Attending);
    const bool isKnown = people && review.actualClassEnd;
    rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "Contact hours (people times hours taught)")),
                    isKnown ? hoursOf(*people * review.actualClassEnd->count() / 60) : toWriteOn()});
}

// Reports ask for jars from boiling water and from pressure separately.
void addJars(Rows& rows, const SessionRecord& record, const SessionHistory& history) {
    struct Count {
        int jars = 0, sealed = 0, unsealed = 0, broken = 0, unchecked = 0;
    };
    std::map<std::pair<Method, JarSize>, Count> counts;
    int setAside = 0;
    for (std::size_t l = 0; l < history.loads.size(); ++l) {
        const Load& planned = record.network.loads[l];
        const LoadState& state = history.loads[l].state;
        if (!isCanned(history.loads[l])) {
            setAside += history.loads[l].setAside ? planned.jars : 0;
            continue;
        }
        Count& count = counts[{planned.method, planned.jar}];
        count.jars += planned.jars;
        count.sealed += state.sealed;
        count.unsealed += state.unsealed;
        count.broken += state.broken;
        count.unchecked += state.phase == LoadPhase::SealsChecked ? 0 : planned.jars;
    }
    for (const auto& [kind, count] : counts) {
        rows.push_back(
            {reportWord(QT_TRANSLATE_NOOP("ClassReport", "Jars canned: %1, %2"))
                 .arg(toQt(methodWords(kind.first)), toQt(jarWords(kind.second))),
             reportWord(QT_TRANSLATE_NOOP("ClassReport", "%1: %2 sealed, %3 not sealed, %4 broken, %5 not checked yet"))
                 .arg(count.jars)
                 .arg(count.sealed)
                 .arg(count.unsealed)
                 .arg(count.broken)
                 .arg(count.unchecked)});
    }
    if (setAside > 0) {
        rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "Jars set aside")), QString::number(setAside)});
    }
}

void addTalk(Rows& rows, const SessionRecord& record, const SessionHistory& history, const Review& review) {
    const auto& pauses = history.state.pauses;
    rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "Stops for questions, questions put off")),
                    QStringLiteral("%1, %2").arg(pauses.size()).arg(history.state.questions.size())});
    rows.push_back(
        {reportWord(QT_TRANSLATE_NOOP("ClassReport", "Points said")), QString::number(review.pointsSaid.size())});
    for (const int point : review.pointsOpen) {
        rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "NOT said")),
                        toQt(record.network.talk[static_cast<std::size_t>(point)].text)});
    }
}

void writeAttendance(Paper& paper, const SessionRecord& record) {
    paper.heading(reportWord(QT_TRANSLATE_NOOP("ClassReport", "Who came")));
    paper.paragraph(reportWord(QT_TRANSLATE_NOOP(
        "ClassReport", "Skill from 1 (never canned) to 5 (cans every year). Ask for no more than your office needs.")));
    Rows rows{{reportWord(QT_TRANSLATE_NOOP("ClassReport", "Name")),
               reportWord(QT_TRANSLATE_NOOP("ClassReport", "County or town")),
               reportWord(QT_TRANSLATE_NOOP("ClassReport", "New or returning")),
               reportWord(QT_TRANSLATE_NOOP("ClassReport", "Skill before")),
               reportWord(QT_TRANSLATE_NOOP("ClassReport", "Skill after")), QString(), QString()}};
    const auto people = figureIn(record, ReportFigure::Attending);
    const auto lines =
        static_cast<std::size_t>(std::clamp<std::int64_t>(people.value_or(kLinesWhenNobodyCounted), 1, kMostLines));
    rows.resize(lines + 1, QStringList(rows.front().size(), QString()));
    paper.table(rows, {22, 16, 16, 11, 13, 11, 11});
}

}  // namespace

Result<Paper> classReportPaper(const SessionRecord& record) {
    const Result<Review> review = reviewOf(record);
    const Result<SessionHistory> history = historyOf(record);
    if (!review || !history) {
        return tl::unexpected<Error>(review ? history.error() : review.error());
    }
    Paper paper(reportWord(QT_TRANSLATE_NOOP("ClassReport", "Class report: %1")).arg(toQt(record.info.title)));
    if (record.info.rehearsal) {
        paper.paragraph(reportWord(QT_TRANSLATE_NOOP("ClassReport", "REHEARSAL: no class was held")), true);
    }
    Rows rows;
    rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "Place")), toQt(record.info.venue)});
    rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "Teacher")), toQt(record.info.teacher)});
    rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "Started")), dayAndTime(record.info.startedUtc)});
    for (const NetworkDish& dish : record.network.dishes) {
        rows.push_back({reportWord(QT_TRANSLATE_NOOP("ClassReport", "Dish")),
                        reportWord(QT_TRANSLATE_NOOP("ClassReport", "%1, %2 jars planned (%3)"))
                            .arg(toQt(dish.title), QString::number(dish.jars), toQt(jarWords(dish.jar)))});
    }
    addHours(rows, record, *review);
    addJars(rows, record, *history);
    addTalk(rows, record, *history, *review);
    paper.table(rows, {40, 60}, Paper::Head::FirstColumn);
    writeAttendance(paper, record);
    return paper;
}

}  // namespace brinebell
