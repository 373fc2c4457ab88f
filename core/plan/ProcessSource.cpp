#include "plan/ProcessSource.h"

#include <fmt/format.h>

#include "base/Language.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

std::string processSourceInWords(const Load& load) {
    return fmt::format("{}; {}", load.tableEntry,
                       load.tableSource.empty() ? core::say("source not recorded") : load.tableSource);
}

std::string processInWords(const Network& network, const Load& load) {
    const bool hasDish = load.dish >= 0 && static_cast<std::size_t>(load.dish) < network.dishes.size();
    return core::say("{}, load {}: {} ({})",
                     hasDish ? network.dishes[static_cast<std::size_t>(load.dish)].title : core::say("jars"),
                     load.number, printDuration(load.processTime), processSourceInWords(load));
}

}  // namespace brinebell
