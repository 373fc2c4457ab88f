// ReviewModel.h — one session, planned against lived, as a table: one row an activity, by planned start.
#pragma once

#include <QAbstractTableModel>

#include "logbook/Export.h"

namespace brinebell {

class ReviewModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { What, Planned, Actual, Difference, Bars, kColumns };

    /// For the bars: seconds from the start of the class; the actual ones are invalid where nothing happened.
    enum Role { PlannedStart = Qt::UserRole, PlannedEnd, ActualStart, ActualEnd, WholeSpan };

    using QAbstractTableModel::QAbstractTableModel;

    void setReview(Network network, Review review);
    void clear();

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QVariant words(const ReviewRow& row, int column) const;
    QString difference(const ReviewRow& row) const;

    Network m_network;
    Review m_review;
    Seconds m_wholeSpan{1};
};

}  // namespace brinebell
