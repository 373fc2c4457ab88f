#include "base/Result.h"

#include <gtest/gtest.h>

namespace brinebell {
namespace {

TEST(Error, IsDescribedWithFileLineAndColumn) {
    EXPECT_EQ(describe({ErrorCode::InvalidInput, "unknown key", {"salsa.toml", 12, 3}}),
              "salsa.toml:12:3: unknown key");
}

TEST(Error, IsDescribedWithTheFileAloneWhenItIsAboutAllOfIt) {
    EXPECT_EQ(describe({ErrorCode::Io, "cannot be opened", {"salsa.toml", 0, 0}}), "salsa.toml: cannot be opened");
}

TEST(Error, IsDescribedByItsMessageWithoutAPlace) {
    EXPECT_EQ(describe({ErrorCode::NotFound, "no such product", {}}), "no such product");
}

TEST(Error, TravelsThroughAResult) {
    const Result<int> result = fail(ErrorCode::OutOfRange, "9 is above 7", {"a.toml", 1, 2});
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error(), (Error{ErrorCode::OutOfRange, "9 is above 7", {"a.toml", 1, 2}}));
}

}  // namespace
}  // namespace brinebell
