#include "desk/FrontPage.h"

#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
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
    m_seals = buildSeals();
    page->addWidget(m_seals);
    page->addSpacing(12);
    m_choices = new QGridLayout;
    m_choices->setHorizontalSpacing(48);
    m_choices->setVerticalSpacing(22);
    page->addLayout(m_choices);
    m_prepare = addChoice(tr("&Prepare, rehearse or teach a class"),
                          tr("Choose a class, see its run sheet, what to make ahead and when heat goes on."));
    m_prepare->setProperty("lead", true);
    connect(m_prepare, &QPushButton::clicked, this, &FrontPage::prepareWanted);
    auto* classes =
        addChoice(tr("&Build a class"), tr("Dishes, jars, helpers and what is said; its run sheet as you go."));
    connect(classes, &QPushButton::clicked, this, &FrontPage::classesWanted);
    auto* review =
        addChoice(tr("&Look back at past sessions"), tr("How a class went beside its plan, batch records and labels."));
    connect(review, &QPushButton::clicked, this, &FrontPage::reviewWanted);
    auto* sound = addChoice(tr("&Check the sound"), tr("Hear every cue from where you will stand."));
    connect(sound, &QPushButton::clicked, this, &FrontPage::soundWanted);
    auto* kitchens = addChoice(tr("&Kitchens"), tr("Describe where you teach: its altitude, stations and canners."));
    connect(kitchens, &QPushButton::clicked, this, &FrontPage::kitchensWanted);
    auto* recipes = addChoice(tr("&Recipes"), tr("Look at the tested recipes, make a class version, write your own."));
    connect(recipes, &QPushButton::clicked, this, &FrontPage::recipesWanted);
    auto* papers =
        addChoice(tr("Pr&int"), tr("Run sheet, shopping list and handout; batch record, labels and report."));
    connect(papers, &QPushButton::clicked, this, &FrontPage::papersWanted);
    auto* exchange =
        addChoice(tr("&Export and import"), tr("Save sessions as files, bring in those of other teachers."));
    connect(exchange, &QPushButton::clicked, this, &FrontPage::exchangeWanted);
    auto* settings = addChoice(tr("Se&ttings"), tr("Units, clock, language, look and reading distance."));
    connect(settings, &QPushButton::clicked, this, &FrontPage::settingsWanted);
    page->addStretch();
    page->addWidget(plainLabel(tr("F1 explains the page you are on, everywhere."), "quiet"));
    setFault({});
    setSeals({}, false);
}

QFrame* FrontPage::buildSeals() {
    auto* box = new QFrame;
    box->setProperty("kind", QStringLiteral("due"));
    m_sealWords = plainLabel({}, "head");
    m_checkSeals = new QPushButton(tr("Check the &seals (S)"));
    m_checkSeals->setProperty("lead", true);
    connect(m_checkSeals, &QPushButton::clicked, this, &FrontPage::sealsWanted);
    auto* key = new QShortcut(QKeySequence(Qt::Key_S), box);
    connect(key, &QShortcut::activated, this, &FrontPage::sealsWanted);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(16, 12, 16, 12);
    row->setSpacing(24);
    row->addWidget(m_sealWords, 1);
    row->addWidget(m_checkSeals);
    return box;
}

// Two to a row, so that all of them stand on a small screen.
QPushButton* FrontPage::addChoice(const QString& text, const QString& what) {
    auto* button = new QPushButton(text);
    button->setFixedWidth(kChoiceWidth);
    button->setAccessibleDescription(what);
    QLabel* words = plainLabel(what, "quiet");
    words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* choice = new QVBoxLayout;
    choice->setSpacing(8);
    choice->addWidget(button);
    choice->addWidget(words, 1);
    m_choices->addLayout(choice, m_choices->count() / 2, m_choices->count() % 2);
    return button;
}

void FrontPage::setFault(const QString& words) {
    m_fault->setText(words);
    m_fault->setVisible(!words.isEmpty());
}

void FrontPage::setSeals(const QString& words, bool isDue) {
    m_sealWords->setText(words);
    m_seals->setVisible(!words.isEmpty());
    const bool isNew = isDue && !m_sealsDue;
    m_sealsDue = isDue;
    // Not hasFocus(): the window may not have come to the front yet.
    if (isNew && window()->focusWidget() == m_prepare) {
        focusStart();
    }
}

void FrontPage::focusStart() {
    (m_sealsDue ? m_checkSeals : m_prepare)->setFocus();
}

}  // namespace brinebell
