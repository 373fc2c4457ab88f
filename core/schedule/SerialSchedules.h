// SerialSchedules.h — quick good schedules for plain projects: a population of activity lists that breed.
//
// For models of fixed-length tasks, precedence with non-negative lags and shared resources only. Lists are turned into
// schedules by the serial scheme and improved by justification to both sides (Valls, Ballestin & Quintanilla, EJOR
// 165, 2005); two-point crossover after Hartmann (1998), whose piece is a busy one
// as in Valls, Ballestin & Quintanilla (EJOR 185, 2008). A population that brings nothing new makes room for another.
// From memory.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "base/Random.h"
#include "schedule/Trail.h"

namespace brinebell::search {

class SerialSchedules {
public:
    /// Nothing for a model of another kind. `trail` gives the bounds at the root.
    static std::optional<SerialSchedules> forModel(const ScheduleModel& model, const Trail& trail, std::uint64_t seed);

    /// Breeds this many schedules.
    void breed(int schedules);
    /// Start values by variable of the shortest so far; empty before the first breed().
    const std::vector<Tick>& best() const { return m_best; }
    Tick bestLength() const { return m_bestLength; }
    std::int64_t bred() const { return m_bred; }

private:
    using Load = std::uint64_t;  ///< four resources, 15 bits each and a guard bit above
    struct Arc {
        int to;
        Tick weight;
    };
    struct Direction {
        std::vector<std::vector<Arc>> before;  ///< by activity: what it waits for
        std::vector<Tick> release;
    };
    struct Member {
        std::vector<int> list;
        std::vector<Tick> starts;
        Tick length = 0;
        std::uint64_t mark = 0;  ///< the same for the same starts
    };
    struct Cut {
        std::size_t first = 0;
        std::size_t last = 0;
    };

    explicit SerialSchedules(std::uint64_t seed) : m_random(seed) {}
    bool take(const ScheduleModel& model, const Trail& trail);
    bool takeOccupations(const ScheduleModel& model);
    bool takeArcs(const ScheduleModel& model);
    bool sortByPrecedence();
    std::vector<int> randomList();
    std::vector<int> childOf(const Member& mother, const Member& father);
    Cut busyCut(const Member& member);
    void mutate(std::vector<int>& list);
    const Member& pick();
    Tick place(const std::vector<int>& list, const Direction& direction, std::vector<Tick>& starts);
    Tick fit(Tick from, Tick duration, Load demand) const;
    Member improve(std::vector<int> list);
    void admit(Member member);
    void startAgain();

    Random m_random;
    int m_count = 0;
    int m_sink = -1;
    std::vector<Tick> m_durations;
    std::vector<Load> m_demands;
    Load m_capacity = 0;
    Direction m_forward;
    Direction m_backward;
    std::vector<int> m_order;   ///< of precedence
    std::vector<Tick> m_tails;  ///< longest path to the end, by activity
    std::vector<Load> m_free;   ///< by moment
    std::vector<Member> m_members;
    int m_toDraw = 0;  ///< at random, before the first child
    std::vector<Tick> m_best;
    Tick m_bestLength = 0;
    std::vector<double> m_works;  ///< by activity: duration times the shares of the resources
    std::int64_t m_bred = 0;
    std::int64_t m_lastGain = 0;  ///< m_bred when the population last had a new shortest member
};

}  // namespace brinebell::search
