// OneInput.cpp — one input between libFuzzer and the harness, held to its limits of time and memory.
//
// Only a build with libFuzzer measures. Time is processor time, so that a busy machine is no fault. 100 ms are
// promised; the sanitizers make the readers about eleven times slower (an exported session of 28 kB: 5.3 ms and 60 ms),
// so what takes more than 500 ms with them comes too near to that promise.
#include <cstdint>
#include <cstdio>
#include <cstdlib>

#include "fuzz/Harness.h"

#ifdef BRINEBELL_FUZZ
#include <sanitizer/allocator_interface.h>

#include <ctime>
#endif

namespace brinebell::fuzz {

void mustHold(bool kept, const char* promise) {
    if (!kept) {
        std::fprintf(stderr, "promise not kept: %s\n", promise);
        std::abort();
    }
}

namespace {

#ifdef BRINEBELL_FUZZ

constexpr double kMostMilliseconds = 500;
constexpr std::size_t kMostBytes = 64U << 20U;

std::size_t live = 0;  // of this input; single-threaded
std::size_t most = 0;
bool counting = false;

void taken(const volatile void* block, std::size_t size) {
    if (counting && block != nullptr) {
        live += size;
        most = live > most ? live : most;
    }
}

void given(const volatile void* block) {
    if (counting && block != nullptr) {
        const std::size_t size = __sanitizer_get_allocated_size(block);
        live -= size < live ? size : live;
    }
}

double processorMilliseconds() {
    timespec t{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) * 1e3 + static_cast<double>(t.tv_nsec) / 1e6;
}

// What is read once and kept (the tested recipes, the process tables) belongs to no input.
bool first = true;

void withinLimits(std::string_view bytes) {
    static const int installed = __sanitizer_install_malloc_and_free_hooks(taken, given);
    mustHold(installed != 0, "the sanitizer tells of allocations");
    if (first) {
        first = false;
        tryInput(bytes);
    }
    live = most = 0;
    counting = true;
    const double began = processorMilliseconds();
    tryInput(bytes);
    const double took = processorMilliseconds() - began;
    counting = false;
    if (took > kMostMilliseconds || most > kMostBytes) {
        std::fprintf(stderr, "took %.1f ms and %zu bytes\n", took, most);
    }
    mustHold(took <= kMostMilliseconds, "at most 500 ms for an input, with the sanitizers");
    mustHold(most <= kMostBytes, "at most 64 MiB for an input");
}

#else

void withinLimits(std::string_view bytes) {
    tryInput(bytes);
}

#endif

}  // namespace
}  // namespace brinebell::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    brinebell::fuzz::withinLimits({reinterpret_cast<const char*>(data), size});
    return 0;
}
