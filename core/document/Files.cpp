// Files.cpp — reading and writing whole files, with the system calls that promise what the header promises.
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>

#include "document/Document.h"
#include "document/Fields.h"
#include "document/KeptFile.h"

#include "base/Language.h"

namespace brinebell {
namespace {

/// Owns one file descriptor.
class Descriptor {
public:
    explicit Descriptor(int number) : m_number(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() { close(); }

    bool isOpen() const { return m_number >= 0; }
    int number() const { return m_number; }
    bool close() {
        const int number = m_number;
        m_number = -1;
        return number < 0 || ::close(number) == 0;
    }

private:
    int m_number;
};

tl::unexpected<Error> ioFault(const std::string& path, std::string_view what, int number) {
    return fail(ErrorCode::Io, fmt::format("{}: {}", what, std::generic_category().message(number)), {path, 0, 0});
}

Result<void> writeAll(const Descriptor& file, const std::string& path, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = ::write(file.number(), text.data(), text.size());
        if (written < 0 && errno == EINTR) {
            continue;
        }
        if (written < 0) {
            return ioFault(path, core::say("cannot write"), errno);
        }
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return {};
}

Result<void> syncFolder(const std::string& folder) {
    const Descriptor handle(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    // Some file systems cannot flush a folder and say so with EINVAL; there is nothing more to do then.
    if (!handle.isOpen() || (::fsync(handle.number()) != 0 && errno != EINVAL)) {
        return ioFault(folder, core::say("cannot flush the folder"), errno);
    }
    return {};
}

// A new file is its owner's alone, whatever the umask says: records, exports and classes name people.
constexpr mode_t kOwnerOnly = S_IRUSR | S_IWUSR;

enum class Rights { KeepOld, OwnerOnly };

/// Opens a file that was not there before, beside `path`, and names it in `newPath`.
int createBeside(const std::string& path, std::string& newPath) {
    constexpr int kTries = 100;
    for (int i = 0; i < kTries; ++i) {
        newPath = fmt::format("{}.new-{}-{}", path, ::getpid(), i);
        const int number = ::open(newPath.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, kOwnerOnly);
        if (number >= 0 || errno != EEXIST) {
            return number;
        }
    }
    return -1;
}

/// Fills the new file and puts it in the place of `path`.
Result<void> fillAndRename(Descriptor& file, const std::string& newPath, const std::string& path, Rights rights,
                           std::string_view text) {
    struct stat old {};
    if (rights == Rights::KeepOld && ::stat(path.c_str(), &old) == 0 &&
        ::fchmod(file.number(), old.st_mode & 07777) != 0) {
        return ioFault(path, core::say("cannot keep the file's rights"), errno);
    }
    if (auto written = writeAll(file, path, text); !written) {
        return written;
    }
    if (::fsync(file.number()) != 0 || !file.close()) {
        return ioFault(path, core::say("cannot flush to the disk"), errno);
    }
    if (std::rename(newPath.c_str(), path.c_str()) != 0) {
        return ioFault(path, core::say("cannot replace the file"), errno);
    }
    return {};
}

Result<void> writeWhole(const std::string& path, std::string_view text, Rights rights) {
    // A link is followed, so that the file it points at is replaced and not the link.
    std::error_code missing;
    const std::filesystem::path real = std::filesystem::canonical(path, missing);
    const std::string target = missing ? path : real.string();
    struct stat old {};
    if (::stat(target.c_str(), &old) == 0 && !S_ISREG(old.st_mode)) {
        return fail(
            ErrorCode::Io,
            S_ISDIR(old.st_mode) ? core::say("this is a folder, not a file") : core::say("this is not a plain file"),
            {path, 0, 0});
    }
    std::string newPath;
    Descriptor file(createBeside(target, newPath));
    if (!file.isOpen()) {
        return ioFault(path, core::say("cannot create a file beside it"), errno);
    }
    if (auto done = fillAndRename(file, newPath, target, rights, text); !done) {
        ::unlink(newPath.c_str());
        return done;
    }
    const std::string folder = std::filesystem::path(target).parent_path().string();
    return syncFolder(folder.empty() ? "." : folder);
}

// A second name for the old bytes, put in the place of what was kept before. Where a file system has no second names
// the bytes are copied.
Result<void> keepOld(const std::string& path) {
    const std::string kept = keptName(path);
    const std::string onTheWay = fmt::format("{}.new-{}", kept, ::getpid());
    ::unlink(onTheWay.c_str());
    if (::link(path.c_str(), onTheWay.c_str()) != 0) {
        const auto bytes = readFile(path);
        return bytes ? writeWhole(kept, *bytes, Rights::OwnerOnly) : tl::unexpected(bytes.error());
    }
    const int failed = std::rename(onTheWay.c_str(), kept.c_str()) == 0 ? 0 : errno;
    // rename() leaves two names of one file as they are, so the one on the way may still be there.
    ::unlink(onTheWay.c_str());
    return failed == 0 ? Result<void>() : ioFault(path, core::say("cannot keep the old file"), failed);
}

}  // namespace

Result<std::string> readFile(const std::string& path, std::size_t maxBytes) {
    // Without O_NONBLOCK a named pipe would hold the program here until somebody writes to it.
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    struct stat about {};
    if (!file.isOpen() || ::fstat(file.number(), &about) != 0) {
        return ioFault(path, core::say("cannot open"), errno);
    }
    if (!S_ISREG(about.st_mode)) {
        return fail(
            ErrorCode::Io,
            S_ISDIR(about.st_mode) ? core::say("this is a folder, not a file") : core::say("this is not a plain file"),
            {path, 0, 0});
    }
    std::string bytes;
    char block[16 * 1024];
    for (;;) {
        const ssize_t got = ::read(file.number(), block, sizeof block);
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            return ioFault(path, core::say("cannot read"), errno);
        }
        if (got == 0) {
            return bytes;
        }
        bytes.append(block, static_cast<std::size_t>(got));
        if (bytes.size() > maxBytes) {
            return fail(ErrorCode::OutOfRange, core::say("the file is larger than {} bytes", maxBytes), {path, 0, 0});
        }
    }
}

Result<void> writeFileWhole(const std::string& path, std::string_view text) {
    return writeWhole(path, text, Rights::KeepOld);
}

std::string keptName(const std::string& path) {
    return path + "~";
}

Result<void> writeKept(const std::string& path, std::string_view text, OldFile old) {
    std::error_code fault;
    const auto status = std::filesystem::symlink_status(path, fault);
    if (std::filesystem::is_symlink(status)) {
        return fail(ErrorCode::Refused, core::say("this is a link to another place, which is not written to"),
                    {path, 0, 0});
    }
    if (old == OldFile::Keep && std::filesystem::is_regular_file(status)) {
        if (auto kept = keepOld(path); !kept) {
            return kept;
        }
    }
    return writeWhole(path, text, Rights::OwnerOnly);
}

Result<std::string> fileOfId(const std::string& folder, std::string_view id) {
    return readIdentifier(id).map([&](const std::string& good) { return fmt::format("{}/{}.toml", folder, good); });
}

}  // namespace brinebell
