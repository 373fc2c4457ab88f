#include "review/ExchangePage.h"

#include <QDir>
#include <QFileDialog>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QTableWidget>
#include <QThread>
#include <QVBoxLayout>

#include "base/FileName.h"
#include "bridge/PlainHint.h"
#include "bridge/TimeText.h"
#include "document/Document.h"
#include "logbook/Export.h"
#include "review/SessionPicker.h"

namespace brinebell {

namespace {

constexpr int kShortId = 8;

QLabel* exchangeLabel(const QString& text, const char* kind) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    return label;
}

// "salsa-and-beans-2026-09-12-3f0a6c11.json"
QString exportName(const SessionInfo& info, const QString& ending) {
    const QString day =
        QDateTime::fromMSecsSinceEpoch(info.startedUtc.count(), Qt::UTC).toString(QStringLiteral("yyyy-MM-dd"));
    return QStringLiteral("%1-%2-%3.%4")
        .arg(toQt(fileNameFrom(info.classId)), day, toQt(fileNameFrom(info.id)).left(kShortId), ending);
}

}  // namespace

ExchangePage::ExchangePage(QWidget* parent) : QWidget(parent) {
    m_told = exchangeLabel({}, "fault");
    m_sessions = new SessionPicker(true);
    connect(m_sessions, &SessionPicker::choiceChanged, this, &ExchangePage::follow);
    m_report = new QTableWidget(0, 3);
    m_report->setAccessibleName(tr("What became of each"));
    m_report->setHorizontalHeaderLabels({tr("File"), tr("Session"), tr("What became of it")});
    m_report->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_report->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_report->setTabKeyNavigation(false);
    m_report->setShowGrid(false);
    m_report->setWordWrap(true);
    m_report->verticalHeader()->hide();
    m_report->horizontalHeader()->setStretchLastSection(true);
    m_report->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_report->hide();
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(16, 12, 16, 12);
    page->addWidget(exchangeLabel(tr("Export and import"), "title"));
    page->addWidget(
        exchangeLabel(tr("Choose one session or several to save them. Import takes sessions that were saved as JSON, "
                         "and whole logbooks of other teachers; the same session twice is one."),
                      "quiet"));
    page->addWidget(m_told);
    page->addWidget(m_sessions, 3);
    page->addWidget(m_report, 2);
    page->addLayout(buildButtons());
    inform({}, false);
    follow();
}

ExchangePage::~ExchangePage() {
    if (m_thread != nullptr) {
        m_thread->wait();
    }
}

QHBoxLayout* ExchangePage::buildButtons() {
    auto* leave = new QPushButton(tr("&Front page"));
    connect(leave, &QPushButton::clicked, this, &ExchangePage::leaveWanted);
    m_import = new QPushButton(tr("&Import…"));
    connect(m_import, &QPushButton::clicked, this, &ExchangePage::askWhatToImport);
    m_csv = new QPushButton(tr("Save as &CSV…"));
    connect(m_csv, &QPushButton::clicked, this, [this] { askWhereTo(Format::Csv); });
    m_json = new QPushButton(tr("Save as &JSON…"));
    connect(m_json, &QPushButton::clicked, this, [this] { askWhereTo(Format::Json); });
    auto* row = new QHBoxLayout;
    row->addWidget(leave);
    row->addStretch();
    row->addWidget(m_import);
    row->addWidget(m_csv);
    row->addWidget(m_json);
    return row;
}

void ExchangePage::showSessions(Logbook* logbook, const QString& whyNoLogbook) {
    m_logbook = logbook;
    inform(whyNoLogbook, true);
    if (logbook == nullptr) {
        m_sessions->clear();
    } else if (const Result<void> shown = m_sessions->showSessions(*logbook); !shown) {
        inform(toQt(describe(shown.error())), true);
    }
    follow();
}

void ExchangePage::follow() {
    const bool canSave = m_logbook != nullptr && !m_sessions->chosen().empty();
    m_csv->setEnabled(canSave);
    m_json->setEnabled(canSave);
    m_import->setEnabled(m_logbook != nullptr && !isImporting());
}

void ExchangePage::askWhereTo(Format format) {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Save into a folder"));
    if (!folder.isEmpty()) {
        exportTo(folder, format);
    }
}

void ExchangePage::exportTo(const QString& folder, Format format) {
    int saved = 0;
    QString last;
    for (const std::string& id : m_sessions->chosen()) {
        const Result<SessionRecord> record = m_logbook->session(id);
        if (!record) {
            inform(tr("Not saved: %1").arg(toQt(describe(record.error()))), true);
            return;
        }
        const bool isCsv = format == Format::Csv;
        last = QDir(folder).filePath(exportName(record->info, isCsv ? QStringLiteral("csv") : QStringLiteral("json")));
        const Result<void> written =
            writeFileWhole(last.toStdString(), isCsv ? eventsCsv(*record) : sessionJson(*record));
        if (!written) {
            inform(tr("Not saved: %1").arg(toQt(describe(written.error()))), true);
            return;
        }
        ++saved;
    }
    inform(saved == 1 ? tr("Saved: %1").arg(last) : tr("%1 sessions saved into %2").arg(saved).arg(folder), false);
}

void ExchangePage::askWhatToImport() {
    const QStringList files = QFileDialog::getOpenFileNames(
        this, tr("Import sessions"), {}, tr("Sessions and logbooks (*.json *.sqlite);;All files (*)"));
    if (!files.isEmpty()) {
        importFrom(files);
    }
}

void ExchangePage::importFrom(const QStringList& files) {
    if (m_logbook == nullptr || isImporting()) {
        return;
    }
    std::vector<std::string> paths;
    for (const QString& file : files) {
        paths.push_back(file.toStdString());
    }
    const auto report = std::make_shared<Result<ImportReport>>();
    m_thread = QThread::create([into = m_logbook->path(), paths, report] {
        Result<Logbook> logbook = Logbook::open(into);
        *report = logbook ? Result<ImportReport>(importFiles(*logbook, paths)) : tl::unexpected<Error>(logbook.error());
    });
    connect(m_thread, &QThread::finished, this, [this, report] {
        m_thread->deleteLater();
        m_thread = nullptr;
        showReport(*report);
        emit done();
    });
    inform(tr("Importing…"), false);
    follow();
    m_thread->start();
}

void ExchangePage::showReport(const Result<ImportReport>& report) {
    m_report->setRowCount(0);
    if (!report) {
        inform(tr("Nothing was imported: %1").arg(toQt(describe(report.error()))), true);
        follow();
        return;
    }
    const auto name = [](const std::string& id) { return toQt(id).left(kShortId); };
    for (const ImportReport::Refusal& refusal : report->refused) {
        addRow(toQt(refusal.error.where.file), name(refusal.session),
               tr("Refused: %1").arg(toQt(refusal.error.message)));
    }
    for (const std::string& id : report->added) {
        addRow({}, name(id), tr("brought in"));
    }
    for (const std::string& id : report->known) {
        addRow({}, name(id), tr("was here already"));
    }
    m_report->resizeColumnsToContents();
    m_report->resizeRowsToContents();
    m_report->show();
    showSessions(m_logbook);
    inform(tr("%1 brought in, %2 here already, %3 refused.")
               .arg(report->added.size())
               .arg(report->known.size())
               .arg(report->refused.size()),
           !report->refused.empty());
}

void ExchangePage::addRow(const QString& file, const QString& session, const QString& outcome) {
    const int row = m_report->rowCount();
    m_report->insertRow(row);
    int column = 0;
    for (const QString& text : {file, session, outcome}) {
        auto* item = new QTableWidgetItem(text);
        item->setToolTip(plainHint(text));
        m_report->setItem(row, column++, item);
    }
}

void ExchangePage::inform(const QString& words, bool isFault) {
    m_told->setText(words);
    m_told->setProperty("kind", isFault ? "fault" : "head");
    m_told->style()->polish(m_told);
    m_told->setVisible(!words.isEmpty());
}

QString ExchangePage::told() const {
    return m_told->text();
}

}  // namespace brinebell
