// Whether the sheet that is chosen really holds up better than the shortest one, counted with other draws than those
// by which it was chosen.
#include <gtest/gtest.h>

#include <cstdio>

#include "plan/Forecast.h"
#include "plan/Planner.h"
#include "support/DemoClass.h"
#include "support/MadeUpClasses.h"

namespace brinebell {

namespace {

struct Risks {
    std::string name;
    double shortest = 0, chosen = 0;
    double freshShortest = 0, freshChosen = 0;  ///< with draws that the planner has not seen
};

double freshRisk(const Network& network, const Policy& policy) {
    ForecastOptions options;
    options.runs = 500;
    options.seed = 4'711;
    options.threads = 1;
    return forecast(network, policy, {}, options).anyLimitBroken;
}

Risks risksOf(const std::string& name, const Network& network) {
    PlanOptions options;
    options.conflicts = 1'500;
    const PlannedSheet chosen = planSheet(network, {}, options).value();
    options.riskRuns = 0;
    const PlannedSheet shortest = planSheet(network, {}, options).value();
    return {name, chosen.riskOfShortest, chosen.risk, freshRisk(network, shortest.policy),
            freshRisk(network, chosen.policy)};
}

void print(const Risks& r) {
    std::printf("%-14s %6.3f -> %6.3f   fresh draws %6.3f -> %6.3f\n", r.name.c_str(), r.shortest, r.chosen,
                r.freshShortest, r.freshChosen);
}

}  // namespace

TEST(Robustness, ChosenSheetBreaksLimitsNoOftenerThanTheShortest) {
    std::vector<Risks> all{risksOf("demo", support::demoClass())};
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        all.push_back(risksOf("made up " + std::to_string(seed), support::madeUpClass(seed)));
    }
    Risks sum;
    sum.name = "sum";
    for (const Risks& r : all) {
        EXPECT_LE(r.chosen, r.shortest) << r.name;
        print(r);
        sum.shortest += r.shortest;
        sum.chosen += r.chosen;
        sum.freshShortest += r.freshShortest;
        sum.freshChosen += r.freshChosen;
    }
    print(sum);
    EXPECT_LT(sum.chosen, sum.shortest);
    EXPECT_LT(sum.freshChosen, sum.freshShortest);
    RecordProperty("risk_of_shortest", std::to_string(sum.shortest));
    RecordProperty("risk_of_chosen", std::to_string(sum.chosen));
}

}  // namespace brinebell
