#include <benchmark/benchmark.h>

#include "BenchSupport.h"
#include "plan/Dispatcher.h"
#include "plan/Durations.h"
#include "plan/SheetCheck.h"

namespace brinebell::bench {

namespace {

// Goal: under 1 ms, because the board asks for the outlook at every press.
void dispatchDemoClass(benchmark::State& state) {
    const Network& network = demoNetwork();
    const Order order = defaultOrder(network);
    for (auto _ : state) {
        benchmark::DoNotOptimize(dispatch(network, order));
    }
}
BENCHMARK(dispatchDemoClass)->Unit(benchmark::kMillisecond);

Network sixtyGuesses() {
    Network network;
    for (int i = 0; i < 60; ++i) {
        Activity a;
        a.hands = i % 2 == 0 ? HandsNeed::Throughout : HandsNeed::None;
        a.duration = {Seconds(300 + i), Seconds(400 + 3 * i), Seconds(900)};
        network.activities.push_back(std::move(a));
    }
    return network;
}

// Goal: under 1.5 µs for 60 durations, because a forecast draws them thousands of times.
void drawSixtyDurations(benchmark::State& state) {
    const DurationDraw draw(sixtyGuesses());
    std::vector<Seconds> durations;
    std::uint64_t run = 0;
    for (auto _ : state) {
        draw.draw(1, ++run, durations);
        benchmark::DoNotOptimize(durations.data());
    }
}
BENCHMARK(drawSixtyDurations)->Unit(benchmark::kMicrosecond);

// The same with four of them under way, as a forecast during class draws them.
void drawSixtyDurationsUnderWay(benchmark::State& state) {
    const DurationDraw draw(sixtyGuesses());
    std::vector<Seconds> elapsed(60, Seconds(-1)), durations;
    for (std::size_t i = 0; i < 4; ++i) {
        elapsed[i] = Seconds(450);
    }
    std::uint64_t run = 0;
    for (auto _ : state) {
        draw.draw(1, ++run, elapsed, durations);
        benchmark::DoNotOptimize(durations.data());
    }
}
BENCHMARK(drawSixtyDurationsUnderWay)->Unit(benchmark::kMicrosecond);

// Sixty different shapes, each tabulated; most networks have fewer.
void tabulateSixtyDurations(benchmark::State& state) {
    const Network network = sixtyGuesses();
    for (auto _ : state) {
        benchmark::DoNotOptimize(DurationDraw(network));
    }
}
BENCHMARK(tabulateSixtyDurations)->Unit(benchmark::kMillisecond);

// Goal: under 50 us for 60 activities, because no sheet is shown without it.
void checkSheetOfDemoClass(benchmark::State& state) {
    const Network& network = demoNetwork();
    const RunSheet sheet = dispatch(network, defaultOrder(network));
    for (auto _ : state) {
        benchmark::DoNotOptimize(rulesBrokenBy(network, sheet));
    }
}
BENCHMARK(checkSheetOfDemoClass)->Unit(benchmark::kMicrosecond);

}  // namespace

}  // namespace brinebell::bench
