#include <gtest/gtest.h>

#include "plan/ClassFile.h"
#include "support/BrokenFiles.h"

namespace brinebell {
namespace {

constexpr BrokenFile kBroken[] = {
    {"venue-without-altitude", 8, 9, "venue: \"Somewhere\" has no altitude"},
    {"path-escape", 16, 10, "recipe: \"../../../secret.toml\" leaves the folder above the class file's own"},
    {"path-escape-through-a-folder", 16, 10, "leaves the folder above the class file's own"},
    {"absolute-path", 8, 9, "venue: \"/etc/passwd\" must be relative to the class file"},
    {"missing-recipe", 16, 10, "no-such-recipe.toml: "},
    {"jar-too-large", 19, 7, "jar: \"Small dilled beans\" is tested up to pint jars, not for a quart"},
    {"too-many-jars", 18, 8, "jars: 5 found; this much of the batch fills at most 4 pint jars"},
    {"four-helpers", 11, 11, "helpers: must be 0 to 3, found 4"},
    {"unknown-canner", 20, 10, "canner: \"Small kitchen\" has no canner \"kettle\""},
    {"unknown-stage", 21, 14, "made_ahead: \"Small dilled beans\" has no stage \"cooked\""},
    {"start-without-offset", 9, 9, "start: "},
    {"slot-full-of-talk", 10, 8, "slot: opening and closing leave no time in it"},
    {"must-say-and-may-drop", 28, 12, "may_drop: a point that must be said is never dropped"},
    {"batch-of-nothing", 17, 9, "batch: must be above 0"},
    {"one-recipe-twice", 24, 10, "recipe: \"small-beans\" is a dish of this class already"},
    {"class-without-dish", 1, 1, "dish: a class has at least one dish"},
};

class BrokenClass : public ::testing::TestWithParam<BrokenFile> {};

TEST_P(BrokenClass, IsRefusedAtItsPlace) {
    expectItsFault(GetParam(), readClassFile(brokenPath(GetParam())));
}

INSTANTIATE_TEST_SUITE_P(Files, BrokenClass, ::testing::ValuesIn(kBroken), testName);

}  // namespace
}  // namespace brinebell
