#include "desk/FrontPage.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "PlainLabel.h"

namespace brinebell {

namespace {

constexpr int kChoiceWidth = 340;

}  // namespace

FrontPage::FrontPage(QWidget* parent) : QWidget(parent) {
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(80, 60, 80, 60);
    page->setSpacing(8);
    page->addWidget(plainLabel(tr("What is on today?"), "title"));
    m_fault = plainLabel({}, "fault");
    page->addWidget(m_fault);
    page->addSpacing(12);
    m_prepare = addChoice(*page, tr("&Prepare, rehearse or teach a class"),
                          tr("Choose a class, see its run sheet, what to make ahead and when heat goes on."));
    m_prepare->setProperty("lead", true);
    connect(m_prepare, &QPushButton::clicked, this, &FrontPage::prepareWanted);
    auto* review = addChoice(*page, tr("&Look back at past sessions"),
                             tr("How a class went beside its plan, batch records and labels."));
    connect(review, &QPushButton::clicked, this, &FrontPage::reviewWanted);
    auto* sound = addChoice(*page, tr("&Check the sound"), tr("Hear every cue from where you will stand."));
    connect(sound, &QPushButton::clicked, this, &FrontPage::soundWanted);
    auto* kitchens =
        addChoice(*page, tr("&Kitchens"), tr("Describe where you teach: its altitude, stations and canners."));
    connect(kitchens, &QPushButton::clicked, this, &FrontPage::kitchensWanted);
    auto* recipes =
        addChoice(*page, tr("&Recipes"), tr("Look at the tested recipes, make a class version, write your own."));
    connect(recipes, &QPushButton::clicked, this, &FrontPage::recipesWanted);
    auto* settings = addChoice(*page, tr("Se&ttings"), tr("Units, clock, language, look and reading distance."));
    connect(settings, &QPushButton::clicked, this, &FrontPage::settingsWanted);
    page->addStretch();
    page->addWidget(plainLabel(tr("F1 explains the page you are on, everywhere."), "quiet"));
    setFault({});
}

QPushButton* FrontPage::addChoice(QVBoxLayout& page, const QString& text, const QString& what) {
    auto* button = new QPushButton(text);
    button->setFixedWidth(kChoiceWidth);
    button->setAccessibleDescription(what);
    page.addWidget(button);
    page.addWidget(plainLabel(what, "quiet"));
    page.addSpacing(12);
    return button;
}

void FrontPage::setFault(const QString& words) {
    m_fault->setText(words);
    m_fault->setVisible(!words.isEmpty());
}

void FrontPage::focusStart() {
    m_prepare->setFocus();
}

}  // namespace brinebell
