// A day of 24 hours and more than 20,000 events: memory stays flat, no press costs more than at the start, and every
// cue stands at its moment, to the millisecond, from the first hour to the last.
#include "support/LongDay.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace brinebell {

namespace {

using support::LongDay;

/// A store that keeps nothing, so that only the session's own memory is measured.
class Forgetting final : public EventStore {
public:
    Result<void> append(std::span<const Event> batch) override {
        count += batch.size();
        return {};
    }
    std::size_t count = 0;
};

}  // namespace

TEST(LongDay, IsFlatInMemoryAndTimeAndExactInItsCues) {
    Forgetting nowhere;
    LongDay day(nowhere);
    day.run();
    for (const std::string& complaint : day.complaints) {
        ADD_FAILURE() << complaint;
        break;
    }
    const std::size_t events = day.runner().events().size();
    EXPECT_GE(events, 20'000U);
    EXPECT_EQ(nowhere.count, events);
    EXPECT_GE(day.cues, 750U);

    ASSERT_GE(day.inUse.size(), 23U);
    const std::size_t early = day.inUse[2], late = day.inUse.back();
    fmt::print("{} events, {} cues at their moment; in use beside the log: {} kB after 3 h, {} kB after 24 h\n", events,
               day.cues, early / 1024, late / 1024);
    fmt::print("processor time an event: {:.1f} us in hour 3, {:.1f} us in hour 24\n", day.perEvent[2] * 1e6,
               day.perEvent.back() * 1e6);
    // The pauses for questions are kept to the end of the class: 16 to 24 bytes each.
    EXPECT_LE(late, early + 512U * 1024U);

    // What a restart does: the whole day replayed gives what was lived.
    const auto again = replay(day.runner().network(), day.runner().events());
    ASSERT_TRUE(again) << again.error().message;
    EXPECT_TRUE(*again == day.runner().state());
    EXPECT_LE(again->undo.size(), kUndoDepth);
    EXPECT_LE(again->kept.size(), kUndoDepth);
}

}  // namespace brinebell
