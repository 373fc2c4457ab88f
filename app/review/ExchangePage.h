// ExchangePage.h — sessions out as CSV or JSON, and sessions of other teachers in.
//
// Threads: the import runs in one of its own, with its own door into the logbook; done() comes in the window's.
#pragma once

#include <QWidget>
#include <memory>

#include "logbook/Import.h"

class QHBoxLayout;
class QLabel;
class QPushButton;
class QTableWidget;
class QThread;

namespace brinebell {

class SessionPicker;

class ExchangePage final : public QWidget {
    Q_OBJECT

public:
    explicit ExchangePage(QWidget* parent = nullptr);
    ~ExchangePage() override;  ///< waits for an import that runs

    /// Reads the sessions again. A null logbook shows why.
    void showSessions(Logbook* logbook, const QString& whyNoLogbook = {});

    enum class Format { Csv, Json };
    /// One file for each chosen session, into `folder`; an older file of the same name is replaced.
    void exportTo(const QString& folder, Format format);
    /// Brings in what `files` hold; the report stands on the page once done() was told.
    void importFrom(const QStringList& files);
    bool isImporting() const { return m_thread != nullptr; }

    SessionPicker& sessions() { return *m_sessions; }
    QString told() const;
    QTableWidget& report() { return *m_report; }

signals:
    void leaveWanted();
    void done();

private:
    QHBoxLayout* buildButtons();
    void askWhereTo(Format format);
    void askWhatToImport();
    void showReport(const Result<ImportReport>& report);
    void addRow(const QString& file, const QString& session, const QString& outcome);
    void follow();
    void inform(const QString& words, bool isFault);

    Logbook* m_logbook = nullptr;
    QThread* m_thread = nullptr;  ///< of an import that runs
    SessionPicker* m_sessions;
    QLabel* m_told;
    QTableWidget* m_report;
    QPushButton* m_csv;
    QPushButton* m_json;
    QPushButton* m_import;
};

}  // namespace brinebell
