// The day on a label. Days by GNU date: date -u -d "2026-09-12 +1 year" +%F, and so on; month ends by the calendar.
#include "logbook/BestBy.h"

#include <gtest/gtest.h>

#include "base/UtcText.h"

namespace brinebell {
namespace {

struct Row {
    const char* canned;
    const char* shelfLife;
    const char* day;  ///< empty: none
};

TEST(BestBy, IsTheDayThatTheRecipesWordsName) {
    const Row rows[] = {
        {"2026-09-12T23:00:00Z", "Best within one year", "2027-09-12"},
        {"2026-09-12T23:00:00Z", "Best within one year; wait 4 to 5 weeks for the flavor", "2027-09-12"},
        {"2026-09-12T23:00:00Z", "1 year", "2027-09-12"},
        {"2026-09-12T23:00:00Z", "Within 18 months.", "2028-03-12"},
        {"2026-09-12T23:00:00Z", "within 6 weeks", "2026-10-24"},
        {"2028-02-29T10:00:00Z", "within one year", "2029-02-28"},
        {"2026-08-31T10:00:00Z", "within six months", "2027-02-28"},
        {"2026-09-12T23:00:00Z", "wait 4 weeks", ""},
        {"2026-09-12T23:00:00Z", "a good while", ""},
        {"2026-09-12T23:00:00Z", "within reach", ""},
        {"2026-09-12T23:00:00Z", "within 0 years", ""},
        {"2026-09-12T23:00:00Z", "within 99999 years", ""},
        {"2026-09-12T23:00:00Z", "", ""},
    };
    int checked = 0;
    for (const Row& row : rows) {
        EXPECT_EQ(bestByDay(utcFromText(row.canned).value(), row.shelfLife).value_or(""), row.day) << row.shelfLife;
        ++checked;
    }
    EXPECT_EQ(checked, 13);
}

}  // namespace
}  // namespace brinebell
