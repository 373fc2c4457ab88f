#include "schedule/EnergyStore.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace brinebell::search {

namespace {

constexpr Tick kLongestSpan = 3000;  // a look takes steps in proportion to it
constexpr int kLongestPause = 32;
constexpr int kWindowsForOneEnd = 4;
constexpr std::uint32_t kNoTask = static_cast<std::uint32_t>(-1);

}  // namespace

void EnergyStore::addResource(Tick capacity, std::vector<Task> tasks) {
    const auto number = static_cast<std::uint32_t>(m_resources.size());
    m_watches.resize(m_trail.sides());
    const auto watch = [&](Side side) {
        std::vector<std::uint32_t>& watches = m_watches[static_cast<std::size_t>(side)];
        if (watches.empty() || watches.back() != number) {
            watches.push_back(number);
        }
    };
    for (const Task& task : tasks) {
        watch(task.start);
        watch(opposite(task.start));
        if (task.when.side >= 0) {
            watch(task.when.side);
        }
    }
    m_resources.push_back({capacity, std::move(tasks)});
}

void EnergyStore::wake(Side side) {
    if (static_cast<std::size_t>(side) >= m_watches.size()) {
        return;
    }
    for (const std::uint32_t number : m_watches[static_cast<std::size_t>(side)]) {
        if (!m_resources[number].waiting) {
            m_resources[number].waiting = true;
            m_waiting.push_back(number);
        }
    }
}

void EnergyStore::wakeAll() {
    for (std::uint32_t number = 0; number < m_resources.size(); ++number) {
        m_resources[number].pause = m_resources[number].left = 0;
        if (!std::exchange(m_resources[number].waiting, true)) {
            m_waiting.push_back(number);
        }
    }
}

void EnergyStore::forget() {
    while (!m_pushes.empty() && m_pushes.back().position >= m_trail.size()) {
        m_pushes.pop_back();
    }
    for (const std::uint32_t number : m_waiting) {
        m_resources[number].waiting = false;
    }
    m_waiting.clear();
}

bool EnergyStore::isWorthALook(Resource& resource) const {
    if (m_trail.level() == 0) {
        return true;
    }
    if (resource.left > 0) {
        --resource.left;
        return false;
    }
    return true;
}

bool EnergyStore::propagate(std::vector<Literal>& because) {
    const int before = m_trail.size();
    while (!m_waiting.empty() && m_trail.size() == before) {
        const std::uint32_t number = m_waiting.back();
        m_waiting.pop_back();
        Resource& resource = m_resources[number];
        resource.waiting = false;
        if (!isWorthALook(resource)) {
            continue;
        }
        const bool fine = look(number, because);
        const bool useful = !fine || m_trail.size() > before;
        resource.pause = useful ? resource.pause / 2 : std::min(2 * resource.pause + 1, kLongestPause);
        resource.left = resource.pause;
        if (!fine) {
            return false;
        }
    }
    return true;
}

Tick EnergyStore::shareOf(Tick earliest, Tick latest, Tick length, const Window& window) {
    return std::max(0,
                    std::min({length, earliest + length - window.from, window.to - latest, window.to - window.from}));
}

/// False if there is nothing to find, or too much to look at.
bool EnergyStore::readRanges(const Resource& resource) {
    m_open.clear();
    m_ends.clear();
    m_low = std::numeric_limits<Tick>::max();
    m_high = std::numeric_limits<Tick>::min();
    m_largestTask = 0;
    for (std::uint32_t i = 0; i < resource.tasks.size(); ++i) {
        const Task& task = resource.tasks[i];
        if (!m_trail.isTrue(task.when)) {
            continue;
        }
        const Range range = {i, m_trail.bound(task.start) + task.offset, m_trail.limit(task.start) + task.offset,
                             task.length, task.demand};
        if (range.earliest < range.latest) {
            m_open.push_back(range);
            m_ends.push_back(range.latest + range.length);
            m_low = std::min(m_low, range.earliest);
            m_high = std::max(m_high, range.latest + range.length);
            m_largestTask = std::max<std::int64_t>(m_largestTask, std::int64_t{range.length} * range.demand);
        }
    }
    if (m_open.size() < 2 || m_high - m_low > kLongestSpan) {
        return false;
    }
    std::sort(m_ends.begin(), m_ends.end());
    m_ends.erase(std::unique(m_ends.begin(), m_ends.end()), m_ends.end());
    m_fixedLoad.assign(static_cast<std::size_t>(m_high - m_low), 0);
    for (const Task& task : resource.tasks) {
        const Tick start = m_trail.bound(task.start) + task.offset;
        if (start == m_trail.limit(task.start) + task.offset && m_trail.isTrue(task.when)) {
            for (Tick t = std::max(start, m_low); t < std::min(start + task.length, m_high); ++t) {
                m_fixedLoad[static_cast<std::size_t>(t - m_low)] += task.demand;
            }
        }
    }
    return true;
}

/// What windows that end at `to` have left, by where they begin. As the beginning moves to the left, the share of a
/// task grows by one unit of time a step from its earliest end on, until it holds all that the right side allows.
void EnergyStore::fillSpare(const Resource& resource, Tick to) {
    const auto size = static_cast<std::size_t>(to - m_low);
    m_change.assign(size, 0);
    m_spare.resize(size);
    for (const Range& range : m_open) {
        const Tick most = std::min(range.length, to - range.latest);
        if (most > 0) {
            const Tick first = std::min(range.earliest + range.length, to) - m_low;
            m_change[static_cast<std::size_t>(first - 1)] += range.demand;
            if (first > most) {
                m_change[static_cast<std::size_t>(first - most - 1)] -= range.demand;
            }
        }
    }
    std::int64_t growth = 0;
    std::int64_t spare = 0;
    for (std::size_t t = size; t-- > 0;) {
        growth += m_change[t];
        spare += resource.capacity - growth - m_fixedLoad[t];
        m_spare[t] = spare;
    }
}

bool EnergyStore::look(std::uint32_t number, std::vector<Literal>& because) {
    if (!readRanges(m_resources[number])) {
        return true;
    }
    return std::all_of(m_ends.begin(), m_ends.end(), [&](Tick to) { return sweep(number, to, because); });
}

bool EnergyStore::sweep(std::uint32_t number, Tick to, std::vector<Literal>& because) {
    const Resource& resource = m_resources[number];
    fillSpare(resource, to);
    const auto least = std::min_element(m_spare.begin(), m_spare.end());
    if (*least < 0) {
        const Window window = {m_low + static_cast<Tick>(least - m_spare.begin()), to};
        const std::int64_t room = std::int64_t{resource.capacity} * (window.to - window.from);
        explainLoad(resource, kNoTask, window, room + 1, m_trail.size(), because);
        return false;
    }
    // A window inside another is worth a look only where it has less left.
    std::int64_t known = m_largestTask;
    int windows = 0;
    for (std::size_t t = 0; t < m_spare.size() && windows < kWindowsForOneEnd; ++t) {
        const bool grows = t + 1 < m_spare.size() && m_spare[t + 1] < m_spare[t];
        if (m_spare[t] >= known || grows) {
            continue;
        }
        known = m_spare[t];
        ++windows;
        if (!pushAll(number, {m_low + static_cast<Tick>(t), to}, known)) {
            return false;
        }
    }
    return true;
}

bool EnergyStore::pushAll(std::uint32_t number, const Window& window, std::int64_t spare) {
    const Tick width = window.to - window.from;
    for (const Range& range : m_open) {
        if (std::int64_t{range.length} * range.demand <= spare) {
            continue;
        }
        const Tick share = shareOf(range.earliest, range.latest, range.length, window);
        const auto allowed = static_cast<Tick>(
            std::min<std::int64_t>(width, (spare + std::int64_t{share} * range.demand) / range.demand));
        const Task& task = m_resources[number].tasks[range.task];
        if (shareOf(range.earliest, range.earliest, range.length, window) > allowed &&
            !push(number, range.task, window, true, startsFrom(task, window.to - allowed))) {
            return false;
        }
        if (shareOf(range.latest, range.latest, range.length, window) > allowed &&
            !push(number, range.task, window, false, startsBy(task, window.from + allowed - range.length))) {
            return false;
        }
    }
    return true;
}

bool EnergyStore::push(std::uint32_t number, std::uint32_t task, const Window& window, bool later,
                       const Literal& literal) {
    if (m_trail.isTrue(literal)) {
        return true;
    }
    const auto index = static_cast<std::uint32_t>(m_pushes.size());
    m_pushes.push_back({m_trail.size(), number, task, window, later});
    return m_trail.raise(literal, {Reason::Kind::Energy, index, 0});
}

void EnergyStore::explain(int position, Tick value, std::vector<Literal>& because) const {
    const Push& push = m_pushes[m_trail.entry(position).reason.index];
    const Resource& resource = m_resources[push.resource];
    const Task& task = resource.tasks[push.task];
    const Window& window = push.window;
    // Asked for less than was found, the task may be allowed more: up to one unit less than it takes at the very end
    // of its range, which is what it must not do.
    const Side near = push.later ? task.start : opposite(task.start);
    const Tick bound = m_trail.boundBefore(near, position);
    const Tick start = push.later ? bound + task.offset : task.offset - bound;
    const Tick asked = push.later ? window.to - (value + task.offset) : task.offset - value + task.length - window.from;
    const Tick allowed = std::min(asked, shareOf(start, start, task.length, window) - 1);
    because.push_back(push.later ? startsFrom(task, window.from + allowed + 1 - task.length)
                                 : startsBy(task, window.to - allowed - 1));
    if (task.when.side >= 0) {
        because.push_back(task.when);
    }
    const std::int64_t room = std::int64_t{resource.capacity} * (window.to - window.from);
    explainLoad(resource, push.task, window, room - (std::int64_t{allowed} + 1) * task.demand + 1, position, because);
}

/// Appends bounds, true before `position`, under which the tasks take at least `needed` of the window, preferably
/// bounds that have been known longest.
void EnergyStore::explainLoad(const Resource& resource, std::uint32_t without, const Window& window,
                              std::int64_t needed, int position, std::vector<Literal>& because) const {
    m_shares.clear();
    std::int64_t spare = -needed;
    for (std::uint32_t i = 0; i < resource.tasks.size(); ++i) {
        const Task& task = resource.tasks[i];
        if (i == without || !m_trail.heldBefore(task.when, position)) {
            continue;
        }
        const Tick earliest = m_trail.boundBefore(task.start, position) + task.offset;
        const Tick latest = task.offset - m_trail.boundBefore(opposite(task.start), position);
        const Tick share = shareOf(earliest, latest, task.length, window);
        if (share > 0) {
            const int age = std::max(m_trail.positionOf(startsFrom(task, window.from + share - task.length)),
                                     m_trail.positionOf(startsBy(task, window.to - share)));
            m_shares.push_back({i, share, age});
            spare += std::int64_t{share} * task.demand;
        }
    }
    std::sort(m_shares.begin(), m_shares.end(),
              [](const Share& a, const Share& b) { return a.age != b.age ? a.age > b.age : a.task < b.task; });
    for (const Share& one : m_shares) {
        const Task& task = resource.tasks[one.task];
        const auto waived = static_cast<Tick>(std::min<std::int64_t>(one.share, spare / task.demand));
        spare -= std::int64_t{waived} * task.demand;
        const Tick share = one.share - waived;
        if (share > 0) {
            because.push_back(startsFrom(task, window.from + share - task.length));
            because.push_back(startsBy(task, window.to - share));
            if (task.when.side >= 0) {
                because.push_back(task.when);
            }
        }
    }
}

}  // namespace brinebell::search
