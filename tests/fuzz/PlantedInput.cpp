// Not a reader: faults for the harness itself to be held against. "crash", "slow", "large" and "leak" do what they say.
#include <vector>

#include "fuzz/Harness.h"

void brinebell::fuzz::tryInput(std::string_view bytes) {
    if (bytes.substr(0, 5) == "crash") {
        mustHold(false, "no planted crash");
    }
    if (bytes.substr(0, 4) == "slow") {
        volatile unsigned long sum = 0;
        for (unsigned long i = 0; i < 1'000'000'000; ++i) {
            sum = sum + i;
        }
    }
    if (bytes.substr(0, 5) == "large") {
        const std::vector<char> much((64U << 20U) + 1, bytes[0]);
        mustHold(much.back() == 'l', "memory holds what was put there");
    }
    if (bytes.substr(0, 4) == "leak") {
        char* volatile lost = new char[100];
        lost = nullptr;
        (void)lost;
    }
}
