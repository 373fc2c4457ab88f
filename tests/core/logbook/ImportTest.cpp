// Sessions that come from elsewhere: whole ones go in once, everything else is told and leaves no trace.
#include "logbook/Import.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "LogbookSupport.h"
#include "logbook/Export.h"

namespace brinebell {
namespace {

using test::ScratchFolder;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

/// A class that was lived to its end, with a time that is published: chile salsa, 20 min from 1,001 ft to 6,000 ft
/// (AIB 539 Guide 3).
SessionRecord closedEvening() {
    Network network = test::smallNetwork();
    for (Load& load : network.loads) {
        load.tableEntry = "chile-salsa.hot, 1,001 ft to 6,000 ft";
    }
    SessionRecord record = test::recordOf(network, test::livedEvening(network));
    record.info.rehearsal = false;
    return record;
}

class Import : public testing::Test {
protected:
    std::string fileWith(const std::string& name, const std::string& text) {
        test::writeBytes(m_folder.path(name), text);
        return m_folder.path(name);
    }
    ImportReport import(const std::vector<std::string>& files) { return importFiles(m_logbook, files); }

    ScratchFolder m_folder;
    Logbook m_logbook = std::move(*Logbook::open(m_folder.path("mine.sqlite")));
    SessionRecord m_record = closedEvening();
};

TEST_F(Import, SessionComesBackFromItsDocument) {
    const Result<SessionRecord> back = sessionFromJson(sessionJson(m_record));
    ASSERT_TRUE(back) << describe(back.error());
    EXPECT_EQ(back->info.id, m_record.info.id);
    EXPECT_EQ(back->network, m_record.network);
    EXPECT_EQ(back->events, m_record.events);
}

TEST_F(Import, DocumentGoesInOnceHoweverOftenItIsBrought) {
    const std::string file = fileWith("evening.json", sessionJson(m_record));
    const ImportReport report = import({file, file});
    EXPECT_THAT(report.refused, IsEmpty());
    EXPECT_THAT(report.added, ElementsAre(m_record.info.id));
    EXPECT_THAT(report.known, ElementsAre(m_record.info.id));
    EXPECT_EQ(m_logbook.session(m_record.info.id)->events, m_record.events);
    EXPECT_EQ(sessionJson(*m_logbook.session(m_record.info.id)), sessionJson(m_record));
}

TEST_F(Import, LogbookOfAnotherTeacherIsMerged) {
    const std::string theirs = m_folder.path("theirs.sqlite");
    SessionRecord second = m_record;
    second.info.id.back() = '0';
    {
        Logbook logbook = std::move(*Logbook::open(theirs));
        ASSERT_TRUE(logbook.add(m_record).value());
        ASSERT_TRUE(logbook.add(second).value());
    }
    ASSERT_TRUE(m_logbook.add(second).value());
    const ImportReport report = import({theirs});
    EXPECT_THAT(report.added, ElementsAre(m_record.info.id));
    EXPECT_THAT(report.known, ElementsAre(second.info.id));
    EXPECT_THAT(m_logbook.sessions().value(), SizeIs(2));
}

TEST_F(Import, DocumentCutAnywhereIsRefusedAndNothingChanges) {
    const std::string whole = sessionJson(m_record);
    int refused = 0;
    for (std::size_t length = 0; length + 1 < whole.size(); length += whole.size() / 97) {
        const ImportReport report = import({fileWith("cut.json", whole.substr(0, length))});
        ASSERT_THAT(report.refused, SizeIs(1)) << length;
        EXPECT_EQ(report.refused[0].error.where.file, m_folder.path("cut.json"));
        ++refused;
    }
    EXPECT_GE(refused, 97);
    EXPECT_THAT(m_logbook.sessions().value(), IsEmpty());
}

struct Edit {
    const char* pointer;
    nlohmann::json value;
    const char* told;
};

TEST_F(Import, EveryEditedFieldIsToldByName) {
    const Edit edits[] = {
        {"/session/id", "../../etc/passwd", "id"},
        {"/session/started_utc", "yesterday", "started_utc"},
        {"/session/rehearsal", "no", "rehearsal"},
        {"/network/activities/0/kind", "dance", "network"},
        {"/network/slot", nullptr, "network"},
        {"/events/0/kind", "danced", "kind of event 1"},
        {"/events/0/cause", "nobody", "cause of event 1"},
        {"/events/0/boot_id", "", "boot identity of event 1"},
        {"/events/1/activity", "nowhere/nothing", "activity of event 2"},
        {"/events/1/load", 99, "load of event 2"},
        {"/events/1/sealed", -1, "sealed"},
        {"/events/1/sequence", 7, "event 2 is missing"},
        {"/events/1/boot_ms", INT64_MIN, "boot_ms"},
        {"/events/1/boot_ms", INT64_MAX, "boot_ms"},
        {"/events/1/value", INT64_MAX, "value"},
        {"/events/2/text", 12, "text"},
        {"/events", "none", "events"},
    };
    int checked = 0;
    for (const Edit& edit : edits) {
        nlohmann::json document = nlohmann::json::parse(sessionJson(m_record));
        document[nlohmann::json::json_pointer(edit.pointer)] = edit.value;
        const ImportReport report = import({fileWith("edited.json", document.dump())});
        ASSERT_THAT(report.refused, SizeIs(1)) << edit.pointer;
        EXPECT_THAT(report.refused[0].error.message, HasSubstr(edit.told)) << edit.pointer;
        ++checked;
    }
    EXPECT_EQ(checked, 17);
    EXPECT_THAT(m_logbook.sessions().value(), IsEmpty());
}

TEST_F(Import, EventsThatDoNotFitEachOtherAreRefused) {
    nlohmann::json document = nlohmann::json::parse(sessionJson(m_record));
    document["events"][1]["kind"] = "heat-off";
    document["events"][1]["load"] = 0;
    EXPECT_THAT(import({fileWith("unfit.json", document.dump())}).refused, SizeIs(1));
}

TEST_F(Import, ClassThatIsNotClosedStaysWhereItRuns) {
    m_record.events.resize(5);
    const ImportReport report = import({fileWith("open.json", sessionJson(m_record))});
    ASSERT_THAT(report.refused, SizeIs(1));
    EXPECT_EQ(report.refused[0].session, m_record.info.id);
    EXPECT_THAT(report.refused[0].error.message, HasSubstr("not closed"));
}

TEST_F(Import, RehearsalDoesNotBecomeAClassByAnEdit) {
    m_record.events.front().value = 2;
    m_record.info.rehearsal = true;
    nlohmann::json document = nlohmann::json::parse(sessionJson(m_record));
    document["session"]["rehearsal"] = false;
    const ImportReport report = import({fileWith("edited.json", document.dump())});
    ASSERT_THAT(report.refused, SizeIs(1));
    EXPECT_THAT(report.refused[0].error.message, HasSubstr("started as a rehearsal"));
    document["session"]["rehearsal"] = true;
    EXPECT_THAT(import({fileWith("honest.json", document.dump())}).added, SizeIs(1));
}

TEST_F(Import, SessionThatNeverStartedIsRefused) {
    m_record.events.clear();
    m_record.info.rehearsal = true;
    const ImportReport report = import({fileWith("empty.json", sessionJson(m_record))});
    ASSERT_THAT(report.refused, SizeIs(1));
    EXPECT_THAT(report.refused[0].error.message, HasSubstr("never started"));
}

TEST_F(Import, StartOnAnotherDayThanItIsFiledUnderIsRefused) {
    m_record.info.startedUtc -= std::chrono::hours(25);
    EXPECT_THAT(import({fileWith("early.json", sessionJson(m_record))}).refused, SizeIs(1));
    m_record.info.startedUtc += std::chrono::hours(2);
    EXPECT_THAT(import({fileWith("near.json", sessionJson(m_record))}).added, SizeIs(1));
}

// 15 min to 1,000 ft, 20 to 6,000 ft and 25 above it (AIB 539 Guide 3, chile salsa in pints).
TEST_F(Import, LessThanThePublishedTimeIsRefused) {
    const auto refusal = [this](const auto& edit) {
        SessionRecord record = m_record;
        edit(record.network);
        const ImportReport report = import({fileWith("times.json", sessionJson(record))});
        return report.refused.empty() ? std::string("taken") : report.refused[0].error.message;
    };
    EXPECT_THAT(refusal([](Network& n) { n.altitude = "6,001 ft (survey map)"; }), HasSubstr("published table"));
    EXPECT_THAT(refusal([](Network& n) { n.altitude = "somewhere high"; }), HasSubstr("cannot be read"));
    EXPECT_THAT(refusal([](Network& n) { n.loads[0].jar = JarSize::Quart; }), HasSubstr("chile-salsa"));
    EXPECT_THAT(refusal([](Network& n) { n.loads[1].tableEntry = "my-own-table.hot, any altitude"; }),
                HasSubstr("my-own-table"));
    EXPECT_EQ(refusal([](Network& n) { n.altitude = "6,000 ft (survey map)"; }), "taken");
}

TEST_F(Import, LogbookWithLessThanThePublishedTimeIsRefused) {
    m_record.network.altitude = "6,001 ft (survey map)";
    const std::string theirs = m_folder.path("theirs.sqlite");
    ASSERT_TRUE(Logbook::open(theirs)->add(m_record).value());
    const ImportReport report = import({theirs});
    ASSERT_THAT(report.refused, SizeIs(1));
    EXPECT_THAT(report.refused[0].error.message, HasSubstr("not those of the published table"));
}

TEST_F(Import, AnotherTaleOfTheSameSessionIsRefusedAndTheFirstKept) {
    ASSERT_TRUE(m_logbook.add(m_record).value());
    SessionRecord other = m_record;
    other.events.back().cause = Cause::Mouse;
    const ImportReport report = import({fileWith("other.json", sessionJson(other))});
    ASSERT_THAT(report.refused, SizeIs(1));
    EXPECT_EQ(report.refused[0].error.code, ErrorCode::Conflict);
    EXPECT_EQ(m_logbook.session(m_record.info.id)->events, m_record.events);
}

TEST_F(Import, ForeignFilesAreRefused) {
    const std::string deep = std::string(100'000, '[') + std::string(100'000, ']');
    const ImportReport report =
        import({fileWith("deep.json", deep), fileWith("list.json", "[1, 2]"), fileWith("word.json", "\"session\""),
                fileWith("noise.sqlite", "SQLite format 3 and then nothing"), m_folder.path("missing.json")});
    EXPECT_THAT(report.refused, SizeIs(5));
    EXPECT_THAT(m_logbook.sessions().value(), IsEmpty());
}

TEST_F(Import, OneBadFileDoesNotKeepTheOthersOut) {
    const ImportReport report = import({fileWith("bad.json", "{"), fileWith("good.json", sessionJson(m_record))});
    EXPECT_THAT(report.refused, SizeIs(1));
    EXPECT_THAT(report.added, SizeIs(1));
}

}  // namespace
}  // namespace brinebell
