// LogbookSupport.h — a scratch folder, a small class made by hand, and its events, for the logbook's tests.
#pragma once

#include <string>
#include <vector>

#include "logbook/Logbook.h"
#include "support/WithoutRootRights.h"

namespace brinebell::test {

/// A folder of its own for one test, readable by everybody, gone afterwards with all that is in it.
class ScratchFolder {
public:
    ScratchFolder();
    ~ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;
    std::string path(const std::string& name = {}) const;

private:
    std::string m_path;
};

inline constexpr Millis kStart{1'789'254'000'000};  ///< 2026-09-12T23:00:00Z, by GNU date

/// One dish in two loads on one canner; every figure is invented for these tests.
Network smallNetwork();
int indexOf(const Network& network, const std::string& key);

/// `seconds` after the class began, by both clocks.
Stamp after(std::int64_t seconds);

/// An event with only its number, kind and time.
Event event(std::int64_t sequence, EventKind kind, std::int64_t seconds);

/// One event of every kind, every field a kind may use set to something that is not its default.
std::vector<Event> eventsOfEveryKind(const Network& network);

/// A whole evening, pressed by hand: one press too early and taken back, a point ticked by mistake, a boil
/// lost, 90 s unwatched and vouched for, the second load set aside, and the seals of the first checked the
/// next day.
std::vector<Event> livedEvening(const Network& network);

/// A record as the logbook would give it back.
SessionRecord recordOf(const Network& network, std::vector<Event> events);

std::string bytesOf(const std::string& path);
void writeBytes(const std::string& path, const std::string& bytes);

/// The rights of a file or folder, as in 0600.
unsigned rightsOf(const std::string& path);

}  // namespace brinebell::test
