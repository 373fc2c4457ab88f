// Forecasts: worked paths, networks of a few activities, and the shipped class counted a second time run by run.
#include "plan/Forecast.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "support/DemoClass.h"
#include "support/HandMade.h"
#include "support/PartlyPlayed.h"
#include "support/Quantiles.h"
#include "support/RandomNetwork.h"

namespace brinebell {

namespace {

using support::HandMade;

ForecastOptions optionsOf(int runs, std::uint64_t seed = 1, int threads = 1) {
    ForecastOptions options;
    options.runs = runs;
    options.seed = seed;
    options.threads = threads;
    return options;
}

Forecast forecastOf(const Network& network, const ForecastOptions& options) {
    return forecast(network, Policy(defaultOrder(network)), {}, options);
}

// The worked path: one teacher's estimates in minutes, one step after the other. The figures of the tests below were
// worked out by hand from mean (O + 4M + P) / 6 and deviation (P - O) / 6, the sum taken as normal.
Network workedPath() {
    HandMade made;
    const int guesses[][3] = {{25, 35, 50}, {8, 12, 20}, {8, 12, 25}, {20, 20, 20}, {7, 8, 12}, {8, 10, 15}};
    for (const auto& [low, likely, high] : guesses) {
        const int last = static_cast<int>(made.network.activities.size()) - 1;
        made.add("step " + std::to_string(last + 1),
                 ThreePoint{std::chrono::minutes(low), std::chrono::minutes(likely), std::chrono::minutes(high)},
                 HandsNeed::Throughout, last < 0 ? std::vector<int>{} : std::vector<int>{last});
    }
    return made.network;
}

double minutes(Seconds s) {
    return static_cast<double>(s.count()) / 60;
}

// Class ends of as many runs, each a call of the dispatcher with the draw of that run.
std::vector<Seconds> endsOneByOne(const Network& network, const Policy& policy, const ForecastOptions& options) {
    const DurationDraw draw(network, options.durations);
    std::vector<Seconds> durations, ends;
    DispatchOptions dispatching;
    dispatching.durations = &durations;
    dispatching.repairLimits = false;
    for (int run = 0; run < options.runs; ++run) {
        draw.draw(options.seed, static_cast<std::uint64_t>(run), durations);
        ends.push_back(dispatch(network, policy, {}, dispatching).classEnd);
    }
    std::sort(ends.begin(), ends.end());
    return ends;
}

// A guess whose quantile at 0.8 an independent library worked out: tests/data/quantiles.csv.
struct KnownGuess {
    ThreePoint guess;
    Seconds slow{};
};

KnownGuess knownGuess() {
    for (const support::QuantileRow& row : support::quantileRows("beta")) {
        if (row.share == 0.8 && row.high - row.low > 600) {
            const auto whole = [](double s) { return Seconds(std::lround(s)); };
            return {{whole(row.low), whole(row.likely), whole(row.high)}, whole(row.value)};
        }
    }
    ADD_FAILURE() << "quantiles.csv has no wide guess with its value at 0.8";
    return {};
}

}  // namespace

TEST(Forecast, IsTheSameOnAnyNumberOfThreads) {
    const Network network = support::demoClass();
    const Forecast one = forecastOf(network, optionsOf(3'000, 5, 1));
    EXPECT_EQ(forecastOf(network, optionsOf(3'000, 5, 1)), one);
    EXPECT_EQ(forecastOf(network, optionsOf(3'000, 5, 2)), one);
    EXPECT_EQ(forecastOf(network, optionsOf(3'000, 5, 3)), one);
}

TEST(Forecast, DiffersWithTheSeed) {
    const Network network = support::demoClass();
    EXPECT_NE(forecastOf(network, optionsOf(500, 1)), forecastOf(network, optionsOf(500, 2)));
}

TEST(Forecast, IsTheSheetWhereNothingVaries) {
    for (int helpers = 0; helpers <= 3; ++helpers) {
        Network network = support::demoClass(helpers);
        for (Activity& a : network.activities) {
            a.duration = ThreePoint::fixed(a.duration.likely);
        }
        DispatchOptions plain;
        plain.repairLimits = false;
        const RunSheet sheet = dispatch(network, defaultOrder(network), {}, plain);
        const Forecast seen = forecastOf(network, optionsOf(50));
        EXPECT_EQ(seen.classEnd.p10, sheet.classEnd);
        EXPECT_EQ(seen.classEnd.p90, sheet.classEnd);
        EXPECT_EQ(seen.kitchenEnd.p10, sheet.kitchenEnd);
        EXPECT_EQ(seen.kitchenEnd.p90, sheet.kitchenEnd);
        EXPECT_TRUE(seen.drivers.empty());
    }
}

// Published path values: 101.0 min in the mean at any correlation; P80 and P90 in minutes, taking the sum as normal.
// A sum of beta draws leans to the late side, so its quantiles lie off the normal ones by up to a minute.
TEST(Forecast, AddsUpTheWorkedPath) {
    const struct {
        double correlation, sd, p80, p90;
    } rows[] = {
        {0, 5.6075, 105.72, 108.19}, {0.3, 7.636, 107.4, 110.8}, {0.5, 8.731, 108.3, 112.2}, {1, 11.0, 110.3, 115.1}};
    const Network network = workedPath();
    for (const auto& row : rows) {
        ForecastOptions options = optionsOf(20'000, 7, 2);
        options.durations.correlation = row.correlation;
        const Forecast seen = forecastOf(network, options);
        EXPECT_NEAR(seen.classEnd.mean / 60, 101.0, 0.3) << row.correlation;
        EXPECT_NEAR(minutes(seen.classEnd.p80), row.p80, 0.6) << row.correlation;
        EXPECT_NEAR(minutes(seen.classEnd.p90), row.p90, 1.0) << row.correlation;
        const std::vector<Seconds> ends = endsOneByOne(network, Policy(defaultOrder(network)), options);
        double squares = 0;
        for (const Seconds end : ends) {
            squares += std::pow(minutes(end) - seen.classEnd.mean / 60, 2);
        }
        EXPECT_NEAR(std::sqrt(squares / static_cast<double>(ends.size())), row.sd, 0.03 * row.sd) << row.correlation;
    }
}

TEST(Forecast, CountsWhatADispatchOfEachRunGives) {
    Network network = support::demoClass();
    const ForecastOptions options = optionsOf(1'000, 3);
    const Policy policy(defaultOrder(network));
    const std::vector<Seconds> ends = endsOneByOne(network, policy, options);
    network.slot = ends[640];  // a slot that is kept about two times in three
    const auto inTime = std::count_if(ends.begin(), ends.end(), [&](Seconds end) { return end <= network.slot; });
    const EndSpread spread = forecast(network, policy, {}, options).classEnd;
    EXPECT_DOUBLE_EQ(spread.chance, static_cast<double>(inTime) / 1'000);
    EXPECT_EQ(spread.p10, ends[99]);
    EXPECT_EQ(spread.p50, ends[499]);
    EXPECT_EQ(spread.p90, ends[899]);
    const auto sum = std::accumulate(ends.begin(), ends.end(), Seconds::zero());
    EXPECT_DOUBLE_EQ(spread.mean, static_cast<double>(sum.count()) / 1'000);
}

TEST(Forecast, QuantilesRise) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Forecast seen = forecastOf(support::randomNetwork(seed), optionsOf(200, seed));
        for (const EndSpread& spread : {seen.classEnd, seen.kitchenEnd}) {
            EXPECT_LE(spread.p10, spread.p50) << seed;
            EXPECT_LE(spread.p50, spread.p80) << seed;
            EXPECT_LE(spread.p80, spread.p90) << seed;
            EXPECT_EQ(spread.atConfidence, spread.p80) << seed;
        }
        EXPECT_LE(seen.anySafetyLimitBroken, seen.anyLimitBroken) << seed;
    }
}

// 40 s of the first, 60 s long, are over at 50; the second follows with its 100.
TEST(Forecast, GoesOnFromWhatHasHappened) {
    HandMade made;
    const int first = made.add("first", Seconds(60));
    made.add("second", Seconds(100), HandsNeed::Throughout, {first});
    Progress progress;
    progress.now = Seconds(50);
    progress.activities.resize(2);
    progress.activities[0].started = Seconds(10);
    const Policy policy(defaultOrder(made.network));
    EXPECT_EQ(forecast(made.network, policy, progress, optionsOf(10)).classEnd.p10, Seconds(170));
    progress.activities[0].ended = Seconds(45);
    EXPECT_EQ(forecast(made.network, policy, progress, optionsOf(10)).classEnd.p90, Seconds(150));
}

TEST(Forecast, NeverEndsBeforeNow) {
    Random random(21);
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Network network = support::randomNetwork(seed);
        const support::Played played = support::playPartly(network, random);
        const Policy policy(defaultOrder(network));
        const Forecast seen = forecast(network, policy, played.progress, optionsOf(600, seed, 1));
        EXPECT_EQ(forecast(network, policy, played.progress, optionsOf(600, seed, 2)), seen) << seed;
        const bool over = played.progress.now >= played.sheet.kitchenEnd;
        EXPECT_GE(seen.kitchenEnd.p10, over ? played.sheet.kitchenEnd : played.progress.now) << seed;
    }
}

// Two things side by side before the closing: the end moves with the long one, and only by what sticks out.
TEST(Drivers, NameTheLongStepAndWhatItDoes) {
    const KnownGuess known = knownGuess();
    HandMade made;
    made.network.slot = Seconds(1);
    const int slow = made.add("slow", known.guess, HandsNeed::None);
    const Seconds other = known.guess.likely + Seconds(7);
    const int beside = made.add("beside", other, HandsNeed::None);
    const int idle = made.add("idle", {Seconds(10), Seconds(20), Seconds(30)}, HandsNeed::None);
    made.addClosing(Seconds(60), {slow, beside, idle});
    ASSERT_GT(known.slow, other);
    const Forecast seen = forecastOf(made.network, optionsOf(100));
    ASSERT_EQ(seen.drivers.size(), 1U);
    EXPECT_EQ(seen.drivers[0].activity, slow);
    EXPECT_NEAR(static_cast<double>(seen.drivers[0].ifSlow.count()), static_cast<double>((known.slow - other).count()),
                1);
    EXPECT_DOUBLE_EQ(seen.drivers[0].share, 1);
}

TEST(Drivers, StandInTheOrderOfWhatTheyDo) {
    const Forecast seen = forecastOf(workedPath(), optionsOf(10));
    ASSERT_EQ(seen.drivers.size(), 5U);  // of six steps one does not vary
    double shares = 0;
    for (std::size_t d = 0; d < seen.drivers.size(); ++d) {
        shares += seen.drivers[d].share;
        EXPECT_LE(seen.drivers[d].ifSlow, seen.drivers[d == 0 ? 0 : d - 1].ifSlow);
    }
    EXPECT_NEAR(shares, 1, 1e-9);
    EXPECT_EQ(seen.drivers[0].activity, 0);  // 25 to 50 min
}

// The wait for what takes this long is over its limit, by more than is forgiven, one time in five.
TEST(Forecast, CountsBrokenLimits) {
    const KnownGuess known = knownGuess();
    HandMade made;
    const int brine = made.add("brine", Seconds(10), HandsNeed::None);
    const int jars = made.add("jars", known.guess, HandsNeed::None);
    const int fill = made.add("fill", Seconds(60), HandsNeed::Throughout, {brine, jars});
    made.limit(brine, fill, known.slow - Seconds(10) - kBrokenBy);
    made.limit(brine, fill, known.guess.high, LimitKind::Safety);
    const Forecast seen = forecastOf(made.network, optionsOf(10'000, 9, 2));
    EXPECT_NEAR(seen.limitBroken.at(0), 0.2, 0.016);  // four standard errors of 10,000 draws
    EXPECT_EQ(seen.limitBroken.at(1), 0);
    EXPECT_EQ(seen.anyLimitBroken, seen.limitBroken[0]);
    EXPECT_EQ(seen.anySafetyLimitBroken, 0);
}

TEST(Forecast, HasNothingToMissWhereThereIsNoSlot) {
    Network network = workedPath();
    EXPECT_EQ(forecastOf(network, optionsOf(100)).classEnd.chance, 1);
    EXPECT_EQ(forecastOf(network, optionsOf(100)).kitchenEnd.chance, 1);
}

}  // namespace brinebell
