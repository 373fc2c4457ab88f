// Sound sheets pass, the same sheet with one thing broken does not, and the checker agrees with the one of the tests,
// which shares no line with it.
#include "plan/SheetCheck.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <stdexcept>

#include "plan/SheetJson.h"
#include "support/DemoClass.h"
#include "support/PartlyPlayed.h"
#include "support/RandomNetwork.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr std::uint64_t kNetworks = 400;

/// A sheet, what it is for, and what had happened before it was made.
struct Case {
    Network network;
    RunSheet sheet;
    Progress progress;
};

Case wholeClass() {
    Case c{support::smallClass(2), {}, {}};
    c.sheet = dispatch(c.network, defaultOrder(c.network));
    return c;
}

// The opening has ended, the tray is in the oven and was looked at once, the canner's water is heating.
Case midClass() {
    Case c = wholeClass();
    c.progress.now = Seconds(300);
    c.progress.activities.resize(c.network.activities.size());
    c.progress.stationOf.assign(c.network.stationHolds.size(), -1);
    c.progress.activities[static_cast<std::size_t>(c.network.opening)] = {Seconds(0), Seconds(130), false, {}};
    const auto at = [&](const char* key) -> ActivityProgress& {
        return c.progress.activities[static_cast<std::size_t>(*findActivity(c.network, key))];
    };
    at("tray") = {Seconds(130), {}, false, Seconds(255)};
    at("canner/preheat") = {Seconds(0), {}, false, {}};
    c.progress.stationOf[0] = 0;
    c.sheet = dispatch(c.network, defaultOrder(c.network), c.progress);
    return c;
}

std::size_t indexOf(const Case& c, const char* key) {
    return static_cast<std::size_t>(findActivity(c.network, key).value());
}

Activity& activityOf(Case& c, const char* key) {
    return c.network.activities[indexOf(c, key)];
}

ActivitySpan& spanOf(Case& c, const char* key) {
    return c.sheet.activities[indexOf(c, key)];
}

HandSpan& handOf(Case& c, const char* key, HandWork work) {
    for (HandSpan& span : c.sheet.hands) {
        if (span.activity == static_cast<int>(indexOf(c, key)) && span.work == work) {
            return span;
        }
    }
    throw std::runtime_error(std::string("no such hand work of ") + key);
}

void eraseHand(Case& c, const char* key, HandWork work) {
    const auto i = static_cast<int>(indexOf(c, key));
    std::erase_if(c.sheet.hands, [&](const HandSpan& s) { return s.activity == i && s.work == work; });
}

StationSpan& stationOf(Case& c, int hold) {
    for (StationSpan& span : c.sheet.stations) {
        if (span.stationHold == hold) {
            return span;
        }
    }
    throw std::runtime_error("no such hold");
}

template <class Span>
void shift(Span& span, Seconds by) {
    span.from += by;
    span.to += by;
}

struct Planted {
    const char* name;
    std::function<void(Case&)> plant;
    const char* found;
};

std::ostream& operator<<(std::ostream& out, const Planted& planted) {
    return out << planted.name;
}

std::string nameOf(const testing::TestParamInfo<Planted>& info) {
    return info.param.name;
}

const std::vector<Planted>& plantedInAWholeClass() {
    static const std::vector<Planted> kPlanted{
        {"MissingActivity", [](Case& c) { c.sheet.activities.pop_back(); }, "the sheet places"},
        {"Incomplete", [](Case& c) { c.sheet.complete = false; }, "not complete"},
        {"UnknownActivity", [](Case& c) { c.sheet.hands[0].activity = 99; }, "is not there"},
        {"UnknownStation", [](Case& c) { c.sheet.stations[0].station = 99; }, "is not there"},
        {"UnknownLimit",
         [](Case& c) {
             c.sheet.broken.push_back({99, Seconds(1)});
         },
         "limit 99 is reported"},
        {"UnknownTalk", [](Case& c) { c.sheet.talk[0].talk = 99; }, "talk 99 is placed"},
        {"HandTooMany", [](Case& c) { handOf(c, "fill", HandWork::Work).hand = 2; }, "hand 2 is not one of 2"},
        {"Order", [](Case& c) { activityOf(c, "tray").after.push_back(static_cast<int>(indexOf(c, "fill"))); },
         "before fill ends"},
        {"CutShort", [](Case& c) { activityOf(c, "pot").duration = ThreePoint::fixed(Seconds(9000)); },
         "pot takes 600 s, less than its 9000 s"},
        {"LingersByItself", [](Case& c) { spanOf(c, "canner/load-1/process").end += Seconds(5); },
         "it ends by itself at"},
        {"HandTwice",
         [](Case& c) {
             for (HandSpan& span : c.sheet.hands) {
                 span.hand = 0;
             }
         },
         "hand 0 does two things"},
        {"HandsOutOfOrder", [](Case& c) { std::swap(c.sheet.hands.front(), c.sheet.hands.back()); },
         "not in the order of time"},
        {"WrongPerson", [](Case& c) { handOf(c, "class/opening", HandWork::Work).hand = 1; }, "only the presenter"},
        {"NoTime",
         [](Case& c) {
             HandSpan& span = handOf(c, "fill", HandWork::Work);
             span.to = span.from;
         },
         "takes no time"},
        {"OutsideItsActivity", [](Case& c) { shift(handOf(c, "fill", HandWork::Work), Seconds(7)); },
         "lies outside the activity"},
        {"WorkCutShort", [](Case& c) { handOf(c, "fill", HandWork::Work).to -= Seconds(10); }, "and it needs 180 s"},
        {"WorkMissing", [](Case& c) { eraseHand(c, "fill", HandWork::Work); }, "hands work on it for 0 s"},
        {"WorkOfAnotherKind", [](Case& c) { handOf(c, "fill", HandWork::Work).work = HandWork::Pulse; },
         "does not need"},
        {"InTwoPieces",
         [](Case& c) {
             const Seconds middle = handOf(c, "class/closing", HandWork::Work).from + Seconds(60);
             HandSpan second = handOf(c, "class/closing", HandWork::Work);
             handOf(c, "class/closing", HandWork::Work).to = middle;
             second.from = middle;
             second.ordinal = 2;
             c.sheet.hands.push_back(second);
         },
         "may not be left, and is done in 2 pieces"},
        {"PieceWrongNumber", [](Case& c) { handOf(c, "fill", HandWork::Work).ordinal = 3; }, "is numbered 3"},
        {"SettingUpMissing", [](Case& c) { eraseHand(c, "pot", HandWork::Start); }, "pot: it is set up 0 times"},
        {"SettingUpLate", [](Case& c) { shift(handOf(c, "pot", HandWork::Start), Seconds(5)); }, "right at its start"},
        {"EndWorkMissing", [](Case& c) { eraseHand(c, "canner/load-1/heat-up", HandWork::End); },
         "it is ended 0 times"},
        {"EndWorkEarly", [](Case& c) { shift(handOf(c, "canner/load-1/heat-up", HandWork::End), Seconds(-5)); },
         "right at its end"},
        {"EndWorkDuringALook",
         [](Case& c) {
             for (HandSpan& span : c.sheet.hands) {
                 if (span.activity == static_cast<int>(indexOf(c, "tray")) && span.work == HandWork::Pulse) {
                     span.to = spanOf(c, "tray").end;
                 }
             }
         },
         "while hands are still on it"},
        {"LookMissing", [](Case& c) { eraseHand(c, "tray", HandWork::Pulse); }, "looks are late by"},
        {"LookTooLong", [](Case& c) { handOf(c, "tray", HandWork::Pulse).to += Seconds(1); }, "takes 16 s, not 15 s"},
        {"LookHasty", [](Case& c) { activityOf(c, "tray").pulse->gapLow = Seconds(119); }, "comes only"},
        {"LookWrongNumber", [](Case& c) { handOf(c, "tray", HandWork::Pulse).ordinal = 9; }, "is numbered 9"},
        {"LateLooksInSilence", [](Case& c) { activityOf(c, "tray").pulse->gapHigh = Seconds(70); },
         "looks are late by"},
        {"LateLooksCriedWolf", [](Case& c) { c.sheet.lateLooks = Seconds(5); }, "looks are late by 0 s"},
        {"WrongStation", [](Case& c) { stationOf(c, 0).station = 1; }, "station 1 cannot serve it"},
        {"StationMissing", [](Case& c) { c.sheet.stations.erase(c.sheet.stations.begin()); }, "has no station"},
        {"StationTwice", [](Case& c) { c.sheet.stations.push_back(c.sheet.stations.back()); }, "or on one twice"},
        {"StationLetGoEarly", [](Case& c) { stationOf(c, 1).to -= Seconds(1); }, "and is used from"},
        {"StationTakenLate", [](Case& c) { stationOf(c, 1).from += Seconds(1); }, "and is used from"},
        {"StationShared",
         [](Case& c) {
             // The second load is said to stand in the canner from the start of the first.
             stationOf(c, 3).from = stationOf(c, 2).from;
         },
         "holds two things"},
        {"LimitInSilence",
         [](Case& c) {
             c.network.limits.push_back({c.network.opening, c.network.closing, Seconds(60), LimitKind::Safety, ""});
         },
         "in silence"},
        {"LimitCriedWolf",
         [](Case& c) {
             c.sheet.broken.push_back({0, Seconds(1000)});
         },
         "and is not"},
        {"LimitOtherWait",
         [](Case& c) {
             c.network.limits.push_back({c.network.opening, c.network.closing, Seconds(60), LimitKind::Safety, ""});
             c.sheet.broken.push_back({2, Seconds(61)});
         },
         "and the sheet says 61 s"},
        {"LimitTwice",
         [](Case& c) {
             c.sheet.broken.assign(2, {0, Seconds(1000)});
         },
         "is reported twice"},
        {"ProcessUnderItsTime", [](Case& c) { c.network.loads[0].processTime = Seconds(901); },
         "less than the published 901 s"},
        {"RestShort", [](Case& c) { spanOf(c, "canner/load-1/rest").end = spanOf(c, "canner/load-1/rest").start; },
         "before lifting"},
        {"CannerOutOfOrder",
         [](Case& c) {
             activityOf(c, "canner/load-1/lift").after.clear();
             spanOf(c, "canner/load-1/lift").start -= Seconds(100);
         },
         "load-1/lift comes before"},
        {"NotFromTheBoil",
         [](Case& c) {
             spanOf(c, "canner/load-2/process").start += Seconds(1);
             spanOf(c, "canner/load-2/process").end += Seconds(1);
         },
         "is not counted from the boil"},
        {"TalkOverWork",
         [](Case& c) {
             const Seconds length = c.sheet.talk[0].to - c.sheet.talk[0].from;
             c.sheet.talk[0].from = Seconds(10);
             c.sheet.talk[0].to = Seconds(10) + length;
         },
         "fall together at"},
        {"TalkCut", [](Case& c) { c.sheet.talk[0].to -= Seconds(1); }, "this talk is given"},
        {"TalkTwice", [](Case& c) { c.sheet.talk.push_back(c.sheet.talk.back()); }, "has its place already"},
        {"TalkAfterTheEnd", [](Case& c) { shift(c.sheet.talk.back(), Seconds(90000)); }, "after the end"},
        {"ClassEnd", [](Case& c) { c.sheet.classEnd -= Seconds(1); }, "the class ends at"},
        {"KitchenEnd", [](Case& c) { c.sheet.kitchenEnd -= Seconds(1); }, "the kitchen ends at"},
        {"BoundAboveTheSheet", [](Case& c) { c.sheet.lowerBound = c.sheet.kitchenEnd + Seconds(1); },
         "no sheet is said to end before"},
        {"FalseReason",
         [](Case& c) {
             c.sheet.reasons[indexOf(c, "fill")] = StartReason::After;
             c.sheet.waitedFor[indexOf(c, "fill")] = c.network.opening;
         },
         "is said to follow"},
        {"FalseReasonOfAStation",
         [](Case& c) {
             c.sheet.reasons[indexOf(c, "fill")] = StartReason::Station;
             c.sheet.waitedFor[indexOf(c, "fill")] = 3;
         },
         "is said to wait for hold 3"},
        {"FalseReasonOfTheStart", [](Case& c) { c.sheet.reasons[indexOf(c, "fill")] = StartReason::ClassStart; },
         "is said to start with the class"},
        {"UnderwayBeforeTheClass", [](Case& c) { c.sheet.reasons[indexOf(c, "fill")] = StartReason::Underway; },
         "whether it is under way"},
    };
    return kPlanted;
}

const std::vector<Planted>& plantedInTheMiddle() {
    static const std::vector<Planted> kPlanted{
        {"PastStartMoved", [](Case& c) { spanOf(c, "tray").start += Seconds(1); }, "started at 130 and the sheet says"},
        {"PastEndMoved", [](Case& c) { spanOf(c, "class/opening").end -= Seconds(10); }, "ended at 130 and the sheet"},
        {"UnderwayEndsInThePast", [](Case& c) { spanOf(c, "canner/preheat").end = Seconds(299); },
         "the sheet ends it at 299, which is past"},
        {"StartsInThePast", [](Case& c) { spanOf(c, "pot").start = Seconds(200); },
         "the sheet starts it at 200, which is past"},
        {"HandsInThePast", [](Case& c) { shift(handOf(c, "pot", HandWork::Start), Seconds(-100)); },
         "hand work is planned at"},
        {"HandsOnWhatIsOver",
         [](Case& c) {
             c.sheet.hands.push_back({0, c.network.opening, HandWork::Work, Seconds(310), Seconds(320), 1});
         },
         "hands work on what is over"},
        {"SetUpAgain",
         [](Case& c) {
             const auto preheat = static_cast<int>(indexOf(c, "canner/preheat"));
             c.sheet.hands.push_back({1, preheat, HandWork::Start, Seconds(300), Seconds(320), 1});
         },
         "it is set up again"},
        {"StationMoved",
         [](Case& c) {
             c.network.stationHolds[0].candidates = {0, 1};
             stationOf(c, 0).station = 1;
         },
         "stood on station 0 and is said to stand on 1"},
        {"LookTooSoonAfterTheLast", [](Case& c) { c.progress.activities[indexOf(c, "tray")].lastPulse = Seconds(299); },
         "comes only"},
        {"ForgottenPast", [](Case& c) { c.progress.activities.pop_back(); }, "activities were lived"},
    };
    return kPlanted;
}

class InAWholeClass : public testing::TestWithParam<Planted> {};
class InTheMiddle : public testing::TestWithParam<Planted> {};

}  // namespace

TEST_P(InAWholeClass, PlantedFaultIsFound) {
    Case c = wholeClass();
    ASSERT_THAT(rulesBrokenBy(c.network, c.sheet), IsEmpty());
    GetParam().plant(c);
    EXPECT_THAT(rulesBrokenBy(c.network, c.sheet), Contains(HasSubstr(GetParam().found)));
}

INSTANTIATE_TEST_SUITE_P(SheetCheck, InAWholeClass, testing::ValuesIn(plantedInAWholeClass()), nameOf);

TEST_P(InTheMiddle, PlantedFaultIsFound) {
    Case c = midClass();
    ASSERT_THAT(rulesBrokenBy(c.network, c.sheet, c.progress), IsEmpty());
    GetParam().plant(c);
    EXPECT_THAT(rulesBrokenBy(c.network, c.sheet, c.progress), Contains(HasSubstr(GetParam().found)));
}

INSTANTIATE_TEST_SUITE_P(SheetCheck, InTheMiddle, testing::ValuesIn(plantedInTheMiddle()), nameOf);

TEST(SheetCheck, EveryRuleHasAPlantedFault) {
    EXPECT_EQ(plantedInAWholeClass().size(), 56U);
    EXPECT_EQ(plantedInTheMiddle().size(), 10U);
}

TEST(SheetCheck, PassesTheSmallClassAndTheDemo) {
    for (const int loads : {0, 1, 2}) {
        const Network network = support::smallClass(loads);
        EXPECT_THAT(rulesBrokenBy(network, dispatch(network, defaultOrder(network))), IsEmpty()) << loads << " loads";
    }
    for (int helpers = 0; helpers <= 3; ++helpers) {
        const Network network = support::demoClass(helpers);
        EXPECT_THAT(rulesBrokenBy(network, dispatch(network, defaultOrder(network))), IsEmpty()) << helpers;
    }
}

TEST(SheetCheck, PassesWholeClassesOfEveryShape) {
    std::size_t activities = 0;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = support::randomNetwork(seed);
        const RunSheet sheet = dispatch(network, defaultOrder(network));
        EXPECT_THAT(rulesBrokenBy(network, sheet), IsEmpty()) << "seed " << seed;
        EXPECT_THAT(support::violationsIn(sheetToJson(network, sheet)), IsEmpty()) << "seed " << seed;
        activities += network.activities.size();
    }
    EXPECT_GE(activities, 15 * kNetworks);
}

TEST(SheetCheck, PassesSheetsFromTheMiddleOfAClass) {
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        Random random(seed);
        const Network network = support::randomNetwork(seed);
        const support::Played played = support::playPartly(network, random);
        const RunSheet sheet = dispatch(network, defaultOrder(network), played.progress);
        EXPECT_THAT(rulesBrokenBy(network, sheet, played.progress), IsEmpty())
            << "seed " << seed << " at " << played.progress.now.count();
        EXPECT_THAT(support::violationsIn(sheetToJson(network, sheet), support::pastOf(played.progress)), IsEmpty())
            << "seed " << seed;
    }
}

// A sheet of one class held against a slightly different one: whatever one checker finds, the other finds as well.
TEST(SheetCheck, AgreesWithTheCheckerOfTheTestsOnBrokenSheets) {
    Random random(22);
    std::size_t broken = 0;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        Network network = support::randomNetwork(seed);
        RunSheet sheet = dispatch(network, defaultOrder(network));
        const auto pick = [&](std::size_t size) { return static_cast<std::size_t>(random.below(size)); };
        const Seconds by(static_cast<std::int64_t>(random.below(21)) - 10);
        // The other checker lets pass what ends by itself too late, lets its station go too late, or is listed out of
        // the order of time; those are planted above.
        const Seconds less(1 + static_cast<std::int64_t>(random.below(10)));
        switch (random.below(6)) {
            case 0:
                shift(sheet.hands[pick(sheet.hands.size())], by);
                std::stable_sort(sheet.hands.begin(), sheet.hands.end(),
                                 [](const HandSpan& a, const HandSpan& b) { return a.from < b.from; });
                break;
            case 1:
                sheet.activities[pick(sheet.activities.size())].start += by;
                break;
            case 2:
                sheet.activities[pick(sheet.activities.size())].end -= less;
                break;
            case 3:
                sheet.hands[pick(sheet.hands.size())].hand = static_cast<int>(random.below(4));
                break;
            case 4:
                sheet.stations[pick(sheet.stations.size())].to -= less;
                break;
            default:
                sheet.hands.erase(sheet.hands.begin() + static_cast<std::ptrdiff_t>(pick(sheet.hands.size())));
                break;
        }
        // A sheet that tells the truth about its limits and looks says so in its JSON as well; the words about that
        // are the JSON's own.
        std::vector<std::string> theirs = support::violationsIn(sheetToJson(network, sheet));
        std::erase_if(theirs, [](const std::string& v) { return v.find("feasible") != std::string::npos; });
        const std::vector<std::string> ours = rulesBrokenBy(network, sheet);
        EXPECT_EQ(ours.empty(), theirs.empty())
            << "seed " << seed << ": " << testing::PrintToString(ours) << " against " << testing::PrintToString(theirs);
        broken += ours.empty() ? 0U : 1U;
    }
    EXPECT_GE(broken, kNetworks / 2);
}

// What was passed over was never done: no station held it, and limits from it do not count.
TEST(SheetCheck, PassesASheetAfterStepsWerePassedOver) {
    Case c = midClass();
    c.progress.activities[indexOf(c, "tray")].skipped = true;
    c.progress.activities[indexOf(c, "tray")].ended = Seconds(290);
    c.progress.activities[indexOf(c, "pot")] = {{}, Seconds(295), true, {}};
    c.sheet = dispatch(c.network, defaultOrder(c.network), c.progress);
    EXPECT_THAT(rulesBrokenBy(c.network, c.sheet, c.progress), IsEmpty());
}

TEST(SheetCheck, PassesAStretchedLimitThatIsOwnedUpTo) {
    Case c = wholeClass();
    c.network.limits = {{c.network.opening, c.network.closing, Seconds(60), LimitKind::Safety, "discard"}};
    c.sheet = dispatch(c.network, defaultOrder(c.network));
    ASSERT_EQ(c.sheet.broken.size(), 1U);
    EXPECT_THAT(rulesBrokenBy(c.network, c.sheet), IsEmpty());
}

}  // namespace brinebell
