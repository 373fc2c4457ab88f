#include "desk/SettingsPage.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "desk/ChoiceFields.h"
#include "desk/ScreenPanel.h"
#include "quantity/ExactText.h"

namespace brinebell {

namespace {

constexpr int kSettingsWidth = 420;

QLabel* settingsLabel(const QString& text, const char* kind) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    return label;
}

}  // namespace

SettingsPage::SettingsPage(QWidget* parent)
    : QWidget(parent),
      m_language(ChoiceFields::language()),
      m_units(ChoiceFields::units()),
      m_clock(ChoiceFields::clock()),
      m_decimal(ChoiceFields::decimal()),
      m_distance(ChoiceFields::distance()),
      m_screen(new ScreenPanel) {
    const Choices kept = readChoices();
    m_language->show(kept.language);
    m_units->show(kept.units);
    m_clock->show(kept.clock);
    m_decimal->show(kept.decimal);
    m_distance->show(toQt(exactText(kept.distance)));
    m_units->setHint(
        tr("For what is shown. Recipes and kitchens keep what their authors wrote; process times, pressures and "
           "the bands of the tables stand as published."));
    m_decimal->setHint(tr("For what is shown. In a field a quantity is always typed with a point: 2.5 m."));

    auto* body = new QWidget;
    auto* columns = new QGridLayout(body);
    columns->setContentsMargins(60, 28, 40, 20);
    columns->setHorizontalSpacing(60);
    columns->setVerticalSpacing(14);
    columns->addWidget(settingsLabel(tr("Settings"), "title"), 0, 0);
    int row = 1;
    for (QWidget* part : {static_cast<QWidget*>(m_language), static_cast<QWidget*>(m_units),
                          static_cast<QWidget*>(m_clock), static_cast<QWidget*>(m_decimal)}) {
        part->setMaximumWidth(kSettingsWidth);
        columns->addWidget(part, row++, 0, Qt::AlignTop);
    }
    columns->setRowStretch(row, 1);
    auto* right = new QVBoxLayout;
    right->setSpacing(14);
    right->addWidget(settingsLabel(tr("Screen and look"), "head"));
    right->addWidget(m_screen);
    right->addWidget(m_distance);
    m_screen->setMaximumWidth(kSettingsWidth);
    m_distance->setMaximumWidth(kSettingsWidth);
    auto* welcome = new QPushButton(tr("Show the &welcome again"));
    auto* back = new QPushButton(tr("&Back"));
    right->addSpacing(16);
    right->addWidget(welcome, 0, Qt::AlignLeft);
    right->addWidget(back, 0, Qt::AlignLeft);
    right->addStretch();
    columns->addLayout(right, 1, 1, row, 1);
    columns->setColumnStretch(2, 1);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(body);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->addWidget(scroll);

    for (ChoiceField* field : {m_language, m_units, m_clock, m_decimal}) {
        connect(field, &ChoiceField::edited, this, [this] {
            keep();
            emit changed();
        });
    }
    connect(m_distance, &LineField::edited, m_distance, &LineField::show);
    // Once it is whole: "1 m" on the way to "1 mm" was never meant.
    connect(m_distance, &EditField::left, this, [this] {
        keep();
        m_screen->setVenue(readChoices().distance, 0);
    });
    connect(welcome, &QPushButton::clicked, this, &SettingsPage::welcomeWanted);
    connect(back, &QPushButton::clicked, this, &SettingsPage::leaveWanted);
    m_screen->setVenue(kept.distance, 0);
}

void SettingsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_screen->refresh();
}

void SettingsPage::focusField(const QString& path) {
    for (EditField* field : findChildren<EditField*>()) {
        if (field->path() == path) {
            field->setFocus();
            return;
        }
    }
    m_language->setFocus();
}

QString SettingsPage::focusedField() const {
    for (const EditField* field : findChildren<EditField*>()) {
        if (field->editor()->hasFocus()) {
            return field->path();
        }
    }
    return {};
}

void SettingsPage::keep() {
    Choices choices = readChoices();
    choices.language = m_language->key();
    choices.units = m_units->key();
    choices.clock = m_clock->key();
    choices.decimal = m_decimal->key();
    if (const auto distance = ChoiceFields::distanceIn(m_distance->text())) {
        choices.distance = *distance;
    }
    keepChoices(choices);
}

}  // namespace brinebell
