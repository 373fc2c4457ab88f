// BrokenFiles.h — the folder tests/data/broken: files named for their one fault, and where it is expected.
//
// Each file differs from the sound one of its kind in tests/data/sound by that fault. The expected place was
// found in the text of the file, never taken from the reader.
#pragma once

#include <gtest/gtest.h>

#include <cctype>
#include <ostream>
#include <string>
#include <string_view>

#include "support/SoundFiles.h"

namespace brinebell {

struct BrokenFile {
    std::string_view name;  ///< without ".toml"
    int line = 0;
    int column = 0;
    std::string_view message;  ///< a part of it, long enough to be no other fault's
};

inline std::string brokenPath(const BrokenFile& file) {
    return std::string(BRINEBELL_TEST_DATA "/broken/") + std::string(file.name) + ".toml";
}

/// The file's name as the name of a test: "path-escape" becomes "PathEscape".
inline std::string testName(const ::testing::TestParamInfo<BrokenFile>& info) {
    std::string name;
    bool start = true;
    for (const char c : info.param.name) {
        if (c == '-') {
            start = true;
            continue;
        }
        name += start ? static_cast<char>(std::toupper(static_cast<unsigned char>(c))) : c;
        start = false;
    }
    return name;
}

inline void PrintTo(const BrokenFile& file, std::ostream* out) {
    *out << file.name;
}

/// Expects `result` to be the one fault that the file is named for, at its place.
template <class Value>
void expectItsFault(const BrokenFile& file, const FileResult<Value>& result) {
    ASSERT_FALSE(result.has_value());
    const std::string all = inLines(result.error());
    ASSERT_EQ(result.error().size(), 1u) << all;
    const Error& fault = result.error().front();
    EXPECT_EQ(fault.where.file, brokenPath(file));
    EXPECT_EQ(fault.where.line, file.line) << all;
    EXPECT_EQ(fault.where.column, file.column) << all;
    EXPECT_NE(fault.message.find(file.message), std::string::npos) << all;
}

}  // namespace brinebell
