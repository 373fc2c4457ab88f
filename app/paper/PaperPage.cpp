#include "paper/PaperPage.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QSpinBox>
#include <QStackedWidget>
#include <QStyle>
#include <QVBoxLayout>

#include "base/FileName.h"
#include "bridge/TimeText.h"
#include "desk/ClassPlanner.h"
#include "desk/ListsPage.h"
#include "logbook/Afterwards.h"
#include "paper/LabelForm.h"
#include "paper/Papers.h"
#include "review/AfterWords.h"
#include "review/SessionPicker.h"

namespace brinebell {

namespace {

constexpr int kPaperListWidth = 400;
constexpr int kNotTold = -1;

QString paperName(PaperKind kind) {
    switch (kind) {
        case PaperKind::RunSheet:
            return PaperPage::tr("Run sheet, in large type for the counter");
        case PaperKind::Shopping:
            return PaperPage::tr("Equipment and shopping list");
        case PaperKind::Handout:
            return PaperPage::tr("Handout for those who attend");
        case PaperKind::BatchRecord:
            return PaperPage::tr("Batch record");
        case PaperKind::Labels:
            return PaperPage::tr("Jar labels");
        case PaperKind::ClassReport:
            return PaperPage::tr("Class report");
    }
    return {};
}

const char* paperFile(PaperKind kind) {
    switch (kind) {
        case PaperKind::RunSheet:
            return "run-sheet";
        case PaperKind::Shopping:
            return "lists";
        case PaperKind::Handout:
            return "handout";
        case PaperKind::BatchRecord:
            return "batch-record";
        case PaperKind::Labels:
            return "labels";
        case PaperKind::ClassReport:
            return "report";
    }
    return "paper";
}

QLabel* paperLabel(const QString& text, const char* kind) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    return label;
}

}  // namespace

PaperPage::PaperPage(const Clock& clock, QWidget* parent)
    : QWidget(parent), m_clock(clock), m_previewPrinter(std::make_unique<QPrinter>(QPrinter::HighResolution)) {
    m_planner = new ClassPlanner(this);
    connect(m_planner, &ClassPlanner::planned, this, [this](const Prospect& prospect) {
        if (m_class) {
            takeOver(*m_class, prospect);
            make();
        }
    });
    auto* page = new QHBoxLayout(this);
    page->setContentsMargins(16, 12, 16, 12);
    page->setSpacing(16);
    auto* choice = new QWidget;
    choice->setLayout(buildChoice());
    choice->setFixedWidth(kPaperListWidth);
    page->addWidget(choice, 0);
    page->addLayout(buildPreview(), 1);
    for (QLabel* label : findChildren<QLabel*>()) {
        label->setTextFormat(Qt::PlainText);
    }
    for (QWidget* inner : m_preview->findChildren<QWidget*>()) {
        inner->setAccessibleName(m_preview->accessibleName());
    }
    m_kinds->setCurrentRow(0);
}

PaperPage::~PaperPage() {
    // The preview paints on the printer, which is a member and would go first.
    delete m_preview;
}

QVBoxLayout* PaperPage::buildChoice() {
    m_kinds = new QListWidget;
    m_kinds->setAccessibleName(tr("Papers"));
    for (const PaperKind kind : kPaperKinds) {
        m_kinds->addItem(paperName(kind));
    }
    m_kinds->setFixedHeight(m_kinds->sizeHintForRow(0) * m_kinds->count() + 2 * m_kinds->frameWidth() + 4);
    connect(m_kinds, &QListWidget::currentRowChanged, this, &PaperPage::follow);
    m_sessions = new SessionPicker(false);
    connect(m_sessions, &SessionPicker::choiceChanged, this, &PaperPage::readSession);
    m_sources = new QStackedWidget;
    m_sources->addWidget(buildClasses());
    m_sources->addWidget(m_sessions);
    m_labels = new LabelForm;
    connect(m_labels, &LabelForm::changed, this, &PaperPage::make);
    m_extras = new QStackedWidget;
    m_extras->addWidget(new QWidget);
    m_extras->addWidget(m_labels);
    m_extras->addWidget(buildReport());
    auto* leave = new QPushButton(tr("&Front page"));
    connect(leave, &QPushButton::clicked, this, &PaperPage::leaveWanted);
    auto* choice = new QVBoxLayout;
    choice->setContentsMargins(0, 0, 0, 0);
    choice->addWidget(paperLabel(tr("Papers"), "title"));
    choice->addWidget(m_kinds);
    choice->addWidget(m_sources, 1);
    choice->addWidget(m_extras);
    choice->addWidget(leave);
    return choice;
}

QWidget* PaperPage::buildClasses() {
    m_classes = new QComboBox;
    m_classes->setAccessibleName(tr("Class"));
    m_classes->view()->setAccessibleName(tr("Classes"));
    connect(m_classes, &QComboBox::activated, this, &PaperPage::chooseClass);
    auto* open = new QPushButton(tr("&Open a class file…"));
    connect(open, &QPushButton::clicked, this, &PaperPage::openFile);
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(paperLabel(tr("Of the class"), "head"));
    layout->addWidget(m_classes);
    layout->addWidget(open);
    layout->addStretch();
    return box;
}

QWidget* PaperPage::buildReport() {
    auto* box = new QWidget;
    auto* form = new QFormLayout(box);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    for (const ReportFigure figure : kReportFigures) {
        auto* number = new QSpinBox;
        number->setAccessibleName(figureName(figure));
        number->setRange(kNotTold, static_cast<int>(mostOf(figure)));
        number->setSpecialValueText(tr("not told"));
        if (figure == ReportFigure::TeacherMinutes || figure == ReportFigure::VolunteerMinutes) {
            constexpr int kStep = 15;
            number->setSingleStep(kStep);
            number->setSuffix(tr(" min"));
        }
        connect(number, &QSpinBox::valueChanged, this, [this] { m_keepFigures->setEnabled(m_record.has_value()); });
        form->addRow(figureName(figure), number);
        m_figures[figure] = number;
    }
    m_keepFigures = new QPushButton(tr("&Keep these in the logbook"));
    connect(m_keepFigures, &QPushButton::clicked, this, &PaperPage::keepFigures);
    form->addRow(m_keepFigures);
    return box;
}

QVBoxLayout* PaperPage::buildPreview() {
    m_told = paperLabel({}, "fault");
    m_told->hide();
    m_preview = new QPrintPreviewWidget(m_previewPrinter.get());
    m_preview->setAccessibleName(tr("Preview"));
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
        if (m_shown) {
            m_shown->paint(*printer);
        }
    });
    m_size = new QComboBox;
    m_size->setAccessibleName(tr("Size of the paper"));
    m_size->view()->setAccessibleName(tr("Sizes"));
    m_size->addItem(tr("Letter"), QPageSize::Letter);
    m_size->addItem(QStringLiteral("A4"), QPageSize::A4);
    m_size->setCurrentIndex(usualPageSize().id() == QPageSize::Letter ? 0 : 1);
    connect(m_size, &QComboBox::currentIndexChanged, this, &PaperPage::make);
    auto* larger = new QPushButton(tr("&Larger"));
    connect(larger, &QPushButton::clicked, this, [this] { m_preview->zoomIn(); });
    auto* smaller = new QPushButton(tr("S&maller"));
    connect(smaller, &QPushButton::clicked, this, [this] { m_preview->zoomOut(); });
    auto* whole = new QPushButton(tr("&Whole page"));
    connect(whole, &QPushButton::clicked, this, [this] { m_preview->fitInView(); });
    m_save = new QPushButton(tr("&Save as PDF…"));
    m_save->setProperty("lead", true);
    connect(m_save, &QPushButton::clicked, this, &PaperPage::askWhereToSave);
    m_print = new QPushButton(tr("&Print…"));
    connect(m_print, &QPushButton::clicked, this, &PaperPage::askWhereToPrint);
    auto* row = new QHBoxLayout;
    for (QWidget* widget : std::initializer_list<QWidget*>{m_size, smaller, larger, whole}) {
        row->addWidget(widget);
    }
    row->addStretch();
    row->addWidget(m_print);
    row->addWidget(m_save);
    auto* column = new QVBoxLayout;
    column->addWidget(m_told);
    column->addWidget(m_preview, 1);
    column->addLayout(row);
    return column;
}

// ---- what the papers are made from

void PaperPage::setClassFiles(const QStringList& paths) {
    m_classes->clear();
    for (const QString& path : paths) {
        m_classes->addItem(QFileInfo(path).completeBaseName(), path);
    }
    m_classes->setCurrentIndex(-1);
}

void PaperPage::showClass(const PreparedClass& prepared) {
    m_planner->abandonAll();
    m_class = prepared;
    m_whyNoClass.clear();
    const QString path = toQt(prepared.plan.file);
    int index = m_classes->findData(path);
    if (index < 0) {
        m_classes->addItem(QFileInfo(path).completeBaseName(), path);
        index = m_classes->count() - 1;
    }
    m_classes->setCurrentIndex(index);
    if (!isOfClass()) {
        choose(PaperKind::RunSheet);
    }
    make();
}

void PaperPage::chooseClass(int index) {
    if (index >= 0) {
        takeClass(prepareClass(m_classes->itemData(index).toString()));
    }
}

void PaperPage::openFile() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a class file"),
                                                      m_classes->currentData().toString(), tr("Class files (*.toml)"));
    if (path.isEmpty()) {
        return;
    }
    if (m_classes->findData(path) < 0) {
        m_classes->addItem(QFileInfo(path).completeBaseName(), path);
    }
    m_classes->setCurrentIndex(m_classes->findData(path));
    takeClass(prepareClass(path));
}

// The run sheet is printed in the order that the search finds, as it stands on the page that prepares a class.
void PaperPage::takeClass(const FileResult<PreparedClass>& read) {
    m_planner->abandonAll();
    m_class.reset();
    if (read) {
        m_class = *read;
        m_whyNoClass.clear();
        m_planner->plan(m_class->network);
    } else {
        m_whyNoClass = toQt(describe(read.error().front()));
    }
    make();
}

void PaperPage::showSessions(Logbook* logbook, const QString& sessionId, const QString& whyNoLogbook) {
    m_logbook = logbook;
    m_whyNoSession = whyNoLogbook;
    if (logbook == nullptr) {
        m_sessions->clear();
    } else if (const Result<void> shown = m_sessions->showSessions(*logbook, sessionId); !shown) {
        m_whyNoSession = toQt(describe(shown.error()));
    }
    if (!sessionId.isEmpty()) {
        choose(PaperKind::BatchRecord);
    }
    if (m_class == std::nullopt && isOfClass() && m_whyNoClass.isEmpty() && m_classes->count() > 0) {
        m_classes->setCurrentIndex(0);
        chooseClass(0);
    }
}

void PaperPage::readSession() {
    m_record.reset();
    const std::vector<std::string> chosen = m_sessions->chosen();
    if (m_logbook != nullptr && !chosen.empty()) {
        auto record = m_logbook->session(chosen.front());
        if (record) {
            m_record = std::move(*record);
            m_whyNoSession.clear();
        } else {
            m_whyNoSession = toQt(describe(record.error()));
        }
    }
    showFigures();
    make();
}

void PaperPage::showFigures() {
    for (const auto& [figure, number] : m_figures) {
        const QSignalBlocker quiet(number);
        number->setEnabled(m_record.has_value());
        number->setValue(m_record ? static_cast<int>(figureIn(*m_record, figure).value_or(kNotTold)) : kNotTold);
    }
    m_keepFigures->setEnabled(false);
}

void PaperPage::keepFigures() {
    if (!m_record || m_logbook == nullptr) {
        return;
    }
    std::vector<Command> commands;
    for (const auto& [figure, number] : m_figures) {
        const bool isNew = number->value() != kNotTold && figureIn(*m_record, figure) != number->value();
        if (isNew) {
            Command& command = commands.emplace_back();
            command.kind = CommandKind::ReportFigure;
            command.value = number->value();
            command.text = toText(figure);
        }
    }
    const auto told = tellAfterwards(*m_logbook, m_record->info.id, commands, m_clock.now(), Cause::Key);
    if (!told || *told) {
        inform(
            tr("Nothing was kept: %1").arg(toQt(told ? describe(**told, m_record->network) : describe(told.error()))),
            true);
        return;
    }
    readSession();
}

// ---- the paper

void PaperPage::choose(PaperKind kind) {
    m_kinds->setCurrentRow(static_cast<int>(kind));
}

PaperKind PaperPage::kind() const {
    return static_cast<PaperKind>(std::max(0, m_kinds->currentRow()));
}

void PaperPage::follow() {
    m_sources->setCurrentIndex(isOfClass() ? 0 : 1);
    m_extras->setCurrentIndex(kind() == PaperKind::Labels ? 1 : kind() == PaperKind::ClassReport ? 2 : 0);
    // A stack is as high as its highest page; the others give their room to the list of sessions.
    for (int i = 0; i < m_extras->count(); ++i) {
        const bool isShown = i == m_extras->currentIndex();
        m_extras->widget(i)->setSizePolicy(QSizePolicy::Preferred,
                                           isShown ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    }
    m_extras->setVisible(m_extras->currentIndex() > 0);
    m_size->setEnabled(kind() != PaperKind::Labels);
    make();
}

Result<std::shared_ptr<const Paper>> PaperPage::paperNow() const {
    const auto shared = [](Result<Paper> paper) -> Result<std::shared_ptr<const Paper>> {
        return paper ? Result<std::shared_ptr<const Paper>>(std::make_shared<const Paper>(std::move(*paper)))
                     : tl::unexpected<Error>(paper.error());
    };
    switch (kind()) {
        case PaperKind::RunSheet:
            return shared(runSheetPaper(m_class->network, m_class->sheet));
        case PaperKind::Shopping:
            return shared(classLists(*m_class).map(listsPaper));
        case PaperKind::Handout:
            return shared(handoutPaper(m_class->network));
        case PaperKind::BatchRecord:
            return shared(batchRecordPaper(*m_record));
        default:
            return shared(classReportPaper(*m_record));
    }
}

Result<PrintJob> PaperPage::labelJob(bool outlines) const {
    const QString fault = m_labels->fault();
    if (!fault.isEmpty()) {
        return fail(ErrorCode::InvalidInput, fault.toStdString());
    }
    Result<std::vector<JarLabel>> labels = labelsOf(*m_record);
    if (!labels) {
        return tl::unexpected<Error>(labels.error());
    }
    if (labelCount(*labels) == 0) {
        QStringList why;
        for (const JarLabel& label : *labels) {
            why << tr("%1: %2").arg(toQt(label.contents), toQt(label.noLabel));
        }
        return fail(
            ErrorCode::InvalidInput,
            tr("No jar of this session may have a label. %1").arg(why.join(QStringLiteral("; "))).toStdString());
    }
    PrintJob job = jobOf(std::move(*labels), m_labels->sheet(), m_labels->first(), outlines);
    job.title = paperName(PaperKind::Labels);
    return job;
}

Result<PrintJob> PaperPage::jobNow() {
    const bool isThere = isOfClass() ? m_class.has_value() : m_record.has_value();
    if (!isThere) {
        const QString why = isOfClass() ? m_whyNoClass : m_whyNoSession;
        const QString nothing = isOfClass() ? tr("No class is chosen.") : tr("No session is chosen.");
        return fail(ErrorCode::NotFound, (why.isEmpty() ? nothing : why).toStdString());
    }
    if (kind() == PaperKind::Labels) {
        return labelJob(false);
    }
    auto paper = paperNow();
    if (!paper) {
        return tl::unexpected<Error>(paper.error());
    }
    return jobOf(std::move(*paper), QPageSize(static_cast<QPageSize::PageSizeId>(m_size->currentData().toInt())));
}

void PaperPage::make() {
    Result<PrintJob> made = jobNow();
    m_job.reset();
    m_shown.reset();
    if (made) {
        m_job = std::move(*made);
        // On the screen one sees where the labels end; on the paper one would see it if they were off by a little.
        m_shown = kind() == PaperKind::Labels ? *labelJob(true) : *m_job;
        inform({}, false);
    } else {
        inform(toQt(made.error().message), true);
    }
    m_save->setEnabled(m_job.has_value());
    m_print->setEnabled(m_job.has_value());
    preview();
}

void PaperPage::preview() {
    if (m_job) {
        setUp(*m_previewPrinter, *m_job);
    }
    m_preview->setVisible(m_job.has_value());
    m_preview->updatePreview();
}

int PaperPage::previewPages() const {
    return m_preview->pageCount();
}

QString PaperPage::fileName() const {
    const std::string id = isOfClass() ? m_class->plan.id : m_record->info.classId;
    return QStringLiteral("%1-%2.pdf").arg(toQt(fileNameFrom(id)), QLatin1String(paperFile(kind())));
}

void PaperPage::askWhereToSave() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save as PDF"), fileName(), QStringLiteral("*.pdf"));
    if (!path.isEmpty()) {
        saveTo(path);
    }
}

void PaperPage::saveTo(const QString& path) {
    if (!m_job) {
        return;
    }
    const Result<void> saved = savePdf(*m_job, path);
    inform(saved ? tr("Saved: %1").arg(path) : tr("Not saved: %1").arg(toQt(describe(saved.error()))), !saved);
}

void PaperPage::askWhereToPrint() {
    QPrinter printer(QPrinter::HighResolution);
    setUp(printer, *m_job);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() == QDialog::Accepted) {
        printOn(printer);
    }
}

void PaperPage::printOn(QPrinter& printer) {
    if (!m_job) {
        return;
    }
    m_job->paint(printer);
    const bool isLost = printer.printerState() == QPrinter::Error || printer.printerState() == QPrinter::Aborted;
    inform(isLost ? tr("The printer did not take it. Save it as a PDF and print that.") : tr("Sent to the printer."),
           isLost);
}

void PaperPage::inform(const QString& words, bool isFault) {
    m_told->setText(words);
    m_told->setProperty("kind", isFault ? "fault" : "head");
    m_told->style()->polish(m_told);
    m_told->setVisible(!words.isEmpty());
}

QString PaperPage::fault() const {
    return m_told->text();
}

}  // namespace brinebell
