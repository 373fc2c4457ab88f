// BoardPanels.h — the fixed places of the board: clock line, action with what comes next, points to say,
// recall.
#pragma once

#include <QFrame>

#include "stage/BoardType.h"
#include "stage/BoardView.h"
#include "stage/FitText.h"
#include "stage/RecallView.h"

namespace brinebell {

class ClockLine final : public QWidget {
    Q_OBJECT

public:
    explicit ClockLine(QWidget* parent = nullptr);
    void present(const ClockView& view, const QString& mode);
    void setType(const BoardType& type);
    QString spread() const { return m_spread->text(); }
    QString late() const { return m_late->text(); }
    QString latestWords() const { return m_latestWords->text(); }

private:
    FitText* m_now;
    FitText* m_nowWords;
    FitText* m_class;
    FitText* m_classWords;
    FitText* m_kitchen;
    FitText* m_kitchenWords;
    FitText* m_latest;
    FitText* m_latestWords;
    FitText* m_standing;
    FitText* m_spread;
    FitText* m_late;
};

class ActionPanel final : public QFrame {
    Q_OBJECT

public:
    explicit ActionPanel(QWidget* parent = nullptr);
    void present(const ActionView& view);
    void setType(const BoardType& type);
    QString title() const { return m_title->text(); }

private:
    FitText* m_kicker;
    FitText* m_title;
    FitText* m_lookFor;
    FitText* m_amounts;
    FitText* m_aside;
};

class NextPanel final : public QFrame {
    Q_OBJECT

public:
    explicit NextPanel(QWidget* parent = nullptr);
    void present(const QString& next);
    void setType(const BoardType& type);
    void setGrown(bool grown);  ///< larger and bolder, in the same place
    bool isGrown() const { return m_grown; }

private:
    void apply();
    FitText* m_words;
    BoardType m_type;
    bool m_grown = false;
};

class PointsPanel final : public QFrame {
    Q_OBJECT

public:
    explicit PointsPanel(QWidget* parent = nullptr);
    void present(const PointsView& view);
    void setType(const BoardType& type);

private:
    FitText* m_head;
    FitText* m_list;
};

/// "Where was I", over the middle of the board.
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

}  // namespace brinebell
