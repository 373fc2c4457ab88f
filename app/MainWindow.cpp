#include "MainWindow.h"

#include <QApplication>
#include <QCloseEvent>
#include <QGuiApplication>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>

#include "Choices.h"
#include "HelpPanel.h"
#include "bridge/AwakeKeeper.h"
#include "bridge/SoundControl.h"
#include "bridge/TimeText.h"
#include "desk/ClassEditor.h"
#include "desk/FrontPage.h"
#include "desk/ListsPage.h"
#include "desk/PreparePage.h"
#include "desk/RecipeEditor.h"
#include "desk/ResumePage.h"
#include "desk/ScreenPanel.h"
#include "desk/SettingsPage.h"
#include "desk/SoundPage.h"
#include "desk/VenueEditor.h"
#include "desk/WelcomePage.h"
#include "paper/PaperPage.h"
#include "review/ExchangePage.h"
#include "review/ReviewPage.h"
#include "review/SealPage.h"
#include "stage/AudienceWindow.h"
#include "stage/StagePage.h"

namespace brinebell {

MainWindow::MainWindow(const Ground& ground, QWidget* parent)
    : QMainWindow(parent),
      m_ground(ground),
      m_sound(new SoundControl(ground.speaker, ground.voice, ground.settings, this)),
      m_pages(new QStackedWidget),
      m_front([this] { return makeFront(); }),
      m_resume([this] { return makeResume(); }),
      m_prepare([this] { return makePrepare(); }),
      m_stage([this] { return makeStage(); }),
      m_review([this] { return makeReview(); }),
      m_seals([this] { return makeSeals(); }),
      m_papers([this] { return makePapers(); }),
      m_exchange([this] { return makeExchange(); }),
      m_sealLook(new QTimer(this)),
      m_soundPage([this] { return makeSoundPage(); }),
      m_library(ground.library.isEmpty() ? Library::usualFolder() : ground.library),
      m_venues([this] { return makeVenues(); }),
      m_recipes([this] { return makeRecipes(); }),
      m_classes([this] { return makeClasses(); }),
      m_lists([this] { return makeLists(); }),
      m_settings([this] { return makeSettings(); }),
      m_welcome([this] { return makeWelcome(); }),
      m_help(new HelpPanel(this)) {
    setWindowTitle(tr("Brinebell"));
    setMinimumSize(800, 500);
    setCentralWidget(m_pages);
    auto* fullScreen = new QShortcut(QKeySequence(Qt::Key_F11), this);
    connect(fullScreen, &QShortcut::activated, this, [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
    auto* help = new QShortcut(QKeySequence(Qt::Key_F1), this);
    connect(help, &QShortcut::activated, this, &MainWindow::toggleHelp);
    connect(m_pages, &QStackedWidget::currentChanged, m_help, &HelpPanel::shut);
    constexpr auto kLookForSeals = std::chrono::minutes(5);
    m_sealLook->setInterval(kLookForSeals);
    connect(m_sealLook, &QTimer::timeout, this, &MainWindow::askForSeals);
    listenForAwake();
    followDisplays();
}

MainWindow::~MainWindow() {
    if (m_stage.made() != nullptr) {
        m_stage->setSession(nullptr);
    }
    // What waits to be saved is saved while the library is still there.
    delete m_venues.made();
    delete m_recipes.made();
    delete m_classes.made();
}

// ---- pages, each made and connected when it is first wanted

template <class Page>
Page* MainWindow::added(Page* page) {
    m_pages->addWidget(page);
    return page;
}

FrontPage* MainWindow::makeFront() {
    auto* page = added(new FrontPage);
    page->setFault(logbookFault());
    connect(page, &FrontPage::prepareWanted, this, &MainWindow::openPrepare);
    connect(page, &FrontPage::reviewWanted, this, [this] { openReview({}); });
    connect(page, &FrontPage::soundWanted, this, &MainWindow::openSound);
    connect(page, &FrontPage::classesWanted, this, &MainWindow::openClasses);
    connect(page, &FrontPage::kitchensWanted, this, &MainWindow::openKitchens);
    connect(page, &FrontPage::recipesWanted, this, &MainWindow::openRecipes);
    connect(page, &FrontPage::settingsWanted, this, &MainWindow::openSettings);
    connect(page, &FrontPage::sealsWanted, this, &MainWindow::openSeals);
    connect(page, &FrontPage::papersWanted, this, &MainWindow::openPapers);
    connect(page, &FrontPage::exchangeWanted, this, &MainWindow::openExchange);
    return page;
}

PreparePage* MainWindow::makePrepare() {
    auto* page = added(new PreparePage);
    page->setLogbookFault(logbookFault());
    page->setClassFiles(m_classFiles);
    if (!m_chosenClass.isEmpty()) {
        page->openClass(m_chosenClass);
    }
    connect(page, &PreparePage::frontWanted, this, &MainWindow::openFront);
    connect(page, &PreparePage::startWanted, this, &MainWindow::startSession);
    connect(page, &PreparePage::reviewWanted, this, [this] { openReview({}); });
    connect(page, &PreparePage::soundWanted, this, &MainWindow::openSound);
    connect(page, &PreparePage::listsWanted, this, &MainWindow::openLists);
    connect(page, &PreparePage::papersWanted, this, &MainWindow::openPapers);
    connect(&page->screenPanel(), &ScreenPanel::lookChanged, this, &MainWindow::restyle);
    connect(&page->screenPanel(), &ScreenPanel::screenMeasured, this, [this] {
        if (m_stage.made() != nullptr) {
            m_stage->fitToScreen();
        }
    });
    return page;
}

StagePage* MainWindow::makeStage() {
    auto* page = added(new StagePage(*m_ground.clock));
    connect(page, &StagePage::leaveWanted, this, &MainWindow::leaveStage);
    connect(page, &StagePage::soundWanted, this, &MainWindow::openSound);
    connect(page, &StagePage::audienceWanted, this, &MainWindow::toggleAudience);
    connect(page, &StagePage::lookChanged, this, &MainWindow::restyle);
    const auto tell = [this, page] { page->setSoundFault(m_sound->standingWords()); };
    connect(m_sound, &SoundControl::changed, page, tell);
    tell();
    if (m_ground.awake != nullptr) {
        const auto tellSleep = [this, page] { page->setSleepFault(standingWords(m_ground.awake->state())); };
        connect(m_ground.awake, &AwakeKeeper::changed, page, tellSleep);
        tellSleep();
    }
    return page;
}

ReviewPage* MainWindow::makeReview() {
    auto* page = added(new ReviewPage);
    connect(page, &ReviewPage::prepareWanted, this, &MainWindow::openPrepare);
    return page;
}

SealPage* MainWindow::makeSeals() {
    auto* page = added(new SealPage(*m_ground.clock));
    connect(page, &SealPage::leaveWanted, this, &MainWindow::openFront);
    return page;
}

PaperPage* MainWindow::makePapers() {
    auto* page = added(new PaperPage(*m_ground.clock));
    page->setClassFiles(m_classFiles);
    connect(page, &PaperPage::leaveWanted, this, &MainWindow::openFront);
    return page;
}

ExchangePage* MainWindow::makeExchange() {
    auto* page = added(new ExchangePage);
    connect(page, &ExchangePage::leaveWanted, this, &MainWindow::openFront);
    return page;
}

ResumePage* MainWindow::makeResume() {
    auto* page = added(new ResumePage);
    connect(page, &ResumePage::resumeWanted, this, &MainWindow::resume);
    connect(page, &ResumePage::declined, this, &MainWindow::openPrepare);
    return page;
}

SoundPage* MainWindow::makeSoundPage() {
    auto* page = added(new SoundPage(*m_sound));
    connect(page, &SoundPage::leaveWanted, this, &MainWindow::leaveSound);
    return page;
}

VenueEditor* MainWindow::makeVenues() {
    auto* page = added(new VenueEditor(m_library));
    connect(page, &DocumentPage::leaveWanted, this, &MainWindow::openFront);
    return page;
}

RecipeEditor* MainWindow::makeRecipes() {
    auto* page = added(new RecipeEditor(m_library));
    connect(page, &DocumentPage::leaveWanted, this, &MainWindow::openFront);
    return page;
}

ListsPage* MainWindow::makeLists() {
    auto* page = added(new ListsPage);
    connect(page, &ListsPage::leaveWanted, this, &MainWindow::openPrepare);
    return page;
}

void MainWindow::openLists() {
    if (m_prepare->prepared()) {
        m_lists->setClass(*m_prepare->prepared());
    } else {
        m_lists->clear({});
    }
    m_pages->setCurrentWidget(m_lists.get());
    m_lists->focusStart();
}

void MainWindow::toggleHelp() {
    if (m_help->isVisible()) {
        m_help->shut();
    } else if (const QWidget* page = currentPage()) {
        m_help->open(*page, page != m_stage.made());
    }
}

SettingsPage* MainWindow::makeSettings() {
    auto* page = added(new SettingsPage);
    connect(page, &SettingsPage::leaveWanted, this, &MainWindow::openFront);
    connect(page, &SettingsPage::welcomeWanted, this, &MainWindow::openWelcome);
    connect(&page->screenPanel(), &ScreenPanel::lookChanged, this, &MainWindow::restyle);
    // Queued, because the page is in the middle of telling.
    const auto anew = [this] {
        const QString field = m_settings->focusedField();
        remakePages();
        openSettings();
        m_settings->focusField(field);
    };
    connect(page, &SettingsPage::changed, this, anew, Qt::QueuedConnection);
    return page;
}

WelcomePage* MainWindow::makeWelcome() {
    auto* page = added(new WelcomePage(m_library));
    const auto anew = [this] {
        const WelcomePage::Typed typed = m_welcome->typed();
        remakePages();
        openWelcome();
        m_welcome->type(typed);
    };
    connect(page, &WelcomePage::languageChosen, this, anew, Qt::QueuedConnection);
    connect(page, &WelcomePage::skipped, this, &MainWindow::openFront);
    const auto goOn = [this](const QString& classFile) {
        remakePages();
        if (classFile.isEmpty()) {
            openFront();
        } else {
            m_prepare->openClass(classFile);
            openPrepare();
        }
    };
    connect(page, &WelcomePage::done, this, goOn, Qt::QueuedConnection);
    return page;
}

// Words, units and times stand in the pages as they were made. Nobody gets here while a session runs.
void MainWindow::remakePages() {
    if (m_session) {
        return;
    }
    if (m_prepare.made() != nullptr) {
        m_chosenClass = m_prepare->chosenFile();
    }
    m_audience.reset();
    m_front.drop();
    m_resume.drop();
    m_prepare.drop();
    m_stage.drop();
    m_review.drop();
    m_seals.drop();
    m_papers.drop();
    m_exchange.drop();
    m_soundPage.drop();
    m_venues.drop();
    m_recipes.drop();
    m_classes.drop();
    m_lists.drop();
    m_settings.drop();
    m_welcome.drop();
    putOnChoices(*qApp, readChoices());
}

void MainWindow::openSettings() {
    m_pages->setCurrentWidget(m_settings.get());
    m_settings->focusField({});
}

void MainWindow::openWelcome() {
    m_pages->setCurrentWidget(m_welcome.get());
    m_welcome->focusStart();
}

ClassEditor* MainWindow::makeClasses() {
    auto* page = added(new ClassEditor(m_library));
    connect(page, &DocumentPage::leaveWanted, this, &MainWindow::openFront);
    connect(page, &ClassEditor::prepareWanted, this, [this](const QString& path) {
        m_prepare->openClass(path);
        openPrepare();
    });
    return page;
}

void MainWindow::openClasses() {
    m_pages->setCurrentWidget(m_classes.get());
    m_classes->open(m_classes->openId());
}

void MainWindow::openKitchens() {
    m_pages->setCurrentWidget(m_venues.get());
    m_venues->open(m_venues->openId());
}

void MainWindow::openRecipes() {
    m_pages->setCurrentWidget(m_recipes.get());
    m_recipes->open(m_recipes->openId());
}

AudienceWindow& MainWindow::audience() {
    if (!m_audience) {
        m_audience = std::make_unique<AudienceWindow>();
        connect(m_audience.get(), &AudienceWindow::placed, m_stage.get(), &StagePage::setAudienceWords);
        connect(m_audience.get(), &AudienceWindow::shutByHand, m_stage.get(),
                [this] { m_stage->setAudienceWords({}, false); });
    }
    return *m_audience;
}

void MainWindow::restyle() {
    if (m_stage.made() != nullptr) {
        m_stage->restyle();
    }
    if (m_audience) {
        m_audience->restyle();
    }
}

void MainWindow::listenForAwake() {
    if (m_ground.awake == nullptr) {
        return;
    }
    // The session finds by its clock how long it was away; it only must not wait for its next look.
    connect(m_ground.awake, &AwakeKeeper::woke, this, [this] {
        if (m_session) {
            m_session->wake();
        }
    });
}

void MainWindow::openSound() {
    m_pages->setCurrentWidget(m_soundPage.get());
    m_soundPage->open(m_session != nullptr);
}

void MainWindow::leaveSound() {
    if (m_session != nullptr) {
        m_pages->setCurrentWidget(m_stage.get());
        m_stage->setFocus();
    } else {
        openPrepare();
    }
}

void MainWindow::sound(const Cue& cue) {
    m_sound->sound(cue, Words::cue(cue, m_session->moment()));
    // What wants an answer is on the board, so the sound check does not stand before it.
    if (cue.kind >= CueKind::Due && m_pages->currentWidget() == m_soundPage.made()) {
        leaveSound();
    }
}

void MainWindow::followDisplays() {
    // Queued, because a screen that goes is still on the list while it says so.
    const auto look = [this] {
        if (m_audience) {
            m_audience->displaysChanged(displaysNow(), screen()->name());
        }
    };
    connect(qGuiApp, &QGuiApplication::screenAdded, this, look, Qt::QueuedConnection);
    connect(qGuiApp, &QGuiApplication::screenRemoved, this, look, Qt::QueuedConnection);
}

void MainWindow::toggleAudience() {
    if (audience().isOpen()) {
        m_audience->shut();
        m_stage->setAudienceWords(tr("The audience screen is closed."), false);
        return;
    }
    presentAudience();
    m_audience->open(displaysNow(), screen()->name());
    activateWindow();
    m_stage->setFocus();
}

void MainWindow::presentAudience() {
    if (m_session && m_audience) {
        m_audience->present(audienceView(m_session->guide(), m_session->moment()));
    }
}

void MainWindow::begin(const QStringList& classFiles, const QString& chosen) {
    m_classFiles = classFiles;
    if (!chosen.isEmpty()) {
        m_prepare->openClass(chosen);
    }
    if (m_ground.logbook != nullptr) {
        const auto unfinished = m_ground.logbook->unfinished();
        if (unfinished && *unfinished) {
            m_resume->setSession(**unfinished);
            m_pages->setCurrentWidget(m_resume.get());
            m_resume->focusResume();
            return;
        }
    }
    if (chosen.isEmpty()) {
        m_ground.isFirstStart ? openWelcome() : openFront();
    } else {
        openPrepare();
    }
}

void MainWindow::openFront() {
    m_pages->setCurrentWidget(m_front.get());
    m_front->focusStart();
    // Once the page stands on the screen: a start does not wait for what is read from the logbook.
    QTimer::singleShot(0, this, &MainWindow::askForSeals);
    m_sealLook->start();
}

// A program that is left open over night asks as well.
void MainWindow::askForSeals() {
    if (m_ground.logbook == nullptr || m_pages->currentWidget() != m_front.made()) {
        m_sealLook->stop();
        return;
    }
    if (const auto open = sealsOpen(*m_ground.logbook, m_ground.clock->now())) {
        m_front->setSeals(sealsOpenWords(*open), isAnySealDue(*open));
    }
}

void MainWindow::openSeals() {
    m_pages->setCurrentWidget(m_seals.get());
    m_seals->showOpen(m_ground.logbook, logbookFault());
}

void MainWindow::openPrepare() {
    m_pages->setCurrentWidget(m_prepare.get());
    m_prepare->screenPanel().refresh();
    m_prepare->focusStart();
}

void MainWindow::openReview(const QString& sessionId) {
    m_pages->setCurrentWidget(m_review.get());
    m_review->showSessions(m_ground.logbook, sessionId, logbookFault());
}

void MainWindow::openPapers() {
    m_pages->setCurrentWidget(m_papers.get());
    if (m_prepare.made() != nullptr && m_prepare->prepared()) {
        m_papers->showClass(*m_prepare->prepared());
    }
    m_papers->showSessions(m_ground.logbook, {}, logbookFault());
}

void MainWindow::openPapersOf(const QString& sessionId) {
    m_pages->setCurrentWidget(m_papers.get());
    m_papers->showSessions(m_ground.logbook, sessionId, logbookFault());
}

void MainWindow::openExchange() {
    m_pages->setCurrentWidget(m_exchange.get());
    m_exchange->showSessions(m_ground.logbook, logbookFault());
}

QWidget* MainWindow::currentPage() const {
    return m_pages->currentWidget();
}

QString MainWindow::logbookFault() const {
    return m_ground.logbook != nullptr
               ? QString()
               : tr("The logbook cannot be used, so nothing is kept: %1").arg(toQt(m_ground.whyNoLogbook.message));
}

void MainWindow::startSession(const SessionStart& start) {
    if (m_prepare->prepared()) {
        // The plan goes into the logbook with the network: advice, comparison and review all follow it.
        Network network = m_prepare->prepared()->network;
        network.policy = m_prepare->prepared()->policy;
        putOnStage(brinebell::startSession(network, start, *m_ground.clock, m_ground.logbook, m_ground.whyNoLogbook,
                                           m_ground.logbookPath));
    }
}

void MainWindow::resume(const QString& sessionId) {
    auto session = resumeSession(sessionId.toStdString(), *m_ground.clock, *m_ground.logbook);
    if (!session) {
        m_resume->setFault(toQt(describe(session.error())));
        return;
    }
    putOnStage(std::move(*session));
}

void MainWindow::putOnStage(std::unique_ptr<SessionAdapter> session) {
    m_stage->setSession(nullptr);
    m_session = std::move(session);
    connect(m_session.get(), &SessionAdapter::cueSounds, this, &MainWindow::sound);
    // Queued, because the session must not be taken down while it is still telling that it has ended.
    connect(m_session.get(), &SessionAdapter::closed, this, &MainWindow::endSession, Qt::QueuedConnection);
    if (m_ground.awake != nullptr) {
        m_ground.awake->keepAwake(tr("A canning class is being taught"));
    }
    connect(m_session.get(), &SessionAdapter::clockMoved, this, &MainWindow::presentAudience);
    m_pages->setCurrentWidget(m_stage.get());
    m_stage->setSession(m_session.get());
    m_session->wake();
}

void MainWindow::endSession() {
    const QString id = m_session ? m_session->sessionId() : QString();
    dropSession();
    openReview(id);
}

bool MainWindow::isUnderWay() const {
    return m_session && m_session->state().started && !m_session->isFinished();
}

bool MainWindow::askToLeave() {
    QMessageBox question(QMessageBox::Question, tr("Leave the board?"),
                         tr("The class is still running. Clocks and cues stop while you are away."),
                         QMessageBox::NoButton, this);
    question.setTextFormat(Qt::PlainText);
    QString meaning = m_session->isRehearsal()
                          ? tr("A rehearsal that is left is not taken up again.")
                          : tr("The session can be taken up again when the program is next started.");
    if (m_session->waitingEvents() > 0) {
        meaning = tr("What is not saved is lost if you leave. Not saved, %1 waiting: %2")
                      .arg(QString::number(m_session->waitingEvents()), toQt(m_session->fault()->message));
    }
    question.setInformativeText(meaning);
    QPushButton* stay = question.addButton(tr("&Stay on the board"), QMessageBox::RejectRole);
    QPushButton* leave = question.addButton(tr("&Leave it"), QMessageBox::AcceptRole);
    question.setDefaultButton(stay);
    question.setEscapeButton(stay);
    question.exec();
    return static_cast<const void*>(question.clickedButton()) == static_cast<const void*>(leave);
}

void MainWindow::leaveStage() {
    if (isUnderWay() && !askToLeave()) {
        return;
    }
    // A rehearsal is looked back on, however far it came.
    const bool isReviewed = isUnderWay() && m_session->isRehearsal() && !m_session->sessionId().isEmpty();
    const QString id = m_session ? m_session->sessionId() : QString();
    dropSession();
    if (isReviewed) {
        openReview(id);
    } else {
        openPrepare();
    }
}

void MainWindow::dropSession() {
    if (m_audience) {
        m_audience->shut();
    }
    if (m_stage.made() != nullptr) {
        m_stage->setSession(nullptr);
    }
    m_session.reset();
    if (m_ground.awake != nullptr) {
        m_ground.awake->release();
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (isUnderWay() && !askToLeave()) {
        event->ignore();
        return;
    }
    if (m_audience) {
        m_audience->shut();
    }
    event->accept();
}

}  // namespace brinebell
