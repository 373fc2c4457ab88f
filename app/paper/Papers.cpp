#include "paper/Papers.h"

#include <QCoreApplication>
#include <algorithm>

#include "bridge/TimeText.h"
#include "logbook/BatchRecord.h"
#include "logbook/RecordWords.h"

namespace brinebell {

namespace {

constexpr double kCounterPoints = 15.0;  // read from a counter while the hands are busy
constexpr double kRecordPoints = 9.0;

struct PapersWords {
    Q_DECLARE_TR_FUNCTIONS(PapersWords)
};

const Activity& activityOf(const Network& network, int index) {
    return network.activities.at(static_cast<std::size_t>(index));
}

QString handName(int hand) {
    return hand == 0 ? PapersWords::tr("teacher") : PapersWords::tr("helper %1").arg(hand);
}

QString doing(const Network& network, const HandSpan& span) {
    const Activity& activity = activityOf(network, span.activity);
    if (span.work == HandWork::Pulse && activity.pulse) {
        return toQt(activity.pulse->action);
    }
    const QString title = toQt(activity.title);
    return span.work == HandWork::End ? PapersWords::tr("End: %1").arg(title) : title;
}

std::vector<QStringList> handRows(const Network& network, const RunSheet& sheet) {
    std::vector<QStringList> rows{
        {PapersWords::tr("Time"), PapersWords::tr("Who"), PapersWords::tr("What"), PapersWords::tr("Look for")}};
    for (const HandSpan& span : sheet.hands) {
        const Activity& activity = activityOf(network, span.activity);
        // Later pieces of work that was left for a moment, and looks after the first, would bury the rest.
        if (span.ordinal > 1) {
            continue;
        }
        QString what = doing(network, span);
        if (span.work == HandWork::Pulse) {
            what += QLatin1Char(' ') + PapersWords::tr("(every %1 to %2)")
                                           .arg(spanText(activity.pulse->gapLow), spanText(activity.pulse->gapHigh));
        }
        rows.push_back({timeOfDay(network.startUtc + span.from), handName(span.hand), what, toQt(activity.lookFor)});
    }
    return rows;
}

void writeMustSay(Paper& paper, const Network& network) {
    paper.newPage();
    paper.heading(PapersWords::tr("To be said"));
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
            PapersWords::tr("%1, %2 pack, %3: %4 at %5. Table: %6. Source: %7")
                .arg(toQt(methodWords(load.method)), toQt(packWords(load.pack)), toQt(jarWords(load.jar)),
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
            words += QLatin1Char(' ') + PapersWords::tr("Look for: %1.").arg(toQt(activity.lookFor));
        }
        paper.paragraph(words);
        for (const std::string& caution : activity.cautions) {
            paper.paragraph(PapersWords::tr("Caution: %1").arg(toQt(caution)), true);
        }
    }
}

void writeDish(Paper& paper, const Network& network, int index) {
    const NetworkDish& dish = network.dishes[static_cast<std::size_t>(index)];
    paper.heading(toQt(dish.title));
    paper.paragraph(PapersWords::tr("For %1 jars (%2). Source: %3")
                        .arg(dish.jars)
                        .arg(toQt(jarWords(dish.jar)), toQt(dish.source)));
    for (const QString& amount : amountsOf(network, index)) {
        paper.item(amount);
    }
    writeSteps(paper, network, index);
    paper.heading(PapersWords::tr("Processing"));
    writeProcess(paper, network, index);
    paper.paragraph(PapersWords::tr("Storage: %1. Shelf life: %2. Refrigerate after opening.")
                        .arg(toQt(dish.storage), toQt(dish.shelfLife)));
    if (!dish.allergens.empty()) {
        QStringList allergens;
        for (const std::string& allergen : dish.allergens) {
            allergens.append(toQt(allergen));
        }
        paper.paragraph(PapersWords::tr("Allergens: %1").arg(allergens.join(QStringLiteral(", "))), true);
    }
}

}  // namespace

Paper runSheetPaper(const Network& network, const RunSheet& sheet) {
    Paper paper(PapersWords::tr("Run sheet: %1").arg(toQt(network.title)), kCounterPoints);
    paper.paragraph(
        PapersWords::tr("%1, %2. Class ends %3, kitchen ends %4. Stays to the end: %5.")
            .arg(toQt(network.venueName), dayAndTime(network.startUtc), timeOfDay(network.startUtc + sheet.classEnd),
                 timeOfDay(network.startUtc + sheet.kitchenEnd),
                 network.kitchenCloser.empty() ? PapersWords::tr("nobody named") : toQt(network.kitchenCloser)));
    paper.table(handRows(network, sheet), {13, 17, 38, 32});
    writeMustSay(paper, network);
    return paper;
}

Paper handoutPaper(const Network& network) {
    Paper paper(toQt(network.title));
    paper.paragraph(PapersWords::tr("%1, %2").arg(toQt(network.venueName), dayAndTime(network.startUtc)));
    for (std::size_t d = 0; d < network.dishes.size(); ++d) {
        if (d > 0) {
            paper.newPage();
        }
        writeDish(paper, network, static_cast<int>(d));
    }
    paper.heading(PapersWords::tr("To take home"));
    for (const NetworkTalk& talk : network.talk) {
        if (talk.mustSay) {
            paper.item(toQt(talk.text));
        }
    }
    return paper;
}

Result<Paper> batchRecordPaper(const SessionRecord& record) {
    const Result<std::vector<RecordSection>> sections = batchRecordSections(record);
    if (!sections) {
        return tl::unexpected<Error>(sections.error());
    }
    Paper paper(toQt(sections->front().title), kRecordPoints);
    for (const RecordSection& section : *sections) {
        if (section.title.empty()) {
            paper.paragraph(toQt(section.lines.front().value));
            continue;
        }
        if (&section != &sections->front()) {
            paper.heading(toQt(section.title));
        }
        std::vector<QStringList> rows;
        for (const RecordLine& line : section.lines) {
            rows.push_back({toQt(line.label), line.open ? QString() : toQt(line.value)});
        }
        paper.table(rows, {30, 70}, Paper::Head::FirstColumn);
    }
    paper.paragraph(PapersWords::tr("What is empty was not recorded: write it in."));
    return paper;
}

}  // namespace brinebell
