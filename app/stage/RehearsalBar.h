// RehearsalBar.h — what only a rehearsal has: its speed, a stopped clock, the next event at once, things that go wrong.
//
// A row of its own at the foot of the board, each action with its key. A live class never shows it.
#pragma once

#include <QWidget>
#include <array>

#include "session/Drill.h"
#include "stage/FitText.h"

class QHBoxLayout;
class QPushButton;

namespace brinebell {

enum class RehearsalKey { None, Slower, Faster, StopClock, NextEvent, Drill };
RehearsalKey rehearsalKeyOf(int qtKey);

/// The speeds that the keys step through, slowest first.
inline constexpr std::array kRehearsalSpeeds{1, 2, 5, 10, 20, 30, 60};
/// The next one from `speed`, up or down; `speed` itself at the end of the row.
int nextSpeed(int speed, bool faster);

QString drillWords(Drill drill);

class RehearsalBar final : public QWidget {
    Q_OBJECT

public:
    explicit RehearsalBar(QWidget* parent = nullptr);

    void present(int speed, bool stopped, const QString& running);
    QString running() const { return m_running->text(); }

signals:
    void wanted(brinebell::RehearsalKey key);

private:
    QPushButton* addKey(QHBoxLayout* row, const QString& cap, const QString& words, RehearsalKey key);

    FitText* m_speed;
    FitText* m_running;
    QPushButton* m_stop;
};

}  // namespace brinebell
