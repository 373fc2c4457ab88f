#include "soak/PowerCut.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <fstream>

#include "base/Random.h"
#include "logbook/Logbook.h"
#include "soak/Folder.h"
#include "soak/LateStore.h"
#include "soak/Teacher.h"
#include "support/CannerMonitor.h"

namespace brinebell::soak {

namespace {

constexpr std::size_t kPiece = 512;
constexpr std::array kLosses{Loss::Nothing, Loss::Everything, Loss::Pieces, Loss::Writes, Loss::PiecesAndNoise};

void put(std::vector<char>& to, std::size_t at, const char* from, std::size_t size) {
    if (to.size() < at + size) {
        to.resize(at + size, '\0');
    }
    std::copy(from, from + size, to.begin() + static_cast<std::ptrdiff_t>(at));
}

void apply(std::vector<char>& bytes, const DiskStep& step) {
    if (step.call == DiskCall::Truncate) {
        bytes.resize(static_cast<std::size_t>(step.offset), '\0');
    } else {
        put(bytes, static_cast<std::size_t>(step.offset), step.bytes.data(), step.bytes.size());
    }
}

void applyPieces(std::vector<char>& bytes, const DiskStep& step, bool noise, Random& random) {
    for (std::size_t at = 0; at < step.bytes.size(); at += kPiece) {
        const std::size_t size = std::min(kPiece, step.bytes.size() - at);
        const std::size_t to = static_cast<std::size_t>(step.offset) + at;
        if (random.below(2) == 0) {
            put(bytes, to, step.bytes.data() + at, size);
        } else if (noise && to >= bytes.size()) {
            const std::vector<char> garbage(size, '\xA5');
            put(bytes, to, garbage.data(), size);
        }
    }
}

// What is known of the class that was taught, to hold a disk against.
struct Taught {
    std::string id;
    std::vector<Event> events;
    std::vector<SessionInfo> before;
    std::vector<DiskStep> diary;
};

constexpr std::size_t kBegun = 1;  // the mark: the session's row is stored; each event shown adds one

constexpr std::size_t kFilling = static_cast<std::size_t>(-1);  // not part of the class: nothing is cut

// SQLite folds its write-ahead log in at a thousand pages. Ends a little before, so that the class gets there.
void fillLog(Logbook& logbook, const Network& network, const std::string& path) {
    constexpr std::uintmax_t kNearlyFull = 960 * 4120;
    while (std::filesystem::file_size(path + "-wal") < kNearlyFull) {
        static_cast<void>(logbook.begin(network, true, kClassStart - std::chrono::hours(24)));
    }
}

}  // namespace

CutDisk::File& CutDisk::file(const std::string& path) {
    const auto found = std::find_if(m_files.begin(), m_files.end(), [&](const auto& f) { return f.first == path; });
    if (found != m_files.end()) {
        return found->second;
    }
    return m_files.emplace_back(path, File{}).second;
}

namespace {

// SQLite flushes the folder with the first flush of a journal or write-ahead log that it has opened, and at no other
// time.
bool isJournal(const std::string& path) {
    return path.ends_with("-wal") || path.ends_with("-journal");
}

}  // namespace

void CutDisk::flushFolder() {
    for (auto& [path, file] : m_files) {
        if (!file.exists) {
            file = File{};
            file.exists = false;
        }
        file.nameFlushed = file.exists;
    }
}

void CutDisk::add(const DiskStep& step) {
    const bool isKnown =
        std::any_of(m_files.begin(), m_files.end(), [&](const auto& f) { return f.first == step.path; });
    File& changed = file(step.path);
    switch (step.call) {
        case DiskCall::Open:
            if (!isKnown) {
                // What is there when the diary meets it first was flushed by whoever made it: the program itself makes
                // the logbook and its copies, and flushes their folder.
                changed.flushed = step.bytes;
                changed.nameFlushed = !isJournal(step.path);
            }
            changed.flushesFolder = isJournal(step.path);
            if (!changed.exists) {
                changed.exists = true;
                changed.pending.push_back({DiskCall::Truncate, step.path, 0, {}, 0});
            }
            break;
        case DiskCall::Write:
        case DiskCall::Truncate:
            changed.pending.push_back(step);
            break;
        case DiskCall::Sync:
            for (const DiskStep& pending : changed.pending) {
                apply(changed.flushed, pending);
            }
            changed.pending.clear();
            if (changed.flushesFolder) {
                changed.flushesFolder = false;
                flushFolder();
            }
            break;
        case DiskCall::Delete:
            changed.exists = false;
            if (step.offset != 0) {
                flushFolder();
            }
            break;
        case DiskCall::Lock:
        case DiskCall::Map:
            break;
    }
}

void CutDisk::writeTo(const std::string& folder, Loss loss, std::uint64_t seed) const {
    Random random(seed);
    for (const auto& [path, file] : m_files) {
        if (path.ends_with("-shm")) {
            continue;  // shared memory, worthless after a restart
        }
        const bool lostName = !file.exists && !(file.nameFlushed && loss != Loss::Nothing && random.below(2) == 0);
        const bool neverNamed = file.exists && !file.nameFlushed &&
                                (loss == Loss::Everything || (loss != Loss::Nothing && random.below(2) == 0));
        if (lostName || neverNamed) {
            continue;
        }
        std::vector<char> bytes = file.flushed;
        for (const DiskStep& step : file.pending) {
            const bool whole = loss == Loss::Nothing || step.call == DiskCall::Truncate;
            if (loss == Loss::Everything ||
                (loss != Loss::Nothing && step.call == DiskCall::Truncate && random.below(2) == 0) ||
                (loss == Loss::Writes && random.below(2) == 0)) {
                continue;
            }
            if (whole || loss == Loss::Writes) {
                apply(bytes, step);
            } else {
                applyPieces(bytes, step, loss == Loss::PiecesAndNoise, random);
            }
        }
        std::ofstream out(folder + "/" + std::filesystem::path(path).filename().string(), std::ios::binary);
        out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    }
}

namespace {

Taught teach(const Network& network, const CutOptions& options, const std::string& path) {
    Taught taught;
    const std::vector<Press> presses = taughtClass(network, options.seed);
    Disk& disk = Disk::get();
    disk.startDiary();
    {
        disk.mark(options.fillsLog ? kFilling : 0);
        auto logbook = Logbook::open(path);
        if (options.fillsLog) {
            fillLog(*logbook, network, path);
            disk.mark(0);
        }
        taught.before = *logbook->sessions();
        ManualClock clock = clockOfClass();
        auto log = logbook->begin(network, false, clock.now().utc);
        taught.id = (*log)->sessionId();
        disk.mark(kBegun);
        LateStore late(**log);
        SessionRunner runner(network, clock, options.shownBeforeStored ? static_cast<EventStore&>(late) : **log);
        play(runner, clock, presses, [&] { disk.mark(kBegun + runner.events().size()); });
        taught.events = runner.events();
    }
    taught.diary = disk.takeDiary();
    if (options.syncRemoved) {
        std::erase_if(taught.diary, [](const DiskStep& step) { return step.call == DiskCall::Sync; });
    }
    return taught;
}

// Opens what the cut left behind. Says what is wrong with it, or nothing.
std::string judge(const std::string& path, const Taught& taught, std::size_t mark) {
    const auto logbook = Logbook::open(path);
    if (!logbook) {
        return "it does not open: " + describe(logbook.error());
    }
    const auto sessions = logbook->sessions();
    if (!sessions) {
        return "its sessions cannot be listed: " + describe(sessions.error());
    }
    for (const SessionInfo& info : taught.before) {
        if (std::find(sessions->begin(), sessions->end(), info) == sessions->end()) {
            return "an earlier session is gone or changed";
        }
    }
    const auto record = logbook->session(taught.id);
    if (!record) {
        return mark < kBegun && record.error().code == ErrorCode::NotFound ? "" : describe(record.error());
    }
    const std::size_t shown = mark < kBegun ? 0 : mark - kBegun;
    const std::vector<Event>& found = record->events;
    if (found.size() < shown) {
        return fmt::format("{} events had been shown, {} are in the log", shown, found.size());
    }
    if (found.size() > taught.events.size() || !std::equal(found.begin(), found.end(), taught.events.begin())) {
        return "the log tells what never happened";
    }
    if (const auto state = replay(record->network, found); !state) {
        return "it does not replay: " + describe(state.error());
    }
    const auto violations = support::cannerViolations(record->network, found);
    return violations.empty() ? "" : violations.front();
}

}  // namespace

CutTally cutPowerEverywhere(const Network& network, const CutOptions& options) {
    CutTally tally;
    const Folder home, after;
    const Taught taught = teach(network, options, home.file("logbook.sqlite"));
    tally.events = taught.events.size();
    CutDisk disk;
    std::uint64_t seed = options.seed;
    for (const DiskStep& step : taught.diary) {
        disk.add(step);
        const bool isCut =
            step.call == DiskCall::Write || step.call == DiskCall::Truncate || step.call == DiskCall::Delete;
        if (!isCut || step.mark == kFilling) {
            continue;
        }
        const bool amid = step.mark > kBegun && step.mark != kFilling && step.mark < kBegun + taught.events.size();
        tally.foldedAmid = tally.foldedAmid || (amid && step.path.ends_with(".sqlite"));
        if (tally.writes++ % options.stride != 0) {
            continue;
        }
        ++tally.points;
        for (std::size_t i = 0; i < options.states; ++i) {
            after.empty();
            disk.writeTo(after.path(), kLosses[i % kLosses.size()], ++seed);
            ++tally.states;
            if (std::string wrong = judge(after.file("logbook.sqlite"), taught, step.mark); !wrong.empty()) {
                tally.complaints.push_back(fmt::format("write {}, {} events shown, loss {}: {}", tally.writes,
                                                       step.mark, i % kLosses.size(), wrong));
            }
        }
    }
    return tally;
}

}  // namespace brinebell::soak
