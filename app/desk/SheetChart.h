// SheetChart.h — a run sheet at a glance: time runs to the right, one row for each pair of hands and each
// station used.
//
// The table beneath it says the same in words; the chart only shows shape.
#pragma once

#include <QWidget>

#include "plan/BackTiming.h"

namespace brinebell {

class SheetChart final : public QWidget {
    Q_OBJECT

public:
    explicit SheetChart(QWidget* parent = nullptr);

    /// Without a timing nothing is marked as critical.
    void setSheet(Network network, RunSheet sheet, BackTiming timing = {});
    void clear() { setSheet({}, {}); }

    QSize sizeHint() const override { return {600, 230}; }
    QSize minimumSizeHint() const override;  ///< high enough for the words of every row

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
    struct Stroke {
        int row = 0;
        Seconds from{}, to{};
    };
    void buildBars();
    void addStrokes(int row, Seconds from, Seconds to, const std::vector<int>& activities);
    QRectF boxOf(const Bar& bar) const;
    double xOf(Seconds time) const;
    double rowHeight() const;
    void paintAxis(QPainter& painter) const;
    void paintEnds(QPainter& painter) const;
    void paintBar(QPainter& painter, const Bar& bar) const;
    void paintStroke(QPainter& painter, const Stroke& stroke) const;

    Network m_network;
    RunSheet m_sheet;
    BackTiming m_timing;
    QStringList m_rows;
    std::vector<Bar> m_bars;
    std::vector<Stroke> m_strokes;  ///< under what is critical
    Seconds m_span{1};
};

}  // namespace brinebell
