#include "safety/Jar.h"

#include "base/Language.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace brinebell {
namespace {

template <class Value, std::size_t N>
using Words = std::array<std::pair<Value, std::string_view>, N>;

constexpr Words<JarSize, 7> kJarSizes{{{JarSize::QuarterPint, "quarter-pint"},
                                       {JarSize::HalfPint, "half-pint"},
                                       {JarSize::TwelveOunce, "12-ounce"},
                                       {JarSize::Pint, "pint"},
                                       {JarSize::PintAndHalf, "1-1/2-pint"},
                                       {JarSize::Quart, "quart"},
                                       {JarSize::HalfGallon, "half-gallon"}}};
constexpr Words<Pack, 2> kPacks{{{Pack::Hot, "hot"}, {Pack::Raw, "raw"}}};
constexpr Words<Method, 4> kMethods{{{Method::BoilingWater, "boiling-water"},
                                     {Method::AtmosphericSteam, "atmospheric-steam"},
                                     {Method::PressureDial, "pressure-dial"},
                                     {Method::PressureWeighted, "pressure-weighted"}}};

template <class Value, std::size_t N>
std::string_view wordFor(const Words<Value, N>& words, Value value) {
    const auto found = std::find_if(words.begin(), words.end(), [&](const auto& row) { return row.first == value; });
    return found->second;
}

template <class Value, std::size_t N>
Result<Value> valueFor(const Words<Value, N>& words, std::string_view kind, std::string_view text) {
    std::string known;
    for (const auto& [value, word] : words) {
        if (word == text) {
            return value;
        }
        known += (known.empty() ? "" : ", ") + std::string(word);
    }
    return fail(ErrorCode::InvalidInput, core::say("\"{}\" is not a {}; known are {}", text, kind, known));
}

}  // namespace

std::string_view toText(JarSize size) {
    return wordFor(kJarSizes, size);
}
std::string_view toText(Pack pack) {
    return wordFor(kPacks, pack);
}
std::string_view toText(Method method) {
    return wordFor(kMethods, method);
}

std::int64_t fluidOunces(JarSize size) {
    switch (size) {
        case JarSize::QuarterPint:
            return 4;
        case JarSize::HalfPint:
            return 8;
        case JarSize::TwelveOunce:
            return 12;
        case JarSize::Pint:
            return 16;
        case JarSize::PintAndHalf:
            return 24;
        case JarSize::Quart:
            return 32;
        case JarSize::HalfGallon:
            return 64;
    }
    return 0;
}

Result<JarSize> jarSizeFromText(std::string_view text) {
    return valueFor(kJarSizes, "jar size", text);
}
Result<Pack> packFromText(std::string_view text) {
    return valueFor(kPacks, "pack", text);
}
Result<Method> methodFromText(std::string_view text) {
    return valueFor(kMethods, "canning method", text);
}

}  // namespace brinebell
