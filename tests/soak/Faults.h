// Faults.h — a class on a machine that fails: each call to the disk and to memory in turn.
//
// A class is taught once on a sound machine, and its presses are written down. Then it is taught again for the first,
// second, third … call of a kind, which fails, once or until the disk is back. Every press must be taken as it was
// before, the same cues must sound at the same moments, whatever the board calls saved another program must find in the
// file, and once the machine is well the log must hold the whole class.
#pragma once

#include <string>
#include <vector>

#include "plan/Network.h"
#include "soak/Disk.h"

namespace brinebell::soak {

enum class FaultKind { FullDisk, WriteError, SyncError, OpenError, ReadOnlyOpen, LockHeld, NoMap, NoMemory };
inline constexpr int kFaultKinds = 8;
const char* toText(FaultKind kind);

struct FaultOptions {
    std::size_t stride = 1;   ///< every how many-th call fails
    bool lasting = false;     ///< not one call, but all, until seven more presses are taken
    bool keepsQuiet = false;  ///< plant: the store says that all is saved when it is not
};

struct FaultTally {
    FaultKind kind = FaultKind::FullDisk;
    std::size_t calls = 0;     ///< of that kind in a whole class
    std::size_t cues = 0;      ///< that sound in it, at the same moments whatever fails
    std::size_t injected = 0;  ///< classes taught, each with a fault
    std::size_t told = 0;      ///< of them in which the board said so
    std::vector<std::string> complaints;
};

/// NoMemory requires Memory::install() to have been called first.
FaultTally failInTurn(const Network& network, FaultKind kind, const FaultOptions& options);

}  // namespace brinebell::soak
