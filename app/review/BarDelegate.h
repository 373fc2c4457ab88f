// BarDelegate.h — paints one review row's planned span as an outline with the lived one filled inside it.
#pragma once

#include <QStyledItemDelegate>

namespace brinebell {

class BarDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace brinebell
