// ReviewPage.h — past sessions; one of them planned against lived, its batch record, and its way out as CSV
// or JSON.
#pragma once

#include <QWidget>
#include <optional>

#include "logbook/Logbook.h"

class QHBoxLayout;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableView;
class QTabWidget;

namespace brinebell {

class ReviewModel;
class SessionListModel;

class ReviewPage final : public QWidget {
    Q_OBJECT

public:
    explicit ReviewPage(QWidget* parent = nullptr);

    /// Reads the list again and shows `sessionId`, or the newest session when it is empty. A null logbook
    /// shows why.
    void showSessions(const Logbook* logbook, const QString& sessionId, const QString& whyNoLogbook = {});

    const std::optional<SessionRecord>& record() const { return m_record; }

signals:
    void prepareWanted();

private:
    QWidget* buildRecord();
    QHBoxLayout* buildButtons();
    void showRow(int row);
    void showRecord();
    void showFault(const QString& words);
    void save(const QString& title, const QString& ending, std::string (*text)(const SessionRecord&));

    const Logbook* m_logbook = nullptr;
    std::optional<SessionRecord> m_record;
    SessionListModel* m_sessions;
    QTableView* m_list;
    QLabel* m_title;
    QLabel* m_summary;
    QLabel* m_fault;
    ReviewModel* m_review;
    QTabWidget* m_tabs;
    QTableView* m_table;
    QPlainTextEdit* m_batch;
    QPlainTextEdit* m_labels;
    QPushButton* m_csv;
    QPushButton* m_json;
};

}  // namespace brinebell
