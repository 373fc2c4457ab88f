// Two programs on one logbook: one teaches, the other is told so, and reads whenever it likes.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include "logbook/PatientLog.h"
#include "soak/Folder.h"
#include "soak/Teacher.h"
#include "support/SmallClass.h"

namespace brinebell::soak {
namespace {

class SecondCopy : public testing::Test {
protected:
    /// The first program: teaches a class, says "begun" and a letter for each press, and stays until it is killed.
    void SetUp() override {
        ASSERT_EQ(::pipe(m_ends), 0);
        m_first = ::fork();
        if (m_first == 0) {
            ManualClock clock = clockOfClass();
            auto logbook = Logbook::open(m_path);
            auto log = logbook->begin(m_network, false, clock.now().utc);
            say("b");
            SessionRunner runner(m_network, clock, **log);
            std::vector<Press> presses = taughtClass(m_network, 3);
            presses.resize(presses.size() / 2);
            play(runner, clock, presses, [] {});
            while (runner.events().size() < 400) {
                Command note;
                note.kind = CommandKind::AddNote;
                note.text = "still here";
                runner.perform(note, Cause::Key);
                if (!runner.fault()) {
                    say("p");
                }
            }
            say("e");
            for (;;) {
                ::pause();
            }
        }
        char begun = '?';
        ASSERT_EQ(::read(m_ends[0], &begun, 1), 1);
        ASSERT_EQ(begun, 'b');
    }
    void TearDown() override {
        killFirst();
        ::close(m_ends[0]);
        ::close(m_ends[1]);
    }
    void killFirst() {
        if (m_first > 0) {
            ::kill(m_first, SIGKILL);
            ::waitpid(m_first, nullptr, 0);
            m_first = 0;
        }
    }
    bool isEnded() {
        char letter = '?';
        return ::read(m_ends[0], &letter, 1) == 1 && letter == 'e';
    }
    void say(const char* letter) const {
        const ssize_t written = ::write(m_ends[1], letter, 1);
        static_cast<void>(written);
    }

    Folder m_folder;
    std::string m_path = m_folder.file("logbook.sqlite");
    Network m_network = support::smallClass();
    pid_t m_first = 0;
    int m_ends[2] = {-1, -1};
};

TEST_F(SecondCopy, ReadsWhileTheFirstTeachesAndRehearsesBesideIt) {
    auto logbook = Logbook::open(m_path);
    ASSERT_TRUE(logbook) << describe(logbook.error());
    const std::string id =
        logbook->unfinished()->has_value() ? (*logbook->unfinished())->id : logbook->sessions()->back().id;
    auto rehearsal = logbook->begin(m_network, true, kClassStart);
    ASSERT_TRUE(rehearsal) << describe(rehearsal.error());
    std::size_t reads = 0, known = 0;
    std::int64_t rehearsed = 0;
    while (!isEnded()) {
        const auto read = Logbook::openReadOnly(m_path);
        ASSERT_TRUE(read) << describe(read.error());
        const auto record = read->session(id);
        ASSERT_TRUE(record) << describe(record.error());
        EXPECT_GE(record->events.size(), known);
        EXPECT_TRUE(replay(record->network, record->events));
        known = record->events.size();
        ++reads;
        Event note;
        note.sequence = ++rehearsed;
        note.at = clockOfClass().now();
        const auto stored = (*rehearsal)->append(std::vector{note});
        ASSERT_TRUE(stored) << describe(stored.error());
    }
    EXPECT_GE(reads, 50U);
    EXPECT_GE(known, 300U);
}

TEST_F(SecondCopy, IsToldThatAClassRunsAndTakesOverWhenItsProgramIsGone) {
    auto logbook = Logbook::open(m_path);
    ASSERT_TRUE(logbook);
    const std::string first = logbook->sessions()->front().id;
    EXPECT_EQ(logbook->begin(m_network, false, kClassStart).error().code, ErrorCode::Conflict);
    EXPECT_EQ(logbook->reopen(first).error().code, ErrorCode::Conflict);

    // A class that is begun in spite of it goes on, and says why it is not saved.
    ManualClock clock = clockOfClass();
    PatientLog store(*logbook, m_network, false, kClassStart);
    SessionRunner runner(m_network, clock, store);
    Command start;
    start.kind = CommandKind::StartSession;
    start.value = 1;
    EXPECT_FALSE(runner.perform(start, Cause::Key));
    EXPECT_TRUE(runner.state().started);
    ASSERT_TRUE(runner.fault());
    EXPECT_THAT(runner.fault()->message, testing::HasSubstr("already running"));
    EXPECT_EQ(logbook->sessions()->size(), 1U);

    killFirst();
    runner.watch();
    EXPECT_FALSE(runner.fault());
    EXPECT_EQ(logbook->session(*store.sessionId())->events, runner.events());
    EXPECT_EQ(logbook->reopen(first).error().code, ErrorCode::Conflict) << "two live sessions at a time";
}

TEST_F(SecondCopy, TakesUpTheClassOfAProgramThatIsGone) {
    while (!isEnded()) {
    }
    killFirst();
    auto logbook = Logbook::open(m_path);
    const auto unfinished = logbook->unfinished();
    ASSERT_TRUE(unfinished && *unfinished);
    EXPECT_EQ((*unfinished)->events, 400);
    EXPECT_TRUE(logbook->reopen((*unfinished)->id));
}

}  // namespace
}  // namespace brinebell::soak
