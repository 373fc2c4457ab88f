#include "base/Result.h"

#include <fmt/format.h>

namespace brinebell {

std::string describe(const Error& error) {
    const Place& where = error.where;
    if (where.file.empty()) {
        return error.message;
    }
    if (where.line == 0) {
        return fmt::format("{}: {}", where.file, error.message);
    }
    return fmt::format("{}:{}:{}: {}", where.file, where.line, where.column, error.message);
}

}  // namespace brinebell
