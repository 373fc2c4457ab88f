#include "paper/Papers.h"

#include <QCoreApplication>
#include <algorithm>

#include "bridge/TimeText.h"
#include "logbook/BatchRecord.h"
#include "logbook/Export.h"

namespace brinebell {

namespace {

constexpr double kCounterPoints = 15.0;  // read from a counter while the hands are busy
constexpr double kRecordPoints = 8.0;    // a hundred columns on the width of a page

QString tr(const char* text) {
    return QCoreApplication::translate("Papers", text);
}

const Activity& activityOf(const Network& network, int index) {
    return network.activities.at(static_cast<std::size_t>(index));
}

QString handName(int hand) {
    return hand == 0 ? tr("teacher") : tr("helper %1").arg(hand);
}

QString doing(const Network& network, const HandSpan& span) {
    const Activity& activity = activityOf(network, span.activity);
    if (span.work == HandWork::Pulse && activity.pulse) {
        return toQt(activity.pulse->action);
    }
    const QString title = toQt(activity.title);
    return span.work == HandWork::End ? tr("End: %1").arg(title) : title;
}

std::vector<QStringList> handRows(const Network& network, const RunSheet& sheet) {
    std::vector<QStringList> rows{{tr("Time"), tr("Who"), tr("What"), tr("Look for")}};
    for (const HandSpan& span : sheet.hands) {
        const Activity& activity = activityOf(network, span.activity);
        // Later pieces of work that was left for a moment, and looks after the first, would bury the rest.
        if (span.ordinal > 1) {
            continue;
        }
        QString what = doing(network, span);
        if (span.work == HandWork::Pulse) {
            what += QLatin1Char(' ') +
                    tr("(every %1 to %2)").arg(spanText(activity.pulse->gapLow), spanText(activity.pulse->gapHigh));
        }
        rows.push_back({timeOfDay(network.startUtc + span.from), handName(span.hand), what, toQt(activity.lookFor)});
    }
    return rows;
}

void writeMustSay(Paper& paper, const Network& network) {
    paper.heading(tr("To be said"));
    for (const NetworkTalk& talk : network.talk) {
        if (talk.mustSay) {
            paper.tickItem(toQt(talk.text));
        }
    }
}

QStringList amountsOf(const Network& network, int dish) {
    QStringList amounts;
    for (const Activity& activity : network.activities) {
        for (const std::string& amount : activity.amounts) {
            const QString text = toQt(amount);
            if (activity.dish == dish && !amounts.contains(text)) {
                amounts.append(text);
            }
        }
    }
    return amounts;
}

void writeProcess(Paper& paper, const Network& network, int dish) {
    QStringList said;
    for (const Load& load : network.loads) {
        const QString words =
            tr("%1, %2 pack, %3: %4 at %5. Table: %6. Source: %7")
                .arg(toQt(toText(load.method)), toQt(toText(load.pack)), toQt(toText(load.jar)),
                     spanText(load.processTime), toQt(network.altitude), toQt(load.tableEntry), toQt(load.tableSource));
        if (load.dish == dish && !said.contains(words)) {
            said.append(words);
        }
    }
    for (const QString& words : said) {
        paper.paragraph(words, true);
    }
}

void writeSteps(Paper& paper, const Network& network, int dish) {
    int number = 0;
    for (const Activity& activity : network.activities) {
        if (activity.dish != dish || activity.kind != ActivityKind::Step) {
            continue;
        }
        QString words = QStringLiteral("%1.  %2").arg(++number).arg(toQt(activity.title));
        if (!activity.detail.empty()) {
            words += QStringLiteral(". ") + toQt(activity.detail);
        }
        if (!activity.lookFor.empty()) {
            words += QLatin1Char(' ') + tr("Look for: %1.").arg(toQt(activity.lookFor));
        }
        paper.paragraph(words);
        for (const std::string& caution : activity.cautions) {
            paper.paragraph(tr("Caution: %1").arg(toQt(caution)), true);
        }
    }
}

void writeDish(Paper& paper, const Network& network, int index) {
    const NetworkDish& dish = network.dishes[static_cast<std::size_t>(index)];
    paper.heading(toQt(dish.title));
    paper.paragraph(tr("For %1 jars (%2). Source: %3").arg(dish.jars).arg(toQt(toText(dish.jar)), toQt(dish.source)));
    for (const QString& amount : amountsOf(network, index)) {
        paper.item(amount);
    }
    writeSteps(paper, network, index);
    paper.heading(tr("Processing"));
    writeProcess(paper, network, index);
    paper.paragraph(
        tr("Storage: %1. Shelf life: %2. Refrigerate after opening.").arg(toQt(dish.storage), toQt(dish.shelfLife)));
    if (!dish.allergens.empty()) {
        QStringList allergens;
        for (const std::string& allergen : dish.allergens) {
            allergens.append(toQt(allergen));
        }
        paper.paragraph(tr("Allergens: %1").arg(allergens.join(QStringLiteral(", "))), true);
    }
}

QString ended(const std::optional<Seconds>& end) {
    return end ? sheetTime(*end) : tr("not ended");
}

}  // namespace

Paper runSheetPaper(const Network& network, const RunSheet& sheet) {
    Paper paper(tr("Run sheet: %1").arg(toQt(network.title)), kCounterPoints);
    paper.paragraph(tr("%1, %2. Class ends %3, kitchen ends %4. Stays to the end: %5.")
                        .arg(toQt(network.venueName), dayAndTime(network.startUtc),
                             timeOfDay(network.startUtc + sheet.classEnd),
                             timeOfDay(network.startUtc + sheet.kitchenEnd),
                             network.kitchenCloser.empty() ? tr("nobody named") : toQt(network.kitchenCloser)));
    paper.table(handRows(network, sheet), {13, 17, 38, 32});
    writeMustSay(paper, network);
    return paper;
}

Paper handoutPaper(const Network& network) {
    Paper paper(toQt(network.title));
    paper.paragraph(tr("%1, %2").arg(toQt(network.venueName), dayAndTime(network.startUtc)));
    for (std::size_t d = 0; d < network.dishes.size(); ++d) {
        if (d > 0) {
            paper.newPage();
        }
        writeDish(paper, network, static_cast<int>(d));
    }
    paper.heading(tr("To take home"));
    for (const NetworkTalk& talk : network.talk) {
        if (talk.mustSay) {
            paper.item(toQt(talk.text));
        }
    }
    return paper;
}

Result<Paper> batchRecordPaper(const SessionRecord& record) {
    Result<std::string> text = batchRecord(record);
    if (!text) {
        return tl::unexpected(text.error());
    }
    Paper paper(tr("Batch record"), kRecordPoints);
    paper.fixed(toQt(*text));
    return paper;
}

Result<Paper> classReportPaper(const SessionRecord& record, std::optional<int> attendance) {
    const Result<Review> review = reviewOf(record);
    if (!review) {
        return tl::unexpected(review.error());
    }
    const Network& network = record.network;
    Paper paper(tr("Class report: %1").arg(toQt(record.info.title)));
    if (record.info.rehearsal) {
        paper.paragraph(tr("REHEARSAL: no class was held"), true);
    }
    std::vector<QStringList> rows{{tr("What"), tr("Entry")}};
    rows.push_back({tr("Place"), toQt(record.info.venue)});
    rows.push_back({tr("Teacher"), toQt(record.info.teacher)});
    rows.push_back({tr("Started"), dayAndTime(record.info.startedUtc)});
    rows.push_back({tr("Class, hours planned"), sheetTime(review->plannedClassEnd)});
    rows.push_back({tr("Class, hours taught"), ended(review->actualClassEnd)});
    rows.push_back({tr("Kitchen, hours"), ended(review->actualKitchenEnd)});
    rows.push_back(
        {tr("People attending"), attendance ? QString::number(*attendance) : QStringLiteral("____________")});
    for (const NetworkDish& dish : network.dishes) {
        rows.push_back(
            {tr("Dish"), tr("%1, %2 jars (%3)").arg(toQt(dish.title)).arg(dish.jars).arg(toQt(toText(dish.jar)))});
    }
    rows.push_back({tr("Must-say points said"), QString::number(review->pointsSaid.size())});
    for (const int point : review->pointsOpen) {
        rows.push_back({tr("NOT said"), toQt(network.talk[static_cast<std::size_t>(point)].text)});
    }
    paper.table(rows, {35, 65});
    return paper;
}

}  // namespace brinebell
