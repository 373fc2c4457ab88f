#include "soak/Faults.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/SmallClass.h"

namespace brinebell::soak {
namespace {

struct Short {
    FaultKind kind;
    bool lasting;
    std::size_t stride;
    friend std::ostream& operator<<(std::ostream& out, const Short& tested) { return out << toText(tested.kind); }
};

class Faults : public testing::TestWithParam<Short> {};

// The short form: some of the calls of a small class. All of them are brinebell-soak's.
TEST_P(Faults, TheClassGoesOnAndNothingIsLost) {
    if (GetParam().kind == FaultKind::NoMemory) {
        Memory::install();
    }
    FaultOptions options;
    options.lasting = GetParam().lasting;
    options.stride = GetParam().stride;
    const FaultTally tally = failInTurn(support::smallClass(), GetParam().kind, options);
    EXPECT_THAT(tally.complaints, testing::IsEmpty());
    EXPECT_GE(tally.injected, 2U);
    EXPECT_GE(tally.cues, 10U);
    EXPECT_LE(tally.told, tally.injected);
}

INSTANTIATE_TEST_SUITE_P(Each, Faults,
                         testing::Values(Short{FaultKind::FullDisk, false, 7}, Short{FaultKind::FullDisk, true, 13},
                                         Short{FaultKind::WriteError, false, 11}, Short{FaultKind::SyncError, false, 1},
                                         Short{FaultKind::SyncError, true, 2}, Short{FaultKind::OpenError, false, 1},
                                         Short{FaultKind::OpenError, true, 1}, Short{FaultKind::ReadOnlyOpen, true, 1},
                                         Short{FaultKind::LockHeld, false, 5}, Short{FaultKind::LockHeld, true, 9},
                                         Short{FaultKind::NoMemory, false, 211}, Short{FaultKind::NoMemory, true, 499}),
                         [](const auto& tested) {
                             std::string name = toText(tested.param.kind);
                             std::erase_if(name, [](char c) { return c == ' ' || c == '-'; });
                             return name + (tested.param.lasting ? "Lasting" : "Once");
                         });

// The planted fault: a store that keeps its troubles to itself.
TEST(FaultsPlanted, FindsAStoreThatSaysNothing) {
    FaultOptions options;
    options.keepsQuiet = true;
    options.stride = 20;
    EXPECT_THAT(failInTurn(support::smallClass(), FaultKind::FullDisk, options).complaints,
                testing::Contains(testing::HasSubstr("says that all")));
}

}  // namespace
}  // namespace brinebell::soak
