#include "desk/PreparePage.h"

#include <QAbstractItemView>
#include <QBoxLayout>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <algorithm>

#include "Customs.h"
#include "PlainLabel.h"
#include "bridge/TimeText.h"
#include "bridge/Words.h"
#include "desk/AltitudePage.h"
#include "desk/ClassPlanner.h"
#include "desk/MakeAheadPanel.h"
#include "desk/ProspectPanel.h"
#include "desk/RunSheetModel.h"
#include "desk/ScreenPanel.h"
#include "desk/SheetChart.h"
#include "plan/ProcessSource.h"

namespace brinebell {

namespace {

constexpr int kNotesHeight = 92;  // beside a run sheet; faults take all the room there is

QString lines(const std::vector<std::string>& texts) {
    QStringList list;
    for (const std::string& text : texts) {
        list << QStringLiteral("•  ") + toQt(text);
    }
    return list.join(QLatin1Char('\n'));
}

std::vector<std::string> publishedTimes(const Network& network) {
    std::vector<std::string> texts;
    for (const Load& load : network.loads) {
        texts.push_back(processInWords(network, load));
    }
    return texts;
}

/// Stations that have a place of their own on the board.
int countdownPlaces(const Network& network) {
    return static_cast<int>(std::count_if(network.stations.begin(), network.stations.end(), [](const Station& station) {
        return station.kind == StationKind::Burner || station.kind == StationKind::Oven ||
               station.kind == StationKind::Canner;
    }));
}

}  // namespace

PreparePage::PreparePage(QWidget* parent) : QWidget(parent) {
    auto* page = new QHBoxLayout(this);
    page->setContentsMargins(16, 12, 16, 12);
    page->setSpacing(16);
    page->addLayout(buildShelf(), 0);
    page->addLayout(buildSheet(), 1);
    connectPlanner();
    showFaults({});
}

QVBoxLayout* PreparePage::buildShelf() {
    auto* shelf = new QVBoxLayout;
    auto* head = plainLabel({}, "title");
    head->setText(tr("Classes"));
    m_files = new QListWidget;
    m_files->setAccessibleName(tr("Class files"));
    m_files->setFixedWidth(272);
    connect(m_files, &QListWidget::currentRowChanged, this, &PreparePage::readSelected);
    auto* open = new QPushButton(tr("&Open a class file…"));
    connect(open, &QPushButton::clicked, this, &PreparePage::chooseFile);
    auto* again = new QPushButton(tr("Read the file &again"));
    connect(again, &QPushButton::clicked, this, &PreparePage::readSelected);
    m_why = new QPushButton(tr("&Why this altitude needs more…"));
    connect(m_why, &QPushButton::clicked, this, &PreparePage::openAltitude);
    auto* review = new QPushButton(tr("&Past sessions"));
    connect(review, &QPushButton::clicked, this, &PreparePage::reviewWanted);
    auto* sound = new QPushButton(tr("Sound chec&k"));
    connect(sound, &QPushButton::clicked, this, &PreparePage::soundWanted);
    shelf->addWidget(head);
    shelf->addWidget(m_files, 1);
    shelf->addWidget(open);
    shelf->addWidget(again);
    shelf->addWidget(m_why);
    shelf->addSpacing(12);
    shelf->addWidget(sound);
    shelf->addWidget(review);
    auto* front = new QPushButton(tr("&Front page"));
    connect(front, &QPushButton::clicked, this, &PreparePage::frontWanted);
    shelf->addWidget(front);
    shelf->addSpacing(12);
    m_screen = new ScreenPanel;
    m_screen->setFixedWidth(m_files->width());
    shelf->addWidget(m_screen);
    return shelf;
}

QVBoxLayout* PreparePage::buildSheet() {
    auto* sheet = new QVBoxLayout;
    sheet->setSpacing(6);
    m_title = plainLabel({}, "title");
    m_plan = plainLabel({}, "quiet");
    m_ends = plainLabel();
    m_logbookFault = plainLabel({}, "fault");
    m_prospect = new ProspectPanel;
    m_chart = new SheetChart;
    m_model = new RunSheetModel(this);
    m_table = new QTableView;
    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("Run sheet"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(26);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_ahead = new MakeAheadPanel;
    m_lower = new QStackedWidget;
    m_lower->addWidget(m_table);
    m_lower->addWidget(m_ahead);
    m_notes = new QPlainTextEdit;
    m_notes->setReadOnly(true);
    m_notes->setAccessibleName(tr("What to know about this class"));
    m_notes->setTabChangesFocus(true);
    sheet->addWidget(m_title);
    sheet->addWidget(m_plan);
    sheet->addWidget(m_ends);
    sheet->addWidget(m_logbookFault);
    sheet->addWidget(m_prospect);
    sheet->addWidget(m_chart, 4);
    sheet->addWidget(m_lower, 5);
    sheet->addWidget(m_notes, 2);
    sheet->addLayout(buildButtons());
    return sheet;
}

QHBoxLayout* PreparePage::buildButtons() {
    m_live = new QPushButton(tr("&Start live class"));
    m_live->setProperty("lead", true);
    connect(m_live, &QPushButton::clicked, this, [this] { emit startWanted({false, 1}); });
    m_rehearse = new QPushButton(tr("&Rehearse"));
    m_speed = new QComboBox;
    m_speed->setAccessibleName(tr("Speed of the rehearsal"));
    m_speed->view()->setAccessibleName(tr("Speeds"));
    for (const int speed : {1, 10, 60}) {
        m_speed->addItem(speed == 1 ? tr("in real time") : tr("%1 times as fast").arg(speed), speed);
    }
    connect(m_rehearse, &QPushButton::clicked, this, [this] {
        emit startWanted({true, m_speed->currentData().toInt()});
    });
    m_makeAhead = new QPushButton(tr("&Make ahead…"));
    m_makeAhead->setCheckable(true);
    // Its words grow heavy when it is pressed in.
    constexpr int kForHeavyWords = 16;
    m_makeAhead->setMinimumWidth(m_makeAhead->sizeHint().width() + kForHeavyWords);
    connect(m_makeAhead, &QPushButton::toggled, this, &PreparePage::openMakeAhead);
    m_lists = new QPushButton(tr("L&ists…"));
    connect(m_lists, &QPushButton::clicked, this, &PreparePage::listsWanted);
    auto* row = new QHBoxLayout;
    row->addWidget(m_live);
    row->addSpacing(24);
    row->addWidget(m_rehearse);
    row->addWidget(m_speed);
    m_papers = new QPushButton(tr("Pri&nt…"));
    connect(m_papers, &QPushButton::clicked, this, &PreparePage::papersWanted);
    row->addStretch();
    row->addWidget(m_lists);
    row->addWidget(m_papers);
    row->addWidget(m_makeAhead);
    return row;
}

void PreparePage::setClassFiles(const QStringList& paths) {
    m_files->clear();
    for (const QString& path : paths) {
        auto* item = new QListWidgetItem(QFileInfo(path).completeBaseName(), m_files);
        item->setData(Qt::UserRole, path);
        item->setToolTip(path.toHtmlEscaped());
    }
    if (m_files->count() > 0) {
        m_files->setCurrentRow(0);
    }
}

void PreparePage::openClass(const QString& path) {
    for (int row = 0; row < m_files->count(); ++row) {
        if (m_files->item(row)->data(Qt::UserRole).toString() == path) {
            m_files->setCurrentRow(row);
            return;
        }
    }
    auto* item = new QListWidgetItem(QFileInfo(path).completeBaseName(), m_files);
    item->setData(Qt::UserRole, path);
    item->setToolTip(path.toHtmlEscaped());
    m_files->setCurrentItem(item);
}

QString PreparePage::chosenFile() const {
    const QListWidgetItem* current = m_files->currentItem();
    return current != nullptr ? current->data(Qt::UserRole).toString() : QString();
}

void PreparePage::chooseFile() {
    const QString beside = chosenFile();
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a class file"), beside, tr("Class files (*.toml)"));
    if (!path.isEmpty()) {
        openClass(path);
    }
}

void PreparePage::readSelected() {
    const QListWidgetItem* item = m_files->currentItem();
    if (item == nullptr) {
        showFaults({});
        return;
    }
    auto read = prepareClass(item->data(Qt::UserRole).toString());
    if (!read) {
        showFaults(read.error());
        return;
    }
    m_prepared = std::move(*read);
    m_makeAhead->setChecked(false);
    m_planner->abandonAll();
    m_prospect->clear();
    m_prospect->showSearching({});
    showPrepared();
    m_planWaits = true;
    if (isVisible()) {
        planOncePainted();
    }
}

// A page that is not seen yet comes first: the search takes both cores.
void PreparePage::planOncePainted() {
    if (m_planWaits && m_prepared) {
        m_planWaits = false;
        m_planner->plan(m_prepared->network);
    }
}

void PreparePage::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    if (m_planWaits) {
        QTimer::singleShot(0, this, &PreparePage::planOncePainted);
    }
}

void PreparePage::connectPlanner() {
    m_planner = new ClassPlanner(this);
    connect(m_planner, &ClassPlanner::progressed, m_prospect, &ProspectPanel::showSearching);
    connect(m_prospect, &ProspectPanel::stopWanted, m_planner, &ClassPlanner::stopPlanning);
    connect(m_planner, &ClassPlanner::planned, this, [this](const Prospect& prospect) {
        takeOver(*m_prepared, prospect);
        m_prospect->showProspect(m_prepared->network, prospect);
        showPrepared();
    });
    connect(m_planner, &ClassPlanner::notPlanned, this,
            [this](const Error& reason) { m_prospect->showFault(Words::sentence(toQt(reason.message))); });
    connect(m_planner, &ClassPlanner::tried, m_ahead, &MakeAheadPanel::showTrying);
    connect(m_ahead, &MakeAheadPanel::stopWanted, this, [this] {
        m_stoppedChoosing = true;
        m_planner->stopChoosing();
    });
    connect(m_planner, &ClassPlanner::chosen, this, [this](const MakeAheadAnswer& answer) {
        m_ahead->showAnswer(m_prepared->plan, answer, m_stoppedChoosing);
    });
    connect(m_planner, &ClassPlanner::notChosen, this,
            [this](const Error& reason) { m_ahead->showFault(Words::sentence(toQt(reason.message))); });
}

void PreparePage::openMakeAhead(bool open) {
    m_lower->setCurrentWidget(open ? static_cast<QWidget*>(m_ahead) : m_table);
    if (open && m_prepared) {
        m_stoppedChoosing = false;
        m_ahead->showTrying(0, 0);
        m_planner->chooseAhead(m_prepared->plan);
    }
}

void PreparePage::openAltitude() {
    if (!m_prepared || !m_prepared->plan.venue.altitude) {
        return;
    }
    auto* page = new AltitudePage(m_prepared->network, m_prepared->plan.venue.altitude->height, this);
    page->setAttribute(Qt::WA_DeleteOnClose);
    page->open();
}

void PreparePage::showPrepared() {
    m_title->setText(toQt(m_prepared->plan.title));
    m_plan->setText(describePlan());
    m_ends->setText(describeEnds());
    const BackTiming timing = m_prepared->prospect ? m_prepared->prospect->timing : BackTiming();
    m_screen->setVenue(m_prepared->network.readingDistance, countdownPlaces(m_prepared->network));
    m_chart->setSheet(m_prepared->network, m_prepared->sheet, timing);
    m_model->setSheet(m_prepared->network, m_prepared->sheet, timing);
    fitColumns();
    const QString warnings =
        m_prepared->warnings.empty() ? tr("Nothing stands against this run sheet.") : lines(m_prepared->warnings);
    m_notes->setPlainText(warnings + QLatin1Char('\n') + lines(publishedTimes(m_prepared->network)));
    m_notes->setMaximumHeight(kNotesHeight);
    m_chart->show();
    m_lower->show();
    m_prospect->show();
    m_makeAhead->setEnabled(true);
    m_lists->setEnabled(true);
    m_why->setEnabled(m_prepared->plan.venue.altitude.has_value());
    m_live->setEnabled(true);
    m_rehearse->setEnabled(true);
}

// What does not fit stands in the tip of its cell; the reason, last, takes what the others leave.
void PreparePage::fitColumns() {
    m_table->resizeColumnsToContents();
    // Times of twelve hours are wider than those of twenty-four, and are never cut.
    int room = m_table->viewport()->width();
    for (const int column : {RunSheetModel::Start, RunSheetModel::End, RunSheetModel::Slack, RunSheetModel::Latest}) {
        room -= m_table->columnWidth(column);
    }
    for (const auto& [column, hundredths] :
         {std::pair{RunSheetModel::What, 35}, {RunSheetModel::Where, 18}, {RunSheetModel::Hands, 25}}) {
        m_table->setColumnWidth(column, std::min(room * hundredths / 100, m_table->columnWidth(column)));
    }
}

void PreparePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitColumns();
    m_screen->refresh();
}

void PreparePage::showFaults(const std::vector<Error>& faults) {
    m_planner->abandonAll();
    m_prepared.reset();
    m_makeAhead->setChecked(false);
    m_makeAhead->setEnabled(false);
    m_lists->setEnabled(false);
    m_why->setEnabled(false);
    m_prospect->hide();
    m_chart->clear();
    m_model->clear();
    m_chart->hide();
    m_lower->hide();
    m_notes->setMaximumHeight(QWIDGETSIZE_MAX);
    m_plan->clear();
    m_live->setEnabled(false);
    m_rehearse->setEnabled(false);
    m_screen->setVenue({}, 0);
    if (faults.empty()) {
        m_title->setText(tr("No class chosen"));
        m_ends->setText(tr("Choose a class at the left, or open a class file."));
        m_notes->clear();
        return;
    }
    m_title->setText(tr("This class cannot be read yet"));
    m_ends->setText(tr("Mend what is named below in any text editor, then press “Read the file again”."));
    QStringList list;
    for (const Error& fault : faults) {
        list << toQt(describe(fault));
    }
    m_notes->setPlainText(list.join(QLatin1Char('\n')));
}

QString PreparePage::faults() const {
    return m_prepared ? QString() : m_notes->toPlainText();
}

void PreparePage::setLogbookFault(const QString& words) {
    m_logbookFault->setText(words);
    m_logbookFault->setVisible(!words.isEmpty());
}

void PreparePage::focusStart() {
    if (m_live->isEnabled()) {
        m_live->setFocus();
    } else {
        m_files->setFocus();
    }
}

QString PreparePage::describePlan() const {
    const Network& network = m_prepared->network;
    const QString helpers = network.helpers == 0   ? tr("no helper")
                            : network.helpers == 1 ? tr("one helper")
                                                   : tr("%1 helpers").arg(network.helpers);
    return QStringList{toQt(network.teacher), helpers, toQt(network.venueName),
                       toQt(shownHeightLine(network.altitude, customs().shownAs)), dayAndTime(network.startUtc)}
        .join(QStringLiteral("  ·  "));
}

QString PreparePage::describeEnds() const {
    const Network& network = m_prepared->network;
    const RunSheet& sheet = m_prepared->sheet;
    const Seconds spare = network.slot - sheet.classEnd;
    const QString inSlot = spare >= Seconds::zero() ? tr("%1 before the room must be empty").arg(spanText(spare))
                                                    : tr("%1 AFTER the room must be empty").arg(spanText(spare));
    QString ends =
        tr("Class ends %1, %2. Kitchen ends %3.")
            .arg(timeOfDay(network.startUtc + sheet.classEnd), inSlot, timeOfDay(network.startUtc + sheet.kitchenEnd));
    if (!network.kitchenCloser.empty()) {
        ends += QLatin1Char(' ') + tr("%1 stays until then.").arg(toQt(network.kitchenCloser));
    }
    return ends;
}

}  // namespace brinebell
