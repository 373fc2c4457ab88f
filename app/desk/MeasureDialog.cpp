#include "desk/MeasureDialog.h"

#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "PlainLabel.h"
#include "ScreenMeasure.h"
#include "Theme.h"

namespace brinebell {

namespace {

constexpr int kOutlineAir = 12;
constexpr int kFew = 1;
constexpr int kMany = 10;

}  // namespace

KnownOutline::KnownOutline(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Outline to lay the card or the ruler against"));
}

void KnownOutline::setOutline(QSizeF pixels, bool isRuler) {
    m_size = pixels;
    m_isRuler = isRuler;
    setMinimumSize(static_cast<int>(std::ceil(pixels.width())) + 2 * kOutlineAir,
                   static_cast<int>(std::ceil(pixels.height())) + 2 * kOutlineAir);
    update();
}

QRectF KnownOutline::outline() const {
    return {QPointF(kOutlineAir, kOutlineAir), m_size};
}

void KnownOutline::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), theme::kSheet);
    painter.setPen(QPen(theme::kInk, 1));
    const QRectF box = outline();
    if (!m_isRuler) {
        painter.drawRect(box);
        return;
    }
    painter.drawLine(box.bottomLeft(), box.bottomRight());
    constexpr int kCentimetres = 10;
    for (int mark = 0; mark <= kCentimetres; ++mark) {
        const double x = box.left() + box.width() * mark / kCentimetres;
        const double high = mark % kCentimetres == 0 ? box.height() : box.height() / 2;
        painter.drawLine(QPointF(x, box.bottom()), QPointF(x, box.bottom() - high));
    }
}

MeasureDialog::MeasureDialog(double pixelsPerMillimetre, QWidget* parent)
    : QDialog(parent),
      m_outline(new KnownOutline),
      m_card(new QRadioButton(tr("A &bank card or driving licence (85.60 mm wide)"))),
      m_ruler(new QRadioButton(tr("A &ruler: from 0 to 100 mm"))),
      m_answer(plainLabel({})),
      m_pixelsPerMillimetre(pixelsPerMillimetre) {
    setWindowTitle(tr("Measure this screen"));
    auto* page = new QVBoxLayout(this);
    page->addWidget(plainLabel(tr(
        "Lay it flat on the screen, its left edge on the left line. Then make the drawing as wide as it is: left and "
        "right arrow for a hair, page keys for more.")));
    m_card->setChecked(true);
    page->addWidget(m_card);
    page->addWidget(m_ruler);
    page->addWidget(m_outline);
    page->addWidget(m_answer);
    auto* row = new QHBoxLayout;
    const auto step = [&](const QString& words, int pixels) {
        auto* button = new QPushButton(words);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, [this, pixels] { widen(pixels); });
        row->addWidget(button);
    };
    step(tr("Much n&arrower"), -kMany);
    step(tr("&Narrower"), -kFew);
    step(tr("&Wider"), kFew);
    step(tr("&Much wider"), kMany);
    page->addLayout(row);
    auto* ends = new QDialogButtonBox;
    QPushButton* fits = ends->addButton(tr("It &fits: keep it"), QDialogButtonBox::AcceptRole);
    fits->setProperty("lead", true);
    fits->setDefault(true);
    ends->addButton(tr("&Change nothing"), QDialogButtonBox::RejectRole);
    connect(ends, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(ends, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_card, &QRadioButton::toggled, this, [this] { setPitch(m_pixelsPerMillimetre); });
    page->addWidget(ends);
    // Arrow keys would move between the buttons otherwise.
    for (QWidget* part : findChildren<QWidget*>()) {
        part->installEventFilter(this);
    }
    fits->setFocus();
    setPitch(m_pixelsPerMillimetre);
}

double MeasureDialog::knownMillimetres() const {
    return m_card->isChecked() ? theme::kCardWidthMillimetres : theme::kRulerMillimetres;
}

void MeasureDialog::setPitch(double pixelsPerMillimetre) {
    m_pixelsPerMillimetre =
        std::clamp(pixelsPerMillimetre, theme::kFewestPixelsPerMillimetre, theme::kMostPixelsPerMillimetre);
    constexpr double kRulerHeight = 10.0;
    const double high = m_card->isChecked() ? theme::kCardHeightMillimetres : kRulerHeight;
    m_outline->setOutline({knownMillimetres() * m_pixelsPerMillimetre, high * m_pixelsPerMillimetre},
                          !m_card->isChecked());
    m_answer->setText(tr("%L1 pixels are a millimetre here.").arg(m_pixelsPerMillimetre, 0, 'f', 2));
}

void MeasureDialog::widen(int pixels) {
    setPitch(m_pixelsPerMillimetre + pixels / knownMillimetres());
}

bool MeasureDialog::takesKey(int key) {
    switch (key) {
        case Qt::Key_Left:
            widen(-kFew);
            return true;
        case Qt::Key_Right:
            widen(kFew);
            return true;
        case Qt::Key_PageDown:
            widen(-kMany);
            return true;
        case Qt::Key_PageUp:
            widen(kMany);
            return true;
        default:
            return false;
    }
}

void MeasureDialog::keyPressEvent(QKeyEvent* event) {
    if (!takesKey(event->key())) {
        QDialog::keyPressEvent(event);
    }
}

bool MeasureDialog::eventFilter(QObject* watched, QEvent* event) {
    // A radio button moves with up and down all the same.
    if (event->type() == QEvent::KeyPress && takesKey(static_cast<QKeyEvent*>(event)->key())) {
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

}  // namespace brinebell
