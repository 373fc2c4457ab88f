#include "review/ReviewPage.h"

#include <QBoxLayout>
#include <QFileDialog>
#include <QFontDatabase>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>

#include "PlainLabel.h"
#include "base/FileName.h"
#include "bridge/TimeText.h"
#include "document/Document.h"
#include "logbook/BatchRecord.h"
#include "logbook/Export.h"
#include "review/BarDelegate.h"
#include "review/ReviewModel.h"
#include "review/SessionListModel.h"

namespace brinebell {

namespace {

QTableView* plainTable(QAbstractItemModel* model, const QString& name) {
    auto* table = new QTableView;
    table->setModel(model);
    table->setAccessibleName(name);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setAlternatingRowColors(true);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(26);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setStretchLastSection(true);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    return table;
}

QPlainTextEdit* plainText(const QString& name) {
    auto* text = new QPlainTextEdit;
    text->setReadOnly(true);
    text->setTabChangesFocus(true);
    text->setAccessibleName(name);
    QFont columns = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    columns.setPointSizeF(text->font().pointSizeF());
    text->setFont(columns);
    return text;
}

}  // namespace

ReviewPage::ReviewPage(QWidget* parent) : QWidget(parent) {
    m_sessions = new SessionListModel(this);
    m_list = plainTable(m_sessions, tr("Past sessions"));
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { showRow(current.isValid() ? current.row() : -1); });
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(m_list);
    split->addWidget(buildRecord());
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 4);
    split->setChildrenCollapsible(false);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(16, 12, 16, 12);
    page->addWidget(split, 1);
    page->addLayout(buildButtons());
    showRow(-1);
}

QWidget* ReviewPage::buildRecord() {
    m_title = plainLabel({}, "title");
    m_summary = plainLabel({}, "quiet");
    m_fault = plainLabel({}, "fault");
    m_review = new ReviewModel(this);
    m_table = plainTable(m_review, tr("Planned and as it went"));
    m_table->setItemDelegateForColumn(ReviewModel::Bars, new BarDelegate(m_table));
    m_batch = plainText(tr("Batch record"));
    m_labels = plainText(tr("Label text"));
    m_tabs = new QTabWidget;
    m_tabs->addTab(m_table, tr("Planned and as it &went"));
    m_tabs->addTab(m_batch, tr("&Batch record"));
    m_tabs->addTab(m_labels, tr("&Labels"));
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 8, 0, 0);
    layout->addWidget(m_title);
    layout->addWidget(m_summary);
    layout->addWidget(m_fault);
    layout->addWidget(m_tabs, 1);
    return box;
}

QHBoxLayout* ReviewPage::buildButtons() {
    auto* prepare = new QPushButton(tr("&Prepare a class"));
    connect(prepare, &QPushButton::clicked, this, &ReviewPage::prepareWanted);
    m_csv = new QPushButton(tr("Save as &CSV…"));
    connect(m_csv, &QPushButton::clicked, this, [this] { save(tr("Save as CSV"), QStringLiteral("csv"), &eventsCsv); });
    m_json = new QPushButton(tr("Save as &JSON…"));
    connect(m_json, &QPushButton::clicked, this,
            [this] { save(tr("Save as JSON"), QStringLiteral("json"), &sessionJson); });
    auto* row = new QHBoxLayout;
    row->addWidget(prepare);
    row->addStretch();
    row->addWidget(m_csv);
    row->addWidget(m_json);
    return row;
}

void ReviewPage::showSessions(const Logbook* logbook, const QString& sessionId, const QString& whyNoLogbook) {
    m_logbook = logbook;
    m_sessions->setSessions({});
    showRow(-1);
    if (logbook == nullptr) {
        showFault(whyNoLogbook);
        return;
    }
    auto sessions = logbook->sessions();
    if (!sessions) {
        showFault(toQt(describe(sessions.error())));
        return;
    }
    m_sessions->setSessions(std::move(*sessions));
    m_list->resizeColumnsToContents();
    const int row = sessionId.isEmpty() ? 0 : m_sessions->rowOf(sessionId);
    if (row >= 0 && row < m_sessions->rowCount()) {
        m_list->selectRow(row);
    }
    m_list->setFocus();
}

void ReviewPage::showRow(int row) {
    m_record.reset();
    m_review->clear();
    m_batch->clear();
    m_labels->clear();
    m_summary->clear();
    m_csv->setEnabled(false);
    m_json->setEnabled(false);
    showFault({});
    if (row < 0 || m_logbook == nullptr) {
        m_title->setText(m_logbook != nullptr && m_sessions->rowCount() == 0 ? tr("No session is in the logbook yet")
                                                                             : tr("No session chosen"));
        return;
    }
    auto record = m_logbook->session(m_sessions->session(row).id);
    if (!record) {
        showFault(toQt(describe(record.error())));
        return;
    }
    m_record = std::move(*record);
    showRecord();
}

void ReviewPage::showRecord() {
    m_title->setText(toQt(m_record->info.title));
    m_csv->setEnabled(true);
    m_json->setEnabled(true);
    const auto review = reviewOf(*m_record);
    if (!review) {
        showFault(toQt(describe(review.error())));
        return;
    }
    const auto end = [](const std::optional<Seconds>& time) { return time ? sheetTime(*time) : tr("not ended"); };
    m_summary->setText(QStringList{
        tr("Class ended after %1 (planned %2)").arg(end(review->actualClassEnd), sheetTime(review->plannedClassEnd)),
        tr("kitchen after %1 (planned %2)").arg(end(review->actualKitchenEnd), sheetTime(review->plannedKitchenEnd)),
        tr("points said: %1, open: %2").arg(review->pointsSaid.size()).arg(review->pointsOpen.size()),
        tr("presses taken back: %1").arg(review->undone)}
                           .join(QStringLiteral("  ·  ")));
    m_review->setReview(m_record->network, *review);
    m_table->resizeColumnsToContents();
    if (const auto batch = batchRecord(*m_record)) {
        m_batch->setPlainText(toQt(*batch));
    } else {
        m_batch->setPlainText(toQt(describe(batch.error())));
    }
    if (const auto labels = labelText(*m_record)) {
        m_labels->setPlainText(toQt(*labels));
    } else {
        m_labels->setPlainText(toQt(describe(labels.error())));
    }
}

void ReviewPage::showFault(const QString& words) {
    m_fault->setText(words);
    m_fault->setVisible(!words.isEmpty());
}

void ReviewPage::save(const QString& title, const QString& ending, std::string (*text)(const SessionRecord&)) {
    if (!m_record) {
        return;
    }
    const QString name =
        QStringLiteral("%1-%2.%3")
            .arg(toQt(fileNameFrom(m_record->info.classId)), toQt(fileNameFrom(m_record->info.id)).left(8), ending);
    const QString path = QFileDialog::getSaveFileName(this, title, name, QStringLiteral("*.%1").arg(ending));
    if (path.isEmpty()) {
        return;
    }
    const Result<void> written = writeFileWhole(path.toStdString(), text(*m_record));
    showFault(written ? QString() : toQt(describe(written.error())));
}

}  // namespace brinebell
