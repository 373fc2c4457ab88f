#include "Theme.h"

#include <QApplication>
#include <QFontMetricsF>
#include <QPalette>
#include <QStyleFactory>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "Look.h"
#include "ScreenMeasure.h"

namespace brinebell::theme {

namespace {

// WCAG 2.2, definition of relative luminance.
double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

constexpr double kDeskPoints = 11.0;  // read at arm's length, standing

QPalette deskPalette() {
    QPalette palette;
    palette.setColor(QPalette::Window, kPaper);
    palette.setColor(QPalette::WindowText, kInk);
    palette.setColor(QPalette::Base, kSheet);
    palette.setColor(QPalette::AlternateBase, kPaper);
    palette.setColor(QPalette::Text, kInk);
    palette.setColor(QPalette::PlaceholderText, kInkQuiet);
    palette.setColor(QPalette::Button, kPaper);
    palette.setColor(QPalette::ButtonText, kInk);
    palette.setColor(QPalette::Highlight, kGlass);
    palette.setColor(QPalette::HighlightedText, kSheet);
    palette.setColor(QPalette::ToolTipBase, kInk);
    palette.setColor(QPalette::ToolTipText, kSheet);
    palette.setColor(QPalette::Link, kGlass);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, kInkQuiet);
    palette.setColor(QPalette::Disabled, QPalette::Text, kInkQuiet);
    palette.setColor(QPalette::Disabled, QPalette::WindowText, kInkQuiet);
    return palette;
}

QString fill(QString sheet) {
    const std::pair<const char*, QColor> names[] = {
        {"@paper", kPaper},   {"@sheet", kSheet},         {"@inkQuiet", kInkQuiet}, {"@ink", kInk},
        {"@line", kDeskLine}, {"@glassPale", kGlassPale}, {"@glass", kGlass},       {"@rust", kRust},
    };
    for (const auto& [name, colour] : names) {
        sheet.replace(QLatin1String(name), colour.name());
    }
    return sheet;
}

// Longer names stand before their beginnings in fill(), so "@inkQuiet" is never read as "@ink".
const char* const kDeskSheet = R"(
QPushButton { background: @sheet; color: @ink; border: 1px solid @inkQuiet; border-radius: 3px; padding: 5px 14px; }
QPushButton:hover { background: @glassPale; }
QPushButton:focus { border: 2px solid @glass; padding: 4px 13px; }
QPushButton:disabled { background: @paper; color: @inkQuiet; border: 1px dashed @line; }
QPushButton[lead="true"] { background: @glass; color: @sheet; border: 1px solid @glass; font-weight: bold; }
QPushButton[lead="true"]:focus { border: 3px double @sheet; padding: 3px 12px; }
QPushButton[lead="true"]:disabled { background: @paper; color: @inkQuiet; border: 1px dashed @line; }
QPushButton:checked { background: @glass; color: @sheet; font-weight: bold; }
QHeaderView::section { background: @paper; color: @inkQuiet; border: none; border-bottom: 1px solid @line; padding: 4px 6px; }
QTableView, QListView, QPlainTextEdit { background: @sheet; border: 1px solid @line; }
QTableView::item { padding: 0 5px; }
QTableView:focus, QListView:focus, QPlainTextEdit:focus { border: 2px solid @glass; }
QFrame[kind="due"] { background: @glassPale; border: 2px solid @glass; border-radius: 3px; }
QLabel[kind="title"] { font-size: 24px; font-weight: bold; color: @ink; }
QLabel[kind="head"] { font-weight: bold; color: @ink; }
QLabel[kind="quiet"] { color: @inkQuiet; }
QLabel[kind="fault"] { color: @rust; font-weight: bold; }
)";

}  // namespace

double contrast(const QColor& a, const QColor& b) {
    const double one = luminance(a) + 0.05;
    const double other = luminance(b) + 0.05;
    return std::max(one, other) / std::min(one, other);
}

std::vector<TextPair> textPairs() {
    std::vector<TextPair> pairs{
        {"ink on paper", kInk, kPaper},
        {"ink on a sheet", kInk, kSheet},
        {"quiet ink on paper", kInkQuiet, kPaper},
        {"quiet ink on a sheet", kInkQuiet, kSheet},
        {"buttons that lead on", kSheet, kGlass},
        {"glass on paper", kGlass, kPaper},
        {"ink on pale glass", kInk, kGlassPale},
        {"faults on paper", kRust, kPaper},
        {"faults on a sheet", kRust, kSheet},
        {"tool tips", kSheet, kInk},
    };
    for (const Look look : kLooks) {
        for (const Ground on : kGrounds) {
            for (const Ink what : kInks) {
                const std::string use = "stage: look " + std::to_string(static_cast<int>(look)) + ", ink " +
                                        std::to_string(static_cast<int>(what)) + " on ground " +
                                        std::to_string(static_cast<int>(on));
                pairs.push_back({use, ink(what, on, look), ground(on, look)});
            }
        }
    }
    return pairs;
}

double capitalMillimetres(Length distance, double arcMinutes) {
    const double angle = arcMinutes / 60.0 * std::numbers::pi / 180.0;
    return 2.0 * distance.metres() * 1000.0 * std::tan(angle / 2.0);
}

double pixelsPerMillimetre(const QScreen* screen) {
    return pixelPitch(screen).pixelsPerMillimetre;
}

int fontPixelsForCapital(double capitalPixels) {
    constexpr int kProbe = 200;
    QFont font = QApplication::font();
    font.setPixelSize(kProbe);
    const double ratio = QFontMetricsF(font).capHeight() / kProbe;
    constexpr double kUsualRatio = 0.70;
    return std::max(1, static_cast<int>(std::lround(capitalPixels / (ratio > 0.3 ? ratio : kUsualRatio))));
}

void dress(QApplication& application) {
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(deskPalette());
    QFont font = QApplication::font();
    font.setPointSizeF(std::max(font.pointSizeF(), kDeskPoints));
    QApplication::setFont(font);
    application.setStyleSheet(fill(QString::fromLatin1(kDeskSheet)));
}

}  // namespace brinebell::theme
