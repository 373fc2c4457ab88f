#include "ConsoleSupport.h"

#include <gtest/gtest.h>
#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace brinebell::test {

Scratch::Scratch() {
    std::string pattern = (std::filesystem::temp_directory_path() / "brinebell-console-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr) {
        throw std::runtime_error("no scratch folder");
    }
    m_folder = pattern;
}

Scratch::~Scratch() {
    std::error_code ignored;
    std::filesystem::remove_all(m_folder, ignored);
}

std::string Scratch::file(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
    return path(name);
}

bool Scratch::isEmpty() const {
    return std::filesystem::is_empty(m_folder);
}

support::Finished console(const std::vector<std::string>& arguments) {
    return support::runProgram(BRINEBELL_BIN_DIR "/brinebell-console", arguments,
                               {{"XDG_DATA_HOME", "/nonexistent"}, {"HOME", "/nonexistent"}});
}

nlohmann::json documentOf(const support::Finished& finished) {
    nlohmann::json document = nlohmann::json::parse(finished.out, nullptr, false);
    EXPECT_FALSE(document.is_discarded()) << finished.out << finished.err;
    return document;
}

std::string bytesOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

std::string rehearsed(const Scratch& scratch, const std::string& name, const std::vector<std::string>& more) {
    std::vector<std::string> words{"rehearse", kDemoClass, "--log", scratch.path(name)};
    words.insert(words.end(), more.begin(), more.end());
    const support::Finished finished = console(words);
    EXPECT_EQ(finished.status, 0) << finished.err;
    return scratch.path(name);
}

}  // namespace brinebell::test
