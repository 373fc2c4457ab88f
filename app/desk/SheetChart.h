// SheetChart.h — a run sheet at a glance: time runs to the right, one row for each pair of hands and each
// station used.
//
// The table beneath it says the same in words; the chart only shows shape.
#pragma once

#include <QWidget>

#include "plan/RunSheet.h"

namespace brinebell {

class SheetChart final : public QWidget {
    Q_OBJECT

public:
    explicit SheetChart(QWidget* parent = nullptr);

    void setSheet(Network network, RunSheet sheet);
    void clear() { setSheet({}, {}); }

    QSize sizeHint() const override { return {600, 230}; }
    QSize minimumSizeHint() const override { return {300, 140}; }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;  // for the words under the mouse

private:
    struct Bar {
        int row = 0;
        Seconds from{}, to{};
        QString words;
        bool hands = false;
    };
    void buildBars();
    QRectF boxOf(const Bar& bar) const;
    double xOf(Seconds time) const;
    double rowHeight() const;
    void paintAxis(QPainter& painter) const;
    void paintEnds(QPainter& painter) const;
    void paintBar(QPainter& painter, const Bar& bar) const;

    Network m_network;
    RunSheet m_sheet;
    QStringList m_rows;
    std::vector<Bar> m_bars;
    Seconds m_span{1};
};

}  // namespace brinebell
