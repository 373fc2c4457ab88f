#include "review/SessionListModel.h"

#include "bridge/PlainHint.h"
#include "bridge/TimeText.h"

namespace brinebell {

void SessionListModel::setSessions(std::vector<SessionInfo> sessions) {
    beginResetModel();
    m_sessions = std::move(sessions);
    endResetModel();
}

int SessionListModel::rowOf(const QString& sessionId) const {
    for (std::size_t row = 0; row < m_sessions.size(); ++row) {
        if (toQt(m_sessions[row].id) == sessionId) {
            return static_cast<int>(row);
        }
    }
    return -1;
}

int SessionListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_sessions.size());
}

int SessionListModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QVariant SessionListModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::ToolTipRole) {
        return plainHint(data(index, Qt::DisplayRole).toString());
    }
    if (!index.isValid() || role != Qt::DisplayRole) {
        return {};
    }
    const SessionInfo& info = session(index.row());
    switch (index.column()) {
        case When:
            return dayAndTime(info.startedUtc);
        case Title:
            return toQt(info.title);
        case Venue:
            return toQt(info.venue);
        case Kind:
            return info.rehearsal ? tr("rehearsal") : tr("live");
        case Standing:
            return info.closedUtc ? tr("closed") : tr("not closed");
        default:
            return {};
    }
}

QVariant SessionListModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
        case When:
            return tr("Started");
        case Title:
            return tr("Class");
        case Venue:
            return tr("Kitchen");
        case Kind:
            return tr("Kind");
        case Standing:
            return tr("State");
        default:
            return {};
    }
}

}  // namespace brinebell
