// FaultJson.h — faults as JSON, for replies that carry more than faults.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "base/Result.h"

namespace brinebell {

/// An array of {code, message, file, line, column}; what is not known of the place is left out.
nlohmann::ordered_json faultsToJson(const std::vector<Error>& faults);

/// Bytes that are not UTF-8 (a file name, a damaged log) must not stop an answer: they are replaced.
std::string dump(const nlohmann::ordered_json& document);

}  // namespace brinebell
