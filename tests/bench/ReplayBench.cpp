#include <benchmark/benchmark.h>

#include "BenchSupport.h"
#include "session/Session.h"

namespace brinebell::bench {

namespace {

// Goal: under 20 ms, so that taking up a session after a crash is not felt.
void replayTenThousandEvents(benchmark::State& state) {
    const std::vector<Event> events = longSession(10'000);
    for (auto _ : state) {
        const Result<State> last = replay(demoNetwork(), events);
        if (!last) {
            state.SkipWithError("the events do not replay");
        }
        benchmark::DoNotOptimize(last);
    }
    state.counters["events"] = static_cast<double>(events.size());
}
BENCHMARK(replayTenThousandEvents)->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace brinebell::bench
