#include <benchmark/benchmark.h>

#include "BenchSupport.h"
#include "plan/Dispatcher.h"

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

}  // namespace

}  // namespace brinebell::bench
