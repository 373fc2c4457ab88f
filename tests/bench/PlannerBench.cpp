#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

#include "BenchSupport.h"
#include "plan/Forecast.h"
#include "plan/Planner.h"
#include "plan/Replan.h"
#include "support/MadeUpClasses.h"
#include "support/PartlyPlayed.h"

namespace brinebell::bench {

namespace {

// Goal: 10,000 runs of a class of 60 activities under 100 ms of wall time, on two cores.
void forecastLongDay(benchmark::State& state) {
    const Network network = support::longDay();
    PlanOptions quick;
    quick.conflicts = 2'000;
    quick.riskRuns = 0;
    const auto planned = planSheet(network, {}, quick);
    if (!planned) {
        state.SkipWithError("the class cannot be planned");
        return;
    }
    for (auto _ : state) {
        benchmark::DoNotOptimize(forecast(network, planned->policy));
    }
    state.counters["activities"] = static_cast<double>(network.activities.size());
}
BENCHMARK(forecastLongDay)->Unit(benchmark::kMillisecond)->UseRealTime();

// Goal: the demonstration class proved optimal within 200 ms.
void proveDemoClass(benchmark::State& state) {
    const Network& network = demoNetwork();
    bool proved = false;
    for (auto _ : state) {
        const auto planned = planSheet(network);
        proved = planned && planned->proved;
    }
    state.counters["proved"] = proved ? 1 : 0;
}
BENCHMARK(proveDemoClass)->Unit(benchmark::kMillisecond);

// Planning anew from 500 moments of a class. Goal: the 99th percentile under 20 ms, none over 50 ms.
void replanAfterAnEvent(benchmark::State& state, const Network& network) {
    const auto planned = planSheet(network);
    if (!planned) {
        state.SkipWithError("the class cannot be planned");
        return;
    }
    Network lived = network;
    lived.policy = planned->policy;
    Random random(1);
    std::vector<Progress> moments;
    for (int k = 0; k < 500; ++k) {
        moments.push_back(support::playPartly(lived, random).progress);
    }
    ReplanBudget budget;
    budget.seconds = kLiveReplanSeconds;
    std::vector<double> took;
    for (auto _ : state) {
        for (const Progress& moment : moments) {
            const auto began = std::chrono::steady_clock::now();
            benchmark::DoNotOptimize(replan(lived, planned->policy, moment, budget));
            took.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - began).count());
        }
    }
    std::sort(took.begin(), took.end());
    state.counters["p50_ms"] = took[took.size() / 2];
    state.counters["p99_ms"] = took[took.size() * 99 / 100];
    state.counters["max_ms"] = took.back();
}
void replanDemoClass(benchmark::State& state) {
    replanAfterAnEvent(state, demoNetwork());
}
BENCHMARK(replanDemoClass)->Unit(benchmark::kMillisecond)->Iterations(1);
void replanLongDay(benchmark::State& state) {
    replanAfterAnEvent(state, support::longDay());
}
BENCHMARK(replanLongDay)->Unit(benchmark::kMillisecond)->Iterations(1);

}  // namespace

}  // namespace brinebell::bench
