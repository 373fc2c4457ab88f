// PowerCut.h — a class whose power is cut at every write it ever made.
//
// The class is taught once, with a diary of all that went to the disk (Disk.h). From the diary the disk is built as it
// may look after a cut at any write: what was flushed is there; of what was written since, all may be there, nothing,
// or any 512-byte pieces of it, in any order, and what a file grew by may hold noise. Bytes that were not written are
// never spoilt, which is what SQLite takes a disk to promise ("powersafe overwrite", on by default). A new name is
// there for certain once its file was flushed, since SQLite flushes the folder with it; a name taken away may be back.
#pragma once

#include <string>
#include <vector>

#include "plan/Network.h"
#include "soak/Disk.h"

namespace brinebell::soak {

struct CutOptions {
    std::size_t stride = 1;          ///< every how many-th write is a cut point
    std::size_t states = 6;          ///< disks built for each point
    bool fillsLog = false;           ///< rehearsals before it, so that the write-ahead log is folded in amid the class
    bool syncRemoved = false;        ///< plant: flushes are not carried out
    bool shownBeforeStored = false;  ///< plant: an effect is shown one press before its event is handed over
    std::uint64_t seed = 1;
};

struct CutTally {
    std::size_t writes = 0;   ///< of the whole class, from opening the logbook to closing it
    std::size_t points = 0;   ///< cut
    std::size_t states = 0;   ///< disks opened
    std::size_t events = 0;   ///< in the class
    bool foldedAmid = false;  ///< the log was folded in while the class went on
    std::vector<std::string> complaints;
};

CutTally cutPowerEverywhere(const Network& network, const CutOptions& options);

/// The disk after a cut behind the `count` first steps of a diary, one way of many.
enum class Loss { Nothing, Everything, Pieces, Writes, PiecesAndNoise };
class CutDisk {
public:
    void add(const DiskStep& step);
    /// Writes the files into `folder`, under their own names. Requires a folder that is empty.
    void writeTo(const std::string& folder, Loss loss, std::uint64_t seed) const;

private:
    struct File {
        std::vector<char> flushed;
        bool nameFlushed = false;
        bool flushesFolder = false;  ///< with its next flush
        bool exists = true;
        std::vector<DiskStep> pending;
    };
    std::vector<std::pair<std::string, File>> m_files;
    File& file(const std::string& path);
    void flushFolder();  ///< names that are there stay, names taken away are gone
};

}  // namespace brinebell::soak
