// What is done the day after: seals that wait for their check, and what is told to a closed session.
#include "logbook/Afterwards.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "LogbookSupport.h"
#include "logbook/BatchRecord.h"
#include "logbook/Export.h"
#include "logbook/Import.h"
#include "logbook/LoadHistory.h"

namespace brinebell {
namespace {

using test::after;
using test::livedEvening;
using test::recordOf;
using test::ScratchFolder;
using test::smallNetwork;
using testing::HasSubstr;
using testing::Not;
using testing::SizeIs;
using Standing = SealsOpen::Standing;

constexpr std::int64_t kHour = 3600;
constexpr std::int64_t kLifted = 4600;  // of livedEvening()

class AfterClass : public testing::Test {
protected:
    /// The evening up to its close; its second load was set aside.
    void SetUp() override {
        std::vector<Event> events = livedEvening(m_network);
        events.pop_back();
        m_record = recordOf(m_network, events);
        ASSERT_TRUE(m_logbook.add(m_record));
    }
    std::vector<SealsOpen> openAt(std::int64_t seconds) const { return sealsOpen(m_logbook, after(seconds)).value(); }
    Result<std::optional<Refusal>> tell(const std::vector<Command>& commands, std::int64_t seconds) {
        return tellAfterwards(m_logbook, m_record.info.id, commands, after(seconds), Cause::Key);
    }
    std::optional<Refusal> told(const std::vector<Command>& commands, std::int64_t seconds) {
        return tell(commands, seconds).value();
    }
    SessionRecord kept() const { return m_logbook.session(m_record.info.id).value(); }
    Command check(int sealed, int unsealed, int broken) const {
        Command command;
        command.kind = CommandKind::CheckSeals;
        command.load = 0;
        command.sealed = sealed;
        command.unsealed = unsealed;
        command.broken = broken;
        command.text = "Ines Calder";
        return command;
    }
    static Command went(std::int64_t which, std::string_view place) {
        Command command;
        command.kind = CommandKind::TellJarsWent;
        command.load = 0;
        command.value = which;
        command.text = place;
        return command;
    }

    ScratchFolder m_folder;
    Network m_network = smallNetwork();
    Logbook m_logbook = Logbook::open(m_folder.path("logbook.sqlite")).value();
    SessionRecord m_record;
    int m_jars = m_network.loads[0].jars;
};

TEST_F(AfterClass, SealsAreDueFromTwelveToTwentyFourHoursAfterCoolingBegan) {
    const std::pair<std::int64_t, Standing> rows[] = {
        {kLifted + kHour, Standing::Cooling},       {kLifted + 12 * kHour - 1, Standing::Cooling},
        {kLifted + 12 * kHour, Standing::Due},      {kLifted + 24 * kHour, Standing::Due},
        {kLifted + 24 * kHour + 1, Standing::Late}, {kLifted + 59 * 24 * kHour, Standing::Late},
    };
    for (const auto& [seconds, standing] : rows) {
        const std::vector<SealsOpen> open = openAt(seconds);
        ASSERT_THAT(open, SizeIs(1)) << seconds;  // the load set aside has no seals to check
        EXPECT_EQ(open[0].standing(), standing) << seconds;
        EXPECT_EQ(open[0].load, 0);
        EXPECT_EQ(open[0].jars, m_jars);
        EXPECT_EQ(open[0].liftedUtc, after(kLifted).utc);
    }
    EXPECT_THAT(openAt(61 * 24 * kHour), SizeIs(0));  // nobody knows the jars any more
}

TEST_F(AfterClass, RehearsalHasNoSealsToCheck) {
    SessionRecord rehearsal = m_record;
    rehearsal.info.id = "fedcba9876543210fedcba9876543210";
    rehearsal.info.rehearsal = true;
    rehearsal.events.front().value = 2;
    ASSERT_TRUE(m_logbook.add(rehearsal));
    EXPECT_THAT(openAt(20 * kHour), SizeIs(1));
}

TEST_F(AfterClass, CheckThatIsToldIsKeptAndAsksNoMore) {
    ASSERT_EQ(told({check(m_jars - 1, 1, 0), went(kUnsealedJars, "refrigerated"), went(kWholeLoad, "taken-home")},
                   kLifted + 14 * kHour),
              std::nullopt);
    EXPECT_THAT(openAt(20 * kHour), SizeIs(0));
    const SessionHistory history = historyOf(kept()).value();
    EXPECT_EQ(history.loads[0].state.sealed, m_jars - 1);
    EXPECT_EQ(history.loads[0].sealsCheckedBy, "Ines Calder");
    EXPECT_EQ(history.loads[0].unsealedWent, JarsPlace::Refrigerated);
    EXPECT_EQ(history.loads[0].jarsWent, JarsPlace::TakenHome);
    const std::string record = batchRecord(kept()).value();
    EXPECT_THAT(record, HasSubstr("Unsealed jars went      refrigerated"));
    EXPECT_THAT(record, HasSubstr("Disposition             taken home"));
    EXPECT_THAT(record, Not(HasSubstr("CHECKED LATE")));
}

TEST_F(AfterClass, LateCheckIsSaidToBeLate) {
    ASSERT_EQ(told({check(m_jars, 0, 0)}, kLifted + 30 * kHour), std::nullopt);
    EXPECT_TRUE(historyOf(kept())->loads[0].sealChecks.back().isLate());
    EXPECT_THAT(batchRecord(kept()).value(), HasSubstr("SEALS CHECKED LATE      30 h after cooling began"));
}

TEST_F(AfterClass, WhatDoesNotFitIsRefusedAndNothingIsKept) {
    const std::size_t events = kept().events.size();
    const auto reasonOf = [&](const std::vector<Command>& commands, std::int64_t seconds) {
        return tell(commands, seconds).value().value().reason;
    };
    EXPECT_EQ(reasonOf({check(m_jars, 1, 0)}, kLifted + 14 * kHour), RefusalReason::CountMismatch);
    EXPECT_EQ(reasonOf({check(m_jars, 0, 0)}, kLifted + kHour), RefusalReason::SealsTooEarly);
    EXPECT_EQ(reasonOf({went(kUnsealedJars, "frozen")}, kLifted + 14 * kHour), RefusalReason::NoUnsealedJars);
    EXPECT_EQ(reasonOf({went(kWholeLoad, "under the bed")}, kLifted + 14 * kHour), RefusalReason::UnknownPlace);
    // The first is sound; the second takes it down with it.
    EXPECT_EQ(reasonOf({check(m_jars, 0, 0), went(kUnsealedJars, "frozen")}, kLifted + 14 * kHour),
              RefusalReason::NoUnsealedJars);
    EXPECT_EQ(kept().events.size(), events);
    EXPECT_THAT(openAt(20 * kHour), SizeIs(1));
}

TEST_F(AfterClass, JarsThatWereTakenHomeUncheckedAskNoMore) {
    ASSERT_EQ(told({went(kWholeLoad, "taken-home-unchecked")}, kLifted + kHour), std::nullopt);
    EXPECT_THAT(openAt(20 * kHour), SizeIs(0));
    EXPECT_THAT(batchRecord(kept()).value(), HasSubstr("taken home before the seals were tested"));
}

TEST_F(AfterClass, FiguresForTheReportAreKeptWithinBounds) {
    Command figure;
    figure.kind = CommandKind::ReportFigure;
    figure.text = "attending";
    figure.value = 14;
    ASSERT_EQ(told({figure}, 20 * kHour), std::nullopt);
    figure.value = 15;
    ASSERT_EQ(told({figure}, 20 * kHour), std::nullopt);
    EXPECT_EQ(figureIn(kept(), ReportFigure::Attending), 15);  // the later one corrects
    EXPECT_EQ(figureIn(kept(), ReportFigure::Accidents), std::nullopt);
    figure.value = 2'001;
    EXPECT_EQ(tell({figure}, 20 * kHour)->value(),
              (Refusal{RefusalReason::FigureOutOfRange, static_cast<int>(ReportFigure::Attending), {}}));
    figure.text = "cats";
    EXPECT_EQ(tell({figure}, 20 * kHour)->value().reason, RefusalReason::UnknownFigure);
}

TEST_F(AfterClass, WhatWasToldIsExportedAndComesBack) {
    ASSERT_EQ(told({check(m_jars - 1, 1, 0), went(kUnsealedJars, "frozen")}, kLifted + 14 * kHour), std::nullopt);
    const Result<SessionRecord> read = sessionFromJson(sessionJson(kept()));
    ASSERT_TRUE(read) << describe(read.error());
    EXPECT_EQ(read->events, kept().events);
}

TEST(AfterClassWords, AreReadBack) {
    int checked = 0;
    for (const JarsPlace place : kJarsPlaces) {
        EXPECT_EQ(jarsPlaceFromText(toText(place)), place);
        ++checked;
    }
    for (const ReportFigure figure : kReportFigures) {
        EXPECT_EQ(reportFigureFromText(toText(figure)), figure);
        ++checked;
    }
    EXPECT_EQ(checked, 13);
}

}  // namespace
}  // namespace brinebell
