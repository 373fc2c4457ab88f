// A whole class of two dishes with everything that goes wrong in it, by keys alone and by the mouse alone: a late boil,
// a lost boil, questions, a press taken back, sound and audience screen that are unplugged. What was pressed is written
// down as it is pressed, and the log is held against that.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "desk/PreparePage.h"
#include "review/ReviewPage.h"
#include "stage/AudienceWindow.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

using std::chrono::minutes;

struct Pressed {
    EventKind kind;
    Cause cause;
    bool operator==(const Pressed&) const = default;
};

void PrintTo(const Pressed& pressed, std::ostream* out) {
    *out << toText(pressed.kind) << " by " << toText(pressed.cause);
}

EventKind kindOf(const Prompt& prompt) {
    switch (prompt.kind) {
        case PromptKind::StartSession:
            return EventKind::SessionStarted;
        case PromptKind::StartActivity:
        case PromptKind::StartLift:
        case PromptKind::ConfirmRemedy:
            return EventKind::ActivityStarted;
        case PromptKind::FinishActivity:
            return EventKind::ActivityFinished;
        case PromptKind::DoPulse:
            return EventKind::PulseDone;
        case PromptKind::SayPoint:
            return EventKind::PointSaid;
        case PromptKind::TurnHeatOff:
            return EventKind::HeatOff;
        case PromptKind::SeeBoil:
            return EventKind::BoilSeen;
        case PromptKind::CheckWater:
            return EventKind::WaterChecked;
        case PromptKind::SeeSteam:
            return EventKind::SteamSeen;
        case PromptKind::CloseVent:
            return EventKind::VentClosed;
        case PromptKind::SeePressure:
            return EventKind::PressureReached;
        case PromptKind::SeeZero:
            return EventKind::PressureGone;
        case PromptKind::VouchBoil:
            return EventKind::BoilVouched;
        case PromptKind::ResumeFromQuestions:
            return EventKind::QuestionsEnded;
        case PromptKind::ConfirmOff:
            return EventKind::StationOff;
        case PromptKind::EndClass:
            return EventKind::ClassEnded;
        case PromptKind::CloseSession:
            return EventKind::SessionClosed;
    }
    return EventKind::NoteAdded;
}

/// A person at the board, with keys or with a mouse.
class Person {
public:
    explicit Person(Bench& onBench) : bench(onBench) {}
    virtual ~Person() = default;
    virtual void begin() = 0;
    virtual Cause tap() = 0;
    virtual Cause hold() = 0;
    virtual Cause own(StageKey key) = 0;
    virtual void read(const QString& digits) = 0;  ///< in the panel for readings, and into the log

    Bench& bench;
};

class AtTheKeys final : public Person {
public:
    using Person::Person;
    void begin() override { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space); }
    Cause tap() override {
        // All that stands for "next", pedals among it, turn by turn.
        constexpr std::array kNext{Qt::Key_Space, Qt::Key_PageDown, Qt::Key_Right, Qt::Key_Down, Qt::Key_Return};
        const Qt::Key key = kNext[m_taps++ % kNext.size()];
        bench.tap(key);
        return causeOf(key);
    }
    Cause hold() override {
        bench.hold();
        return Cause::HeldKey;
    }
    Cause own(StageKey key) override {
        for (int k = Qt::Key_A; k <= Qt::Key_Z; ++k) {
            if (stageKeyOf(k) == key) {
                bench.tap(k);
            }
        }
        return Cause::Key;
    }
    void read(const QString& digits) override {
        QTest::keyClicks(QApplication::focusWidget(), digits);
        bench.pass(OneKey::kReadingTime);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }

private:
    std::size_t m_taps = 0;
};

class AtTheMouse final : public Person {
public:
    using Person::Person;
    void begin() override { click(bench.window.preparePage(), QStringLiteral("&Start live class")); }
    Cause tap() override {
        press(bench.stage().tapBox(), Millis(100));
        return Cause::Mouse;
    }
    Cause hold() override {
        press(bench.stage().holdBox(), OneKey::kHold);
        return Cause::Mouse;
    }
    Cause own(StageKey key) override {
        for (const KeyHint& hint : keyHints()) {
            if (hint.key == key) {
                press(*button(bench.stage(), QStringLiteral("%1  %2").arg(hint.cap, hint.words)), Millis(100));
            }
        }
        return Cause::Mouse;
    }
    void read(const QString& digits) override {
        auto* panel = bench.stage().findChild<ReadingPanel*>();
        for (const QChar digit : digits) {
            click(*panel, digit);
        }
        bench.pass(OneKey::kReadingTime);
        click(*panel, QStringLiteral("Log it"));
    }

private:
    static QPushButton* button(const QWidget& on, const QString& words) {
        for (QPushButton* candidate : on.findChildren<QPushButton*>()) {
            if (candidate->text() == words) {
                return candidate;
            }
        }
        throw std::logic_error("no button: " + words.toStdString());
    }
    static void click(const QWidget& on, const QString& words) { QTest::mouseClick(button(on, words), Qt::LeftButton); }
    void press(const QWidget& target, Millis time) {
        auto* widget = const_cast<QWidget*>(&target);
        bench.pass(OneKey::kReadingTime);
        QTest::mousePress(widget, Qt::LeftButton);
        bench.clock.advance(time);
        QTest::mouseRelease(widget, Qt::LeftButton);
        bench.clock.advance(OneKey::kSettle);
        bench.stage().pollKeys();
        QCoreApplication::processEvents();
    }
};

const DisplayPlace kLaptop{QStringLiteral("laptop"), QRect(0, 0, 1366, 768)};
const DisplayPlace kProjector{QStringLiteral("projector"), QRect(1366, 0, 1280, 720)};

/// The class as it goes, and the trouble in it, each once.
class Evening {
public:
    explicit Evening(Person& who) : m_who(who), m_bench(who.bench) {}

    bool live() {
        m_who.begin();
        audience().open({kLaptop, kProjector}, kLaptop.name);
        keyboardToTheBoard();
        constexpr int kMostSteps = 20'000;
        for (int step = 0; step < kMostSteps; ++step) {
            if (m_bench.window.session() == nullptr) {
                return true;
            }
            if (!trouble() && !answer()) {
                m_bench.pass(Millis(5'000));
            }
        }
        return false;
    }

    std::vector<Pressed> pressed;
    QString whileUnplugged;  ///< what stood on the board

private:
    // Without a window manager any window that is shown gets the keyboard, even one that does not want it.
    void keyboardToTheBoard() { m_bench.window.activateWindow(); }
    AudienceWindow& audience() { return m_bench.window.audience(); }
    SessionAdapter& session() { return *m_bench.window.session(); }
    LoadState load() { return session().state().loads[0]; }

    void note(EventKind kind, Cause cause) { pressed.push_back({kind, cause}); }

    bool answer() {
        const std::optional<Prompt> hold = m_bench.guide().hold, tap = m_bench.guide().tap;
        if (hold && m_bench.isRipe(*hold) && !isHeldUp(*hold)) {
            note(kindOf(*hold), m_who.hold());
            return true;
        }
        if (tap && m_bench.isRipe(*tap)) {
            note(kindOf(*tap), m_who.tap());
            return true;
        }
        return false;
    }

    // The first boil is a quarter of an hour late.
    bool isHeldUp(const Prompt& prompt) {
        if (prompt.kind != PromptKind::SeeBoil || prompt.load != 0 || load().boilsLost > 0) {
            return false;
        }
        const auto heatUp = static_cast<std::size_t>(session().network().loads[0].heatUp);
        return session().moment().elapsed < *session().state().activities[heatUp].started +
                                                Millis(session().network().activities[heatUp].duration.likely) +
                                                Millis(minutes(15));
    }

    bool once(bool& done, bool due) {
        if (done || !due) {
            return false;
        }
        return done = true;
    }

    bool trouble() {
        const std::size_t count = session().events().size();
        if (!session().state().started) {
            return false;
        }
        const bool inHand = !m_bench.guide().handsOn.empty();
        if (once(m_asked, count > 8 && inHand)) {
            note(EventKind::QuestionsBegan, m_who.own(StageKey::Questions));
            m_bench.pass(minutes(2));
            return true;
        }
        if (once(m_undone, count > 14 && session().events().back().kind == EventKind::ActivityFinished)) {
            note(EventKind::Undone, m_who.own(StageKey::Undo));
            return true;
        }
        if (once(m_unplugged, count > 20)) {
            m_bench.speaker.tell(SoundState::Kind::NoDevice);
            audience().displaysChanged({kLaptop}, kLaptop.name);
            keyboardToTheBoard();
            whileUnplugged = m_bench.stage().standing();
            return true;
        }
        if (once(m_pluggedIn, count > 30)) {
            EXPECT_FALSE(audience().fillsDisplay());
            audience().displaysChanged({kLaptop, kProjector}, kLaptop.name);
            keyboardToTheBoard();
            EXPECT_TRUE(audience().fillsDisplay());
            return true;
        }
        if (once(m_read, load().phase == LoadPhase::Lowered)) {
            const Cause cause = m_who.own(StageKey::Reading);
            m_who.read(QStringLiteral("82.5"));
            note(EventKind::ReadingTaken, cause);
            return true;
        }
        if (once(m_lost, load().phase == LoadPhase::Timing &&
                             session().moment().elapsed > *load().timingStarted + Millis(minutes(4)))) {
            note(EventKind::BoilLost, m_who.own(StageKey::BoilLost));
            return true;
        }
        return false;
    }

    Person& m_who;
    Bench& m_bench;
    bool m_asked = false, m_undone = false, m_unplugged = false, m_pluggedIn = false, m_read = false, m_lost = false;
};

std::vector<Pressed> pressesIn(const SessionRecord& record) {
    std::vector<Pressed> presses;
    for (const Event& event : record.events) {
        if (event.cause != Cause::Clock && event.cause != Cause::Recovery) {
            presses.push_back({event.kind, event.cause});
        }
    }
    return presses;
}

void expectTheEveningInTheLog(const Evening& evening, const SessionRecord& record) {
    EXPECT_EQ(pressesIn(record), evening.pressed);
    const auto counted = [&](EventKind kind) {
        return std::count_if(record.events.begin(), record.events.end(),
                             [&](const Event& e) { return e.kind == kind; });
    };
    ASSERT_EQ(record.network.dishes.size(), 2U);
    EXPECT_EQ(counted(EventKind::BoilSeen), static_cast<std::ptrdiff_t>(record.network.loads.size()) + 1);
    EXPECT_EQ(counted(EventKind::BoilLost), 1);
    EXPECT_EQ(counted(EventKind::Undone), 1);
    EXPECT_EQ(counted(EventKind::GapFound), 0);
    EXPECT_GE(counted(EventKind::StationOff), 1);
    for (const Event& event : record.events) {
        if (event.kind == EventKind::QuestionsEnded) {
            EXPECT_GE(event.value, Millis(minutes(2)).count());
        }
        if (event.kind == EventKind::ReadingTaken) {
            EXPECT_EQ(event.value, 82'500);
            EXPECT_EQ(event.text, "celsius");
        }
    }
    EXPECT_EQ(record.events.back().kind, EventKind::SessionClosed);
    EXPECT_EQ(record.events.back().text, "");
    EXPECT_TRUE(evening.whileUnplugged.contains(QStringLiteral("No sound")) &&
                evening.whileUnplugged.contains(kProjector.name))
        << evening.whileUnplugged.toStdString();
}

}  // namespace

TEST(WholeClass, GoesByKeysAlone) {
    Bench bench(demonstrationClass());
    AtTheKeys person(bench);
    Evening evening(person);
    ASSERT_TRUE(evening.live());
    ASSERT_EQ(bench.window.currentPage(), &bench.window.reviewPage());
    ASSERT_TRUE(bench.window.reviewPage().record());
    expectTheEveningInTheLog(evening, *bench.window.reviewPage().record());
}

TEST(WholeClass, GoesByTheMouseAlone) {
    Bench bench(demonstrationClass());
    AtTheMouse person(bench);
    Evening evening(person);
    ASSERT_TRUE(evening.live());
    ASSERT_EQ(bench.window.currentPage(), &bench.window.reviewPage());
    ASSERT_TRUE(bench.window.reviewPage().record());
    expectTheEveningInTheLog(evening, *bench.window.reviewPage().record());
}

}  // namespace brinebell
