// ConsoleSupport.h — brinebell-console as the tests run it, with a scratch folder for its logbooks.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "support/Program.h"

namespace brinebell::test {

inline const std::string kDemoClass = BRINEBELL_RECIPES "/classes/tamarack-salsa-and-beans.toml";

/// A folder of its own for one test, gone afterwards with all that is in it.
class Scratch {
public:
    Scratch();
    ~Scratch();
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    std::string path(const std::string& name) const { return m_folder + "/" + name; }
    /// Writes a file and gives its path.
    std::string file(const std::string& name, const std::string& text) const;
    bool isEmpty() const;

private:
    std::string m_folder;
};

/// Runs the console. Its default logbook lies where no home folder is touched.
support::Finished console(const std::vector<std::string>& arguments);

/// Standard output as the one JSON document it must be; a test fails when it is not.
nlohmann::json documentOf(const support::Finished& finished);

std::string bytesOf(const std::string& path);

/// A rehearsal of the demonstration class into a new logbook in `scratch`; gives the logbook's path.
std::string rehearsed(const Scratch& scratch, const std::string& name, const std::vector<std::string>& more = {});

}  // namespace brinebell::test
