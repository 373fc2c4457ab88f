// The checker is itself held to account: a good sheet passes, and the same sheet with one thing broken must
// not.
#include "support/SheetChecker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <nlohmann/json.hpp>

#include "plan/Dispatcher.h"
#include "plan/SheetJson.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using nlohmann::json;
using support::violationsIn;
using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;

json goodSheet() {
    const Network network = support::smallClass(2);
    return json::parse(sheetToJson(network, dispatch(network, defaultOrder(network))));
}

int indexOf(const json& sheet, const std::string& key) {
    for (const json& row : sheet.at("activities")) {
        if (row.at("key") == key) {
            return row.at("index").get<int>();
        }
    }
    ADD_FAILURE() << "no activity " << key;
    return -1;
}

json& rowOf(json& sheet, const std::string& key) {
    return sheet.at("activities").at(static_cast<std::size_t>(indexOf(sheet, key)));
}

json& activityOf(json& sheet, const std::string& key) {
    return sheet.at("network").at("activities").at(static_cast<std::size_t>(indexOf(sheet, key)));
}

json& handOf(json& sheet, const std::string& key, const std::string& work) {
    for (json& row : sheet.at("hands")) {
        if (row.at("key") == key && row.at("work") == work) {
            return row;
        }
    }
    throw std::runtime_error("no " + work + " of " + key);
}

void eraseHand(json& sheet, const std::string& key, const std::string& work) {
    json kept = json::array();
    for (const json& row : sheet.at("hands")) {
        if (row.at("key") != key || row.at("work") != work) {
            kept.push_back(row);
        }
    }
    sheet.at("hands") = std::move(kept);
}

void shift(json& row, const char* from, const char* to, int by) {
    row[from] = row[from].get<int>() + by;
    row[to] = row[to].get<int>() + by;
}

std::vector<std::string> violationsAfter(const std::function<void(json&)>& mutate) {
    json sheet = goodSheet();
    mutate(sheet);
    return violationsIn(sheet.dump());
}

}  // namespace

TEST(SheetChecker, PassesAGoodSheet) {
    EXPECT_THAT(violationsIn(goodSheet().dump()), testing::IsEmpty());
}

TEST(SheetChecker, FindsTextThatIsNoSheet) {
    EXPECT_FALSE(violationsIn("not json").empty());
    EXPECT_FALSE(violationsIn("{\"network\": {}}").empty());
}

TEST(SheetChecker, FindsAMissingActivity) {
    EXPECT_THAT(violationsAfter([](json& s) { s.at("activities").erase(3); }), Contains(HasSubstr("places")));
}

TEST(SheetChecker, FindsAnActivityCutShort) {
    EXPECT_THAT(violationsAfter([](json& s) { activityOf(s, "pot")["duration"]["likely"] = 9000; }),
                Contains(AllOf(HasSubstr("pot"), HasSubstr("less than"))));
}

TEST(SheetChecker, FindsABrokenOrder) {
    EXPECT_THAT(violationsAfter([](json& s) { activityOf(s, "tray")["after"].push_back(indexOf(s, "fill")); }),
                Contains(AllOf(HasSubstr("tray"), HasSubstr("before"))));
}

TEST(SheetChecker, FindsAHandUsedTwice) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    for (json& row : s.at("hands")) {
                        row["hand"] = 0;
                    }
                }),
                Contains(HasSubstr("hand 0 does two things")));
}

TEST(SheetChecker, FindsAHandTooMany) {
    EXPECT_THAT(violationsAfter([](json& s) { handOf(s, "fill", "work")["hand"] = 2; }),
                Contains(HasSubstr("hand 2 is not one of 2")));
}

TEST(SheetChecker, FindsTheWrongPersonAtIt) {
    EXPECT_THAT(violationsAfter([](json& s) { handOf(s, "class/opening", "work")["hand"] = 1; }),
                Contains(HasSubstr("only the presenter")));
}

TEST(SheetChecker, FindsHandWorkCutShort) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    json& row = handOf(s, "fill", "work");
                    row["to"] = row["to"].get<int>() - 10;
                }),
                Contains(HasSubstr("hands work on it for")));
}

TEST(SheetChecker, FindsAnUnpausableStepInTwoPieces) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    json& row = handOf(s, "class/closing", "work");
                    json second = row;
                    const int middle = row["from"].get<int>() + 60;
                    row["to"] = middle;
                    second["from"] = middle;
                    second["ordinal"] = 2;
                    s.at("hands").push_back(second);
                }),
                Contains(HasSubstr("may not be left")));
}

TEST(SheetChecker, FindsMissingHandWork) {
    EXPECT_THAT(violationsAfter([](json& s) { eraseHand(s, "fill", "work"); }),
                Contains(HasSubstr("fill: hands work on it for 0 s")));
}

TEST(SheetChecker, FindsMissingSettingUp) {
    EXPECT_THAT(violationsAfter([](json& s) { eraseHand(s, "pot", "start"); }),
                Contains(HasSubstr("pot: it is set up 0 times")));
}

TEST(SheetChecker, FindsLateSettingUp) {
    EXPECT_THAT(violationsAfter([](json& s) { shift(handOf(s, "pot", "start"), "from", "to", 5); }),
                Contains(HasSubstr("right at its start")));
}

TEST(SheetChecker, FindsMissingEndWork) {
    EXPECT_THAT(violationsAfter([](json& s) { eraseHand(s, "canner/load-1/heat-up", "end"); }),
                Contains(HasSubstr("it is ended 0 times")));
}

TEST(SheetChecker, FindsEndWorkBeforeTheEnd) {
    EXPECT_THAT(violationsAfter([](json& s) { shift(handOf(s, "canner/load-1/heat-up", "end"), "from", "to", -5); }),
                Contains(HasSubstr("right at its end")));
}

TEST(SheetChecker, FindsAMissingLook) {
    EXPECT_THAT(violationsAfter([](json& s) { eraseHand(s, "tray", "pulse"); }),
                Contains(HasSubstr("looks are late by")));
}

TEST(SheetChecker, FindsLateLooksCriedWolf) {
    EXPECT_THAT(violationsAfter([](json& s) { s["late_looks"] = 5; }), Contains(HasSubstr("looks are late by 0 s")));
}

TEST(SheetChecker, FindsAMissingLastLook) {
    EXPECT_THAT(violationsAfter([](json& s) { eraseHand(s, "tray", "end"); }),
                Contains(HasSubstr("tray: it is ended 0 times")));
}

TEST(SheetChecker, FindsAHastyLook) {
    EXPECT_THAT(violationsAfter([](json& s) { activityOf(s, "tray")["pulse"]["gap_low"] = 119; }),
                Contains(HasSubstr("comes only")));
}

TEST(SheetChecker, FindsAWrongStation) {
    EXPECT_THAT(violationsAfter([](json& s) { s.at("stations").at(0)["station"] = 7; }),
                Contains(HasSubstr("cannot serve")));
}

TEST(SheetChecker, FindsAStationLetGoEarly) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    json& row = s.at("stations").at(0);
                    row["to"] = row["to"].get<int>() - 1;
                }),
                Contains(HasSubstr("is used from")));
}

TEST(SheetChecker, FindsAStationHeldTwice) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    // The second load is said to stand in the canner from the start of the first.
                    json* first = nullptr;
                    for (json& row : s.at("stations")) {
                        if (row.at("vessel") == "canner") {
                            if (first != nullptr) {
                                row["from"] = first->at("from");
                            }
                            first = &row;
                        }
                    }
                }),
                Contains(HasSubstr("holds two things")));
}

TEST(SheetChecker, FindsAMissingStation) {
    EXPECT_THAT(violationsAfter([](json& s) { s.at("stations").erase(0); }),
                Contains(HasSubstr("0 spans on stations")));
}

TEST(SheetChecker, FindsASilentlyStretchedLimit) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    json limit = s.at("network").at("limits").at(0);
                    limit["from"] = indexOf(s, "class/opening");
                    limit["to"] = indexOf(s, "class/closing");
                    s.at("network").at("limits").push_back(limit);
                }),
                Contains(HasSubstr("in silence")));
}

TEST(SheetChecker, FindsALimitCriedWolf) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    s.at("broken_limits").push_back({{"limit", 0}, {"wait", 1000}});
                    s["feasible"] = false;
                }),
                Contains(HasSubstr("and is not")));
}

TEST(SheetChecker, FindsAProcessUnderItsTime) {
    EXPECT_THAT(violationsAfter([](json& s) { s.at("network").at("loads").at(0)["process_time"] = 901; }),
                Contains(HasSubstr("shorter than the published")));
}

TEST(SheetChecker, FindsAShortRest) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    json& row = rowOf(s, "canner/load-1/rest");
                    row["end"] = row["start"].get<int>() + 299;
                }),
                Contains(HasSubstr("shorter than five minutes")));
}

TEST(SheetChecker, FindsACannerOutOfOrder) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    activityOf(s, "canner/load-1/lift")["after"] = json::array();
                    shift(rowOf(s, "canner/load-1/lift"), "start", "end", -100);
                    shift(handOf(s, "canner/load-1/lift", "work"), "from", "to", -100);
                }),
                Contains(HasSubstr("load-1/lift comes before")));
}

TEST(SheetChecker, FindsAWrongClassEnd) {
    EXPECT_THAT(violationsAfter([](json& s) { s["class_end"] = s["class_end"].get<int>() - 1; }),
                Contains(HasSubstr("the class ends at")));
}

TEST(SheetChecker, FindsAWrongKitchenEnd) {
    EXPECT_THAT(violationsAfter([](json& s) { s["kitchen_end"] = s["kitchen_end"].get<int>() - 1; }),
                Contains(HasSubstr("the kitchen ends at")));
}

TEST(SheetChecker, FindsABoundAboveTheSheet) {
    EXPECT_THAT(violationsAfter([](json& s) { s["lower_bound"] = s["kitchen_end"].get<int>() + 1; }),
                Contains(HasSubstr("no sheet is said to end before")));
}

TEST(SheetChecker, FindsAFeasibleSheetThatDeniesIt) {
    EXPECT_THAT(violationsAfter([](json& s) { s["feasible"] = false; }), Contains(HasSubstr("denies it")));
}

TEST(SheetChecker, FindsTalkOverWork) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    json& row = s.at("talk").at(0);
                    const int length = row["to"].get<int>() - row["from"].get<int>();
                    row["from"] = 10;
                    row["to"] = 10 + length;
                }),
                Contains(HasSubstr("falls on other work")));
}

TEST(SheetChecker, FindsARewrittenPast) {
    const json sheet = goodSheet();
    support::Past past;
    past.now = 50;
    past.activities.resize(sheet.at("activities").size());
    past.activities[static_cast<std::size_t>(indexOf(sheet, "class/opening"))].started = 5;
    const auto found = violationsIn(sheet.dump(), past);
    EXPECT_THAT(found, Contains(HasSubstr("started at 5 and the sheet says 0")));
    EXPECT_THAT(found, Contains(HasSubstr("which is past")));
}

TEST(SheetChecker, FindsAFalseReason) {
    EXPECT_THAT(violationsAfter([](json& s) {
                    rowOf(s, "fill")["reason"] = "after";
                    rowOf(s, "fill")["waited_for"] = indexOf(s, "class/opening");
                }),
                Contains(HasSubstr("is said to follow")));
}

}  // namespace brinebell
