#include "bridge/SessionAdapter.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "bridge/ScaledClock.h"
#include "support/SmallClass.h"

namespace brinebell {
namespace {

const Stamp kStart{Millis(1'789'000'000'000), Millis(1'000), BootId{1, 2}};

class ListStore final : public EventStore {
public:
    Result<void> append(std::span<const Event> events) override {
        if (isBroken) {
            return fail(ErrorCode::Io, "no room left on the disk");
        }
        kept.insert(kept.end(), events.begin(), events.end());
        return {};
    }
    std::vector<Event> kept;
    bool isBroken = false;
};

struct Adapted {
    explicit Adapted(bool rehearsal = false) {
        auto owned = std::make_unique<ListStore>();
        store = owned.get();
        SessionKeep keep;
        keep.clock = &clock;
        keep.rehearsal = rehearsal;
        keep.store = std::move(owned);
        SessionRunner runner(support::smallClass(), clock, *store);
        adapter = std::make_unique<SessionAdapter>(std::move(runner), std::move(keep));
    }
    void tap() { adapter->perform(Command(adapter->guide().tap->command), Cause::Key); }

    ManualClock clock{kStart};
    ListStore* store = nullptr;
    std::unique_ptr<SessionAdapter> adapter;
};

TEST(SessionAdapter, TellsThatTheTapPromptChanged) {
    Adapted it;
    QSignalSpy changed(it.adapter.get(), &SessionAdapter::tapPromptChanged);
    it.tap();
    EXPECT_EQ(changed.count(), 1);
}

TEST(SessionAdapter, DoesNotTellOfAPromptThatStaysTheSame) {
    Adapted it;
    it.tap();
    QSignalSpy changed(it.adapter.get(), &SessionAdapter::tapPromptChanged);
    it.clock.advance(Millis(100));
    it.adapter->wake();
    EXPECT_EQ(changed.count(), 0);
}

TEST(SessionAdapter, StartsARehearsalAsOne) {
    Adapted it(true);
    it.tap();
    EXPECT_TRUE(it.adapter->state().rehearsal);
}

TEST(SessionAdapter, HandsBackARefusal) {
    Adapted it;
    QSignalSpy refused(it.adapter.get(), &SessionAdapter::refused);
    Command undo;
    undo.kind = CommandKind::Undo;
    EXPECT_FALSE(it.adapter->perform(undo, Cause::Key));
    EXPECT_EQ(refused.count(), 1);
}

TEST(SessionAdapter, TellsThatTheDiskFailsAndGoesOn) {
    Adapted it;
    it.store->isBroken = true;
    QSignalSpy fault(it.adapter.get(), &SessionAdapter::faultChanged);
    it.tap();
    EXPECT_EQ(fault.count(), 1);
    EXPECT_TRUE(it.adapter->state().started);
    EXPECT_GT(it.adapter->waitingEvents(), 0U);
}

TEST(SessionAdapter, TellsThatTheDiskIsWellAgain) {
    Adapted it;
    it.store->isBroken = true;
    it.tap();
    it.store->isBroken = false;
    QSignalSpy fault(it.adapter.get(), &SessionAdapter::faultChanged);
    Command note;
    note.text = "well again";
    it.adapter->perform(note, Cause::Key);
    EXPECT_EQ(fault.count(), 1);
    EXPECT_FALSE(it.adapter->fault());
}

TEST(ScaledClock, RunsAtAMultipleOfItsBase) {
    ManualClock base(kStart);
    const ScaledClock fast(base, 60);
    base.advance(Millis(50));
    EXPECT_EQ(fast.now().boot - kStart.boot, Millis(3'000));
    EXPECT_EQ(fast.now().utc - kStart.utc, Millis(3'000));
}

TEST(ScaledClock, WaitsInsteadOfJumpingWhenTheProgramWasHeldUp) {
    ManualClock base(kStart);
    const ScaledClock fast(base, 60);
    base.advance(std::chrono::hours(1));
    EXPECT_EQ(fast.now().boot - kStart.boot, ScaledClock::kLongestStep);
    EXPECT_EQ(fast.now().boot - kStart.boot, ScaledClock::kLongestStep);
}

TEST(ScaledClock, DoesNotFollowAWallClockThatIsSet) {
    ManualClock base(kStart);
    const ScaledClock fast(base, 10);
    base.setWallClock(kStart.utc + std::chrono::hours(5));
    EXPECT_EQ(fast.now().utc, kStart.utc);
}

}  // namespace
}  // namespace brinebell
