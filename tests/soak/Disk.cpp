#include "soak/Disk.h"

#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iterator>
#include <new>

namespace brinebell::soak {

namespace {

struct File {
    sqlite3_file base;
    const char* path;  // SQLite's own, which lives as long as the file is open; null for a temporary one
    sqlite3_file* real;
};

File* fileOf(sqlite3_file* file) {
    return reinterpret_cast<File*>(file);
}
sqlite3_file* realOf(sqlite3_file* file) {
    return fileOf(file)->real;
}
sqlite3_vfs* ordinary() {
    static sqlite3_vfs* vfs = sqlite3_vfs_find("unix");
    return vfs;
}

void noteStep(sqlite3_file* file, DiskCall call, std::int64_t offset, const void* bytes = nullptr, int size = 0) {
    if (Disk::get().isKept() && fileOf(file)->path != nullptr) {
        const char* from = static_cast<const char*>(bytes);
        Disk::get().note({call, fileOf(file)->path, offset, std::vector<char>(from, from + size), 0});
    }
}

int closeFile(sqlite3_file* file) {
    const int outcome = realOf(file)->pMethods->xClose(realOf(file));
    std::free(realOf(file));
    return outcome;
}
int readFile(sqlite3_file* file, void* to, int size, sqlite3_int64 offset) {
    return realOf(file)->pMethods->xRead(realOf(file), to, size, offset);
}
int writeFile(sqlite3_file* file, const void* from, int size, sqlite3_int64 offset) {
    if (const int fault = Disk::get().enter(DiskCall::Write); fault != SQLITE_OK) {
        // A full disk takes what it has room for.
        realOf(file)->pMethods->xWrite(realOf(file), from, size / 2, offset);
        noteStep(file, DiskCall::Write, offset, from, size / 2);
        return fault;
    }
    noteStep(file, DiskCall::Write, offset, from, size);
    return realOf(file)->pMethods->xWrite(realOf(file), from, size, offset);
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    if (const int fault = Disk::get().enter(DiskCall::Truncate); fault != SQLITE_OK) {
        return fault;
    }
    noteStep(file, DiskCall::Truncate, size);
    return realOf(file)->pMethods->xTruncate(realOf(file), size);
}
int syncFile(sqlite3_file* file, int /*flags*/) {
    if (const int fault = Disk::get().enter(DiskCall::Sync); fault != SQLITE_OK) {
        return fault;
    }
    noteStep(file, DiskCall::Sync, 0);
    return SQLITE_OK;
}
int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) {
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int lockFile(sqlite3_file* file, int level) {
    if (level > SQLITE_LOCK_SHARED) {
        if (const int fault = Disk::get().enter(DiskCall::Lock); fault != SQLITE_OK) {
            return fault;
        }
    }
    return realOf(file)->pMethods->xLock(realOf(file), level);
}
int unlockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int isReserved(sqlite3_file* file, int* answer) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), answer);
}
int controlFile(sqlite3_file* file, int what, void* argument) {
    return realOf(file)->pMethods->xFileControl(realOf(file), what, argument);
}
int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int characteristics(sqlite3_file* file) {
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}
int mapShared(sqlite3_file* file, int region, int size, int extend, void volatile** to) {
    if (const int fault = Disk::get().enter(DiskCall::Map); fault != SQLITE_OK) {
        return fault;
    }
    return realOf(file)->pMethods->xShmMap(realOf(file), region, size, extend, to);
}
int lockShared(sqlite3_file* file, int offset, int count, int flags) {
    const bool writes = (flags & SQLITE_SHM_LOCK) != 0 && (flags & SQLITE_SHM_EXCLUSIVE) != 0;
    if (writes) {
        if (const int fault = Disk::get().enter(DiskCall::Lock); fault != SQLITE_OK) {
            return fault;
        }
    }
    return realOf(file)->pMethods->xShmLock(realOf(file), offset, count, flags);
}
void barrier(sqlite3_file* file) {
    realOf(file)->pMethods->xShmBarrier(realOf(file));
}
int unmapShared(sqlite3_file* file, int remove) {
    return realOf(file)->pMethods->xShmUnmap(realOf(file), remove);
}

constexpr sqlite3_io_methods kMethods{2,           closeFile,   readFile,        writeFile,  truncateFile,
                                      syncFile,    sizeOfFile,  lockFile,        unlockFile, isReserved,
                                      controlFile, sectorSize,  characteristics, mapShared,  lockShared,
                                      barrier,     unmapShared, nullptr,         nullptr};

std::vector<char> bytesAt(const char* path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

int openFile(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* opened) {
    file->pMethods = nullptr;
    const int fault = Disk::get().enter(DiskCall::Open);
    if (fault == SQLITE_READONLY && (flags & SQLITE_OPEN_MAIN_DB) != 0) {
        flags = (flags & ~(SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE)) | SQLITE_OPEN_READONLY;
    } else if (fault != SQLITE_OK) {
        return fault == SQLITE_READONLY ? SQLITE_CANTOPEN : fault;
    }
    const std::vector<char> before = path != nullptr && Disk::get().isKept() ? bytesAt(path) : std::vector<char>{};
    auto* real = static_cast<sqlite3_file*>(std::calloc(1, static_cast<std::size_t>(ordinary()->szOsFile)));
    const int outcome = ordinary()->xOpen(ordinary(), path, real, flags, opened);
    if (outcome != SQLITE_OK) {
        std::free(real);
        return outcome;
    }
    fileOf(file)->path = path;
    fileOf(file)->real = real;
    file->pMethods = &kMethods;
    noteStep(file, DiskCall::Open, 0, before.data(), static_cast<int>(before.size()));
    return SQLITE_OK;
}
int deleteFile(sqlite3_vfs*, const char* path, int flushesFolder) {
    if (const int fault = Disk::get().enter(DiskCall::Delete); fault != SQLITE_OK) {
        return fault;
    }
    if (Disk::get().isKept()) {
        Disk::get().note({DiskCall::Delete, path, flushesFolder, {}, 0});
    }
    return ordinary()->xDelete(ordinary(), path, 0);
}
int accessFile(sqlite3_vfs*, const char* path, int flags, int* answer) {
    return ordinary()->xAccess(ordinary(), path, flags, answer);
}
int fullPath(sqlite3_vfs*, const char* path, int size, char* to) {
    return ordinary()->xFullPathname(ordinary(), path, size, to);
}
int randomness(sqlite3_vfs*, int size, char* to) {
    return ordinary()->xRandomness(ordinary(), size, to);
}
int sleepFor(sqlite3_vfs*, int microseconds) {
    return Disk::get().isFailing() ? microseconds : ordinary()->xSleep(ordinary(), microseconds);
}
int currentTime(sqlite3_vfs*, double* to) {
    return ordinary()->xCurrentTime(ordinary(), to);
}
int lastError(sqlite3_vfs*, int size, char* to) {
    return ordinary()->xGetLastError(ordinary(), size, to);
}
int currentTimeMillis(sqlite3_vfs*, sqlite3_int64* to) {
    return ordinary()->xCurrentTimeInt64(ordinary(), to);
}

void installDisk() {
    static sqlite3_vfs vfs{};
    vfs.iVersion = 2;
    vfs.szOsFile = sizeof(File);
    vfs.mxPathname = ordinary()->mxPathname;
    vfs.zName = "soak";
    vfs.xOpen = openFile;
    vfs.xDelete = deleteFile;
    vfs.xAccess = accessFile;
    vfs.xFullPathname = fullPath;
    vfs.xRandomness = randomness;
    vfs.xSleep = sleepFor;
    vfs.xCurrentTime = currentTime;
    vfs.xGetLastError = lastError;
    vfs.xCurrentTimeInt64 = currentTimeMillis;
    sqlite3_vfs_register(&vfs, 1);
}

// ---- memory

sqlite3_mem_methods ordinaryMemory;
std::size_t allocationsMade = 0, allocationsFailed = 0, failFrom = 0, failCount = 0;

bool memoryPaused = false;

bool isRefused() {
    if (memoryPaused) {
        return false;
    }
    ++allocationsMade;
    const bool refused = failCount > 0 && allocationsMade >= failFrom && allocationsMade - failFrom < failCount;
    allocationsFailed += refused ? 1 : 0;
    return refused;
}
void* allocate(int size) {
    return isRefused() ? nullptr : ordinaryMemory.xMalloc(size);
}
void* reallocate(void* old, int size) {
    return isRefused() ? nullptr : ordinaryMemory.xRealloc(old, size);
}

}  // namespace

const char* toText(DiskCall call) {
    constexpr const char* kWords[] = {"open", "write", "sync", "truncate", "delete", "lock", "map"};
    return kWords[static_cast<std::size_t>(call)];
}

Disk& Disk::get() {
    static Disk disk;
    static const bool installed = (installDisk(), true);
    static_cast<void>(installed);
    return disk;
}

void Disk::startDiary() {
    m_diary.clear();
    m_mark = 0;
    m_keeping = true;
}

std::vector<DiskStep> Disk::takeDiary() {
    m_keeping = false;
    return std::move(m_diary);
}

void Disk::plan(std::optional<DiskFault> fault) {
    m_fault = fault;
    m_failed = 0;
    std::memset(m_calls, 0, sizeof m_calls);
}

int Disk::enter(DiskCall call) {
    const std::size_t count = ++m_calls[static_cast<std::size_t>(call)];
    if (!m_fault || m_fault->call != call || count < m_fault->from || count - m_fault->from >= m_fault->calls) {
        return SQLITE_OK;
    }
    ++m_failed;
    return m_fault->code;
}

void Disk::note(DiskStep step) {
    step.mark = m_mark;
    m_diary.push_back(std::move(step));
}

void Memory::install() {
    static bool isInstalled = false;
    if (isInstalled) {
        return;
    }
    isInstalled = true;
    sqlite3_shutdown();
    sqlite3_config(SQLITE_CONFIG_GETMALLOC, &ordinaryMemory);
    static sqlite3_mem_methods ours = ordinaryMemory;
    ours.xMalloc = allocate;
    ours.xRealloc = reallocate;
    sqlite3_config(SQLITE_CONFIG_MALLOC, &ours);
    // Small blocks would come from a store of each connection, and never fail.
    sqlite3_config(SQLITE_CONFIG_LOOKASIDE, 0, 0);
    sqlite3_initialize();
    installDisk();  // shutting down has forgotten it
}

void Memory::plan(std::size_t from, std::size_t count) {
    allocationsMade = allocationsFailed = 0;
    failFrom = from;
    failCount = count;
}

void Memory::pause(bool paused) {
    memoryPaused = paused;
}
std::size_t Memory::failed() {
    return allocationsFailed;
}

}  // namespace brinebell::soak
