// Limits.h — when a search has to end: conflicts, time, or somebody's wish.
#pragma once

#include <chrono>
#include <cstdint>

#include "schedule/ScheduleSearch.h"

namespace brinebell::search {

class Limits {
public:
    explicit Limits(const SearchOptions& options)
        : m_options(options), m_begin(Clock::now()), m_timed(options.seconds < 1e9) {}

    double seconds() const { return std::chrono::duration<double>(Clock::now() - m_begin).count(); }
    std::int64_t conflicts() const { return m_conflicts; }
    void countConflict() { ++m_conflicts; }
    std::int64_t conflictsLeft() const { return m_options.conflicts - m_conflicts; }

    /// Once true it stays true.
    bool reached() {
        m_reached = m_reached || conflictsLeft() <= 0 || (m_options.stop != nullptr && m_options.stop->load()) ||
                    (m_timed && seconds() >= m_options.seconds);
        return m_reached;
    }

private:
    using Clock = std::chrono::steady_clock;

    const SearchOptions& m_options;
    Clock::time_point m_begin;
    bool m_timed;
    bool m_reached = false;
    std::int64_t m_conflicts = 0;
};

}  // namespace brinebell::search
