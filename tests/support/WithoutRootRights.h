// WithoutRootRights.h — for tests of what a person may not do.
#pragma once

#include <unistd.h>

#include <cstdlib>
#include <stdexcept>

namespace brinebell::support {

/// Takes the rights of the machine's owner off the test while it lives, so that a folder closed to others is
/// closed to the test as well; does nothing for a test that runs as an ordinary user.
class WithoutRootRights {
public:
    WithoutRootRights() {
        constexpr uid_t kNobody = 65534;
        if (::geteuid() == 0 && ::seteuid(kNobody) != 0) {
            throw std::runtime_error("the rights could not be given up");
        }
    }
    ~WithoutRootRights() {
        if (::getuid() == 0 && ::seteuid(0) != 0) {
            std::abort();
        }
    }
    WithoutRootRights(const WithoutRootRights&) = delete;
    WithoutRootRights& operator=(const WithoutRootRights&) = delete;
};

}  // namespace brinebell::support
