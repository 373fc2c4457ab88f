#include "stage/RehearsalBar.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

#include "Theme.h"

namespace brinebell {

RehearsalKey rehearsalKeyOf(int qtKey) {
    switch (qtKey) {
        case Qt::Key_Minus:
            return RehearsalKey::Slower;
        case Qt::Key_Plus:
        case Qt::Key_Equal:  // plus without the shift key
            return RehearsalKey::Faster;
        case Qt::Key_Z:
            return RehearsalKey::StopClock;
        case Qt::Key_F:
            return RehearsalKey::NextEvent;
        case Qt::Key_G:
            return RehearsalKey::Drill;
        default:
            return RehearsalKey::None;
    }
}

int nextSpeed(int speed, bool faster) {
    if (faster) {
        const auto* up = std::upper_bound(kRehearsalSpeeds.begin(), kRehearsalSpeeds.end(), speed);
        return up != kRehearsalSpeeds.end() ? *up : speed;
    }
    const auto* here = std::lower_bound(kRehearsalSpeeds.begin(), kRehearsalSpeeds.end(), speed);
    return here != kRehearsalSpeeds.begin() ? *std::prev(here) : speed;
}

QString drillWords(Drill drill) {
    switch (drill) {
        case Drill::BoilLate:
            return RehearsalBar::tr("The boil is 15 minutes late");
        case Drill::BoilLost:
            return RehearsalBar::tr("The boil is lost");
        case Drill::JarBroke:
            return RehearsalBar::tr("A jar breaks in the canner");
        case Drill::BurnerFailed:
            return RehearsalBar::tr("The burner under the canner fails");
        case Drill::LidStuck:
            return RehearsalBar::tr("The canner's lid is stuck");
        case Drill::Questions:
            return RehearsalBar::tr("The class asks");
        case Drill::PowerCut:
            return RehearsalBar::tr("The power is cut for 3 minutes");
    }
    return {};
}

RehearsalBar::RehearsalBar(QWidget* parent) : QWidget(parent), m_speed(new FitText), m_running(new FitText) {
    setAccessibleName(tr("Rehearsal"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    addKey(row, QStringLiteral("−"), tr("Slower"), RehearsalKey::Slower);
    m_speed->setInk(theme::Ink::Call, theme::Ground::Board);
    m_speed->setBold(true);
    m_speed->setAlignment(Qt::AlignCenter);
    row->addWidget(m_speed, 16);
    addKey(row, QStringLiteral("+"), tr("Faster"), RehearsalKey::Faster);
    m_stop = addKey(row, QStringLiteral("Z"), tr("Stop the clock"), RehearsalKey::StopClock);
    addKey(row, QStringLiteral("F"), tr("Forward to the next event"), RehearsalKey::NextEvent);
    addKey(row, QStringLiteral("G"), tr("Go wrong…"), RehearsalKey::Drill);
    m_running->setInk(theme::Ink::Call, theme::Ground::Board);
    m_running->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    row->addWidget(m_running, 40);
}

QPushButton* RehearsalBar::addKey(QHBoxLayout* row, const QString& cap, const QString& words, RehearsalKey key) {
    auto* button = new QPushButton(QStringLiteral("%1  %2").arg(cap, words));
    button->setFocusPolicy(Qt::NoFocus);
    button->setAccessibleName(words);
    connect(button, &QPushButton::clicked, this, [this, key] { emit wanted(key); });
    row->addWidget(button);
    return button;
}

void RehearsalBar::present(int speed, bool stopped, const QString& running) {
    m_speed->setText(stopped ? tr("clock stopped") : speed == 1 ? tr("real time") : tr("%1 times as fast").arg(speed));
    m_stop->setText(QStringLiteral("Z  %1").arg(stopped ? tr("Start the clock") : tr("Stop the clock")));
    m_running->setText(running);
}

}  // namespace brinebell
