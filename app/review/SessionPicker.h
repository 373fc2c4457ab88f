// SessionPicker.h — past sessions to choose from: a list, and a line that finds in it.
#pragma once

#include <QWidget>
#include <vector>

#include "logbook/Logbook.h"

class QLineEdit;
class QSortFilterProxyModel;
class QTableView;

namespace brinebell {

class SessionListModel;

class SessionPicker final : public QWidget {
    Q_OBJECT

public:
    /// `many`: several at once can be chosen.
    explicit SessionPicker(bool many, QWidget* parent = nullptr);

    /// Newest first; the newest is chosen, or `sessionId` where it is there. Error: the logbook's.
    Result<void> showSessions(const Logbook& logbook, const QString& sessionId = {});
    void clear();

    std::vector<std::string> chosen() const;  ///< ids, in the order shown
    int count() const;                        ///< of the sessions that are found
    QTableView& table() { return *m_table; }

signals:
    void choiceChanged();

private:
    SessionListModel* m_sessions;
    QSortFilterProxyModel* m_found;
    QLineEdit* m_find;
    QTableView* m_table;
};

}  // namespace brinebell
