#include "MainWindow.h"

#include <QCloseEvent>
#include <QMessageBox>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>

#include "bridge/TimeText.h"
#include "desk/PreparePage.h"
#include "desk/ResumePage.h"
#include "review/ReviewPage.h"
#include "stage/StagePage.h"

namespace brinebell {

namespace {

CueSound soundOf(CueKind kind) {
    switch (kind) {
        case CueKind::Tick:
            return CueSound::Tick;
        case CueKind::Soon:
            return CueSound::Soon;
        case CueKind::Due:
            return CueSound::Due;
        case CueKind::End:
            return CueSound::End;
        case CueKind::Stop:
            return CueSound::Stop;
    }
    return CueSound::Stop;
}

QString soundFault(const SoundState& state) {
    switch (state.kind) {
        case SoundState::Kind::Ready:
            return {};
        case SoundState::Kind::NoDevice:
            return MainWindow::tr("No sound device: the screen shows every cue");
        case SoundState::Kind::Fault:
            return MainWindow::tr("No sound (%1): the screen shows every cue").arg(state.reason);
    }
    return {};
}

}  // namespace

MainWindow::MainWindow(const Ground& ground, QWidget* parent)
    : QMainWindow(parent), m_ground(ground), m_pages(new QStackedWidget) {
    setWindowTitle(tr("Brinebell"));
    setMinimumSize(800, 500);
    m_resume = new ResumePage;
    m_prepare = new PreparePage;
    m_stage = new StagePage(*m_ground.clock);
    m_review = new ReviewPage;
    for (QWidget* page : {static_cast<QWidget*>(m_resume), static_cast<QWidget*>(m_prepare),
                          static_cast<QWidget*>(m_stage), static_cast<QWidget*>(m_review)}) {
        m_pages->addWidget(page);
    }
    setCentralWidget(m_pages);
    m_prepare->setLogbookFault(logbookFault());
    connectPages();
    connectSpeaker();
}

MainWindow::~MainWindow() {
    m_stage->setSession(nullptr);
}

void MainWindow::connectPages() {
    connect(m_prepare, &PreparePage::startWanted, this, &MainWindow::startSession);
    connect(m_prepare, &PreparePage::reviewWanted, this, [this] { openReview({}); });
    connect(m_review, &ReviewPage::prepareWanted, this, &MainWindow::openPrepare);
    connect(m_resume, &ResumePage::resumeWanted, this, &MainWindow::resume);
    connect(m_resume, &ResumePage::declined, this, &MainWindow::openPrepare);
    connect(m_stage, &StagePage::leaveWanted, this, &MainWindow::leaveStage);
    auto* fullScreen = new QShortcut(QKeySequence(Qt::Key_F11), this);
    connect(fullScreen, &QShortcut::activated, this, [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
}

void MainWindow::connectSpeaker() {
    if (m_ground.speaker == nullptr) {
        return;
    }
    const auto tell = [this](const SoundState& state) { m_stage->setSoundFault(soundFault(state)); };
    connect(m_ground.speaker, &CueSpeaker::stateChanged, m_stage, tell);
    tell(m_ground.speaker->state());
}

void MainWindow::begin(const QStringList& classFiles, const QString& chosen) {
    m_prepare->setClassFiles(classFiles);
    if (!chosen.isEmpty()) {
        m_prepare->openClass(chosen);
    }
    if (m_ground.logbook != nullptr) {
        const auto unfinished = m_ground.logbook->unfinished();
        if (unfinished && *unfinished) {
            m_resume->setSession(**unfinished);
            m_pages->setCurrentWidget(m_resume);
            m_resume->focusResume();
            return;
        }
    }
    openPrepare();
}

void MainWindow::openPrepare() {
    m_pages->setCurrentWidget(m_prepare);
    m_prepare->focusStart();
}

void MainWindow::openReview(const QString& sessionId) {
    m_pages->setCurrentWidget(m_review);
    m_review->showSessions(m_ground.logbook, sessionId, logbookFault());
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
        putOnStage(brinebell::startSession(network, start, *m_ground.clock, m_ground.logbook, m_ground.whyNoLogbook));
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
    if (m_ground.speaker != nullptr) {
        connect(m_session.get(), &SessionAdapter::cueSounds, m_ground.speaker,
                [this](const Cue& cue) { m_ground.speaker->play(soundOf(cue.kind)); });
    }
    // Queued, because the session must not be taken down while it is still telling that it has ended.
    connect(m_session.get(), &SessionAdapter::closed, this, &MainWindow::endSession, Qt::QueuedConnection);
    m_pages->setCurrentWidget(m_stage);
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
    question.setInformativeText(m_session->isRehearsal()
                                    ? tr("A rehearsal that is left is not taken up again.")
                                    : tr("The session can be taken up again when the program is next started."));
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
    m_stage->setSession(nullptr);
    m_session.reset();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (isUnderWay() && !askToLeave()) {
        event->ignore();
        return;
    }
    event->accept();
}

}  // namespace brinebell
