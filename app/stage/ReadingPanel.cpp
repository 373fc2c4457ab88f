#include "stage/ReadingPanel.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <array>

#include "Theme.h"
#include "bridge/TimeText.h"

namespace brinebell {

namespace {

constexpr int kMostDigits = 7;  // what thousandthsFromText() takes

const std::array<const char*, kReadingUnits> kUnitWords{"°C", "°F", "pH", "psi", "kPa"};

bool isUnderWay(const LoadState& load) {
    return load.phase != LoadPhase::SealsChecked && load.phase != LoadPhase::SetAside;
}

}  // namespace

std::vector<ReadingPlace> readingPlaces(const Moment& moment) {
    std::vector<ReadingPlace> places;
    for (std::size_t i = 0; i < moment.state.activities.size(); ++i) {
        const ActivityState& lived = moment.state.activities[i];
        const int load = moment.network.activities[i].load;
        if (lived.started && !lived.ended && load < 0) {
            places.push_back({Words::activity(static_cast<int>(i), moment.network), static_cast<int>(i), -1});
        }
    }
    for (std::size_t l = 0; l < moment.state.loads.size(); ++l) {
        if (isUnderWay(moment.state.loads[l])) {
            places.push_back(
                {Words::sentence(Words::load(static_cast<int>(l), moment.network)), -1, static_cast<int>(l)});
        }
    }
    places.push_back({ReadingPanel::tr("The class as a whole"), -1, -1});
    return places;
}

ReadingPanel::ReadingPanel(const Clock& inputClock, QWidget* parent)
    : QFrame(parent), m_guard(inputClock), m_value(new FitText), m_place(new FitText), m_foot(new FitText) {
    setProperty("recall", true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("A reading for the log"));
    auto* panel = new QHBoxLayout(this);
    panel->setContentsMargins(14, 8, 14, 8);
    panel->setSpacing(12);
    auto* words = new QVBoxLayout;
    m_value->setInk(theme::Ink::Text, theme::Ground::Board);
    m_value->setBold(true);
    m_place->setInk(theme::Ink::Call, theme::Ground::Board);
    m_foot->setInk(theme::Ink::Quiet, theme::Ground::Board);
    words->addWidget(m_value, 46);
    words->addWidget(m_place, 32);
    words->addWidget(m_foot, 22);
    panel->addLayout(words, 40);
    panel->addWidget(buildPad(), 34);
    panel->addWidget(buildUnits(), 26);
    hide();
}

QPushButton* ReadingPanel::addButton(QGridLayout* grid, int row, int column, const QString& words) {
    auto* button = new QPushButton(words);
    button->setFocusPolicy(Qt::NoFocus);
    button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    button->setMinimumSize(40, 30);
    button->setProperty("pad", true);
    grid->addWidget(button, row, column);
    return button;
}

QWidget* ReadingPanel::buildPad() {
    auto* pad = new QWidget;
    auto* grid = new QGridLayout(pad);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(6);
    const QString caps = QStringLiteral("789456123.0");
    for (int k = 0; k < caps.size(); ++k) {
        const QChar digit = caps[k];
        connect(addButton(grid, k / 3, k % 3, digit), &QPushButton::clicked, this, [this, digit] { type(digit); });
    }
    auto* back = addButton(grid, 3, 2, QStringLiteral("⌫"));
    back->setAccessibleName(tr("Rub out the last digit"));
    connect(back, &QPushButton::clicked, this, &ReadingPanel::rubOut);
    return pad;
}

QWidget* ReadingPanel::buildUnits() {
    auto* column = new QWidget;
    auto* grid = new QGridLayout(column);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(6);
    for (int unit = 0; unit < kReadingUnits; ++unit) {
        QPushButton* button =
            addButton(grid, unit / 2, unit % 2, QString::fromUtf8(kUnitWords[static_cast<std::size_t>(unit)]));
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this, [this, unit] { chooseUnit(unit); });
        m_units.push_back(button);
    }
    auto* where = addButton(grid, 2, 1, tr("Where"));
    connect(where, &QPushButton::clicked, this, &ReadingPanel::choosePlace);
    auto* log = addButton(grid, 3, 0, tr("Log it"));
    connect(log, &QPushButton::clicked, this, [this] { send(Cause::Mouse); });
    auto* back = addButton(grid, 3, 1, tr("Back"));
    connect(back, &QPushButton::clicked, this, &ReadingPanel::dismiss);
    return column;
}

void ReadingPanel::ask(std::vector<ReadingPlace> places) {
    m_places = std::move(places);
    m_at = 0;
    m_digits.clear();
    m_foot->setText(tr("Digits, Enter: log. Up, Down: unit. Tab: where. Esc: back"));
    chooseUnit(m_unit);
    m_guard.shown();
    show();
    raise();
    setFocus();
}

void ReadingPanel::setType(const BoardType& type) {
    m_value->setLargest(type.live);
    m_place->setLargest(type.least * 3 / 4);
    m_foot->setLargest(type.near);
}

void ReadingPanel::type(QChar digit) {
    const bool secondPoint = digit == QLatin1Char('.') && m_digits.contains(digit);
    if (m_digits.size() < kMostDigits && !secondPoint) {
        m_digits += digit;
    }
    showValue();
}

void ReadingPanel::rubOut() {
    m_digits.chop(1);
    showValue();
}

void ReadingPanel::chooseUnit(int unit) {
    m_unit = (unit + kReadingUnits) % kReadingUnits;
    for (std::size_t k = 0; k < m_units.size(); ++k) {
        m_units[k]->setChecked(static_cast<int>(k) == m_unit);
    }
    showValue();
}

void ReadingPanel::choosePlace() {
    m_at = (m_at + 1) % m_places.size();
    showValue();
}

void ReadingPanel::showValue() {
    const QString digits = m_digits.isEmpty() ? QStringLiteral("–") : m_digits;
    m_value->setText(
        QStringLiteral("%1 %2").arg(digits, QString::fromUtf8(kUnitWords[static_cast<std::size_t>(m_unit)])));
    m_place->setText(m_places.empty() ? QString() : m_places[m_at].words);
    m_value->setAccessibleName(m_value->text());
}

void ReadingPanel::send(Cause cause) {
    const auto thousandths = thousandthsFromText(m_digits.toStdString());
    if (!thousandths) {
        m_foot->setText(tr("Put in the number first."));
        return;
    }
    if (!m_guard.takes()) {
        return;
    }
    Command command;
    command.kind = CommandKind::TakeReading;
    command.value = *thousandths;
    command.text = toText(static_cast<ReadingUnit>(m_unit));
    command.activity = m_places[m_at].activity;
    command.load = m_places[m_at].load;
    hide();
    emit taken(command, cause);
    emit dismissed();
}

void ReadingPanel::dismiss() {
    hide();
    emit dismissed();
}

void ReadingPanel::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (event->isAutoRepeat() && key != Qt::Key_Backspace) {
        return;
    }
    if (key >= Qt::Key_0 && key <= Qt::Key_9) {
        type(QChar(u'0' + static_cast<char16_t>(key - Qt::Key_0)));
    } else if (key == Qt::Key_Period || key == Qt::Key_Comma) {
        type(QLatin1Char('.'));
    } else if (key == Qt::Key_Minus && m_digits.isEmpty()) {
        type(QLatin1Char('-'));
    } else if (key == Qt::Key_Backspace) {
        rubOut();
    } else if (key == Qt::Key_Up || key == Qt::Key_Down) {
        chooseUnit(m_unit + (key == Qt::Key_Down ? 1 : -1));
    } else if (key == Qt::Key_Tab) {
        choosePlace();
    } else if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        send(Cause::Key);
    } else if (key == Qt::Key_Escape) {
        dismiss();
    }
    // Every other key stays here: the board behind must not take it for an answer.
}

}  // namespace brinebell
