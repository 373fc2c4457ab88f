// A session that began while its logbook could not take it.
#include "logbook/PatientLog.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "LogbookSupport.h"

namespace brinebell {
namespace {

class Patience : public testing::Test {
protected:
    std::vector<Event> events() { return test::livedEvening(m_network); }

    test::ScratchFolder m_folder;
    std::string m_path = m_folder.path("data/logbook.sqlite");
    Network m_network = test::smallNetwork();
};

TEST_F(Patience, OpensTheLogbookWhenItCanAndWritesAllThatWaited) {
    test::writeBytes(m_folder.path("data"), "a file where the folder should be");
    PatientLog log(m_path, m_network, false, test::kStart);
    const Result<void> refused = log.append(events());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Io);
    EXPECT_FALSE(log.sessionId());
    std::filesystem::remove(m_folder.path("data"));
    ASSERT_TRUE(log.append(events()));
    ASSERT_TRUE(log.sessionId());
    EXPECT_EQ(Logbook::openReadOnly(m_path)->session(*log.sessionId())->events, events());
}

TEST_F(Patience, BeginsOnceTheOtherLiveSessionHasEnded) {
    auto logbook = Logbook::open(m_path);
    ASSERT_TRUE(logbook);
    auto live = logbook->begin(m_network, false, test::kStart);
    ASSERT_TRUE(live);
    PatientLog log(*logbook, m_network, false, test::kStart);
    EXPECT_EQ(log.append(events()).error().code, ErrorCode::Conflict);
    live->reset();
    ASSERT_TRUE(log.append(events()));
    EXPECT_EQ(logbook->session(*log.sessionId())->events, events());
}

TEST_F(Patience, GoesOnInTheSessionItHasBegun) {
    PatientLog log(m_path, m_network, false, test::kStart);
    std::vector<Event> all = events();
    ASSERT_TRUE(log.append(std::span(all).first(3)));
    ASSERT_TRUE(log.append(std::span(all).subspan(3)));
    const auto logbook = Logbook::openReadOnly(m_path);
    EXPECT_EQ(logbook->sessions()->size(), 1U);
    EXPECT_EQ(logbook->session(*log.sessionId())->events, all);
}

}  // namespace
}  // namespace brinebell
