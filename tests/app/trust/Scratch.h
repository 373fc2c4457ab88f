// Scratch.h — a folder of its own for one test, gone afterwards with all that is in it.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <string>

namespace brinebell {

class Scratch {
public:
    Scratch() {
        std::string name = (std::filesystem::temp_directory_path() / "brinebell-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) {
            throw std::runtime_error("no scratch folder");
        }
        m_folder = name;
    }
    ~Scratch() {
        std::error_code ignored;
        std::filesystem::remove_all(m_folder, ignored);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    std::string path(const std::string& name) const { return m_folder + "/" + name; }

private:
    std::string m_folder;
};

}  // namespace brinebell
