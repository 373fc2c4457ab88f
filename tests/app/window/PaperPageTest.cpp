// Every paper from the window: previewed, saved, sent to a printer; in both languages with every field that it needs.
#include "paper/PaperPage.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QPrinter>
#include <QPushButton>
#include <QSpinBox>
#include <algorithm>
#include <iterator>
#include <sstream>

#include "bridge/TimeText.h"
#include "desk/PreparePage.h"
#include "logbook/Afterwards.h"
#include "paper/LabelForm.h"
#include "paper/PdfText.h"
#include "session/Rehearsal.h"
#include "support/MemoryStore.h"
#include "window/Bench.h"
#include "window/CleanSettings.h"

namespace brinebell {
namespace {

using test::pdfPages;
using test::pdfText;
using testing::HasSubstr;

class PapersOfTheWindow : public CleanSettings {
protected:
    void SetUp() override {
        Network network = prepareClass(demonstrationClass())->network;
        support::MemoryStore store;
        m_record.network = network;
        m_record.events = rehearse(network, store, {}).value();
        m_record.events.front().value = 1;
        m_record.info.id = "0123456789abcdef0123456789abcdef";
        m_record.info.title = network.title;
        m_record.info.classId = network.classId;
        m_record.info.venue = network.venueName;
        m_record.info.teacher = network.teacher;
        m_record.info.startedUtc = m_record.events.front().at.utc;
        m_record.info.closedUtc = m_record.events.back().at.utc;
        m_record.info.events = static_cast<std::int64_t>(m_record.events.size());
        ASSERT_TRUE(m_bench.logbook->add(m_record));
        m_bench.window.openPrepare();
        m_bench.window.openPapers();
    }
    PaperPage& page() { return m_bench.window.paperPage(); }
    QString path(const QString& name = QStringLiteral("paper.pdf")) const { return m_folder.filePath(name); }
    std::string saved(PaperKind kind) {
        page().choose(kind);
        EXPECT_TRUE(page().job()) << page().fault().toStdString();
        page().saveTo(path());
        return pdfText(path().toStdString());
    }

    Bench m_bench{demonstrationClass()};
    QTemporaryDir m_folder;
    SessionRecord m_record;
};

struct Field {
    PaperKind kind;
    const char* english;
    const char* spanish;
};

// What the class and its record hold stays in their own words; ours are in the language of the window.
constexpr Field kFields[] = {
    {PaperKind::RunSheet, "Run sheet:", "Hoja de ruta:"},
    {PaperKind::RunSheet, "To be said", ""},
    {PaperKind::RunSheet, "Look for", ""},
    {PaperKind::Shopping, "Shopping", "Compras"},
    {PaperKind::Shopping, "New lids", ""},
    {PaperKind::Shopping, "Equipment", "Equipo"},
    {PaperKind::Handout, "Caution:", ""},
    {PaperKind::Handout, "Refrigerate after opening", ""},
    {PaperKind::Handout, "Source:", ""},
    {PaperKind::BatchRecord, "Batch record:", "Registro del lote:"},
    {PaperKind::BatchRecord, "Table row and band", ""},
    {PaperKind::Labels, "Refrigerate after opening", ""},
    {PaperKind::Labels, "Allergens:", ""},
    {PaperKind::Labels, "lot", "lote"},
    {PaperKind::ClassReport, "People attending", "Personas que asistieron"},
    {PaperKind::ClassReport, "Who came", "Quiénes vinieron"},
};

TEST_F(PapersOfTheWindow, HaveTheirFieldsInEnglish) {
    int checked = 0;
    for (const Field& field : kFields) {
        EXPECT_THAT(saved(field.kind), HasSubstr(field.english));
        ++checked;
    }
    EXPECT_EQ(checked, 16);
}

TEST_F(PapersOfTheWindow, HaveTheirFieldsInSpanish) {
    putOnLanguage(*qApp, QStringLiteral("es"), QLocale::c());
    page().choose(PaperKind::Handout);  // so that the run sheet is made anew
    int checked = 0;
    for (const Field& field : kFields) {
        const std::string text = saved(field.kind);
        if (*field.spanish != '\0') {
            EXPECT_THAT(text, HasSubstr(field.spanish));
            ++checked;
        } else {
            EXPECT_THAT(text, testing::Not(HasSubstr(field.english)));
        }
    }
    EXPECT_EQ(checked, 7);
}

TEST_F(PapersOfTheWindow, PreviewHasThePagesOfThePdf) {
    for (const PaperKind kind : kPaperKinds) {
        saved(kind);
        EXPECT_NEAR(page().previewPages(), pdfPages(path().toStdString()), 1) << static_cast<int>(kind);
        EXPECT_GE(page().previewPages(), 1) << static_cast<int>(kind);
    }
}

std::vector<std::string> sortedWords(const std::string& text) {
    std::istringstream stream(text);
    std::vector<std::string> words(std::istream_iterator<std::string>(stream), {});
    std::sort(words.begin(), words.end());
    return words;
}

TEST_F(PapersOfTheWindow, GoToAPrinterAsTheyGoIntoAFile) {
    for (const PaperKind kind : kPaperKinds) {
        const std::string text = saved(kind);
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path(QStringLiteral("printed.pdf")));
        setUp(printer, *page().job());
        page().printOn(printer);
        EXPECT_EQ(page().fault(), QStringLiteral("Sent to the printer."));
        const std::string printed = pdfText(path(QStringLiteral("printed.pdf")).toStdString());
        // A printer rounds places otherwise: labels side by side are then read in another turn, and long lines wrap
        // elsewhere.
        if (kind == PaperKind::Labels) {
            EXPECT_EQ(sortedWords(printed), sortedWords(text));
        } else {
            EXPECT_EQ(printed.substr(0, 40), text.substr(0, 40)) << static_cast<int>(kind);
        }
    }
}

TEST_F(PapersOfTheWindow, LabelsOnNonsenseAreToldAndNotMade) {
    page().choose(PaperKind::Labels);
    ASSERT_TRUE(page().job());
    LabelSheet sheet = page().labelForm().sheet();
    sheet.columns = 20;
    page().labelForm().setSheet(sheet);
    EXPECT_FALSE(page().job());
    EXPECT_TRUE(page().fault().contains(QStringLiteral("mm"))) << page().fault().toStdString();
    page().saveTo(path());
    EXPECT_FALSE(QFile::exists(path()));
    page().labelForm().setPreset(0);
    EXPECT_TRUE(page().job());
    page().labelForm().setFirst(400);
    EXPECT_FALSE(page().job());
    page().labelForm().setFirst(0);
    EXPECT_TRUE(page().job());
}

TEST_F(PapersOfTheWindow, FolderThatCannotBeWrittenIsToldAndLeavesNothing) {
    page().choose(PaperKind::Handout);
    page().saveTo(path(QStringLiteral("none/at/all.pdf")));
    EXPECT_TRUE(page().fault().startsWith(QStringLiteral("Not saved:"))) << page().fault().toStdString();
    EXPECT_FALSE(QFile::exists(path(QStringLiteral("none"))));
}

TEST_F(PapersOfTheWindow, FiguresForTheReportAreAskedAndKept) {
    page().choose(PaperKind::ClassReport);
    page().figureBox(ReportFigure::Attending).setValue(14);
    page().figureBox(ReportFigure::VolunteerMinutes).setValue(90);
    for (QPushButton* button : page().findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("eep these"))) {
            button->click();
        }
    }
    const SessionRecord kept = m_bench.logbook->session(m_record.info.id).value();
    EXPECT_EQ(figureIn(kept, ReportFigure::Attending), 14);
    EXPECT_EQ(figureIn(kept, ReportFigure::VolunteerMinutes), 90);
    EXPECT_EQ(figureIn(kept, ReportFigure::Accidents), std::nullopt);  // nobody told
    EXPECT_THAT(saved(PaperKind::ClassReport), HasSubstr("People attending 14"));
}

TEST_F(PapersOfTheWindow, SayWhatIsMissing) {
    QTemporaryDir folder;
    auto empty = Logbook::open(folder.filePath("logbook.sqlite").toStdString()).value();
    MainWindow window({&m_bench.clock, &empty, {}, &m_bench.speaker});
    window.openPapers();
    EXPECT_FALSE(window.paperPage().job());
    EXPECT_TRUE(window.paperPage().fault().contains(QStringLiteral("No class")));
    window.paperPage().choose(PaperKind::Labels);
    EXPECT_TRUE(window.paperPage().fault().contains(QStringLiteral("No session")));
}

}  // namespace
}  // namespace brinebell
