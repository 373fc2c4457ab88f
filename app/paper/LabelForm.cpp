#include "paper/LabelForm.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCoreApplication>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QSpinBox>
#include <algorithm>
#include <cmath>

#include "Settings.h"
#include "paper/Paper.h"

namespace brinebell {

namespace {

constexpr double kLongest = 420.0;  // mm; the long side of A3
constexpr int kMostAcross = 20;
constexpr int kMostDown = 50;
constexpr int kMostPlaces = 500;

bool isA4(const QPageSize& page) {
    return page.id() == QPageSize::A4;
}

bool same(double a, double b) {
    constexpr double kSameMillimetres = 0.05;
    return std::abs(a - b) < kSameMillimetres;
}

bool sameSheet(const LabelSheet& a, const LabelSheet& b) {
    return isA4(a.page) == isA4(b.page) && a.columns == b.columns && a.rows == b.rows && same(a.left, b.left) &&
           same(a.top, b.top) && same(a.width, b.width) && same(a.height, b.height) && same(a.across, b.across) &&
           same(a.down, b.down);
}

}  // namespace

LabelForm::LabelForm(QWidget* parent) : QWidget(parent) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(4);
    m_preset = new QComboBox;
    m_preset->setAccessibleName(tr("Sheet"));
    m_preset->view()->setAccessibleName(tr("Sheets"));
    for (const NamedSheet& named : commonLabelSheets()) {
        m_preset->addItem(QCoreApplication::translate("LabelSheetWords", named.name));
    }
    m_preset->addItem(tr("as measured below"));
    form->addRow(tr("Sheet"), m_preset);
    connect(m_preset, &QComboBox::activated, this, &LabelForm::setPreset);
    m_page = new QComboBox;
    m_page->setAccessibleName(tr("Paper of the labels"));
    m_page->view()->setAccessibleName(tr("Sizes"));
    m_page->addItems({tr("Letter"), QStringLiteral("A4")});
    form->addRow(tr("Paper"), m_page);
    connect(m_page, &QComboBox::currentIndexChanged, this, &LabelForm::follow);
    m_columns = count(*form, tr("Labels across"), kMostAcross);
    m_rows = count(*form, tr("Labels down"), kMostDown);
    m_width = length(*form, tr("Width of a label"));
    m_height = length(*form, tr("Height of a label"));
    m_left = length(*form, tr("Margin at the left"));
    m_top = length(*form, tr("Margin at the top"));
    m_gapAcross = length(*form, tr("Gap between columns"));
    m_gapDown = length(*form, tr("Gap between rows"));
    m_first = count(*form, tr("First label to print"), kMostPlaces);
    m_fault = new QLabel;
    m_fault->setTextFormat(Qt::PlainText);
    m_fault->setWordWrap(true);
    m_fault->setProperty("kind", QStringLiteral("fault"));
    form->addRow(m_fault);
    restore();
}

QDoubleSpinBox* LabelForm::length(QFormLayout& form, const QString& name) {
    auto* box = new QDoubleSpinBox;
    box->setAccessibleName(name);
    box->setRange(0, kLongest);
    box->setDecimals(1);
    box->setSuffix(tr(" mm"));
    form.addRow(name, box);
    connect(box, &QDoubleSpinBox::valueChanged, this, &LabelForm::follow);
    return box;
}

QSpinBox* LabelForm::count(QFormLayout& form, const QString& name, int most) {
    auto* box = new QSpinBox;
    box->setAccessibleName(name);
    box->setRange(1, most);
    form.addRow(name, box);
    connect(box, &QSpinBox::valueChanged, this, &LabelForm::follow);
    return box;
}

LabelSheet LabelForm::sheet() const {
    LabelSheet sheet;
    sheet.page = QPageSize(m_page->currentIndex() == 0 ? QPageSize::Letter : QPageSize::A4);
    sheet.columns = m_columns->value();
    sheet.rows = m_rows->value();
    sheet.left = m_left->value();
    sheet.top = m_top->value();
    sheet.width = m_width->value();
    sheet.height = m_height->value();
    sheet.across = sheet.width + m_gapAcross->value();
    sheet.down = sheet.height + m_gapDown->value();
    return sheet;
}

int LabelForm::first() const {
    return m_first->value() - 1;
}

QString LabelForm::fault() const {
    const LabelSheet now = sheet();
    const QString wrong = faultIn(now);
    if (!wrong.isEmpty()) {
        return wrong;
    }
    const int places = now.columns * now.rows;
    return m_first->value() > places
               ? tr("the sheet has %1 labels, so the first cannot be no. %2").arg(places).arg(m_first->value())
               : QString();
}

void LabelForm::setSheet(const LabelSheet& sheet) {
    m_isSetting = true;
    m_page->setCurrentIndex(isA4(sheet.page) ? 1 : 0);
    m_columns->setValue(sheet.columns);
    m_rows->setValue(sheet.rows);
    m_left->setValue(sheet.left);
    m_top->setValue(sheet.top);
    m_width->setValue(sheet.width);
    m_height->setValue(sheet.height);
    m_gapAcross->setValue(std::max(0.0, sheet.across - sheet.width));
    m_gapDown->setValue(std::max(0.0, sheet.down - sheet.height));
    m_isSetting = false;
    follow();
}

void LabelForm::setFirst(int place) {
    m_first->setValue(place + 1);
}

void LabelForm::setPreset(int index) {
    const auto& sheets = commonLabelSheets();
    if (index >= 0 && static_cast<std::size_t>(index) < sheets.size()) {
        setSheet(sheets[static_cast<std::size_t>(index)].sheet);
    }
}

void LabelForm::restore() {
    QSettings kept = settings();
    LabelSheet sheet;
    const auto number = [&](const char* key, double otherwise) {
        return kept.value(QStringLiteral("labels/") + QLatin1String(key), otherwise).toDouble();
    };
    if (kept.value(QStringLiteral("labels/page"), isA4(usualPageSize()) ? QStringLiteral("A4") : QString()) ==
        QStringLiteral("A4")) {
        sheet = commonLabelSheets()[2].sheet;
    }
    sheet.columns = static_cast<int>(number("columns", sheet.columns));
    sheet.rows = static_cast<int>(number("rows", sheet.rows));
    sheet.left = number("left", sheet.left);
    sheet.top = number("top", sheet.top);
    sheet.width = number("width", sheet.width);
    sheet.height = number("height", sheet.height);
    sheet.across = number("across", sheet.across);
    sheet.down = number("down", sheet.down);
    setSheet(sheet);
}

void LabelForm::keep() const {
    QSettings kept = settings();
    const LabelSheet now = sheet();
    const auto put = [&](const char* key, const QVariant& value) {
        kept.setValue(QStringLiteral("labels/") + QLatin1String(key), value);
    };
    put("page", isA4(now.page) ? QStringLiteral("A4") : QStringLiteral("Letter"));
    put("columns", now.columns);
    put("rows", now.rows);
    put("left", now.left);
    put("top", now.top);
    put("width", now.width);
    put("height", now.height);
    put("across", now.across);
    put("down", now.down);
}

void LabelForm::follow() {
    if (m_isSetting) {
        return;
    }
    const auto& sheets = commonLabelSheets();
    const LabelSheet now = sheet();
    const auto found = std::find_if(sheets.begin(), sheets.end(),
                                    [&](const NamedSheet& named) { return sameSheet(named.sheet, now); });
    m_preset->setCurrentIndex(static_cast<int>(found - sheets.begin()));
    const QString wrong = fault();
    m_fault->setText(wrong);
    m_fault->setVisible(!wrong.isEmpty());
    if (wrong.isEmpty()) {
        keep();
    }
    emit changed();
}

}  // namespace brinebell
