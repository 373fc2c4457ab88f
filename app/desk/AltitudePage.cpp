#include "desk/AltitudePage.h"

#include <QBoxLayout>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>

#include "Customs.h"
#include "Theme.h"
#include "bridge/TimeText.h"
#include "bridge/Words.h"
#include "desk/AltitudePlot.h"
#include "plan/ProcessSource.h"
#include "safety/Lethality.h"

namespace brinebell {

namespace {

constexpr double kArmsLength = 0.6;  // m, from eye to screen

}  // namespace

AltitudePage::AltitudePage(const Network& network, Length altitude, QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Why this altitude needs more"));
    auto* page = new QVBoxLayout(this);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setSpacing(10);
    column->addWidget(addWords(tr("Why this altitude needs more"), "title"));
    column->addWidget(addWords(Words::sentence(QString::fromLatin1(kIllustrationOnly)), "fault"));
    column->addWidget(addWords(
        tr("No time is reckoned from this. Published times come from tests of whole jars, in which heat creeps to "
           "the middle and acid does a part; they grow by less than the picture says.")));
    column->addWidget(addWords(physics(altitude)));
    column->addWidget(new AltitudePlot(altitude), 1);
    column->addWidget(addWords(published(network)));
    auto* scroll = new QScrollArea;
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(windowTitle());
    page->addWidget(scroll, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    page->addWidget(buttons);
    setType();
    const QSize room = screen()->availableSize();
    resize(std::min(1080, room.width()), std::min(900, room.height() - 40));
    buttons->button(QDialogButtonBox::Close)->setFocus();
}

QLabel* AltitudePage::addWords(const QString& text, const char* kind) {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    label->setText(text);
    m_labels.push_back(label);
    return label;
}

QString AltitudePage::physics(Length altitude) const {
    const auto told = illustrateAltitude(altitude);
    if (!told) {
        return Words::sentence(toQt(told.error().message));
    }
    const auto degrees = [](Temperature t) {
        return tr("%L1 °C (%L2 °F)").arg(t.celsius(), 0, 'f', 1).arg(t.fahrenheit(), 0, 'f', 1);
    };
    return tr("Here, at %1, water boils at %2; at sea level at %3. It gets no hotter, however high the flame. For "
              "hardy "
              "spores the rule is: %4 °C cooler takes ten times as long. A minute of boiling here does the work of %L5 "
              "at sea level, and it takes %L6 to match one there.")
        .arg(toQt(shownHeight(altitude, customs().shownAs)), degrees(told->boilsHere()),
             degrees(told->boilsAtSeaLevel()))
        .arg(kSporeZKelvin, 0, 'f', 0)
        .arg(told->worthOfAMinute(), 0, 'f', 2)
        .arg(told->toMatchOneMinute(), 0, 'f', 1);
}

QString AltitudePage::published(const Network& network) const {
    QStringList list{network.loads.empty() ? tr("This class has no jars in a canner.") : tr("What this class uses:")};
    for (const Load& load : network.loads) {
        list << toQt(processInWords(network, load));
    }
    return list.join(QLatin1Char('\n'));
}

// By style sheet, as the application's own would win over a font that is set.
void AltitudePage::setType() {
    const double capital = theme::capitalMillimetres(Length::fromMetres(kArmsLength), theme::kLiveArcMinutes) *
                           theme::pixelsPerMillimetre(screen());
    const int size = theme::fontPixelsForCapital(capital);
    setStyleSheet(QStringLiteral("QLabel, QPushButton { font-size: %1px; } QLabel[kind=\"title\"] { font-size: %2px; }")
                      .arg(size)
                      .arg(size * 3 / 2));
    QFont type = font();
    type.setPixelSize(size);
    findChild<AltitudePlot*>()->setFont(type);
}

QString AltitudePage::words() const {
    QStringList list;
    for (const QLabel* label : m_labels) {
        list << label->text();
    }
    return list.join(QLatin1Char('\n'));
}

}  // namespace brinebell
