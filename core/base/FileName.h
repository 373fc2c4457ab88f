// FileName.h — names of files made from what people or files say (a class, a session, a dish).
#pragma once

#include <string>
#include <string_view>

namespace brinebell {

/// `text` as one plain file name without an ending: ASCII letters, digits, "-" and "_" stay, any run of others becomes
/// one "-". It names no folder, begins and ends with a letter or digit, has at most 80 characters, and is "untitled"
/// where nothing is left. So content cannot lead a file out of the folder it is saved in.
std::string fileNameFrom(std::string_view text);

}  // namespace brinebell
