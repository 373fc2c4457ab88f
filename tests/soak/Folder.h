// Folder.h — a folder of its own in memory where there is such a place, gone afterwards with all that is in it.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <string>

namespace brinebell::soak {

class Folder {
public:
    Folder() {
        const std::filesystem::path memory = "/dev/shm";
        const bool isThere = std::filesystem::is_directory(memory);
        std::string name =
            ((isThere ? memory : std::filesystem::temp_directory_path()) / "brinebell-soak-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) {
            throw std::runtime_error("no scratch folder");
        }
        m_path = name;
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const std::string& path() const { return m_path; }
    std::string file(const std::string& name) const { return m_path + "/" + name; }
    void empty() const {
        for (const auto& entry : std::filesystem::directory_iterator(m_path)) {
            std::filesystem::remove_all(entry.path());
        }
    }

private:
    std::string m_path;
};

}  // namespace brinebell::soak
