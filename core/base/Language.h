// Language.h — what core/ says to people, in the language of whoever reads it.
//
// Core writes every text in English and hands it to `core::say` at the moment it is needed. A front end that speaks
// other languages installs a Translator once, before anything is said; without one, as in the console and in the tests,
// the text stays as it is written. What is kept (events, frozen networks) is kept in the language of that moment.
//
// The calls are written with their namespace, `core::say("…")` and `core::mark("…")`: that is how lupdate finds the texts
// and files them under the context "core".
//
// Thread safety: `say` may be called from any thread; `speakThrough` only while no other thread speaks.
#pragma once

#include <fmt/format.h>
#include <string>
#include <utility>

namespace brinebell::core {

/// The text for `english` in the reader's language, or `english` itself where there is none. Placeholders `{}`,
/// `{:.1f}` and `{0}` stay in it as they are.
using Translator = std::string (*)(const char* english);

/// From now on everything is said through `translator`; nullptr goes back to English.
void speakThrough(Translator translator);

/// A text without placeholders.
std::string say(const char* english);

/// Names a text of a constant table for translation and leaves it as it is; `say` it where it is shown.
constexpr const char* mark(const char* english) {
    return english;
}

/// The translation of `english` with its placeholders filled. A translation whose placeholders do not fit is left for `english`.
std::string filled(const char* english, fmt::format_args values);

/// A text with placeholders, which are checked against `values` when this compiles.
template <class... Values>
std::string say(fmt::format_string<Values...> english, Values&&... values)
    requires(sizeof...(Values) > 0)
{
    return filled(fmt::string_view(english).data(), fmt::make_format_args(values...));
}

}  // namespace brinebell::core
