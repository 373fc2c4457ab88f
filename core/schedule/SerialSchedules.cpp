#include "schedule/SerialSchedules.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace brinebell::search {

namespace {

constexpr std::size_t kMostResources = 4;
constexpr Tick kLargestCapacity = 0x7fff;
constexpr Tick kLongestHorizon = 20'000;  // the free capacity is kept moment by moment
constexpr int kMembers = 300;
constexpr int kCutsTried = 3;
constexpr std::int64_t kBarren = 12'000;  // schedules bred without a shorter one
constexpr std::uint64_t kGuards = 0x8000'8000'8000'8000U;

}  // namespace

std::optional<SerialSchedules> SerialSchedules::forModel(const ScheduleModel& model, const Trail& trail,
                                                         std::uint64_t seed) {
    SerialSchedules schedules(seed);
    return schedules.take(model, trail) ? std::optional(std::move(schedules)) : std::nullopt;
}

bool SerialSchedules::take(const ScheduleModel& model, const Trail& trail) {
    if (model.objective < 0 || !model.stretches.empty() || !model.clauses.empty() ||
        model.resources.size() > kMostResources) {
        return false;
    }
    m_count = static_cast<int>(model.variables.size());
    m_sink = model.objective;
    Tick horizon = 0;
    for (Variable i = 0; i < m_count; ++i) {
        const Tick low = trail.bound(sideOf(i));
        if (low < 0) {
            return false;
        }
        m_forward.release.push_back(low);
        horizon = std::max(horizon, low);
    }
    m_backward.release.assign(static_cast<std::size_t>(m_count), 0);
    if (!takeOccupations(model) || !takeArcs(model) || !sortByPrecedence()) {
        return false;
    }
    for (const Tick duration : m_durations) {
        horizon += duration;
    }
    for (const std::vector<Arc>& arcs : m_forward.before) {
        Tick longest = 0;
        for (const Arc& arc : arcs) {
            longest = std::max(longest, arc.weight);
        }
        horizon = std::min(horizon, kLongestHorizon) + longest;
    }
    m_free.resize(static_cast<std::size_t>(horizon) + 1);
    startAgain();
    return horizon < kLongestHorizon;
}

bool SerialSchedules::takeOccupations(const ScheduleModel& model) {
    m_durations.assign(static_cast<std::size_t>(m_count), 0);
    m_demands.assign(static_cast<std::size_t>(m_count), 0);
    m_works.assign(static_cast<std::size_t>(m_count), 0);
    for (std::size_t k = 0; k < model.resources.size(); ++k) {
        const Resource& resource = model.resources[k];
        if (resource.capacity > kLargestCapacity) {
            return false;
        }
        m_capacity |= static_cast<Load>(resource.capacity) << (16 * k);
        for (const Occupation& one : resource.occupations) {
            const auto activity = static_cast<std::size_t>(one.start.variable);
            if (one.when || one.start.variable < 0 || one.end.variable != one.start.variable || one.start.offset != 0 ||
                one.end.offset <= 0 || one.demand < 0 || one.demand > resource.capacity ||
                (m_durations[activity] != 0 && m_durations[activity] != one.end.offset) ||
                (m_demands[activity] >> (16 * k) & 0xffff) != 0) {
                return false;
            }
            m_durations[activity] = one.end.offset;
            m_demands[activity] |= static_cast<Load>(one.demand) << (16 * k);
            m_works[activity] += static_cast<double>(one.demand) * one.end.offset / resource.capacity;
        }
    }
    return true;
}

bool SerialSchedules::takeArcs(const ScheduleModel& model) {
    m_forward.before.resize(static_cast<std::size_t>(m_count));
    m_backward.before.resize(static_cast<std::size_t>(m_count));
    for (const Difference& one : model.differences) {
        const Tick weight = one.length + one.from.offset - one.to.offset;
        if (one.when || one.from.variable < 0 || one.to.variable < 0 || weight < 0) {
            return false;
        }
        const auto from = static_cast<std::size_t>(one.from.variable);
        const auto to = static_cast<std::size_t>(one.to.variable);
        m_forward.before[to].push_back({one.from.variable, weight});
        // Seen from the end, an activity's start is its end.
        m_backward.before[from].push_back({one.to.variable, weight + m_durations[to] - m_durations[from]});
    }
    return true;
}

bool SerialSchedules::sortByPrecedence() {
    std::vector<int> waiting;
    std::vector<int> ready;
    for (int i = m_count - 1; i >= 0; --i) {
        waiting.insert(waiting.begin(), static_cast<int>(m_forward.before[static_cast<std::size_t>(i)].size()));
        if (waiting.front() == 0) {
            ready.push_back(i);
        }
    }
    while (!ready.empty()) {
        const int next = ready.back();
        ready.pop_back();
        m_order.push_back(next);
        for (const Arc& arc : m_backward.before[static_cast<std::size_t>(next)]) {
            if (--waiting[static_cast<std::size_t>(arc.to)] == 0) {
                ready.push_back(arc.to);
            }
        }
    }
    if (static_cast<int>(m_order.size()) != m_count) {
        return false;
    }
    m_tails = m_durations;
    for (auto it = m_order.rbegin(); it != m_order.rend(); ++it) {
        const auto i = static_cast<std::size_t>(*it);
        for (const Arc& arc : m_backward.before[i]) {
            const Tick weight = arc.weight - m_durations[static_cast<std::size_t>(arc.to)] + m_durations[i];
            m_tails[i] = std::max(m_tails[i], weight + m_tails[static_cast<std::size_t>(arc.to)]);
        }
    }
    return true;
}

/// By longest remaining path, blurred.
std::vector<int> SerialSchedules::randomList() {
    std::vector<double> keys;
    for (const Tick tail : m_tails) {
        keys.push_back(tail * (0.6 + 0.8 * m_random.unit()));
    }
    for (const int i : m_order) {  // so that precedence is kept
        for (const Arc& arc : m_forward.before[static_cast<std::size_t>(i)]) {
            keys[static_cast<std::size_t>(i)] =
                std::min(keys[static_cast<std::size_t>(i)], keys[static_cast<std::size_t>(arc.to)]);
        }
    }
    std::vector<int> list = m_order;
    std::stable_sort(list.begin(), list.end(), [&](int a, int b) {
        return keys[static_cast<std::size_t>(a)] > keys[static_cast<std::size_t>(b)];
    });
    return list;
}

const SerialSchedules::Member& SerialSchedules::pick() {
    const Member& one = m_members[m_random.below(m_members.size())];
    const Member& other = m_members[m_random.below(m_members.size())];
    return one.length <= other.length ? one : other;
}

/// A piece of the member's list in which the resources are well used: the best of a few drawn.
SerialSchedules::Cut SerialSchedules::busyCut(const Member& member) {
    const auto count = static_cast<std::size_t>(m_count);
    Cut best;
    double bestUse = -1;
    for (int tries = 0; tries < kCutsTried; ++tries) {
        const std::size_t size = count / 5 + m_random.below(count / 2 + 1);
        const std::size_t first = m_random.below(count);
        const std::size_t last = std::min(count, first + size);
        double work = 0;
        Tick end = 0;
        for (std::size_t i = first; i < last; ++i) {
            const auto activity = static_cast<std::size_t>(member.list[i]);
            work += m_works[activity];
            end = std::max(end, member.starts[activity] + m_durations[activity]);
        }
        const Tick span = end - member.starts[static_cast<std::size_t>(member.list[first])];
        const double use = work / (span + 1);
        if (use > bestUse) {
            bestUse = use;
            best = {first, last};
        }
    }
    return best;
}

std::vector<int> SerialSchedules::childOf(const Member& mother, const Member& father) {
    const auto count = static_cast<std::size_t>(m_count);
    const Cut cut = busyCut(mother);
    std::vector<bool> used(count, false);
    std::vector<int> child;
    const auto takeFrom = [&](const std::vector<int>& list, std::size_t upTo) {
        for (std::size_t i = 0; i < count && child.size() < upTo; ++i) {
            if (!used[static_cast<std::size_t>(list[i])]) {
                used[static_cast<std::size_t>(list[i])] = true;
                child.push_back(list[i]);
            }
        }
    };
    takeFrom(father.list, cut.first);
    takeFrom(mother.list, cut.last);
    takeFrom(father.list, count);
    mutate(child);
    return child;
}

void SerialSchedules::mutate(std::vector<int>& list) {
    for (std::size_t i = 0; i + 1 < list.size(); ++i) {
        if (m_random.below(20) != 0) {
            continue;
        }
        const auto& waits = m_forward.before[static_cast<std::size_t>(list[i + 1])];
        if (std::none_of(waits.begin(), waits.end(), [&](const Arc& arc) { return arc.to == list[i]; })) {
            std::swap(list[i], list[i + 1]);
        }
    }
}

Tick SerialSchedules::fit(Tick from, Tick duration, Load demand) const {
    Tick start = from;
    for (Tick t = from; t < start + duration;) {
        const Load left = (m_free[static_cast<std::size_t>(t)] | kGuards) - demand;
        ++t;
        if ((left & kGuards) != kGuards) {
            start = t;
        }
    }
    return start;
}

Tick SerialSchedules::place(const std::vector<int>& list, const Direction& direction, std::vector<Tick>& starts) {
    std::fill(m_free.begin(), m_free.end(), m_capacity);
    starts.resize(static_cast<std::size_t>(m_count));
    Tick length = 0;
    for (const int activity : list) {
        const auto i = static_cast<std::size_t>(activity);
        Tick start = direction.release[i];
        for (const Arc& arc : direction.before[i]) {
            start = std::max(start, starts[static_cast<std::size_t>(arc.to)] + arc.weight);
        }
        const Tick duration = m_durations[i];
        if (m_demands[i] != 0) {
            start = fit(start, duration, m_demands[i]);
            for (Tick t = start; t < start + duration; ++t) {
                m_free[static_cast<std::size_t>(t)] -= m_demands[i];
            }
        }
        starts[i] = start;
        length = std::max(length, start + duration);
    }
    return length;
}

SerialSchedules::Member SerialSchedules::improve(std::vector<int> list) {
    std::vector<Tick> starts;
    Tick length = place(list, m_forward, starts);
    const auto endOf = [&](int i) {
        return starts[static_cast<std::size_t>(i)] + m_durations[static_cast<std::size_t>(i)];
    };
    std::vector<int> backwards(list.rbegin(), list.rend());
    std::stable_sort(backwards.begin(), backwards.end(), [&](int a, int b) { return endOf(a) > endOf(b); });
    place(backwards, m_backward, starts);
    std::vector<int> again(backwards.rbegin(), backwards.rend());
    std::stable_sort(again.begin(), again.end(), [&](int a, int b) { return endOf(a) > endOf(b); });
    length = place(again, m_forward, starts);
    ++m_bred;
    length = starts[static_cast<std::size_t>(m_sink)];
    if (m_best.empty() || length < m_bestLength) {
        m_best = starts;
        m_bestLength = length;
    }
    std::uint64_t mark = 1469598103934665603U;
    for (const Tick start : starts) {
        mark = (mark ^ static_cast<std::uint64_t>(start)) * 1099511628211U;
    }
    std::stable_sort(again.begin(), again.end(), [&](int a, int b) {
        return starts[static_cast<std::size_t>(a)] < starts[static_cast<std::size_t>(b)];
    });
    return {std::move(again), starts, length, mark};
}

/// A member comes in for the longest, unless the same schedule is there already.
void SerialSchedules::admit(Member member) {
    if (std::any_of(m_members.begin(), m_members.end(), [&](const Member& one) { return one.mark == member.mark; })) {
        return;
    }
    const auto byLength = [](const Member& a, const Member& b) { return a.length < b.length; };
    if (m_members.empty() || member.length < std::min_element(m_members.begin(), m_members.end(), byLength)->length) {
        m_lastGain = m_bred;
    }
    if (static_cast<int>(m_members.size()) < kMembers) {
        m_members.push_back(std::move(member));
        return;
    }
    const auto worst = std::max_element(m_members.begin(), m_members.end(), byLength);
    if (member.length <= worst->length) {
        *worst = std::move(member);
    }
}

void SerialSchedules::startAgain() {
    m_members.clear();
    m_lastGain = m_bred;
    m_toDraw = kMembers;
}

void SerialSchedules::breed(int schedules) {
    for (int i = 0; i < schedules; ++i) {
        if (m_bred - m_lastGain > kBarren) {
            startAgain();
        }
        const bool first = m_toDraw > 0;
        m_toDraw -= first ? 1 : 0;
        admit(improve(first ? randomList() : childOf(pick(), pick())));
    }
}

}  // namespace brinebell::search
