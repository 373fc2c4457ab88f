#include "review/ReviewModel.h"

#include <algorithm>
#include <cstdlib>

#include "bridge/PlainHint.h"
#include "bridge/TimeText.h"
#include "bridge/Words.h"

namespace brinebell {

namespace {

QVariant secondsOf(const std::optional<Seconds>& time) {
    return time ? QVariant(static_cast<qlonglong>(time->count())) : QVariant();
}

QString fromTo(Seconds start, Seconds end) {
    return QStringLiteral("%1 – %2").arg(sheetTime(start), sheetTime(end));
}

}  // namespace

void ReviewModel::setReview(Network network, Review review) {
    beginResetModel();
    m_network = std::move(network);
    m_review = std::move(review);
    m_wholeSpan = Seconds(1);
    for (const ReviewRow& row : m_review.rows) {
        m_wholeSpan = std::max({m_wholeSpan, row.plannedEnd, row.actualEnd.value_or(Seconds::zero())});
    }
    endResetModel();
}

void ReviewModel::clear() {
    setReview({}, {});
}

int ReviewModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_review.rows.size());
}

int ReviewModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QVariant ReviewModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const ReviewRow& row = m_review.rows[static_cast<std::size_t>(index.row())];
    switch (role) {
        case Qt::DisplayRole:
            return words(row, index.column());
        case Qt::ToolTipRole:
            return plainHint(words(row, index.column()).toString());
        case PlannedStart:
            return secondsOf(row.plannedStart);
        case PlannedEnd:
            return secondsOf(row.plannedEnd);
        case ActualStart:
            return secondsOf(row.actualStart);
        case ActualEnd:
            return secondsOf(row.actualEnd);
        case WholeSpan:
            return secondsOf(m_wholeSpan);
        default:
            return {};
    }
}

QVariant ReviewModel::words(const ReviewRow& row, int column) const {
    switch (column) {
        case What: {
            const QString title = Words::activity(row.activity, m_network);
            if (row.boilsLost == 0) {
                return title;
            }
            return row.boilsLost == 1 ? tr("%1 (boil lost once)").arg(title)
                                      : tr("%1 (boil lost %2 times)").arg(title, QString::number(row.boilsLost));
        }
        case Planned:
            return fromTo(row.plannedStart, row.plannedEnd);
        case Actual:
            if (row.skipped) {
                return tr("left out");
            }
            if (!row.actualStart) {
                return tr("not done");
            }
            return row.actualEnd ? fromTo(*row.actualStart, *row.actualEnd)
                                 : tr("%1, not ended").arg(sheetTime(*row.actualStart));
        case Difference:
            return difference(row);
        default:
            return {};
    }
}

QString ReviewModel::difference(const ReviewRow& row) const {
    if (!row.actualStart || !row.actualEnd || row.skipped) {
        return {};
    }
    const Seconds planned = row.plannedEnd - row.plannedStart;
    const Seconds lived = *row.actualEnd - *row.actualStart;
    const std::int64_t seconds = (lived - planned).count();
    const std::int64_t minutes = (std::abs(seconds) + 30) / 60;
    if (minutes == 0) {
        return tr("as planned");
    }
    return (seconds > 0 ? tr("%1 min longer") : tr("%1 min shorter")).arg(static_cast<qlonglong>(minutes));
}

QVariant ReviewModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
        case What:
            return tr("Step");
        case Planned:
            return tr("Planned");
        case Actual:
            return tr("As it went");
        case Difference:
            return tr("Took");
        case Bars:
            return tr("Planned (outline) and as it went (filled)");
        default:
            return {};
    }
}

}  // namespace brinebell
