#include <algorithm>
#include <queue>

#include "plan/RunSheet.h"

namespace brinebell {

namespace {

/// Work of one person: not before `head`, for `length`, and `tail` more must pass after it before everything is over.
struct Job {
    Seconds head{};
    Seconds length{};
    Seconds tail{};
};

class Bounding {
public:
    explicit Bounding(const Network& network) : m_network(network), m_successors(successorsOf(network)) {
        const std::size_t n = network.activities.size();
        m_head.assign(n, kUnknown);
        m_tail.assign(n, kUnknown);
        for (std::size_t i = 0; i < n; ++i) {
            headOf(i);
            tailOf(i);
        }
    }

    Seconds bound() {
        Seconds best{}, allWork{};
        std::vector<Job> presenters;
        for (std::size_t i = 0; i < m_head.size(); ++i) {
            const Activity& a = m_network.activities[i];
            best = std::max(best, m_head[i] + a.duration.likely + m_tail[i]);
            std::vector<Job> jobs = jobsOf(i);
            for (const Job& job : jobs) {
                allWork += job.length;
            }
            if (m_network.helpers == 0 || a.presenterOnly) {
                presenters.insert(presenters.end(), jobs.begin(), jobs.end());
            }
        }
        const int hands = 1 + m_network.helpers;
        const Seconds shared{(allWork.count() + hands - 1) / hands};
        return std::max({best, shared, onePerson(std::move(presenters))});
    }

private:
    static constexpr Seconds kUnknown{-1};

    // Longest chain before the start, and after the end. Networks have at most kMaxActivities, in no circle.
    Seconds headOf(std::size_t i) {
        if (m_head[i] == kUnknown) {
            Seconds head{};
            for (const int before : m_network.activities[i].after) {
                const auto b = static_cast<std::size_t>(before);
                head = std::max(head, headOf(b) + m_network.activities[b].duration.likely);
            }
            m_head[i] = head;
        }
        return m_head[i];
    }

    Seconds tailOf(std::size_t i) {
        if (m_tail[i] == kUnknown) {
            Seconds tail{};
            for (const int after : m_successors[i]) {
                const auto s = static_cast<std::size_t>(after);
                tail = std::max(tail, tailOf(s) + m_network.activities[s].duration.likely);
            }
            m_tail[i] = tail;
        }
        return m_tail[i];
    }

    // The hand work that an activity cannot do without: of its looks, those that the longest gap forces.
    std::vector<Job> jobsOf(std::size_t i) const {
        const Activity& a = m_network.activities[i];
        const Seconds length = a.duration.likely;
        const auto job = [&](Seconds from, Seconds work) {
            return Job{m_head[i] + from, work, m_tail[i] + std::max(Seconds::zero(), length - from - work)};
        };
        if (a.hands == HandsNeed::Throughout) {
            return {job(Seconds::zero(), length)};
        }
        std::vector<Job> jobs;
        const Seconds atEnd = endWorkOf(a);
        if (a.handsAtStart > Seconds::zero()) {
            jobs.push_back(job(Seconds::zero(), a.handsAtStart));
        }
        if (atEnd > Seconds::zero()) {
            jobs.push_back(job(length - atEnd, atEnd));
        }
        if (a.pulse) {
            const PulseRule& rule = *a.pulse;
            const Seconds body = length - a.handsAtStart - atEnd;
            Seconds earliest = a.handsAtStart, latest = a.handsAtStart;
            for (Seconds left = body; left > rule.gapHigh; left -= rule.gapHigh + rule.takes) {
                earliest += rule.gapLow;
                latest += rule.gapHigh;
                const Seconds after = std::max(atEnd, length - latest - rule.takes);
                jobs.push_back({m_head[i] + earliest, rule.takes, m_tail[i] + after});
                earliest += rule.takes;
                latest += rule.takes;
            }
        }
        return jobs;
    }

    // Always does the work with the longest tail, and leaves it when work with a longer one can begin.
    static Seconds onePerson(std::vector<Job> jobs) {
        std::sort(jobs.begin(), jobs.end(), [](const Job& a, const Job& b) { return a.head < b.head; });
        const auto shorterTail = [](const Job& a, const Job& b) { return a.tail < b.tail; };
        std::priority_queue<Job, std::vector<Job>, decltype(shorterTail)> open(shorterTail);
        Seconds now{}, end{};
        std::size_t next = 0;
        while (next < jobs.size() || !open.empty()) {
            if (open.empty()) {
                now = std::max(now, jobs[next].head);
            }
            while (next < jobs.size() && jobs[next].head <= now) {
                open.push(jobs[next++]);
            }
            Job job = open.top();
            open.pop();
            const Seconds until = next < jobs.size() ? std::min(now + job.length, jobs[next].head) : now + job.length;
            job.length -= until - now;
            now = until;
            if (job.length > Seconds::zero()) {
                open.push(job);
            } else {
                end = std::max(end, now + job.tail);
            }
        }
        return end;
    }

    const Network& m_network;
    std::vector<std::vector<int>> m_successors;
    std::vector<Seconds> m_head, m_tail;
};

}  // namespace

Seconds lowerBoundOf(const Network& network) {
    return Bounding(network).bound();
}

}  // namespace brinebell
