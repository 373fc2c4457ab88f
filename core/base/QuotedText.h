// QuotedText.h — text from outside, made fit to stand inside a message.
#pragma once

#include <string>
#include <string_view>

namespace brinebell {

/// `text` in double quotes. Control characters and bytes that are not UTF-8 become "?", and what runs past 60
/// bytes is cut off with "…", so that a hostile file can neither forge a line of output nor flood it.
std::string quotedText(std::string_view text);

/// `text` whole and without quotes, with the same characters replaced: for a page, which has room for it.
std::string printableText(std::string_view text);

}  // namespace brinebell
