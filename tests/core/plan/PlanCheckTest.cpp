#include "plan/PlanCheck.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "plan/Dispatcher.h"
#include "support/DemoClass.h"
#include "support/RandomNetwork.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using testing::AllOf;
using testing::Contains;
using testing::Each;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::StartsWith;

/// A class of a few steps in a slot of two hours.
class Kitchen {
public:
    Kitchen() { network.slot = hours(2); }

    int add(const char* title, Seconds lasts, HandsNeed hands = HandsNeed::None, std::vector<int> after = {}) {
        Activity a;
        a.key = title;
        a.title = title;
        a.duration = ThreePoint::fixed(lasts);
        a.hands = hands;
        a.after = std::move(after);
        network.activities.push_back(std::move(a));
        return static_cast<int>(network.activities.size()) - 1;
    }
    int addTray(const char* title, Seconds lasts) {
        const int i = add(title, lasts, HandsNeed::Pulses);
        at(i).handsAtStart = Seconds(10);
        at(i).pulse = PulseRule{Seconds(60), Seconds(120), Seconds(15), "Turn"};
        return i;
    }
    Activity& at(int i) { return network.activities[static_cast<std::size_t>(i)]; }
    int station(const char* name) {
        network.stations.push_back({name, name, StationKind::Burner, HeatKind::Gas, std::nullopt});
        return static_cast<int>(network.stations.size()) - 1;
    }
    void hold(std::vector<int> stations, std::vector<int> activities) {
        for (const int i : activities) {
            at(i).stationHolds.push_back(static_cast<int>(network.stationHolds.size()));
        }
        network.stationHolds.push_back({"pot", std::move(stations), std::move(activities)});
    }
    RunSheet sheet() const { return dispatch(network, defaultOrder(network)); }
    std::vector<PlanFinding> findings() const { return planFindings(network, sheet()); }

    Network network;
};

std::vector<std::string> textsOf(const std::vector<PlanFinding>& findings, PlanFindingKind kind) {
    std::vector<std::string> texts;
    for (const PlanFinding& finding : findings) {
        if (finding.kind == kind) {
            texts.push_back(finding.text);
        }
    }
    return texts;
}

}  // namespace

TEST(PlanCheck, SaysNothingOfAPlanThatFits) {
    Kitchen k;
    k.add("Simmer", minutes(10));
    EXPECT_THAT(k.findings(), IsEmpty());
}

TEST(PlanCheck, WarningsAreItsSentences) {
    Kitchen k;
    k.add("Simmer", hours(3));
    EXPECT_THAT(warningsFor(k.network, k.sheet()), testing::ElementsAre(k.findings().at(0).text));
}

// ---- ends

TEST(PlanCheck, NamesAnOverrunOfTheSlot) {
    Kitchen k;
    k.add("Simmer", Seconds(7260));
    k.network.kitchenSlot = hours(2);
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::SlotOverrun),
                Contains(StartsWith("the class ends 1 min after its slot; ")));
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::KitchenOverrun),
                Contains(StartsWith("the kitchen ends 1 min after it must be empty; ")));
}

TEST(PlanCheck, AsksWhoStaysForTheKitchenEnd) {
    Kitchen k;
    k.network.closing = k.add("Close", minutes(5), HandsNeed::Throughout);
    k.add("Process", minutes(70));
    const auto texts = textsOf(k.findings(), PlanFindingKind::NobodyForKitchenEnd);
    EXPECT_THAT(texts, Contains(HasSubstr("the kitchen ends at 1:10, 1 h 5 min after the class, and nobody is named")));
    k.network.kitchenCloser = "Teodor";
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::NobodyForKitchenEnd), IsEmpty());
}

// ---- limits

TEST(PlanCheck, NamesStretchedLimitsSafetyFirst) {
    Kitchen k;
    const int brine = k.add("Boil the brine", minutes(5));
    const int pack = k.add("Pack", minutes(15), HandsNeed::Throughout, {brine});
    const int fill = k.add("Fill", minutes(5), HandsNeed::Throughout, {pack});
    k.network.limits = {{brine, fill, minutes(10), LimitKind::Quality, ""},
                        {brine, fill, minutes(12), LimitKind::Safety, "discard it"}};
    const auto findings = k.findings();
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_EQ(findings[0].text,
              "SAFETY: \"Boil the brine\" waits 15 min for \"Fill\", 3 min over the 12 min that are safe: discard it");
    EXPECT_EQ(findings[1].text,
              "\"Boil the brine\" waits 15 min for \"Fill\", 5 min over the 10 min that are good: start \"Boil the "
              "brine\" later");
    EXPECT_EQ(findings[1].from, minutes(5));
    EXPECT_EQ(findings[1].to, minutes(20));
}

// ---- stations

TEST(PlanCheck, AddsUpWhatBurnersAreWantedFor) {
    Kitchen k;
    const int burner = k.station("Front left");
    const int boil = k.add("Boil the sauce", minutes(30));
    const int wait = k.add("Let it stand", minutes(20), HandsNeed::None, {boil});
    const int warm = k.add("Warm the sauce", minutes(20), HandsNeed::None, {wait});
    const int brine = k.add("Boil the brine", minutes(55));
    k.hold({burner}, {boil, warm});  // 70 min by its steps, with what lies between them
    k.hold({burner}, {brine});
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::StationsShort),
                Contains(StartsWith("\"Front left\" is wanted for at least 2 h 5 min in all (\"Boil the sauce\", "
                                    "\"Boil the brine\"), and the slot has 2 h; ")));
    k.network.kitchenSlot = Seconds(minutes(125));
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::StationsShort), Not(Contains(HasSubstr("in all"))));
}

TEST(PlanCheck, NamesTheMomentWhenMorePotsThanBurnersStand) {
    Kitchen k;
    const int left = k.station("Left"), right = k.station("Right");
    const int first = k.add("Measure", minutes(5));
    for (const char* pot : {"Boil A", "Boil B", "Boil C"}) {
        k.hold({left, right}, {k.add(pot, minutes(10), HandsNeed::None, {first})});
    }
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::StationsShort),
                Contains(StartsWith("by their order alone 3 things want \"Left\" and \"Right\" at once from 0:05 on: "
                                    "\"Boil C\" waits for it until 0:15; ")));
}

TEST(PlanCheck, SaysNothingOfPotsThatFollowEachOther) {
    Kitchen k;
    const int left = k.station("Left");
    const int first = k.add("Boil A", minutes(10));
    k.hold({left}, {first});
    k.hold({left}, {k.add("Boil B", minutes(10), HandsNeed::None, {first})});
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::StationsShort), IsEmpty());
}

// ---- hands

TEST(PlanCheck, NamesTwoEndsInTheSameMoment) {
    Kitchen k;
    for (const char* title : {"Boil the brine", "Boil the canner"}) {
        k.at(k.add(title, minutes(10), HandsNeed::Ends)).handsAtEnd = Seconds(20);
    }
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::HandsTwice),
                testing::ElementsAre(StartsWith("the end of \"Boil the canner\" waits 20 s at 0:09: the hands are on "
                                                "\"Boil the brine\"; ask for a helper")));
    k.network.helpers = 1;
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::HandsTwice), IsEmpty());
}

TEST(PlanCheck, NamesWorkThatMustNotBeLeftWhileALookFallsDue) {
    Kitchen k;
    const int tray = k.addTray("Roast", minutes(6));
    const int lids = k.add("Set the lids", minutes(4), HandsNeed::Throughout);
    // By hand, for the dispatcher would rather let the lids wait: set up, lids, the look 100 s late, the end.
    RunSheet sheet = k.sheet();
    sheet.activities = {{Seconds(0), Seconds(360)}, {Seconds(10), Seconds(250)}};
    sheet.hands = {{0, tray, HandWork::Start, Seconds(0), Seconds(10), 1},
                   {0, lids, HandWork::Work, Seconds(10), Seconds(250), 1},
                   {0, tray, HandWork::Pulse, Seconds(250), Seconds(265), 1},
                   {0, tray, HandWork::End, Seconds(345), Seconds(360), 1}};
    sheet.lateLooks = Seconds(120);
    const auto findings = planFindings(k.network, sheet);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_THAT(findings[0].text, StartsWith("the look at \"Roast\" comes 2 min late at 0:02: the hands are on "
                                             "\"Set the lids\" (not to be left); "));
    EXPECT_EQ(findings[0].from, Seconds(130));
    EXPECT_EQ(findings[0].to, Seconds(250));
    EXPECT_EQ(findings[0].activity, tray);
}

TEST(PlanCheck, TellsOfEverySecondThatLooksComeLate) {
    std::size_t late = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        const Network network = support::randomNetwork(seed);
        const RunSheet sheet = dispatch(network, defaultOrder(network));
        Seconds told{};
        for (const PlanFinding& finding : planFindings(network, sheet)) {
            if (finding.kind == PlanFindingKind::HandsTwice && finding.text.starts_with("the look")) {
                told += finding.to - finding.from;
            }
        }
        EXPECT_EQ(told, sheet.lateLooks) << "seed " << seed;
        late += told > Seconds::zero() ? 1U : 0U;
    }
    EXPECT_GE(late, 1U);
}

// ---- cues

TEST(PlanCheck, NamesAFloodOfCues) {
    Kitchen k;
    k.network.helpers = 3;
    for (int i = 0; i < 10; ++i) {
        k.at(k.add("Pot", minutes(30 + i))).key += std::to_string(i);
    }
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::CueFlood), IsEmpty());
    k.add("Oven", Seconds(minutes(33)) + Seconds(30));
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::CueFlood),
                testing::ElementsAre(StartsWith("11 cues sound between 0:30 and 0:40, and 11 in ten minutes are too "
                                                "many to heed: \"Pot\", \"Oven\"; ")));
}

TEST(PlanCheck, CuesThatSoundTogetherAreOne) {
    Kitchen k;
    k.network.helpers = 3;
    for (int i = 0; i < 20; ++i) {
        k.at(k.add("Pot", Seconds(1800 + i))).key += std::to_string(i);
    }
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::CueFlood), IsEmpty());
}

TEST(PlanCheck, NamesTooManyCuesForTheHandsThereAre) {
    Kitchen k;
    for (int i = 1; i <= 7; ++i) {
        k.at(k.add("Pot", minutes(4 * i))).key += std::to_string(i);
    }
    // 7 cues in 28 min are 2.5 in ten.
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::CueFlood),
                testing::ElementsAre(StartsWith("7 cues sound in 28 min, more than 2 in ten minutes for each of the "
                                                "1 in the kitchen; ask for a helper")));
    k.network.helpers = 1;
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::CueFlood), IsEmpty());
}

// A tray that is looked at every two minutes ticks 19 times and is heard once, at its end.
TEST(PlanCheck, TicksOfATrayAreNoCues) {
    Kitchen k;
    k.addTray("Roast", minutes(40));
    ASSERT_GE(k.sheet().hands.size(), 15U);
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::CueFlood), IsEmpty());
}

// ---- text

// Source: what a 15.6-inch screen holds at letters of 22 minutes of arc, worked out by hand from 345.4 x 194.3 mm,
// capitals of 0.70, lines of 1.2 and letters of 0.55 of the type: 5.9 x 23 at 3 m, 8.9 x 34 at 2 m.
TEST(PlanCheck, ScreenHoldsSixLinesAtThreeMetres) {
    EXPECT_EQ(screenRoomAt(Length::fromMetres(3.0)), (ScreenRoom{6, 23}));
    EXPECT_EQ(screenRoomAt(Length::fromMetres(2.0)), (ScreenRoom{9, 34}));
    EXPECT_EQ(screenRoomAt(Length()), screenRoomAt(Length::fromMetres(2.0)));
}

TEST(PlanCheck, WrapsWordsIntoLines) {
    EXPECT_EQ(linesOf("", 10), 0);
    EXPECT_EQ(linesOf("Set lids", 10), 1);
    EXPECT_EQ(linesOf("Set the lids", 10), 2);
    EXPECT_EQ(linesOf("Fill 1/2 in", 11), 1);
    EXPECT_EQ(linesOf("0123456789", 10), 1);
    EXPECT_EQ(linesOf("0123456789 a", 10), 2);
    EXPECT_EQ(linesOf("0123456789abcde fgh", 10), 2);
    EXPECT_EQ(linesOf("400 °F 82 °C", 12), 1);  // characters, not bytes
}

TEST(PlanCheck, NamesTitlesAndEndPointsThatAreTooLong) {
    Kitchen k;
    k.network.readingDistance = Length::fromMetres(3.0);
    k.add("Set lids and turn the bands until they are fingertip tight", minutes(5));
    k.at(0).lookFor = "Resistance is just met and the band still turns a little when two fingers try it once more";
    const auto texts = textsOf(k.findings(), PlanFindingKind::TextTooLong);
    ASSERT_EQ(texts.size(), 2U);
    EXPECT_THAT(texts[0], AllOf(StartsWith("the title of \"Set lids"), HasSubstr("takes 3 lines of 23 characters"),
                                HasSubstr("room for 2; shorten it")));
    EXPECT_THAT(texts[1], AllOf(StartsWith("the end-point of \"Set lids"), HasSubstr("room for 3")));
    k.network.readingDistance = Length::fromMetres(1.0);
    EXPECT_THAT(k.findings(), IsEmpty());
}

// ---- talk, and what never starts

TEST(PlanCheck, NamesTalkThatFindsNoWait) {
    Kitchen k;
    k.add("Peel", minutes(10), HandsNeed::Throughout);
    k.network.talk.push_back({"acid", "Never cut the vinegar.", true, false, Seconds(60), -1, -1});
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::TalkWithoutRoom),
                Contains(StartsWith("no wait is long enough to say \"Never cut the vinegar.\" (1 min); ")));
}

TEST(PlanCheck, NamesWhatCanNeverStart) {
    Kitchen k;
    const int burner = k.station("Left");
    const int brine = k.add("Boil the brine", minutes(10));
    const int sauce = k.add("Heat the sauce", minutes(10), HandsNeed::None, {brine});
    const int fill = k.add("Fill", minutes(10), HandsNeed::None, {sauce});
    k.hold({burner}, {brine, fill});
    k.hold({burner}, {sauce});
    EXPECT_THAT(textsOf(k.findings(), PlanFindingKind::NeverStarts),
                Contains(StartsWith("\"Heat the sauce\" can never start: ")));
}

// ---- whole classes

TEST(PlanCheck, DemoClassHasNothingAgainstIt) {
    const Network network = support::demoClass(1);
    EXPECT_THAT(planFindings(network, dispatch(network, defaultOrder(network))), IsEmpty());
}

// The canner is hot while boiling brine is poured, and there is nobody else.
TEST(PlanCheck, DemoClassWithoutAHelperHasOneTightMoment) {
    const Network network = support::demoClass(0);
    const auto findings = planFindings(network, dispatch(network, defaultOrder(network)));
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].kind, PlanFindingKind::HandsTwice);
    EXPECT_THAT(findings[0].text,
                testing::AllOf(HasSubstr("Set the canner on to heat"), HasSubstr("Pour boiling brine")));
}

TEST(PlanCheck, EverySentenceNamesAWayOut) {
    std::size_t sentences = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        const Network network = support::randomNetwork(seed);
        const auto findings = planFindings(network, dispatch(network, defaultOrder(network)));
        EXPECT_TRUE(std::is_sorted(findings.begin(), findings.end(),
                                   [](const PlanFinding& a, const PlanFinding& b) { return a.kind < b.kind; }));
        for (const PlanFinding& finding : findings) {
            EXPECT_THAT(finding.text, testing::ContainsRegex("[;:] [a-z]")) << "seed " << seed;
            EXPECT_FALSE(finding.text.ends_with("."));
            EXPECT_LE(finding.from, finding.to);
            ++sentences;
        }
    }
    EXPECT_GE(sentences, 400U);
}

}  // namespace brinebell
