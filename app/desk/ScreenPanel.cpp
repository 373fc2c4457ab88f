#include "desk/ScreenPanel.h"

#include <QCheckBox>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>
#include <cmath>

#include "Customs.h"
#include "Look.h"
#include "PlainLabel.h"
#include "Theme.h"
#include "bridge/TimeText.h"
#include "desk/MeasureDialog.h"

namespace brinebell {

namespace {

struct ScreenWords {
    Q_DECLARE_TR_FUNCTIONS(ScreenWords)
};

constexpr double kMillimetresPerInch = 25.4;

QString distanceWords(Length distance, Rounding rounding = Rounding::Nearest) {
    return toQt(shownDistance(distance, customs().shownAs, rounding));
}

}  // namespace

QString sizeWords(const theme::PixelPitch& pitch, QSize pixels) {
    const double inches = std::hypot(pixels.width(), pixels.height()) / pitch.pixelsPerMillimetre / kMillimetresPerInch;
    const QString size = QLocale().toString(inches, 'f', 1);
    switch (pitch.source) {
        case theme::SizeSource::Measured:
            return ScreenWords::tr("This screen: %1 inches, measured by hand.").arg(size);
        case theme::SizeSource::Told:
            return ScreenWords::tr("This screen: %1 inches, as it says itself.").arg(size);
        case theme::SizeSource::Guessed:
            break;
    }
    return ScreenWords::tr("This screen does not say how large it is; taken for %1 inches. Measure it.").arg(size);
}

QString reachWords(const BoardReach& reach, Length distance, int across) {
    const Length read = distance > Length() ? distance : Length::fromMetres(kUsualDistanceMetres);
    if (!reach.isEnough()) {
        // The farthest downwards: what is promised must hold.
        return ScreenWords::tr(
                   "▲ The board's large lines stand at %1 minutes of arc from %2, and %3 are wanted. Put the "
                   "screen at %4, or use a larger one.")
            .arg(QString::number(std::floor(reach.arcMinutes)), distanceWords(read),
                 QString::number(theme::kLiveArcMinutes), distanceWords(reach.farthest, Rounding::Down));
    }
    if (across > reach.stationsAcross) {
        return ScreenWords::tr(
                   "▲ Countdowns of %1 stations side by side are smaller than wanted from %2: this screen has "
                   "room for %3.")
            .arg(across)
            .arg(distanceWords(read))
            .arg(reach.stationsAcross);
    }
    return ScreenWords::tr("The board's large lines can be read from %1.").arg(distanceWords(read));
}

ScreenPanel::ScreenPanel(QWidget* parent)
    : QWidget(parent),
      m_size(plainLabel({}, "quiet")),
      m_reach(plainLabel()),
      m_measure(new QPushButton(tr("Measure this s&creen…"))),
      m_light(new QCheckBox(tr("&Light board and audience screen"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : {static_cast<QWidget*>(m_size), static_cast<QWidget*>(m_reach),
                          static_cast<QWidget*>(m_measure), static_cast<QWidget*>(m_light)}) {
        column->addWidget(part);
    }
    m_light->setChecked(theme::look() == theme::Look::Light);
    connect(m_measure, &QPushButton::clicked, this, &ScreenPanel::measure);
    connect(m_light, &QCheckBox::toggled, this, [this](bool light) {
        theme::setLook(light ? theme::Look::Light : theme::Look::Dark, theme::Keep::Yes);
        emit lookChanged();
    });
}

void ScreenPanel::setVenue(Length distance, int stations) {
    m_distance = distance;
    m_stations = stations;
    refresh();
}

QString ScreenPanel::words() const {
    return m_size->text() + QLatin1Char(' ') + m_reach->text();
}

void ScreenPanel::refresh() {
    const theme::PixelPitch pitch = theme::pixelPitch(screen());
    m_size->setText(sizeWords(pitch, screen()->geometry().size()));
    m_reach->setText(
        reachWords(boardReach(window()->size(), m_distance, pitch.pixelsPerMillimetre), m_distance, m_stations));
    const QSignalBlocker quiet(m_light);
    m_light->setChecked(theme::look() == theme::Look::Light);
}

void ScreenPanel::measure() {
    MeasureDialog dialog(theme::pixelPitch(screen()).pixelsPerMillimetre, this);
    if (dialog.exec() == QDialog::Accepted) {
        theme::keepMeasure(*screen(), dialog.pixelsPerMillimetre());
        refresh();
        emit screenMeasured();
    }
}

}  // namespace brinebell
