#include "quantity/Nouns.h"

#include <array>

namespace brinebell {

namespace {

struct Irregular {
    std::string_view singular;
    std::string_view plural;
};
constexpr std::array<Irregular, 13> kIrregular{{{"leaf", "leaves"},
                                                {"loaf", "loaves"},
                                                {"half", "halves"},
                                                {"knife", "knives"},
                                                {"tomato", "tomatoes"},
                                                {"potato", "potatoes"},
                                                {"mango", "mangoes"},
                                                {"pie", "pies"},
                                                {"cookie", "cookies"},
                                                {"quiche", "quiches"},
                                                {"brioche", "brioches"},
                                                {"mousse", "mousses"},
                                                {"molasses", "molasses"}}};

bool isVowel(char c) {
    return std::string_view("aeiouAEIOU").find(c) != std::string_view::npos;
}

// "asparagus", "couscous", "ibis": singular as they stand, and counted without a plural of their own.
bool endsLikeLatin(std::string_view word) {
    return word.ends_with("us") || word.ends_with("is");
}

bool hisses(std::string_view word) {
    return word.ends_with("ss") || word.ends_with("x") || word.ends_with("ch") || word.ends_with("sh");
}

std::string singularWord(std::string_view word) {
    for (const Irregular& noun : kIrregular) {
        if (word == noun.singular || word == noun.plural) {
            return std::string(noun.singular);
        }
    }
    if (!word.ends_with('s') || word.size() < 2 || word.ends_with("ss") || endsLikeLatin(word)) {
        return std::string(word);
    }
    if (word.size() > 3 && word.ends_with("ies") && !isVowel(word[word.size() - 4])) {
        return std::string(word.substr(0, word.size() - 3)) + 'y';
    }
    if (word.ends_with("es") && hisses(word.substr(0, word.size() - 2))) {
        return std::string(word.substr(0, word.size() - 2));
    }
    return std::string(word.substr(0, word.size() - 1));
}

std::string pluralWord(std::string_view word) {
    for (const Irregular& noun : kIrregular) {
        if (word == noun.singular) {
            return std::string(noun.plural);
        }
    }
    if (endsLikeLatin(word)) {
        return std::string(word);
    }
    if (hisses(word)) {
        return std::string(word) + "es";
    }
    if (word.size() > 1 && word.ends_with('y') && !isVowel(word[word.size() - 2])) {
        return std::string(word.substr(0, word.size() - 1)) + "ies";
    }
    return std::string(word) + 's';
}

// Only the last part of a noun with hyphens is counted.
template <class Change>
std::string changeLastWord(std::string_view noun, Change change) {
    const std::size_t hyphen = noun.rfind('-');
    const std::size_t start = hyphen == std::string_view::npos ? 0 : hyphen + 1;
    return std::string(noun.substr(0, start)) + change(noun.substr(start));
}

}  // namespace

std::string singularOf(std::string_view noun) {
    return changeLastWord(noun, singularWord);
}

std::string pluralOf(std::string_view singular) {
    return singular.empty() ? std::string() : changeLastWord(singular, pluralWord);
}

}  // namespace brinebell
