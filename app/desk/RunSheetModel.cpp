#include "desk/RunSheetModel.h"

#include <QFont>
#include <algorithm>
#include <numeric>

#include "bridge/PlainHint.h"
#include "bridge/TimeText.h"
#include "bridge/Words.h"

namespace brinebell {

void RunSheetModel::setSheet(Network network, RunSheet sheet, BackTiming timing) {
    beginResetModel();
    m_network = std::move(network);
    m_sheet = std::move(sheet);
    m_timing = std::move(timing);
    m_rows.resize(m_sheet.activities.size());
    std::iota(m_rows.begin(), m_rows.end(), 0);
    std::stable_sort(m_rows.begin(), m_rows.end(), [this](int a, int b) {
        return m_sheet.activities[static_cast<std::size_t>(a)].start <
               m_sheet.activities[static_cast<std::size_t>(b)].start;
    });
    endResetModel();
}

void RunSheetModel::clear() {
    setSheet({}, {});
}

int RunSheetModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RunSheetModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QString RunSheetModel::where(int activity) const {
    const std::vector<int>& holds = m_network.activities[static_cast<std::size_t>(activity)].stationHolds;
    QStringList names;
    for (const StationSpan& span : m_sheet.stations) {
        const bool ours = std::find(holds.begin(), holds.end(), span.stationHold) != holds.end();
        if (ours && span.station >= 0) {
            const QString name = toQt(m_network.stations[static_cast<std::size_t>(span.station)].name);
            if (!names.contains(name)) {
                names << name;
            }
        }
    }
    return names.join(QStringLiteral(", "));
}

QString RunSheetModel::hands(int activity) const {
    QStringList kinds;
    for (const HandSpan& span : m_sheet.hands) {
        if (span.activity != activity) {
            continue;
        }
        const QString who = span.hand == 0 ? tr("teacher") : tr("helper %1").arg(span.hand);
        const QString words = QStringLiteral("%1: %2").arg(who, Words::handWork(span.work));
        if (!kinds.contains(words)) {
            kinds << words;
        }
    }
    return kinds.isEmpty() ? tr("nobody") : kinds.join(QStringLiteral("; "));
}

QVariant RunSheetModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const int activity = m_rows[static_cast<std::size_t>(index.row())];
    const auto at = static_cast<std::size_t>(activity);
    const bool isTimed = at < m_timing.slack.size();
    if (role == Qt::FontRole && isTimed && m_timing.isCritical(activity)) {
        QFont heavy;
        heavy.setBold(true);
        return heavy;
    }
    if (role == Qt::ToolTipRole) {
        return plainHint(data(index, Qt::DisplayRole).toString());
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    switch (index.column()) {
        case Start:
            return timeOfDay(m_network.startUtc + m_sheet.activities[at].start);
        case End:
            return timeOfDay(m_network.startUtc + m_sheet.activities[at].end);
        case Slack:
            return isTimed ? Words::slack(m_timing.slack[at]) : QString();
        case Latest:
            return isTimed ? timeOfDay(m_network.startUtc + m_timing.latestStart[at]) : QString();
        case What:
            return Words::activity(activity, m_network);
        case Where:
            return where(activity);
        case Hands:
            return hands(activity);
        case Why:
            return Words::startReason(m_sheet.reasons[at], m_sheet.waitedFor[at], m_network);
        default:
            return {};
    }
}

QVariant RunSheetModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
        case Start:
            return tr("Start");
        case End:
            return tr("End");
        case Slack:
            return tr("Slack");
        case Latest:
            return tr("Latest");
        case What:
            return tr("Step");
        case Where:
            return tr("Where");
        case Hands:
            return tr("Hands");
        case Why:
            return tr("Why then");
        default:
            return {};
    }
}

}  // namespace brinebell
