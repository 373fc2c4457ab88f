#include <benchmark/benchmark.h>

#include "BenchSupport.h"
#include "document/Document.h"
#include "plan/ClassFile.h"
#include "recipe/RecipeFile.h"

namespace brinebell::bench {

namespace {

void readAllRecipes(benchmark::State& state) {
    const std::vector<std::string> files = shippedFiles("");
    std::size_t bytes = 0;
    for (const std::string& file : files) {
        bytes += readFile(file).value_or("").size();
    }
    for (auto _ : state) {
        for (const std::string& file : files) {
            const FileResult<Recipe> recipe = readRecipeFile(file);
            if (!recipe) {
                state.SkipWithError("a shipped recipe has a fault");
            }
            benchmark::DoNotOptimize(recipe);
        }
    }
    state.counters["files"] = static_cast<double>(files.size());
    state.counters["bytes"] = static_cast<double>(bytes);
}
BENCHMARK(readAllRecipes)->Unit(benchmark::kMillisecond);

void readDemoClass(benchmark::State& state) {
    const std::vector<std::string> files = shippedFiles("classes");
    for (auto _ : state) {
        benchmark::DoNotOptimize(readClassFile(files.front()));
    }
}
BENCHMARK(readDemoClass)->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace brinebell::bench
