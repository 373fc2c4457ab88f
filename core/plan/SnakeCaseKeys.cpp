#include "plan/SnakeCaseKeys.h"

#include <nlohmann/json.hpp>
#include <string>

namespace brinebell {

using nlohmann::json;

namespace {

std::string snakeCase(const std::string& name) {
    std::string result;
    for (const char c : name) {
        if (c >= 'A' && c <= 'Z') {
            result += '_';
            result += static_cast<char>(c - 'A' + 'a');
        } else {
            result += c;
        }
    }
    return result;
}

}  // namespace

json withSnakeCaseKeys(const json& value) {
    if (value.is_array()) {
        json array = json::array();
        for (const json& element : value) {
            array.push_back(withSnakeCaseKeys(element));
        }
        return array;
    }
    if (value.is_object()) {
        json object = json::object();
        for (const auto& [key, element] : value.items()) {
            object[snakeCase(key)] = withSnakeCaseKeys(element);
        }
        return object;
    }
    return value;
}

}  // namespace brinebell
