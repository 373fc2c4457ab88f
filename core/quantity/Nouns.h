// Nouns.h — English nouns of kitchen counts in the singular and the plural. Inside this room only.
#pragma once

#include <string>
#include <string_view>

namespace brinebell {

/// "heads" as "head", "half-pints" as "half-pint", "bay-leaves" as "bay-leaf"; a singular comes back as it
/// is.
std::string singularOf(std::string_view noun);

/// "head" as "heads". For the nouns a kitchen counts, singularOf(pluralOf(noun)) is `noun` again.
std::string pluralOf(std::string_view singular);

}  // namespace brinebell
