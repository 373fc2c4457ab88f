// BoardPanels.h — the fixed places of the board: clock line, action, what comes next, points to say, recall, and the
// step in full for the presenter who steps up.
#pragma once

#include <QFrame>

#include "stage/BoardType.h"
#include "stage/BoardView.h"
#include "stage/FitText.h"
#include "stage/RecallView.h"

namespace brinebell {

/// Now, the class end and the next time that must not be missed, to be read from the counter; the rest beside them.
class ClockLine final : public QWidget {
    Q_OBJECT

public:
    explicit ClockLine(QWidget* parent = nullptr);
    void present(const ClockView& view, const QString& mode);
    void setType(const BoardType& type);
    QString spread() const { return m_spread->text(); }
    QString late() const { return m_late->text(); }
    QString latestWords() const { return m_latestWords->text(); }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();

    FitText* m_now;
    FitText* m_nowWords;
    FitText* m_classHead;
    FitText* m_class;
    FitText* m_classWords;
    FitText* m_latestHead;
    FitText* m_latest;
    FitText* m_latestWords;
    FitText* m_kitchen;
    FitText* m_standing;
    FitText* m_spread;
    FitText* m_late;
    BoardType m_type;
};

class ActionPanel final : public QFrame {
    Q_OBJECT

public:
    explicit ActionPanel(QWidget* parent = nullptr);
    void present(const ActionView& view);
    void setType(const BoardType& type);
    QString title() const { return m_title->text(); }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();

    FitText* m_kicker;
    FitText* m_title;
    FitText* m_live;
    BoardType m_type;
};

class NextPanel final : public QFrame {
    Q_OBJECT

public:
    explicit NextPanel(QWidget* parent = nullptr);
    void present(const QString& next);
    void setType(const BoardType& type);
    void setGrown(bool grown);  ///< heavier, in the same place
    bool isGrown() const { return m_grown; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void setHead();

    FitText* m_head;
    FitText* m_words;
    bool m_isBlank = true;
    bool m_grown = false;
};

/// What is read by stepping up: the action's amounts and cautions at the left, what must still be said at the right.
class DetailsPanel final : public QWidget {
    Q_OBJECT

public:
    explicit DetailsPanel(QWidget* parent = nullptr);
    void present(const ActionView& action, const PointsView& points);
    void setType(const BoardType& type);

private:
    FitText* m_details;
    FitText* m_head;
    std::vector<FitText*> m_points;
};

/// Over the middle of the board while somebody reads; it changes nothing.
class RecallPanel final : public QFrame {
    Q_OBJECT

public:
    explicit RecallPanel(QWidget* parent = nullptr);
    void present(const RecallView& view);
    void setType(const BoardType& type);

private:
    FitText* m_done;
    FitText* m_running;
    FitText* m_overdue;
    FitText* m_next;
};

class StepPanel final : public QFrame {
    Q_OBJECT

public:
    explicit StepPanel(QWidget* parent = nullptr);
    void present(const StepView& view);
    void setType(const BoardType& type);
    QString swaps() const { return m_swaps->text(); }
    QString amounts() const { return m_amounts->text(); }

private:
    FitText* m_title;
    FitText* m_amounts;
    FitText* m_swaps;
    FitText* m_lookFor;
    FitText* m_points;
    FitText* m_cautions;
};

}  // namespace brinebell
