#include "bridge/Words.h"

#include <gtest/gtest.h>

#include <QSet>

#include "support/SmallClass.h"

namespace brinebell {
namespace {

constexpr Millis kEvening{69'120'000};  // 19:12

class WordsOfASmallClass : public testing::Test {
protected:
    WordsOfASmallClass() {
        state.activities.resize(network.activities.size());
        state.loads.resize(network.loads.size());
        state.loads[0].unwatched = std::chrono::minutes(12);
    }
    Moment moment() const { return {network, state, Millis(0), kEvening}; }

    const Network network = support::smallClass();
    State state;
};

/// Words for the values 0 to `last`; every one must be there and differ from the others.
template <class Speak>
void expectAllDiffer(int last, Speak speak) {
    QSet<QString> seen;
    for (int value = 0; value <= last; ++value) {
        const QString words = speak(value);
        EXPECT_FALSE(words.isEmpty()) << value;
        seen.insert(words);
    }
    EXPECT_EQ(seen.size(), last + 1);
}

TEST_F(WordsOfASmallClass, NameEveryPromptDifferently) {
    expectAllDiffer(static_cast<int>(PromptKind::CloseSession), [&](int value) {
        return Words::prompt({static_cast<PromptKind>(value), {}, 1, 0, 0}, moment());
    });
}

TEST_F(WordsOfASmallClass, NameEveryRefusalDifferently) {
    expectAllDiffer(static_cast<int>(RefusalReason::HoldPassed), [&](int value) {
        return Words::refusal({static_cast<RefusalReason>(value), 0, Millis(60'000)}, moment());
    });
}

TEST_F(WordsOfASmallClass, TellWhatBarsAnUndo) {
    QSet<QString> seen;
    for (const EventKind kind :
         {EventKind::BoilLost, EventKind::SteamLost, EventKind::PressureLost, EventKind::LoadSetAside}) {
        seen.insert(Words::refusal({RefusalReason::CannotUndoLostBoil, static_cast<int>(kind), {}}, moment()));
    }
    EXPECT_EQ(seen.size(), 4);
}

TEST_F(WordsOfASmallClass, NameThePressThatStays) {
    EXPECT_EQ(Words::refusal({RefusalReason::PressStays, static_cast<int>(EventKind::NoteAdded), {}}, moment()),
              QStringLiteral("The newest press stays as it is: note. Nothing older is taken back past it."));
}

TEST_F(WordsOfASmallClass, NameWhatWasTakenBack) {
    Event seen;
    seen.sequence = 4;
    seen.kind = EventKind::SteamSeen;
    seen.load = 0;
    Event undone;
    undone.sequence = 5;
    undone.kind = EventKind::Undone;
    undone.value = 4;
    EXPECT_TRUE(Words::takenBack(undone, {seen, undone}, network).contains(QStringLiteral("load 1")));
    EXPECT_TRUE(Words::takenBack(undone, {seen, undone}, network).contains(QStringLiteral("steam seen")));
}

TEST_F(WordsOfASmallClass, NameEveryCueReasonDifferently) {
    expectAllDiffer(static_cast<int>(CueReason::HoldOver), [&](int value) {
        return Words::cue({CueKind::Due, static_cast<CueReason>(value), 1, 0, {}, 0}, moment());
    });
}

TEST_F(WordsOfASmallClass, NameEveryEventDifferently) {
    expectAllDiffer(static_cast<int>(EventKind::SessionClosed), [&](int value) {
        Event event;
        event.kind = static_cast<EventKind>(value);
        event.activity = 1;
        event.load = 0;
        return Words::event(event, network);
    });
}

TEST_F(WordsOfASmallClass, NameEveryStartReasonDifferently) {
    expectAllDiffer(static_cast<int>(StartReason::Underway),
                    [&](int value) { return Words::startReason(static_cast<StartReason>(value), 0, network); });
}

TEST(Words, NameEveryCueKindDifferently) {
    expectAllDiffer(static_cast<int>(CueKind::Stop), [](int v) { return Words::cueKind(static_cast<CueKind>(v)); });
}

TEST(Words, NameEveryLoadPhaseDifferently) {
    expectAllDiffer(static_cast<int>(LoadPhase::SetAside),
                    [](int v) { return Words::phase(static_cast<LoadPhase>(v)); });
}

TEST(Words, NameEveryCauseDifferently) {
    expectAllDiffer(static_cast<int>(Cause::Console), [](int v) { return Words::cause(static_cast<Cause>(v)); });
}

TEST(Words, NameEveryKindOfHandWorkDifferently) {
    expectAllDiffer(static_cast<int>(HandWork::End), [](int v) { return Words::handWork(static_cast<HandWork>(v)); });
}

TEST(Words, NameEveryJarSizeDifferently) {
    expectAllDiffer(static_cast<int>(JarSize::HalfGallon),
                    [](int v) { return Words::jars(3, static_cast<JarSize>(v)); });
}

TEST_F(WordsOfASmallClass, SayTheBoilWithItsMinutesAndItsEnd) {
    EXPECT_EQ(Words::prompt({PromptKind::SeeBoil, {}, 6, 0, -1}, moment()),
              "rolling boil seen on load 1 — 15 min to 19:27");
}

TEST(Words, SayThePressureWithItsMinutesAndItsEnd) {
    const Network network = support::cannerOnly(Method::PressureDial);
    const State state = initialState(network);
    Command command;
    command.value = 11;
    EXPECT_EQ(Words::prompt({PromptKind::SeePressure, command, -1, 0, -1}, {network, state, Millis(0), kEvening}),
              "11 psi seen on load 1 — 15 min to 19:27");
}

TEST(Words, AskForTheWaterByItsDepth) {
    Network network = support::cannerOnly();
    network.loads[0].waterCheck = "Water 2 in over the lids, lid on";
    const State state = initialState(network);
    EXPECT_EQ(Words::prompt({PromptKind::CheckWater, {}, -1, 0, -1}, {network, state, Millis(0), kEvening}),
              "load 1: water 2 in over the lids, lid on");
}

TEST_F(WordsOfASmallClass, SayTheUnwatchedTimeInWords) {
    EXPECT_EQ(Words::prompt({PromptKind::VouchBoil, {}, -1, 0, -1}, moment()),
              "the boil on load 1 held through the 12 min nobody watched");
}

TEST_F(WordsOfASmallClass, SayWhenARefusedStepWillDo) {
    EXPECT_EQ(Words::refusal({RefusalReason::ProcessNotDone, -1, Millis(239'500)}, moment()),
              "The process time is not over: 4:00 to go, until 19:15.");
}

TEST_F(WordsOfASmallClass, KeepSignsOfMarkupAsTheyAreWritten) {
    Network marked = network;
    marked.activities[1].title = "Trim <b>%1</b> & wash";
    const Moment then{marked, state, Millis(0), kEvening};
    EXPECT_EQ(Words::prompt({PromptKind::FinishActivity, {}, 1, -1, -1}, then), "Done — trim <b>%1</b> & wash");
}

TEST(Words, KeepInitialismsLargeInsideASentence) {
    EXPECT_EQ(Words::inSentence("USDA figures"), "USDA figures");
    EXPECT_EQ(Words::inSentence("Trim the beans"), "trim the beans");
}

}  // namespace
}  // namespace brinebell
