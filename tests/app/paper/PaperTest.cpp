// The papers of a class as they come out of the printer: PDFs read back by a program of another maker.
#include "paper/Paper.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "PdfText.h"
#include "bridge/TimeText.h"
#include "paper/Papers.h"
#include "paper/PrintJob.h"
#include "paper/SafetyNotice.h"
#include "plan/Dispatcher.h"
#include "session/AfterClass.h"
#include "session/Rehearsal.h"
#include "support/DemoClass.h"
#include "support/MemoryStore.h"

namespace brinebell {
namespace {

using test::pdfPages;
using test::pdfText;
using testing::HasSubstr;
using testing::Not;

/// The demonstration class, rehearsed to its end.
SessionRecord rehearsedDemo() {
    SessionRecord record;
    record.network = support::demoClass();
    support::MemoryStore store;
    record.events = rehearse(record.network, store, {}).value();
    record.info.id = "0123456789abcdef0123456789abcdef";
    record.info.classId = record.network.classId;
    record.info.title = record.network.title;
    record.info.venue = record.network.venueName;
    record.info.teacher = record.network.teacher;
    record.info.rehearsal = true;
    record.info.startedUtc = record.network.startUtc;
    record.info.events = static_cast<std::int64_t>(record.events.size());
    return record;
}

class PaperFile : public testing::Test {
protected:
    std::string pdfOf(const Paper& paper, QPageSize::PageSizeId size = QPageSize::A4) {
        const QString path = m_folder.filePath(QStringLiteral("paper.pdf"));
        const Result<void> written = writePdf(paper, path, QPageSize(size));
        EXPECT_TRUE(written) << describe(written.error());
        return path.toStdString();
    }
    QTemporaryDir m_folder;
    Network m_network = support::demoClass();
};

// Words as a reader of PDFs finds them, whatever the lines they were broken into.
std::string words(const std::string& text) {
    return toQt(text).simplified().toStdString();
}

std::string withoutHyphens(std::string text) {
    std::erase(text, '-');
    return text;
}

TEST_F(PaperFile, EveryPageCarriesTitleNumberAndSafetyNotice) {
    const std::string path = pdfOf(handoutPaper(m_network));
    const std::string text = pdfText(path);
    const int pages = pdfPages(path);
    EXPECT_GE(pages, 2);
    std::size_t notices = 0;
    const std::string notice = words(safetyNotice().toStdString());
    for (std::size_t at = text.find(notice); at != std::string::npos; at = text.find(notice, at + 1)) {
        ++notices;
    }
    EXPECT_EQ(notices, static_cast<std::size_t>(pages));
    EXPECT_THAT(text, HasSubstr("page 1 of " + std::to_string(pages)));
}

// A picture or a link that a file names is printed as it was written; nothing is loaded for it.
TEST_F(PaperFile, MarkupIsPrintedAsItWasWritten) {
    const std::string hostile = "<img src='file:///etc/hostname'> <a href='x'>here</a>";
    m_network.title = hostile;
    m_network.dishes.front().title = hostile;
    m_network.talk.front().text = hostile;
    int checked = 0;
    for (const Paper& paper :
         {runSheetPaper(m_network, dispatch(m_network, policyFor(m_network))), handoutPaper(m_network)}) {
        EXPECT_THAT(words(paper.plainText().toStdString()), HasSubstr(hostile));
        EXPECT_THAT(words(pdfText(pdfOf(paper))), HasSubstr("<img src="));
        ++checked;
    }
    EXPECT_EQ(checked, 2);
}

TEST_F(PaperFile, RunSheetHoldsEveryStepOfTheHandsAndEveryMustSayPoint) {
    const RunSheet sheet = dispatch(m_network, policyFor(m_network));
    const std::string text = pdfText(pdfOf(runSheetPaper(m_network, sheet), QPageSize::Letter));
    int checked = 0;
    for (const NetworkTalk& talk : m_network.talk) {
        if (talk.mustSay) {
            // The reader joins a word that a line broke at its hyphen.
            EXPECT_THAT(withoutHyphens(text), HasSubstr(withoutHyphens(words(talk.text))));
            ++checked;
        }
    }
    EXPECT_GE(checked, 6);
    EXPECT_THAT(text, HasSubstr(m_network.kitchenCloser));
    EXPECT_THAT(text, HasSubstr("To be said"));
}

TEST_F(PaperFile, HandoutNamesAmountsStepsCautionsTableAndSource) {
    const std::string text = pdfText(pdfOf(handoutPaper(m_network)));
    int checked = 0;
    for (const Activity& activity : m_network.activities) {
        for (const std::string& amount : activity.amounts) {
            EXPECT_THAT(text, HasSubstr(words(amount)));
            ++checked;
        }
        for (const std::string& caution : activity.cautions) {
            if (activity.kind == ActivityKind::Step) {
                EXPECT_THAT(text, HasSubstr(words(caution)));
                ++checked;
            }
        }
    }
    for (const Load& load : m_network.loads) {
        EXPECT_THAT(text, HasSubstr(words(load.tableEntry)));
        EXPECT_THAT(text, HasSubstr(words(load.tableSource)));
        ++checked;
    }
    EXPECT_GE(checked, 30);
    EXPECT_THAT(text, HasSubstr("Refrigerate after opening"));
}

// Fields of 21 CFR 113.100 and of class records, in the shape a class needs.
TEST_F(PaperFile, BatchRecordHasEveryFieldAndRoomForWhatNobodyRecorded) {
    const Result<Paper> paper = batchRecordPaper(rehearsedDemo());
    ASSERT_TRUE(paper);
    EXPECT_THAT(paper->plainText().toStdString(), Not(HasSubstr("\nnot recorded\n")));
    const std::string text = pdfText(pdfOf(*paper));
    const char* const fields[] = {"Class",
                                  "Place",
                                  "Altitude",
                                  "Teacher",
                                  "Helpers",
                                  "Boil watcher",
                                  "Recipe",
                                  "Source and edition",
                                  "Produce, its origin",
                                  "Acid",
                                  "Lids",
                                  "Headspace as filled",
                                  "Jars planned",
                                  "Canner",
                                  "Burner",
                                  "Method, pack, jar",
                                  "Lot",
                                  "Process time required",
                                  "Table row and band",
                                  "Boil seen at",
                                  "Heat off",
                                  "Lifted",
                                  "Lowered",
                                  "Unwatched time",
                                  "Start temperature",
                                  "pH, if taken",
                                  "Jars out",
                                  "SEAL CHECK DUE",
                                  "Departures",
                                  "Disposition",
                                  "Reviewed by, date",
                                  "Initials"};
    int checked = 0;
    for (const char* field : fields) {
        EXPECT_THAT(text, HasSubstr(field));
        ++checked;
    }
    EXPECT_EQ(checked, 32);
    EXPECT_THAT(text, HasSubstr("REHEARSAL"));
}

Event figureEvent(const SessionRecord& record, ReportFigure figure, std::int64_t value) {
    Event event = record.events.back();
    event.sequence += 1;
    event.kind = EventKind::FigureReported;
    event.value = value;
    event.text = toText(figure);
    return event;
}

TEST_F(PaperFile, ClassReportHasEveryFigureAndALineForWhatNobodyTold) {
    SessionRecord record = rehearsedDemo();
    const std::string untold = pdfText(pdfOf(*classReportPaper(record)));
    int checked = 0;
    for (const char* field :
         {"Place", "Teacher", "Started", "Class, hours planned", "Class, hours taught", "Kitchen, hours",
          "People attending ____________", "Of them, new to canning ____________", "Volunteers' hours", "Contact hours",
          "Accidents", "Jars canned: boiling-water", "Stops for questions", "Points said", "Who came", "County or town",
          "New or returning", "Skill before", "Skill after"}) {
        EXPECT_THAT(untold, HasSubstr(field));
        ++checked;
    }
    EXPECT_EQ(checked, 19);
    record.events.push_back(figureEvent(record, ReportFigure::Attending, 12));
    record.events.push_back(figureEvent(record, ReportFigure::VolunteerMinutes, 195));
    const std::string told = pdfText(pdfOf(*classReportPaper(record)));
    EXPECT_THAT(told, HasSubstr("People attending 12"));
    EXPECT_THAT(told, HasSubstr("Volunteers' hours, all together 3:15"));
}

TEST_F(PaperFile, TextFromFilesIsNeverMarkup) {
    m_network.title = "<b>Bold</b> & <img src=\"https://example.org/x.png\">";
    const std::string text = pdfText(pdfOf(handoutPaper(m_network)));
    EXPECT_THAT(text, HasSubstr("<b>Bold</b> & <img src=\"https://example.org/x.png\">"));
}

TEST_F(PaperFile, FolderThatCannotBeWrittenIsTold) {
    const Result<void> written =
        writePdf(handoutPaper(m_network), m_folder.filePath("none/at/all.pdf"), QPageSize(QPageSize::A4));
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Io);
}

}  // namespace
}  // namespace brinebell
