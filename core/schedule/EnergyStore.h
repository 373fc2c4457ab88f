// EnergyStore.h — energetic reasoning for resources: what must be done within a window must fit into it.
//
// Of a task that starts between its bounds, a window [from, to) holds at least what lies in it when the task is pushed
// as far to the left, and as far to the right, as its bounds allow, whichever is less (Erschler, Lopez & Thuriot 1991).
// Where these shares need more than the window has, the bounds contradict each other; where they leave too little for a
// task that reaches into the window, it starts later or ends earlier. Windows end where some task must have ended, and
// begin anywhere. An explanation asks each task only for as much of its share as the conclusion needs, after Schutt,
// Feydy & Stuckey (CPAIOR 2013). Sources from memory.
//
// This is the most expensive propagator: it looks last, and seldom where it has found nothing for some time.
#pragma once

#include <vector>

#include "schedule/Trail.h"

namespace brinebell::search {

class EnergyStore {
public:
    /// A task of fixed length. Its start is the value of `start` plus `offset`.
    struct Task {
        Side start;
        Tick offset;
        Tick length;  ///< positive
        Tick demand;  ///< positive, and at most the capacity
        Literal when;
    };

    explicit EnergyStore(Trail& trail) : m_trail(trail) {}

    void addResource(Tick capacity, std::vector<Task> tasks);

    /// Notes what the rise of `side` may have changed.
    void wake(Side side);
    void wakeAll();
    /// Bounds have been taken back to an earlier state.
    void forget();
    /// What holds at the root needs no explanation any more.
    void forgetHistory() { m_pushes.clear(); }
    /// Works through what was noted until something rises or nothing is left; false on conflict, with `because` filled
    /// if the conflict is not on the trail.
    bool propagate(std::vector<Literal>& because);

    /// Appends why the entry at `position` could raise its side to `value`.
    void explain(int position, Tick value, std::vector<Literal>& because) const;

private:
    struct Resource {
        Tick capacity;
        std::vector<Task> tasks;
        bool waiting = false;
        int pause = 0;  ///< how many looks are left out after one that found nothing
        int left = 0;   ///< of the present pause
    };
    struct Window {
        Tick from;
        Tick to;
    };
    /// A conclusion that was drawn: the task does not take more of the window than the others leave.
    struct Push {
        int position;  ///< of the entry
        std::uint32_t resource;
        std::uint32_t task;
        Window window;
        bool later;  ///< the start rose; else the end fell
    };
    /// A task as it is during one look.
    struct Range {
        std::uint32_t task;
        Tick earliest;
        Tick latest;  ///< start
        Tick length;
        Tick demand;
    };
    /// Part of an explanation: `share` units of time of a task within the window.
    struct Share {
        std::uint32_t task;
        Tick share;
        int age;
    };

    static Literal startsFrom(const Task& task, Tick t) { return {task.start, t - task.offset}; }
    static Literal startsBy(const Task& task, Tick t) { return {opposite(task.start), task.offset - t}; }
    static Tick shareOf(Tick earliest, Tick latest, Tick length, const Window& window);

    bool isWorthALook(Resource& resource) const;
    bool look(std::uint32_t number, std::vector<Literal>& because);
    bool readRanges(const Resource& resource);
    bool sweep(std::uint32_t number, Tick to, std::vector<Literal>& because);
    void fillSpare(const Resource& resource, Tick to);
    bool pushAll(std::uint32_t number, const Window& window, std::int64_t spare);
    bool push(std::uint32_t number, std::uint32_t task, const Window& window, bool later, const Literal& literal);
    void explainLoad(const Resource& resource, std::uint32_t without, const Window& window, std::int64_t needed,
                     int position, std::vector<Literal>& because) const;

    Trail& m_trail;
    std::vector<Resource> m_resources;
    std::vector<std::vector<std::uint32_t>> m_watches;  ///< resources by side
    std::vector<std::uint32_t> m_waiting;
    std::vector<Push> m_pushes;

    // Scratch of one look. Times count from m_low.
    std::vector<Range> m_open;
    std::vector<Tick> m_ends;
    std::vector<std::int64_t> m_fixedLoad;
    std::vector<std::int64_t> m_change;
    std::vector<std::int64_t> m_spare;  ///< by where the window begins
    Tick m_low = 0;
    Tick m_high = 0;
    std::int64_t m_largestTask = 0;
    mutable std::vector<Share> m_shares;  ///< scratch of explainLoad()
};

}  // namespace brinebell::search
