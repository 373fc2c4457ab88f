// StagePage.h — the live board: one key, fixed places, plain words. Reads the SessionAdapter; sends it
// commands.
//
// Input time comes from `inputClock`, never from the session's clock, so that a rehearsal at sixty times
// still asks for a real second on the key.
#pragma once

#include <QTimer>
#include <QWidget>
#include <array>

#include "bridge/SessionAdapter.h"
#include "stage/BoardPanels.h"
#include "stage/ChoicePanel.h"
#include "stage/ClosingPanel.h"
#include "stage/OneKey.h"
#include "stage/PauseBanner.h"
#include "stage/PromptBox.h"
#include "stage/ReadingPanel.h"
#include "stage/RehearsalBar.h"
#include "stage/RemedyPanel.h"
#include "stage/StageKeys.h"
#include "stage/StationTile.h"

class QHBoxLayout;

namespace brinebell {

class StagePage final : public QWidget {
    Q_OBJECT

public:
    static constexpr Millis kGrowNextAfter{20'000};
    static constexpr Millis kForgottenAfter{2'000};
    static constexpr int kNoticeFor = 6'000;  // ms

    explicit StagePage(const Clock& inputClock, QWidget* parent = nullptr);

    /// Null takes the session off the board. Lifetime: the session outlives its stay here.
    void setSession(SessionAdapter* session);
    void setSoundFault(const QString& reason);  ///< empty: cues sound
    void setSleepFault(const QString& reason);  ///< empty: screen and machine stay awake
    /// Where the audience screen stands; what is lost stays on the board until the screen is opened or closed.
    void setAudienceWords(const QString& words, bool isLost);
    void restyle();  ///< the look has changed

    QString notice() const { return m_notice->text(); }
    QString standing() const { return m_standing->text(); }
    QString actionTitle() const { return m_action->title(); }
    const PromptBox& tapBox() const { return *m_tapBox; }
    const PromptBox& holdBox() const { return *m_holdBox; }
    bool isRecallOpen() const { return m_recall->isVisible(); }
    bool areRemediesOpen() const { return m_remedies->isVisible(); }
    const ClockLine& clockLine() const { return *m_clock; }
    const RemedyPanel& remedies() const { return *m_remedies; }
    const PauseBanner& pauseBanner() const { return *m_pause; }
    const ReadingPanel& readingPanel() const { return *m_reading; }
    const ClosingPanel& closingPanel() const { return *m_closing; }
    const RehearsalBar& rehearsalBar() const { return *m_rehearsal; }

    /// Asks the keys what they have come to. A timer does so while one is down; tests do, too.
    void pollKeys();

    /// Asks for type and place anew, after the screen was measured or another one took the window.
    void fitToScreen() { fitType(); }
    const StationRow& stations() const { return *m_stations; }
    const StepPanel& step() const { return *m_step; }
    bool isStepOpen() const { return m_step->isVisible(); }

signals:
    void leaveWanted();
    void soundWanted();
    void audienceWanted();  ///< opens or closes the audience screen
    void lookChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    /// What can be pressed long: the one key, the key for the boil, and the held prompt under the mouse.
    static constexpr int kMouseKey = -1;  // stands for the mouse where a key code is asked for
    enum class Source { OneKey, BoilKey, HoldBox };
    static constexpr std::array kSources{Source::OneKey, Source::BoilKey, Source::HoldBox};

    void buildBoard();
    void buildKeyRow(QHBoxLayout* row);
    void connectPrompts();
    void refresh();
    void refreshPrompts();
    void refreshStanding();
    void fitType();
    void fitKeyRow();
    void toggleLook();
    void placeOverlays();

    OneKey& keyOf(Source source) { return m_keys[static_cast<std::size_t>(source)]; }
    void press(Source source, int key);
    void release(Source source, int key);
    void act(Source source, Press press);
    void answer(const std::optional<Prompt>& prompt, Cause cause, const QString& whenNone);
    bool takesOwnPress(int qtKey);
    void ownPress(StageKey key, int qtKey, Cause cause);
    void ownKey(StageKey key, Cause cause);
    // Questions, readings, the close and the rehearsal's own row (StagePagePanels.cpp).
    void buildTold();
    void presentTold(const Moment& moment);
    void askOrGoOn(Cause cause);
    void countJar(Cause cause);
    void showClosing();
    void rehearse(RehearsalKey key, int qtKey);
    void runDrill(Drill drill);
    bool isAsking() const { return m_choice->isVisible() || m_reading->isVisible() || m_closing->isVisible(); }
    void offerSight(Cause cause);
    void offer(const QString& question, const std::vector<Choice>& choices, Cause cause);
    void tickPoint(std::size_t index, Cause cause);
    void promptsShown(PromptSlot slot);
    bool isReading() const { return m_recall->isVisible() || m_remedies->isVisible() || m_step->isVisible(); }
    void showReading(QWidget* panel);
    void presentReading();
    const OutlookAnswer* ahead() const { return m_session->ahead() ? &*m_session->ahead() : nullptr; }
    void showBoardAgain();
    void showNotice(const QString& words);
    Millis inputNow() const { return m_inputClock->now().boot; }

    const Clock* m_inputClock;
    SessionAdapter* m_session = nullptr;
    std::array<OneKey, 3> m_keys;
    OneKey m_ownKeys;
    Millis m_lastPress{};
    Millis m_lastOwnPress{};
    Cause m_pressCause = Cause::Key;
    Cause m_holdCause = Cause::HeldKey;
    QString m_soundFault;
    QString m_sleepFault;
    QString m_audienceLost;

    ClockLine* m_clock;
    QWidget* m_middle;
    ActionPanel* m_action;
    NextPanel* m_next;
    DetailsPanel* m_details;
    StationRow* m_stations;
    QWidget* m_lines;
    QWidget* m_prompts;
    QWidget* m_keyRow;
    int m_near = 15;  ///< pixels of the type that is read by stepping up
    FitText* m_cues;
    FitText* m_notice;
    PromptBox* m_tapBox;
    PromptBox* m_holdBox;
    FitText* m_standing;
    RecallPanel* m_recall;
    RemedyPanel* m_remedies;
    StepPanel* m_step;
    ChoicePanel* m_choice;
    PauseBanner* m_pause;
    ReadingPanel* m_reading;
    ClosingPanel* m_closing;
    RehearsalBar* m_rehearsal;
    QTimer m_holdTimer;
    QTimer m_noticeTimer;
};

}  // namespace brinebell
