// Bench.cpp — brinebell-bench. The library prints the machine; the sizes of what is measured follow it.
#include <benchmark/benchmark.h>

#include <string>

#include "BenchSupport.h"

int main(int argc, char** argv) {
    using namespace brinebell;
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) {
        return 2;
    }
    const Network& network = bench::demoNetwork();
    benchmark::AddCustomContext("class", network.title);
    benchmark::AddCustomContext("activities", std::to_string(network.activities.size()));
    benchmark::AddCustomContext("loads", std::to_string(network.loads.size()));
    benchmark::AddCustomContext("hold limits", std::to_string(network.limits.size()));
    benchmark::AddCustomContext("events of a rehearsal", std::to_string(bench::demoEvents().size()));
    benchmark::AddCustomContext("shipped recipes", std::to_string(bench::shippedFiles("").size()));
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}
