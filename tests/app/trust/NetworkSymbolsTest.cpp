// No object file of ours names a socket call or a Qt class that talks to a network.
//
// The sound server and the message bus are reached by Qt Multimedia and Qt D-Bus, over local sockets, inside those
// libraries: NetworkTraceTest looks at what they really do.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "support/Program.h"

namespace brinebell {
namespace {

namespace fs = std::filesystem;

// socket(7), getaddrinfo(3) and their kin; exact names, so that QObject::connect is not taken for connect(2).
const std::set<std::string_view> kSocketCalls{
    "socket",      "socketpair", "connect",  "bind",        "listen",        "accept",        "accept4",
    "send",        "sendto",     "sendmsg",  "sendmmsg",    "recv",          "recvfrom",      "recvmsg",
    "recvmmsg",    "setsockopt", "shutdown", "getaddrinfo", "gethostbyname", "gethostbyaddr", "gethostbyname2",
    "getnameinfo", "res_query",  "res_send", "getpeername", "getsockname",   "syscall",       "gethostbyname_r",
};

// As they stand in mangled names. QDesktopServices hands addresses to a browser.
constexpr std::string_view kNetworkClasses[]{
    "QNetwork",   "QTcpSocket",   "QTcpServer",       "QUdpSocket", "QAbstractSocket",
    "QSslSocket", "QSctp",        "QHostInfo",        "QDnsLookup", "QHostAddr",
    "QWebSocket", "QLocalSocket", "QDesktopServices", "QHttp",      "QLocalServer",
};

bool isForbidden(std::string_view symbol) {
    const std::string_view bare = symbol.substr(0, symbol.find('@'));
    return kSocketCalls.contains(bare) ||
           std::any_of(std::begin(kNetworkClasses), std::end(kNetworkClasses),
                       [&](std::string_view name) { return bare.find(name) != std::string_view::npos; });
}

/// "file: symbol" for each undefined symbol that may not be there.
std::vector<std::string> forbiddenIn(const std::vector<std::string>& objects) {
    std::vector<std::string> arguments{"--undefined-only", "--format=posix", "--print-file-name"};
    arguments.insert(arguments.end(), objects.begin(), objects.end());
    const support::Finished nm = support::runProgram(NM_PROGRAM, arguments);
    EXPECT_EQ(nm.status, 0) << nm.err;
    std::vector<std::string> found;
    std::istringstream lines(nm.out);
    // "path/File.cpp.o: symbol U"
    for (std::string file, symbol, rest; lines >> file >> symbol && std::getline(lines, rest);) {
        if (isForbidden(symbol)) {
            found.push_back(file + " " + symbol);
        }
    }
    return found;
}

std::vector<fs::path> filesBelow(const fs::path& folder, std::string_view ending) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file() && entry.path().string().ends_with(ending)) {
            files.push_back(entry.path());
        }
    }
    return files;
}

/// The sources that objects were made of: as the build lists them, and those that it compiles joined in one.
std::set<std::string> compiledSources() {
    std::ifstream list(fs::path(BRINEBELL_BUILD_DIR) / "compile_commands.json");
    std::set<std::string> sources;
    for (const auto& entry : nlohmann::json::parse(list)) {
        const auto source = entry.at("file").get<std::string>();
        sources.insert(source);
        std::ifstream joined(source.ends_with(".cxx") ? source : std::string());
        for (std::string line; std::getline(joined, line);) {
            if (line.starts_with("#include \"") && line.ends_with('"')) {
                sources.insert(line.substr(10, line.size() - 11));
            }
        }
    }
    return sources;
}

}  // namespace

TEST(NetworkSymbols, NoObjectOfOursNamesASocketCallOrANetworkClass) {
    std::vector<std::string> objects;
    for (const char* part : {"core", "app"}) {
        for (const fs::path& object : filesBelow(fs::path(BRINEBELL_BUILD_DIR) / part, ".o")) {
            objects.push_back(object.string());
        }
    }
    // Every source of ours is among them, so that none is passed over.
    const std::set<std::string> compiled = compiledSources();
    std::vector<fs::path> sources = filesBelow(fs::path(BRINEBELL_SOURCE_DIR) / "core", ".cpp");
    const auto rest =
        filesBelow(fs::path(BRINEBELL_SOURCE_DIR) / (BRINEBELL_HAS_WINDOW ? "app" : "app/console"), ".cpp");
    sources.insert(sources.end(), rest.begin(), rest.end());
    for (const fs::path& source : sources) {
        EXPECT_TRUE(compiled.contains(source.string())) << source << " was not built";
    }
    EXPECT_GE(sources.size(), 120U);
    for (const std::string& found : forbiddenIn(objects)) {
        ADD_FAILURE() << found;
    }
}

TEST(NetworkSymbols, APlantedCallAndAPlantedClassAreFound) {
    const auto found = forbiddenIn({PLANTED_NETWORK_OBJECT});
    ASSERT_EQ(found.size(), 2U);
    EXPECT_TRUE(std::any_of(found.begin(), found.end(), [](const auto& f) { return f.ends_with(" socket"); }));
    EXPECT_TRUE(std::any_of(found.begin(), found.end(),
                            [](const auto& f) { return f.find("QTcpSocket") != std::string::npos; }));
}

TEST(NetworkSymbols, ASignalThatIsConnectedIsNoSocket) {
    EXPECT_FALSE(isForbidden("_ZN7QObject7connectEPKS_PKcS1_S3_N2Qt14ConnectionTypeE"));
    EXPECT_TRUE(isForbidden("connect@GLIBC_2.2.5"));
    EXPECT_TRUE(isForbidden("_ZN21QNetworkAccessManagerC1EP7QObject"));
}

}  // namespace brinebell
