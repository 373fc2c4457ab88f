// Logbooks of an earlier version, and the records of the other canners.
//
// tests/data/older/boiling-water.sqlite was written by the version before pressure canners: a rehearsal of the
// demonstration class with a lost boil, then two seal checks, the first an hour after the kitchen was closed. The text
// beside it is that version's own batch record, so what it holds is what the session was lived to then.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

#include "LogbookSupport.h"
#include "logbook/BatchRecord.h"
#include "logbook/LoadHistory.h"
#include "plan/ClassFile.h"
#include "plan/Unfold.h"
#include "session/Rehearsal.h"
#include "support/MemoryStore.h"

namespace brinebell {
namespace {

using testing::HasSubstr;
using testing::Not;

const std::string kData = BRINEBELL_TEST_DATA;

SessionRecord olderRecord(const test::ScratchFolder& folder) {
    test::writeBytes(folder.path("older.sqlite"), test::bytesOf(kData + "/older/boiling-water.sqlite"));
    const auto logbook = Logbook::open(folder.path("older.sqlite"));
    return logbook.value().session("d6ea20a4").value();
}

SessionRecord rehearsed(const std::string& kind, bool lost = false) {
    const auto plan = readClassFile(kData + "/canners/" + kind + "-class.toml");
    Network network = unfold(plan.value()).value();
    support::MemoryStore store;
    RehearsalOptions options;
    options.loseBoilOnce = lost;
    auto events = rehearse(network, store, options).value();
    return test::recordOf(network, std::move(events));
}

// A second count of the last load's seals, `hours` after the first.
Event sealCheck(const SessionRecord& record, std::chrono::hours after, int sealed, int unsealed, std::int64_t early) {
    Event check;
    check.sequence = static_cast<std::int64_t>(record.events.size()) + 1;
    check.kind = EventKind::SealsChecked;
    check.at = record.events.back().at;
    check.at.boot += after;
    check.at.utc += after;
    check.load = 0;
    check.sealed = sealed;
    check.unsealed = unsealed;
    check.value = early;
    check.text = "Ines Calder";
    return check;
}

}  // namespace

TEST(OlderLogbook, BatchRecordIsTheOneOfItsDayWithTheSafetyWordsBelow) {
    const test::ScratchFolder folder;
    const std::string now = batchRecord(olderRecord(folder)).value();
    const std::string then = test::bytesOf(kData + "/older/boiling-water-record.txt");
    EXPECT_EQ(now.substr(0, then.size()), then);
    EXPECT_EQ(now.substr(then.size(), 7), "\nSafety");
}

TEST(OlderLogbook, ReplaysToTheStatesThatWereLived) {
    const test::ScratchFolder folder;
    const SessionRecord record = olderRecord(folder);
    EXPECT_EQ(record.events.size(), 89U);
    const State state = historyOf(record).value().state;
    ASSERT_EQ(state.loads.size(), 2U);
    EXPECT_TRUE(state.closed);
    EXPECT_EQ(state.loads[0].phase, LoadPhase::SealsChecked);
    EXPECT_EQ(state.loads[0].boilsLost, 1);
    EXPECT_EQ(state.loads[0].sealed, 4);
    // From the record of its day: heat off 01:11:09 and lifted 01:17:43 of a class begun at 00:00:00.
    EXPECT_EQ(std::chrono::floor<Seconds>(*state.loads[0].heatOff), Seconds(4269));
    EXPECT_EQ(std::chrono::floor<Seconds>(*state.loads[0].lifted), Seconds(4663));
    EXPECT_EQ(state.loads[1].sealed, 2);
    EXPECT_FALSE(state.loads[0].waterChecked);
}

TEST(OlderLogbook, EveryPrefixReplays) {
    const test::ScratchFolder folder;
    const SessionRecord record = olderRecord(folder);
    State state = initialState(record.network);
    std::size_t applied = 0;
    for (const Event& event : record.events) {
        auto next = apply(record.network, std::move(state), event);
        ASSERT_TRUE(next.has_value()) << event.sequence;
        state = std::move(*next);
        ++applied;
    }
    EXPECT_EQ(applied, 89U);
}

TEST(CannerRecord, TellsWaterVentingAndPressure) {
    const std::string text = batchRecord(rehearsed("dial")).value();
    for (const char* line :
         {"Water confirmed         ", "Venting required        10 min", "Steam seen at           ",
          "Vent closed at          ", "Gauge pressure required 13 psi", "Process time required   20 min",
          "13 psi, entered by a held key", "Pressure gone           "}) {
        EXPECT_THAT(text, HasSubstr(line));
    }
    EXPECT_THAT(text, Not(HasSubstr("Boil seen")));
}

TEST(CannerRecord, TellsALostPressure) {
    EXPECT_THAT(batchRecord(rehearsed("dial", true)).value(), HasSubstr("PRESSURE LOST at"));
}

TEST(CannerRecord, TellsLostSteamAtASteamCanner) {
    const std::string text = batchRecord(rehearsed("steam", true)).value();
    EXPECT_THAT(text, HasSubstr("Full steam seen at"));
    EXPECT_THAT(text, HasSubstr("STEAM LOST at"));
}

// The second confirmation wrote over the first one.
TEST(CannerRecord, TellsEveryWaterBeforeItsCount) {
    const std::string text = batchRecord(rehearsed("steam", true)).value();
    std::vector<std::string> order;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        for (const char* name : {"Water confirmed", "Full steam seen at", "STEAM LOST at", "Count complete at"}) {
            if (line.rfind(name, 0) == 0) {
                order.emplace_back(name);
            }
        }
        if (order.size() == 6) {  // of the first load
            break;
        }
    }
    EXPECT_THAT(order, testing::ElementsAre("Water confirmed", "Full steam seen at", "STEAM LOST at", "Water confirmed",
                                            "Full steam seen at", "Count complete at"));
}

TEST(CannerRecord, TellsDeepWater) {
    EXPECT_THAT(batchRecord(rehearsed("deep")).value(), HasSubstr("Water 2 in over the lids, lid on"));
}

TEST(CannerRecord, KeepsACorrectedCountOfTheSeals) {
    SessionRecord record = rehearsed("deep");
    record.events.push_back(sealCheck(record, std::chrono::hours(14), 4, 0, 0));
    record.events.push_back(sealCheck(record, std::chrono::hours(1), 3, 1, 0));
    const std::string text = batchRecord(record).value();
    EXPECT_THAT(text, HasSubstr("Seals counted before"));
    EXPECT_THAT(text, HasSubstr("3 sealed, 1 unsealed, 0 broken"));
    EXPECT_THAT(text, Not(HasSubstr("SEALS CHECKED EARLY")));
}

TEST(CannerRecord, TellsSealsThatWereCountedEarly) {
    SessionRecord record = rehearsed("deep");
    record.events.push_back(sealCheck(record, std::chrono::hours(2), 4, 0, 1));
    EXPECT_THAT(batchRecord(record).value(), HasSubstr("SEALS CHECKED EARLY"));
}

}  // namespace brinebell
