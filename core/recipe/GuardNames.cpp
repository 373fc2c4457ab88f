#include "recipe/GuardNames.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace brinebell {
namespace {

// The words of a name, in lower case; bytes of letters beyond ASCII stay as they are.
std::vector<std::string> wordsOf(std::string_view name) {
    std::vector<std::string> words{""};
    for (const char c : name) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
        if (letter) {
            words.back() += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    std::erase(words, std::string());
    return words;
}

bool has(const std::vector<std::string>& words, std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

// A name of nothing but words of `known`, with at least the words of `needed`.
bool isNamed(std::string_view name, std::string_view needed, std::string_view known) {
    const std::vector<std::string> words = wordsOf(name);
    const std::vector<std::string> must = wordsOf(needed);
    return choosesAmong(name, known) &&
           std::all_of(must.begin(), must.end(), [&](const std::string& word) { return has(words, word); });
}

bool isNamedWith(std::string_view name, std::string_view needed, std::string_view more, std::string_view tested) {
    return isNamed(name, needed, std::string(needed) + ' ' + std::string(more) + ' ' + std::string(tested));
}

// Words that would turn a spoon of spice into food, fat or thickener.
constexpr std::array<std::string_view, 33> kFoodWords{
    "arrowroot", "bacon",  "barley",  "bean",     "beans", "bread",    "butter", "cheese", "corn",
    "cornmeal",  "cream",  "egg",     "eggs",     "fat",   "fish",     "flour",  "grain",  "gelatin",
    "lard",      "lentil", "lentils", "meat",     "milk",  "noodles",  "oats",   "oil",    "pasta",
    "pea",       "peas",   "potato",  "potatoes", "rice",  "thickener"};

}  // namespace

bool choosesAmong(std::string_view name, std::string_view tested) {
    const std::vector<std::string> words = wordsOf(name);
    const std::vector<std::string> known = wordsOf(tested);
    return !words.empty() &&
           std::all_of(words.begin(), words.end(), [&](const std::string& word) { return has(known, word); });
}

bool isNamedAs(const Ingredient& made, const Ingredient& tested) {
    if (made.name == tested.name) {
        return true;
    }
    switch (made.role) {
        case IngredientRole::Salt:
            return isNamedWith(made.name, "salt", "canning pickling", tested.name);
        case IngredientRole::Sugar:
            return isNamedWith(made.name, "sugar", "white granulated", tested.name);
        case IngredientRole::Water:
            return isNamedWith(made.name, "water", "", tested.name);
        case IngredientRole::Acid:
            return isNamedAsItsKind(made, tested.name);
        case IngredientRole::Spice:
            return made.kind == IngredientKind::Dried
                       ? isNamedWith(made.name, "", "dried ground whole crushed", tested.name)
                       : choosesAmong(made.name, tested.name);
        case IngredientRole::LowAcidFood:
        case IngredientRole::AcidFood:
        case IngredientRole::Oil:
        case IngredientRole::Firming:
            break;
    }
    return choosesAmong(made.name, tested.name);
}

bool isNamedAsItsKind(const Ingredient& acid, std::string_view tested) {
    switch (acid.kind) {
        case IngredientKind::Vinegar:
            return isNamedWith(acid.name, "vinegar", "white cider apple distilled acidity percent", tested);
        case IngredientKind::BottledLemonJuice:
            return isNamedWith(acid.name, "bottled lemon juice", "", "");
        case IngredientKind::BottledLimeJuice:
            return isNamedWith(acid.name, "bottled lime juice", "", "");
        case IngredientKind::CitricAcid:
            return isNamedWith(acid.name, "citric acid", "powder powdered crystals", "");
        case IngredientKind::Unsaid:
        case IngredientKind::HomemadeVinegar:
        case IngredientKind::FreshCitrusJuice:
        case IngredientKind::Dried:
        case IngredientKind::Fresh:
            break;
    }
    return false;
}

bool speaksOfFood(std::string_view name) {
    const std::vector<std::string> words = wordsOf(name);
    return std::any_of(words.begin(), words.end(), [](const std::string& word) {
        return word.find("starch") != std::string::npos ||
               std::find(kFoodWords.begin(), kFoodWords.end(), word) != kFoodWords.end();
    });
}

}  // namespace brinebell
