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

std::string programCase(const std::string& name) {
    std::string result;
    bool raise = false;
    for (const char c : name) {
        if (c == '_') {
            raise = true;
        } else {
            result += raise && c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
            raise = false;
        }
    }
    return result;
}

json withKeys(const json& value, std::string (*named)(const std::string&)) {
    if (value.is_array()) {
        json array = json::array();
        for (const json& element : value) {
            array.push_back(withKeys(element, named));
        }
        return array;
    }
    if (value.is_object()) {
        json object = json::object();
        for (const auto& [key, element] : value.items()) {
            object[named(key)] = withKeys(element, named);
        }
        return object;
    }
    return value;
}

}  // namespace

json withSnakeCaseKeys(const json& value) {
    return withKeys(value, snakeCase);
}

json withProgramKeys(const json& value) {
    return withKeys(value, programCase);
}

}  // namespace brinebell
