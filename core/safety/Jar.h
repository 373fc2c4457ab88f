// Jar.h — the words of the published tables: jar sizes, packs, canning methods.
//
// Source of the sizes: USDA Complete Guide to Home Canning, AIB 539 (1994), jars and lids.
#pragma once

#include <cstdint>
#include <string_view>

#include "base/Result.h"

namespace brinebell {

/// Ordered by size: a larger jar than the table lists has no tested time.
enum class JarSize { QuarterPint, HalfPint, TwelveOunce, Pint, PintAndHalf, Quart, HalfGallon };
enum class Pack { Hot, Raw };
enum class Method { BoilingWater, AtmosphericSteam, PressureDial, PressureWeighted };
constexpr bool isPressure(Method method) {
    return method == Method::PressureDial || method == Method::PressureWeighted;
}

/// "quarter-pint", "half-pint", "12-ounce", "pint", "1-1/2-pint", "quart", "half-gallon".
std::string_view toText(JarSize size);
std::string_view toText(Pack pack);      ///< "hot", "raw"
std::string_view toText(Method method);  ///< "boiling-water", "atmospheric-steam", "pressure-dial", "pressure-weighted"

/// What the jar holds, 4 to 64 fluid ounces.
std::int64_t fluidOunces(JarSize size);

/// The reverse of toText. Error: InvalidInput, naming the words that are known.
Result<JarSize> jarSizeFromText(std::string_view text);
Result<Pack> packFromText(std::string_view text);
Result<Method> methodFromText(std::string_view text);

}  // namespace brinebell
