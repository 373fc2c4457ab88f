#include "plan/Impossible.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

#include "base/Random.h"
#include "plan/Dispatcher.h"
#include "support/DemoClass.h"
#include "support/RandomNetwork.h"
#include "support/SmallClass.h"

namespace brinebell {

namespace {

using testing::HasSubstr;

constexpr std::uint64_t kNetworks = 400;

class Steps {
public:
    int add(const char* title, std::chrono::minutes least, std::vector<int> after = {}) {
        Activity a;
        a.key = title;
        a.title = title;
        a.duration = {least, 2 * least, 3 * least};
        a.after = std::move(after);
        network.activities.push_back(std::move(a));
        return static_cast<int>(network.activities.size()) - 1;
    }
    void limit(int from, int to, std::chrono::minutes atMost) {
        network.limits.push_back({from, to, atMost, LimitKind::Quality, ""});
    }

    Network network;
};

using std::chrono::minutes;

/// Whether the moments of a network and its limits hold a circle that asks for ever more, by Floyd and Warshall's
/// algorithm: the longest way from every moment to every other.
bool hasImpossibleCircle(const Network& network) {
    const std::size_t n = 2 * network.activities.size();
    constexpr std::int64_t kNoWay = std::numeric_limits<std::int64_t>::min() / 4;
    std::vector<std::vector<std::int64_t>> longest(n, std::vector<std::int64_t>(n, kNoWay));
    const auto atLeast = [&](std::size_t from, std::size_t to, std::int64_t by) {
        longest[from][to] = std::max(longest[from][to], by);
    };
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        atLeast(2 * i, 2 * i + 1, network.activities[i].duration.low.count());
        for (const int before : network.activities[i].after) {
            atLeast(2 * static_cast<std::size_t>(before) + 1, 2 * i, 0);
        }
    }
    for (const HoldLimit& limit : network.limits) {
        atLeast(2 * static_cast<std::size_t>(limit.to), 2 * static_cast<std::size_t>(limit.from) + 1,
                -limit.atMost.count());
    }
    for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t j = 0; j < n && longest[i][k] > kNoWay; ++j) {
                if (longest[k][j] > kNoWay) {
                    // No way is longer than the class; a bound keeps circles from growing past what fits.
                    atLeast(i, j, std::min<std::int64_t>(longest[i][k] + longest[k][j], 1'000'000'000));
                }
            }
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        if (longest[i][i] > 0) {
            return true;
        }
    }
    return false;
}

/// Whether there are limits and the dispatcher keeps them all, with waits or without.
bool isKept(const Network& network, bool waits) {
    DispatchOptions options;
    options.repairLimits = waits;
    return !network.limits.empty() && dispatch(network, defaultOrder(network), {}, options).broken.empty();
}

}  // namespace

TEST(Impossible, NamesTheLimitAndTheStepInBetween) {
    Steps s;
    const int boil = s.add("Boil the brine", minutes(5));
    const int cool = s.add("Cool the brine", minutes(20), {boil});
    const int fill = s.add("Fill the jars", minutes(5), {cool});
    s.limit(boil, fill, minutes(3));
    EXPECT_EQ(whyImpossible(s.network),
              "\"Boil the brine\" must be followed by \"Fill the jars\" within 3 min, but \"Cool the brine\" (at least "
              "20 min) must come between");
}

TEST(Impossible, NamesEveryStepOfTheLongestWay) {
    Steps s;
    const int boil = s.add("Boil", minutes(5));
    const int shortWay = s.add("Rinse", minutes(1), {boil});
    const int cool = s.add("Cool", minutes(20), {boil});
    const int strain = s.add("Strain", minutes(2), {cool});
    const int fill = s.add("Fill", minutes(5), {strain, shortWay});
    s.limit(boil, fill, minutes(21));
    EXPECT_THAT(whyImpossible(s.network).value_or(""),
                HasSubstr("but \"Cool\" (at least 20 min) and \"Strain\" (at least 2 min) must come between"));
}

TEST(Impossible, NothingWhereTheFastestCookCanKeepIt) {
    Steps s;
    const int boil = s.add("Boil", minutes(5));
    const int cool = s.add("Cool", minutes(20), {boil});
    const int fill = s.add("Fill", minutes(5), {cool});
    s.limit(boil, fill, minutes(20));
    EXPECT_EQ(whyImpossible(s.network), std::nullopt);
}

TEST(Impossible, TellsOfTheLimitThatIsOverrunMost) {
    Steps s;
    const int a = s.add("Boil", minutes(5));
    const int b = s.add("Cool", minutes(20), {a});
    const int c = s.add("Rest", minutes(30), {b});
    const int d = s.add("Fill", minutes(1), {c});
    s.limit(a, c, minutes(10));
    s.limit(a, d, minutes(15));
    EXPECT_THAT(whyImpossible(s.network).value_or(""), HasSubstr("followed by \"Fill\" within 15 min"));
}

// Each can be kept by itself: start the brine late, or the jars. Together each must wait for the other.
TEST(Impossible, FindsACircleOfSeveralLimits) {
    Steps s;
    const int brine = s.add("Boil the brine", minutes(5));
    const int cool = s.add("Cool the brine", minutes(10), {brine});
    const int pour = s.add("Pour the brine", minutes(1), {cool});
    const int jars = s.add("Boil the jars", minutes(5));
    const int drain = s.add("Drain the jars", minutes(4), {jars});
    const int fill = s.add("Fill the jars", minutes(1), {drain});
    s.limit(brine, fill, minutes(5));
    s.limit(jars, pour, minutes(5));
    const std::string why = whyImpossible(s.network).value_or("");
    EXPECT_THAT(why, HasSubstr("these limits cannot all be kept"));
    EXPECT_THAT(why, HasSubstr("\"Boil the brine\" followed by \"Fill the jars\" within 5 min"));
    EXPECT_THAT(why, HasSubstr("\"Boil the jars\" followed by \"Pour the brine\" within 5 min"));
    EXPECT_THAT(why, HasSubstr("they leave 10 min in all"));
    EXPECT_THAT(why, HasSubstr("\"Cool the brine\" (at least 10 min)"));
    EXPECT_THAT(why, HasSubstr("\"Drain the jars\" (at least 4 min)"));
    EXPECT_THAT(why, HasSubstr("14 min in all"));
    s.network.limits[1].atMost = minutes(9);
    EXPECT_EQ(whyImpossible(s.network), std::nullopt);
}

TEST(Impossible, RaisesNoAlarmInAnyClassThatCanBeTaught) {
    std::uint64_t kept = 0, tried = 0;
    while (kept < kNetworks && tried < 20 * kNetworks) {
        const Network network = support::randomNetwork(++tried);
        if (isKept(network, false)) {
            EXPECT_EQ(whyImpossible(network), std::nullopt) << "seed " << tried;
            ++kept;
        }
    }
    EXPECT_EQ(kept, kNetworks);
}

TEST(Impossible, RaisesNoAlarmInAnyClassThatWaitsMakePossible) {
    std::uint64_t kept = 0;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        const Network network = support::randomNetwork(seed);
        if (!isKept(network, false) && isKept(network, true)) {
            EXPECT_EQ(whyImpossible(network), std::nullopt) << "seed " << seed;
            ++kept;
        }
    }
    EXPECT_GE(kept, 50U);
}

TEST(Impossible, RaisesNoAlarmInTheDemo) {
    for (int helpers = 0; helpers <= 3; ++helpers) {
        EXPECT_EQ(whyImpossible(support::demoClass(helpers)), std::nullopt);
    }
    EXPECT_EQ(whyImpossible(support::smallClass(2)), std::nullopt);
}

// A limit over a step that takes longer than it allows, put into classes of every shape; a second more is enough.
TEST(Impossible, FindsALimitThatIsASecondTooShort) {
    std::size_t found = 0;
    for (std::uint64_t seed = 1; seed <= kNetworks; ++seed) {
        Network network = support::randomNetwork(seed);
        for (std::size_t i = 0; i < network.activities.size(); ++i) {
            const Activity& between = network.activities[i];
            const auto after = successorsOf(network)[i];
            if (between.after.size() != 1 || after.empty() || between.duration.low <= Seconds(1)) {
                continue;
            }
            network.limits = {{between.after.front(), after.front(), Seconds(0), LimitKind::Quality, ""}};
            // The longest way may lead past other steps: the least that a limit must allow is found by trying.
            Seconds low{}, high = std::chrono::hours(24);
            while (high - low > Seconds(1)) {
                network.limits[0].atMost = (low + high) / 2;
                (hasImpossibleCircle(network) ? low : high) = network.limits[0].atMost;
            }
            network.limits[0].atMost = high;
            EXPECT_EQ(whyImpossible(network), std::nullopt) << "seed " << seed;
            network.limits[0].atMost = high - Seconds(1);
            EXPECT_THAT(whyImpossible(network).value_or(""), HasSubstr(between.title.empty() ? "must" : "must come"))
                << "seed " << seed;
            ++found;
            break;
        }
    }
    EXPECT_GE(found, 100U);
}

TEST(Impossible, AgreesWithTheLongestWaysUnderAnyLimits) {
    Random random(31);
    std::size_t impossible = 0, together = 0;
    for (std::uint64_t seed = 1; seed <= 3 * kNetworks; ++seed) {
        Network network = support::randomNetwork(seed);
        const auto any = [&] { return static_cast<int>(random.below(network.activities.size())); };
        for (int k = 0; k < 6; ++k) {
            network.limits.push_back({any(), any(), Seconds(random.below(3000)), LimitKind::Quality, ""});
        }
        const auto why = whyImpossible(network);
        EXPECT_EQ(why.has_value(), hasImpossibleCircle(network)) << "seed " << seed;
        impossible += why ? 1U : 0U;
        together += why && why->starts_with("these limits") ? 1U : 0U;
    }
    EXPECT_GE(impossible, kNetworks / 2);
    EXPECT_LE(impossible, 5 * kNetworks / 2);
    EXPECT_GE(together, 10U);
}

}  // namespace brinebell
