// SessionListModel.h — the sessions of the logbook as a table, newest first.
#pragma once

#include <QAbstractTableModel>

#include "logbook/Logbook.h"

namespace brinebell {

class SessionListModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { When, Title, Venue, Kind, Standing, kColumns };

    using QAbstractTableModel::QAbstractTableModel;

    void setSessions(std::vector<SessionInfo> sessions);
    const SessionInfo& session(int row) const { return m_sessions[static_cast<std::size_t>(row)]; }
    int rowOf(const QString& sessionId) const;  ///< -1 when it is not there

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<SessionInfo> m_sessions;
};

}  // namespace brinebell
