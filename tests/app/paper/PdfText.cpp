#include "PdfText.h"

#include <gtest/gtest.h>

#include <sstream>

#include "support/Program.h"

namespace brinebell::test {

namespace {

std::string outputOf(const std::string& program, const std::vector<std::string>& arguments) {
    const support::Finished finished = support::runProgram("/usr/bin/" + program, arguments);
    EXPECT_EQ(finished.status, 0) << finished.err;
    return finished.out;
}

}  // namespace

std::string pdfText(const std::string& path) {
    std::istringstream words(outputOf("pdftotext", {path, "-"}));
    std::string text, word;
    while (words >> word) {
        text += (text.empty() ? "" : " ") + word;
    }
    // Printed letters may be joined; the words are the same.
    for (const auto& [joined, apart] :
         {std::pair("ﬃ", "ffi"), std::pair("ﬁ", "fi"), std::pair("ﬂ", "fl"), std::pair("ﬀ", "ff")}) {
        for (std::size_t at = text.find(joined); at != std::string::npos; at = text.find(joined, at)) {
            text.replace(at, std::string(joined).size(), apart);
        }
    }
    return text;
}

int pdfPages(const std::string& path) {
    std::istringstream lines(outputOf("pdfinfo", {path}));
    std::string line;
    while (std::getline(lines, line)) {
        if (line.rfind("Pages:", 0) == 0) {
            return std::stoi(line.substr(6));
        }
    }
    return 0;
}

}  // namespace brinebell::test
