#include "stage/AudienceWindow.h"

#include <QCloseEvent>
#include <QGuiApplication>
#include <QPainter>
#include <QScreen>
#include <algorithm>

namespace brinebell {

namespace {

using theme::Ground;
using theme::Ink;

constexpr QSize kWindow{960, 540};

// Parts of the window's height. The smallest type is a sixteenth of it: on a picture 1.2 m high its capitals are 5 cm,
// which stand at 22 minutes of arc from 8 m.
constexpr double kSmall = 1.0 / 16.0;
constexpr double kStep = 1.0 / 7.0;
constexpr double kCount = 1.0 / 3.6;

const DisplayPlace* named(const std::vector<DisplayPlace>& displays, const QString& name) {
    const auto found = std::find_if(displays.begin(), displays.end(),
                                    [&](const DisplayPlace& display) { return display.name == name; });
    return found == displays.end() ? nullptr : &*found;
}

}  // namespace

std::vector<DisplayPlace> displaysNow() {
    std::vector<DisplayPlace> displays;
    for (const QScreen* screen : QGuiApplication::screens()) {
        displays.push_back({screen->name(), screen->geometry()});
    }
    return displays;
}

AudienceWindow::AudienceWindow(QWidget* parent)
    : QWidget(parent, Qt::Window | Qt::WindowDoesNotAcceptFocus),
      m_dish(new FitText(this)),
      m_step(new FitText(this)),
      m_countdown(new FitText(this)),
      m_countdownWords(new FitText(this)),
      m_safety(new FitText(this)),
      m_texts{m_dish, m_step, m_countdown, m_countdownWords, m_safety} {
    setAttribute(Qt::WA_ShowWithoutActivating);
    setFocusPolicy(Qt::NoFocus);
    setWindowTitle(tr("Brinebell — for the room"));
    setAccessibleName(tr("Audience screen"));
    m_step->setBold(true);
    m_countdown->setBold(true);
    m_dish->setInk(Ink::Steady);
    m_countdownWords->setInk(Ink::Quiet);
    m_safety->setInk(Ink::Call);
    for (FitText* text : m_texts) {
        text->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        text->setInk(text->ink(), Ground::Board);
    }
}

void AudienceWindow::present(const AudienceView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    m_dish->setText(view.dish);
    m_step->setText(view.step);
    m_countdown->setText(view.countdown);
    m_countdownWords->setText(view.countdownWords);
    m_safety->setText(view.safety.isEmpty() ? QString() : QStringLiteral("◆ %1").arg(view.safety));
}

void AudienceWindow::open(const std::vector<DisplayPlace>& displays, const QString& home) {
    m_open = true;
    m_lost.clear();
    const auto other = std::find_if(displays.begin(), displays.end(),
                                    [&](const DisplayPlace& display) { return display.name != home; });
    if (other != displays.end()) {
        fill(*other);
    } else {
        standAsWindow(displays, home);
        emit placed(tr("Audience screen: a window, because there is no second display. A closes it."), false);
    }
}

void AudienceWindow::shut() {
    m_open = false;
    m_display.clear();
    m_lost.clear();
    hide();
}

void AudienceWindow::fill(const DisplayPlace& display) {
    m_display = display.name;
    for (QScreen* screen : QGuiApplication::screens()) {
        if (screen->name() == display.name) {
            setScreen(screen);
        }
    }
    setGeometry(display.area);
    showFullScreen();
    emit placed(tr("Audience screen: fills %1. A closes it.").arg(display.name), false);
}

void AudienceWindow::standAsWindow(const std::vector<DisplayPlace>& displays, const QString& home) {
    m_display.clear();
    const DisplayPlace* place = named(displays, home);
    showNormal();
    resize(kWindow);
    if (place != nullptr) {
        // In the corner, so that the middle of the board stays in sight.
        move(place->area.right() - kWindow.width(), place->area.bottom() - kWindow.height());
    }
    lower();
}

void AudienceWindow::displaysChanged(const std::vector<DisplayPlace>& displays, const QString& home) {
    if (!m_open) {
        return;
    }
    if (fillsDisplay() && (named(displays, m_display) == nullptr || m_display == home)) {
        m_lost = m_display;
        standAsWindow(displays, home);
        emit placed(tr("The display %1 is gone: the audience screen is a window behind the board.").arg(m_lost), true);
        return;
    }
    const DisplayPlace* back = m_lost.isEmpty() ? nullptr : named(displays, m_lost);
    if (!fillsDisplay() && back != nullptr && m_lost != home) {
        m_lost.clear();
        fill(*back);
    } else if (const DisplayPlace* same = named(displays, m_display); same != nullptr && same->area != geometry()) {
        setGeometry(same->area);
    }
}

void AudienceWindow::arrange() {
    const int side = width() / 24;
    const int high = height();
    const auto part = [&](int fromPercent, int toPercent) {
        return QRect(side, high * fromPercent / 100, width() - 2 * side, high * (toPercent - fromPercent) / 100);
    };
    m_dish->setGeometry(part(4, 14));
    m_step->setGeometry(part(15, 45));
    m_countdown->setGeometry(part(46, 72));
    m_countdownWords->setGeometry(part(72, 80));
    m_safety->setGeometry(part(82, 97));
    const auto pixels = [&](double share) { return static_cast<int>(high * share); };
    m_dish->setLargest(pixels(kSmall));
    m_step->setLargest(pixels(kStep));
    m_countdown->setLargest(pixels(kCount));
    m_countdownWords->setLargest(pixels(kSmall));
    m_safety->setLargest(pixels(kSmall));
}

void AudienceWindow::restyle() {
    update();
    for (FitText* text : m_texts) {
        text->update();
    }
}

void AudienceWindow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void AudienceWindow::closeEvent(QCloseEvent* event) {
    m_open = false;
    m_display.clear();
    event->accept();
    emit shutByHand();
}

void AudienceWindow::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.fillRect(event->rect(), theme::ground(Ground::Board));
}

}  // namespace brinebell
