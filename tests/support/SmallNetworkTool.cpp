// Prints small networks as JSON, one a line, for tests/reference/make-network-optima. Not installed.
//
// Usage: small-network FIRST-SEED COUNT
#include <cstdlib>
#include <iostream>

#include "support/SmallNetwork.h"

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "usage: small-network FIRST-SEED COUNT\n";
        return 2;
    }
    const std::uint64_t first = std::strtoull(argv[1], nullptr, 10);
    const std::uint64_t count = std::strtoull(argv[2], nullptr, 10);
    for (std::uint64_t seed = first; seed < first + count; ++seed) {
        const brinebell::Network network = brinebell::support::smallNetwork(seed);
        for (const std::string& fault : brinebell::faultsIn(network)) {
            std::cerr << seed << ": " << fault << '\n';
            return 1;
        }
        std::cout << brinebell::networkToJson(network) << '\n';
    }
}
