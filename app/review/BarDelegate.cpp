#include "review/BarDelegate.h"

#include <QPainter>

#include "Theme.h"
#include "review/ReviewModel.h"

namespace brinebell {

void BarDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyledItemDelegate::paint(painter, option, index);
    const QRectF room = QRectF(option.rect).adjusted(6, 3, -6, -3);
    const double whole = index.data(ReviewModel::WholeSpan).toDouble();
    const auto box = [&](int from, int to, double inset) {
        const double left = room.left() + room.width() * index.data(from).toDouble() / whole;
        const double right = room.left() + room.width() * index.data(to).toDouble() / whole;
        return QRectF(left, room.top() + inset, std::max(2.0, right - left), room.height() - 2 * inset);
    };
    painter->save();
    if (index.data(ReviewModel::ActualStart).isValid() && index.data(ReviewModel::ActualEnd).isValid()) {
        painter->fillRect(box(ReviewModel::ActualStart, ReviewModel::ActualEnd, 4), theme::kGlass);
    }
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    painter->setPen(QPen(selected ? theme::kSheet : theme::kInk, 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(box(ReviewModel::PlannedStart, ReviewModel::PlannedEnd, 0));
    painter->restore();
}

}  // namespace brinebell
