// RunSheetModel.h — a run sheet as a table: one row an activity, by start time.
#pragma once

#include <QAbstractTableModel>

#include "plan/BackTiming.h"

namespace brinebell {

class RunSheetModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Start, End, Slack, Latest, What, Where, Hands, Why, kColumns };

    using QAbstractTableModel::QAbstractTableModel;

    /// Without a timing the columns of slack and latest start stay empty.
    void setSheet(Network network, RunSheet sheet, BackTiming timing = {});
    void clear();

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString where(int activity) const;
    QString hands(int activity) const;

    Network m_network;
    RunSheet m_sheet;
    BackTiming m_timing;
    std::vector<int> m_rows;  // activity by row
};

}  // namespace brinebell
