// The rules of ProcessTables.h, one by one. Figures: AIB 539 (2015), Guides 2 to 6, as kept in
// resources/process-times.toml; the page stands beside each.
#include <gmock/gmock.h>

#include "safety/ProcessTables.h"

namespace brinebell {
namespace {

using std::chrono::minutes;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

ProcessQuery query(const std::string& product, Pack pack, JarSize jar, std::int64_t feet,
                   Method method = Method::BoilingWater) {
    return {product, pack, jar, Length::fromFeet(feet), method, ""};
}

Length nanometreAbove(std::int64_t feet) {
    return Length::fromNanometres(Length::fromFeet(feet).nanometres() + 1);
}

ProcessAnswer answered(const ProcessQuery& asked) {
    const auto answer = ProcessTables::published().find(asked);
    EXPECT_TRUE(answer) << (answer ? "" : answer.error().message);
    return answer.value_or(ProcessAnswer{});
}

/// "code message" of the refusal.
std::string refusal(const ProcessQuery& asked) {
    const auto answer = ProcessTables::published().find(asked);
    if (answer) {
        return "answered from " + answer->entryId;
    }
    return (answer.error().code == ErrorCode::NotFound ? "not found: " : "no tested value: ") + answer.error().message;
}

// Guide 6, Marinated Peppers: 15, 20, 20, 25 minutes.
TEST(ProcessAnswer, CarriesTheBandTheSourceAndTheHeadspace) {
    const ProcessAnswer answer = answered(query("marinated-peppers", Pack::Raw, JarSize::HalfPint, 5280));
    EXPECT_EQ(answer.entryId, "marinated-peppers.raw");
    EXPECT_EQ(answer.time, minutes(20));
    EXPECT_EQ(answer.gaugePsi, std::nullopt);
    EXPECT_EQ(answer.bandFromFeet, 3001);
    EXPECT_EQ(answer.bandToFeet, 6000);
    EXPECT_THAT(answer.source, HasSubstr("AIB 539 Guide 6"));
    EXPECT_THAT(answer.productTitle, HasSubstr("Marinated peppers"));
    EXPECT_EQ(answer.confidence, Confidence::Seen);
    EXPECT_EQ(answer.headspace, Length::fromNanometres(Length::kNanometresPerInch / 2));
    EXPECT_EQ(answer.longerPublished, std::nullopt);
    EXPECT_THAT(answer.cautions, IsEmpty());
}

TEST(ProcessAnswer, CarriesTheHeadspaceNoteAndTheAcid) {
    EXPECT_THAT(answered(query("pickled-carrots", Pack::Hot, JarSize::Pint, 0)).headspaceNote, HasSubstr("1 inch"));
    EXPECT_THAT(answered(query("tomatoes-crushed", Pack::Hot, JarSize::Pint, 0)).acidify,
                HasSubstr("bottled lemon juice"));
    EXPECT_EQ(answered(query("peaches", Pack::Hot, JarSize::Pint, 0)).acidify, "");
}

TEST(ProcessAnswer, TakesTheLowestBandBelowSeaLevel) {
    EXPECT_EQ(answered(query("marinated-peppers", Pack::Raw, JarSize::Pint, -1300)).time, minutes(15));
}

// Guide 4: snap beans, pints, 20 minutes; 11 psi to 2,000 ft on a dial, 15 psi above 1,000 ft on a weight.
TEST(ProcessAnswer, GivesTheGaugePressureForPressureCanners) {
    const auto dial = answered(query("snap-beans", Pack::Raw, JarSize::Pint, 1500, Method::PressureDial));
    EXPECT_EQ(dial.time, minutes(20));
    EXPECT_EQ(dial.gaugePsi, 11);
    const auto weighted = answered(query("snap-beans", Pack::Hot, JarSize::Pint, 1500, Method::PressureWeighted));
    EXPECT_EQ(weighted.time, minutes(20));
    EXPECT_EQ(weighted.gaugePsi, 15);
}

TEST(ProcessAnswer, GivesTheLowestPressureWhereThereIsAChoice) {
    ProcessQuery asked = query("tomatoes-crushed", Pack::Hot, JarSize::Quart, 500, Method::PressureWeighted);
    asked.confirmedBy = "Ada Brook";
    EXPECT_EQ(answered(asked).gaugePsi, 5);
    const auto all = ProcessTables::published().findAll(asked).value();
    ASSERT_EQ(all.size(), 3u);
    EXPECT_EQ(all[0].gaugePsi, 5);
    EXPECT_EQ(all[1].gaugePsi, 10);
    EXPECT_EQ(all[2].gaugePsi, 15);
    EXPECT_EQ(all[2].time, minutes(10));
}

TEST(ProcessAnswer, LeavesOutAPressureThatIsNotAllowedAtTheAltitude) {
    ProcessQuery asked = query("tomatoes-crushed", Pack::Hot, JarSize::Quart, 1001, Method::PressureWeighted);
    asked.confirmedBy = "Ada Brook";
    EXPECT_EQ(ProcessTables::published().findAll(asked).value().size(), 2u);
}

TEST(ProcessAnswer, BandIsToldByItsEdges) {
    ProcessAnswer answer;
    EXPECT_EQ(bandText(answer), "any altitude");
    answer.bandFromFeet = 6001;
    EXPECT_EQ(bandText(answer), "above 6,000 ft");
    answer.bandFromFeet = 1001;
    answer.bandToFeet = 6000;
    EXPECT_EQ(bandText(answer), "1,001 ft to 6,000 ft");
}

TEST(ProcessAnswer, TextWithoutALetterConfirmsNothing) {
    ProcessQuery asked = query("corn-relish", Pack::Hot, JarSize::Pint, 0);
    int checked = 0;
    for (const char* nobody : {"", " ", ".", "\r", "\r\n", "7", "—", "\xff", "\xc2\xa0", "\u200b"}) {
        asked.confirmedBy = nobody;
        EXPECT_THAT(refusal(asked), HasSubstr("come from memory")) << checked;
        ++checked;
    }
    EXPECT_EQ(checked, 10);
}

// Crushed tomatoes under a weight have three entries from memory: 5, 10 and 15 psi.
TEST(ProcessAnswer, ConfirmationOpensOnlyItsOwnEntry) {
    ProcessQuery asked = query("tomatoes-crushed", Pack::Hot, JarSize::Quart, 500, Method::PressureWeighted);
    asked.confirmed = {{"tomatoes-crushed.pc.weighted.10", "Ada Brook", "2026-08-01"}};
    const auto all = ProcessTables::published().findAll(asked).value();
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].gaugePsi, 10);
    EXPECT_EQ(all[0].confirmed, (Confirmation{"tomatoes-crushed.pc.weighted.10", "Ada Brook", "2026-08-01"}));
    EXPECT_THAT(all[0].cautions, testing::Contains("figures from memory, confirmed by Ada Brook on 2026-08-01"));
}

TEST(ProcessAnswer, ConfirmationByNobodyOpensNothing) {
    ProcessQuery asked = query("corn-relish", Pack::Hot, JarSize::Pint, 0);
    asked.confirmed = {{"corn-relish.hot", "—", "2026-08-01"}};
    EXPECT_THAT(refusal(asked), HasSubstr("come from memory"));
}

TEST(ProcessAnswer, NameInAnyScriptConfirms) {
    ProcessQuery asked = query("corn-relish", Pack::Hot, JarSize::Pint, 0);
    for (const char* name : {"Ö", "Іван", "李"}) {
        asked.confirmedBy = name;
        EXPECT_EQ(answered(asked).time, minutes(15)) << name;
    }
}

TEST(ProcessAnswer, ConfirmedMemorySaysWhoConfirmedIt) {
    ProcessQuery asked = query("corn-relish", Pack::Hot, JarSize::Pint, 0);
    EXPECT_THAT(refusal(asked),
                HasSubstr("come from memory; they answer only when a named person has held them against "
                          "AIB 539 Guide 6"));
    asked.confirmedBy = "Ada Brook";
    const ProcessAnswer answer = answered(asked);
    EXPECT_EQ(answer.time, minutes(15));
    EXPECT_EQ(answer.confidence, Confidence::Memory);
    EXPECT_THAT(answer.cautions, ElementsAre("figures from memory, confirmed by Ada Brook"));
}

// Guide 6: pickled asparagus lists 12-ounce and pint jars.
TEST(ProcessAnswer, ASmallerJarTakesTheSmallestLargerOneAndSaysSo) {
    const ProcessAnswer answer = answered(query("pickled-dilled-beans", Pack::Raw, JarSize::HalfPint, 0));
    EXPECT_EQ(answer.entryId, "pickled-dilled-beans.raw");
    EXPECT_EQ(answer.time, minutes(5));
    EXPECT_THAT(
        answer.cautions,
        ElementsAre("no time is listed for half-pint jars; this is the time for pint jars, a rule known only at "
                    "second hand"));
    EXPECT_THAT(answered(query("pickled-asparagus", Pack::Raw, JarSize::HalfPint, 0)).cautions,
                ElementsAre(HasSubstr("this is the time for 12-ounce jars")));
}

// Guide 2, page 2-7: applesauce 15 minutes in pints, 20 in quarts.
TEST(ProcessAnswer, AJarBetweenTwoListedSizesTakesTheLarger) {
    EXPECT_EQ(answered(query("applesauce", Pack::Hot, JarSize::Pint, 0)).time, minutes(15));
    EXPECT_EQ(answered(query("applesauce", Pack::Hot, JarSize::PintAndHalf, 0)).time, minutes(20));
}

TEST(ProcessAnswer, ALargerJarHasNoTestedTime) {
    EXPECT_EQ(refusal(query("marinated-peppers", Pack::Raw, JarSize::Quart, 0)),
              "no tested value: marinated-peppers has no tested time for a jar as large as a quart jar; "
              "listed: half-pint, "
              "pint");
    EXPECT_EQ(refusal(query("applesauce", Pack::Hot, JarSize::HalfGallon, 0)),
              "no tested value: applesauce has no tested time for a jar as large as a half-gallon jar; "
              "listed: pint, "
              "quart");
}

TEST(ProcessAnswer, APackThatIsNotListedHasNoTestedTime) {
    EXPECT_EQ(refusal(query("pears", Pack::Raw, JarSize::Pint, 0)),
              "no tested value: pears has no tested time for raw pack by boiling-water; listed: hot");
}

TEST(ProcessAnswer, AMethodThatIsNotListedHasNoTestedTime) {
    EXPECT_EQ(refusal(query("snap-beans", Pack::Raw, JarSize::Pint, 0)),
              "no tested value: snap-beans has no tested time for boiling-water; listed: pressure-dial, "
              "pressure-weighted");
    EXPECT_EQ(refusal(query("snap-beans", Pack::Raw, JarSize::Pint, 0, Method::AtmosphericSteam)),
              "no tested value: snap-beans has no tested time for atmospheric-steam; listed: pressure-dial, "
              "pressure-weighted");
}

TEST(ProcessAnswer, AnUnknownProductIsNotFoundAndNearNamesAreGiven) {
    EXPECT_EQ(refusal(query("marinated-pepers", Pack::Raw, JarSize::Pint, 0)),
              "not found: no published process for \"marinated-pepers\"; near names: marinated-peppers");
    EXPECT_EQ(refusal(query("salsa", Pack::Hot, JarSize::Pint, 0)),
              "not found: no published process for \"salsa\"; near names: chile-salsa, choice-salsa");
    EXPECT_EQ(refusal(query("garlic-in-oil", Pack::Raw, JarSize::Pint, 0)),
              "not found: no published process for \"garlic-in-oil\"");
}

TEST(ProcessAnswer, AnEmptyOrVeryLongProductIsNotFound) {
    EXPECT_THAT(refusal(query("", Pack::Raw, JarSize::Pint, 0)), HasSubstr("not found: "));
    EXPECT_LT(refusal(query(std::string(1'000'000, 'p'), Pack::Raw, JarSize::Pint, 0)).size(), 200u);
}

TEST(ProcessAnswer, AVariantOfAStateServiceNeverAnswers) {
    EXPECT_EQ(refusal(query("umn-jam", Pack::Hot, JarSize::HalfPint, 0)),
              "no tested value: umn-jam is kept for comparison only and never gives a time");
}

// Utah State University Extension: 8,001 to 10,000 ft, 5 minutes more than the band beneath.
TEST(ProcessAnswer, AboveEightThousandFeetALongerPublishedTimeIsGivenBeside) {
    const ProcessAnswer answer = answered(query("marinated-peppers", Pack::Raw, JarSize::Pint, 8001));
    EXPECT_EQ(answer.time, minutes(25));
    EXPECT_EQ(answer.longerPublished, minutes(30));
    EXPECT_THAT(answer.cautions,
                ElementsAre("above 8,000 ft Utah State University Extension publishes 30 minutes; use the "
                            "longer time"));
}

TEST(ProcessAnswer, TheLongerTimeStartsOneNanometreAboveEightThousandFeet) {
    ProcessQuery asked = query("marinated-peppers", Pack::Raw, JarSize::Pint, 8000);
    EXPECT_EQ(answered(asked).longerPublished, std::nullopt);
    asked.altitude = nanometreAbove(8000);
    EXPECT_EQ(answered(asked).longerPublished, minutes(30));
}

TEST(ProcessAnswer, AWeightedGaugeAboveEightThousandFeetCarriesACaution) {
    const auto answer = answered(query("snap-beans", Pack::Raw, JarSize::Pint, 8001, Method::PressureWeighted));
    EXPECT_EQ(answer.gaugePsi, 15);
    EXPECT_EQ(answer.longerPublished, std::nullopt);
    EXPECT_THAT(answer.cautions, ElementsAre(HasSubstr("above 8,000 ft")));
}

TEST(ProcessAnswer, DialTablesEndAtEightThousandFeet) {
    EXPECT_EQ(answered(query("snap-beans", Pack::Raw, JarSize::Pint, 8000, Method::PressureDial)).gaugePsi, 14);
    ProcessQuery asked = query("snap-beans", Pack::Raw, JarSize::Pint, 8001, Method::PressureDial);
    EXPECT_EQ(refusal(asked),
              "no tested value: the pressure-dial table of snap-beans ends at 8000 ft; the altitude is 8001 ft");
    asked.altitude = nanometreAbove(8000);
    EXPECT_THAT(refusal(asked), HasSubstr("the altitude is 8000.1 ft"));
}

TEST(ProcessAnswer, NothingIsAnsweredAboveTenThousandFeet) {
    ProcessQuery asked = query("marinated-peppers", Pack::Raw, JarSize::Pint, 10'000);
    EXPECT_EQ(answered(asked).time, minutes(25));
    asked.altitude = nanometreAbove(10'000);
    EXPECT_THAT(refusal(asked), HasSubstr("no published figure above 10,000 ft"));
    asked.altitude = Length::fromMetres(9000);
    EXPECT_EQ(refusal(asked), "no tested value: no published figure above 10,000 ft; the altitude is 29527.6 ft");
}

// Guide 6, Pickled Bell Peppers: 5, 10, 15 minutes, sterile jars.
TEST(ProcessAnswer, SterileJarsAreRequiredOnlyWhileTheTimeIsUnderTen) {
    EXPECT_TRUE(answered(query("pickled-bell-peppers", Pack::Hot, JarSize::Pint, 1000)).sterileJarsRequired);
    EXPECT_FALSE(answered(query("pickled-bell-peppers", Pack::Hot, JarSize::Pint, 1001)).sterileJarsRequired);
}

// NCHFP (2015): steam canners 45 minutes at most. Guide 6 page 6-15: pickled beets 30, 35, 40, 45 minutes.
TEST(SteamCanner, AnswersFromTheBoilingWaterTable) {
    const auto answer = answered(query("pickled-beets", Pack::Hot, JarSize::Pint, 7000, Method::AtmosphericSteam));
    EXPECT_EQ(answer.entryId, "pickled-beets.hot");
    EXPECT_EQ(answer.time, minutes(45));
    EXPECT_EQ(answer.gaugePsi, std::nullopt);
}

// Guide 3 page 3-9: whole tomatoes in water, quarts, 45 minutes to 1,000 ft and 50 to 3,000.
TEST(SteamCanner, RefusesMoreThanFortyFiveMinutes) {
    EXPECT_EQ(answered(query("tomatoes-whole-water", Pack::Raw, JarSize::Quart, 1000, Method::AtmosphericSteam)).time,
              minutes(45));
    EXPECT_EQ(refusal(query("tomatoes-whole-water", Pack::Raw, JarSize::Quart, 1001, Method::AtmosphericSteam)),
              "no tested value: a steam canner may run at most 45 minutes; tomatoes-whole-water.quart takes 50 at "
              "1001 ft");
}

TEST(SteamCanner, RefusesWhereTheLongerPublishedTimeIsTooLong) {
    EXPECT_EQ(answered(query("pickled-beets", Pack::Hot, JarSize::Pint, 8000, Method::AtmosphericSteam)).time,
              minutes(45));
    EXPECT_THAT(refusal(query("pickled-beets", Pack::Hot, JarSize::Pint, 8001, Method::AtmosphericSteam)),
                HasSubstr("takes 50 at 8001 ft"));
}

// MSU Extension 01600946: 10 minutes below 1,000 ft and 1 more for each additional 1,000 ft.
TEST(JarSterilising, AddsAMinuteForEveryFurtherThousandFeetOrPartOfIt) {
    struct Row {
        std::int64_t feet;
        int minutes;
    };
    const std::vector<Row> rows{{-500, 10}, {0, 10},    {1000, 10}, {1001, 11}, {2000, 11},
                                {2001, 12}, {4200, 14}, {5000, 14}, {5001, 15}, {10'000, 19}};
    for (const Row& row : rows) {
        EXPECT_EQ(jarSterilisingTime(Length::fromFeet(row.feet)).value(), minutes(row.minutes)) << row.feet << " ft";
    }
    EXPECT_EQ(jarSterilisingTime(nanometreAbove(1000)).value(), minutes(11));
}

TEST(JarSterilising, IsNotAnsweredAboveTenThousandFeet) {
    const auto time = jarSterilisingTime(nanometreAbove(10'000));
    ASSERT_FALSE(time);
    EXPECT_EQ(time.error().code, ErrorCode::OutOfRange);
}

}  // namespace
}  // namespace brinebell
