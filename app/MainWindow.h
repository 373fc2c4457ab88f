// MainWindow.h — the places a person stands: the front page, taking up a session, preparing, the live board, review.
//
// Owns the running session. Lifetime: the clock, the logbook and the speaker it is handed outlive it.
#pragma once

#include <QMainWindow>
#include <memory>

#include "LazyPage.h"
#include "bridge/Sessions.h"
#include "desk/Library.h"
#include "sound/CueSpeaker.h"

class QSettings;
class QStackedWidget;
class QTimer;

namespace brinebell {

class AudienceWindow;
class AwakeKeeper;
class ClassEditor;
class FrontPage;
class HelpPanel;
class ListsPage;
class ExchangePage;
class PaperPage;
class PreparePage;
class ResumePage;
class RecipeEditor;
class ReviewPage;
class SettingsPage;
class SealPage;
class SoundControl;
class SoundPage;
class SpokenNames;
class StagePage;
class VenueEditor;
class WelcomePage;

/// What the window stands on.
struct Ground {
    const Clock* clock = nullptr;  ///< session time and input time
    Logbook* logbook = nullptr;    ///< null when it could not be opened
    Error whyNoLogbook;            ///< then the reason
    CueSpeaker* speaker = nullptr;
    SpokenNames* voice = nullptr;   ///< null: names are not spoken
    AwakeKeeper* awake = nullptr;   ///< null: the machine sleeps when it likes
    QSettings* settings = nullptr;  ///< null: nothing that is set is kept
    bool isFirstStart = false;      ///< the welcome goes before the front page
    QString library{};              ///< the folder of the teacher's own files; empty: the usual one
    std::string logbookPath{};      ///< tried again by a session that began without its logbook; empty: never
};

class MainWindow final : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(const Ground& ground, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// What stands first: an unfinished live session, the desk with the class that was chosen, or the front page.
    void begin(const QStringList& classFiles, const QString& chosen);
    void startSession(const SessionStart& start);
    void openFront();
    void openPrepare();
    void openClasses();  ///< the class editor
    void openKitchens();
    void openRecipes();
    void openReview(const QString& sessionId);
    void openLists();  ///< of the class that is being prepared
    void openSettings();
    void toggleHelp();  ///< for the page on screen
    void openWelcome();
    void openSeals();
    void openPapers();                            ///< of a class, or of a session
    void openPapersOf(const QString& sessionId);  ///< of that session
    void openExchange();
    void openSound();    ///< the sound check; a running session goes on behind it
    void dropSession();  ///< lets go of the running session; it stays in the logbook as it is

    FrontPage& frontPage() { return *m_front; }
    PreparePage& preparePage() { return *m_prepare; }
    ClassEditor& classEditor() { return *m_classes; }
    VenueEditor& venueEditor() { return *m_venues; }
    RecipeEditor& recipeEditor() { return *m_recipes; }
    StagePage& stagePage() { return *m_stage; }
    ReviewPage& reviewPage() { return *m_review; }
    SealPage& sealPage() { return *m_seals; }
    PaperPage& paperPage() { return *m_papers; }
    ExchangePage& exchangePage() { return *m_exchange; }
    ResumePage& resumePage() { return *m_resume; }
    ListsPage& listsPage() { return *m_lists; }
    HelpPanel& help() { return *m_help; }
    SettingsPage& settingsPage() { return *m_settings; }
    WelcomePage& welcomePage() { return *m_welcome; }
    SoundPage& soundPage() { return *m_soundPage; }
    AudienceWindow& audience();
    QWidget* currentPage() const;
    SessionAdapter* session() { return m_session.get(); }

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    template <class Page>
    Page* added(Page* page);
    FrontPage* makeFront();
    PreparePage* makePrepare();
    StagePage* makeStage();
    ReviewPage* makeReview();
    SealPage* makeSeals();
    PaperPage* makePapers();
    ExchangePage* makeExchange();
    void askForSeals();
    ResumePage* makeResume();
    SoundPage* makeSoundPage();
    ClassEditor* makeClasses();
    VenueEditor* makeVenues();
    RecipeEditor* makeRecipes();
    ListsPage* makeLists();
    SettingsPage* makeSettings();
    WelcomePage* makeWelcome();
    void remakePages();
    void listenForAwake();
    void restyle();
    void leaveSound();
    void sound(const Cue& cue);
    void putOnStage(std::unique_ptr<SessionAdapter> session);
    void resume(const QString& sessionId);
    void endSession();
    void leaveStage();
    void followDisplays();
    void toggleAudience();
    void presentAudience();
    bool isUnderWay() const;
    bool askToLeave();
    QString logbookFault() const;

    Ground m_ground;
    std::unique_ptr<SessionAdapter> m_session;
    SoundControl* m_sound;
    QStackedWidget* m_pages;
    QStringList m_classFiles;
    LazyPage<FrontPage> m_front;
    LazyPage<ResumePage> m_resume;
    LazyPage<PreparePage> m_prepare;
    LazyPage<StagePage> m_stage;
    LazyPage<ReviewPage> m_review;
    LazyPage<SealPage> m_seals;
    LazyPage<PaperPage> m_papers;
    LazyPage<ExchangePage> m_exchange;
    QTimer* m_sealLook;
    LazyPage<SoundPage> m_soundPage;
    Library m_library;
    LazyPage<VenueEditor> m_venues;
    LazyPage<RecipeEditor> m_recipes;
    LazyPage<ClassEditor> m_classes;
    LazyPage<ListsPage> m_lists;
    LazyPage<SettingsPage> m_settings;
    LazyPage<WelcomePage> m_welcome;
    QString m_chosenClass;  ///< stays chosen when the pages are made anew
    HelpPanel* m_help;
    std::unique_ptr<AudienceWindow> m_audience;  ///< null until somebody wants it
};

}  // namespace brinebell
