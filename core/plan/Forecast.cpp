#include "plan/Forecast.h"

#include <algorithm>
#include <cmath>
#include <thread>

#include "plan/Simulation.h"

namespace brinebell {

namespace {

// Runs are added up in chunks of fixed size, in order, so that sums do not depend on the number of threads.
constexpr int kChunk = 512;

struct Chunk {
    std::vector<int> broken;  ///< by limit
    int anyBroken = 0, anySafetyBroken = 0, stalled = 0, lateLooks = 0;
    std::int64_t sumEnd = 0, sumKitchen = 0;
};

struct Ends {
    Seconds classEnd{}, kitchenEnd{};
};

class Runs {
public:
    Runs(const Network& network, const Policy& policy, const Progress& progress, const ForecastOptions& options)
        : m_network(network),
          m_policy(policy),
          m_progress(progress),
          m_options(options),
          m_draw(network, options.durations) {
        for (const ActivityProgress& lived : progress.activities) {
            const Seconds end = lived.ended.value_or(progress.now);
            m_elapsed.push_back(lived.started ? end - *lived.started - lived.paused : Seconds(-1));
        }
        m_ends.resize(static_cast<std::size_t>(options.runs));
        m_chunks.resize((m_ends.size() + kChunk - 1) / kChunk);
    }

    void play() {
        int threads = m_options.threads > 0 ? m_options.threads : static_cast<int>(std::thread::hardware_concurrency());
        threads = std::clamp(threads, 1, static_cast<int>(m_chunks.size()));
        std::vector<std::thread> others;
        for (int t = 1; t < threads; ++t) {
            others.emplace_back([this, t, threads] { playEvery(t, threads); });
        }
        playEvery(0, threads);
        for (std::thread& other : others) {
            other.join();
        }
    }

    Forecast result() const;

private:
    void playEvery(int first, int step) {
        Simulation simulation(m_network, m_policy);
        std::vector<Seconds> durations;
        for (std::size_t c = static_cast<std::size_t>(first); c < m_chunks.size();
             c += static_cast<std::size_t>(step)) {
            playChunk(c, simulation, durations);
        }
    }

    void playChunk(std::size_t c, Simulation& simulation, std::vector<Seconds>& durations) {
        Chunk chunk;
        chunk.broken.assign(m_network.limits.size(), 0);
        const std::size_t end = std::min(m_ends.size(), (c + 1) * kChunk);
        for (std::size_t run = c * kChunk; run < end; ++run) {
            if (m_elapsed.empty()) {
                m_draw.draw(m_options.seed, run, durations);
            } else {
                m_draw.draw(m_options.seed, run, m_elapsed, durations);
            }
            const Simulation::Outcome& outcome =
                simulation.run(m_progress, durations, nullptr, Simulation::Keep::EndsOnly);
            // A class that comes to a stand ends never, whatever the clock said then.
            m_ends[run] =
                outcome.complete ? Ends{outcome.classEnd, outcome.end} : Ends{kLongestDuration, kLongestDuration};
            count(outcome, chunk);
            chunk.sumEnd += outcome.classEnd.count();
            chunk.sumKitchen += outcome.end.count();
        }
        m_chunks[c] = std::move(chunk);
    }

    void count(const Simulation::Outcome& outcome, Chunk& chunk) const {
        bool any = !outcome.complete, anySafety = !outcome.complete;
        chunk.stalled += outcome.complete ? 0 : 1;
        chunk.lateLooks += outcome.lateLooks > kBrokenBy ? 1 : 0;
        for (const BrokenLimit& broken : outcome.broken) {
            const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(broken.limit)];
            if (broken.wait > limit.atMost + kBrokenBy) {
                ++chunk.broken[static_cast<std::size_t>(broken.limit)];
                any = true;
                anySafety = anySafety || limit.kind == LimitKind::Safety;
            }
        }
        chunk.anyBroken += any ? 1 : 0;
        chunk.anySafetyBroken += anySafety ? 1 : 0;
    }

    EndSpread spread(std::vector<Seconds> ends, std::optional<Seconds> slot, std::int64_t sum) const;
    std::vector<LatenessDriver> drivers() const;

    const Network& m_network;
    const Policy& m_policy;
    const Progress& m_progress;
    const ForecastOptions& m_options;
    DurationDraw m_draw;
    std::vector<Seconds> m_elapsed;
    std::vector<Ends> m_ends;
    std::vector<Chunk> m_chunks;
};

// The smallest end that at least the share of runs does not exceed.
EndSpread Runs::spread(std::vector<Seconds> ends, std::optional<Seconds> slot, std::int64_t sum) const {
    const auto n = ends.size();
    std::sort(ends.begin(), ends.end());
    const auto at = [&](double share) {
        const auto rank = static_cast<std::size_t>(std::ceil(share * static_cast<double>(n)));
        return ends[std::clamp<std::size_t>(rank, 1, n) - 1];
    };
    EndSpread spread{
        at(0.1), at(0.5), at(0.8), at(0.9), at(m_options.confidence), static_cast<double>(sum) / static_cast<double>(n),
        1};
    if (slot) {
        const auto inTime = std::upper_bound(ends.begin(), ends.end(), *slot) - ends.begin();
        spread.chance = static_cast<double>(inTime) / static_cast<double>(n);
    }
    return spread;
}

// What one activity does alone is asked of the dispatcher itself. Shares add up as squares, the way independent
// deviations do.
std::vector<LatenessDriver> Runs::drivers() const {
    const std::size_t n = m_network.activities.size();
    Simulation simulation(m_network, m_policy);
    std::vector<Seconds> durations;
    for (std::size_t i = 0; i < n; ++i) {
        durations.push_back(std::max(m_network.activities[i].duration.likely,
                                     m_elapsed.empty() ? Seconds::zero() : m_elapsed[i] + Seconds(1)));
    }
    const auto classEnd = [&] {
        return simulation.run(m_progress, durations, nullptr, Simulation::Keep::EndsOnly).classEnd;
    };
    const Seconds likely = classEnd();
    std::vector<LatenessDriver> drivers;
    double squares = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const bool over = !m_progress.activities.empty() && m_progress.activities[i].ended.has_value();
        const Seconds slow = m_draw.quantile(static_cast<int>(i), 0.8);
        if (over || slow <= durations[i]) {
            continue;
        }
        const Seconds usual = std::exchange(durations[i], slow);
        LatenessDriver driver{static_cast<int>(i), classEnd() - likely, 0};
        durations[i] = usual;
        if (driver.ifSlow > Seconds::zero()) {
            driver.share = static_cast<double>(driver.ifSlow.count()) * static_cast<double>(driver.ifSlow.count());
            squares += driver.share;
            drivers.push_back(driver);
        }
    }
    for (LatenessDriver& driver : drivers) {
        driver.share /= squares;
    }
    std::stable_sort(drivers.begin(), drivers.end(),
                     [](const LatenessDriver& a, const LatenessDriver& b) { return a.ifSlow > b.ifSlow; });
    return drivers;
}

Forecast Runs::result() const {
    Chunk total = m_chunks.front();
    for (std::size_t c = 1; c < m_chunks.size(); ++c) {
        const Chunk& chunk = m_chunks[c];
        total.anyBroken += chunk.anyBroken;
        total.anySafetyBroken += chunk.anySafetyBroken;
        total.stalled += chunk.stalled;
        total.lateLooks += chunk.lateLooks;
        total.sumEnd += chunk.sumEnd;
        total.sumKitchen += chunk.sumKitchen;
        for (std::size_t l = 0; l < total.broken.size(); ++l) {
            total.broken[l] += chunk.broken[l];
        }
    }
    const auto runs = static_cast<double>(m_ends.size());
    std::vector<Seconds> classEnds, kitchenEnds;
    for (const Ends& ends : m_ends) {
        classEnds.push_back(ends.classEnd);
        kitchenEnds.push_back(ends.kitchenEnd);
    }
    Forecast result;
    result.runs = static_cast<int>(m_ends.size());
    const auto slot = m_network.slot > Seconds::zero() ? std::optional(m_network.slot) : std::nullopt;
    result.classEnd = spread(std::move(classEnds), slot, total.sumEnd);
    result.kitchenEnd = spread(std::move(kitchenEnds), m_network.kitchenSlot, total.sumKitchen);
    for (const int broken : total.broken) {
        result.limitBroken.push_back(broken / runs);
    }
    result.anyLimitBroken = total.anyBroken / runs;
    result.anySafetyLimitBroken = total.anySafetyBroken / runs;
    result.stalled = total.stalled / runs;
    result.lateLooks = total.lateLooks / runs;
    result.drivers = drivers();
    return result;
}

}  // namespace

Forecast forecast(const Network& network, const Policy& policy, const Progress& progress,
                  const ForecastOptions& options) {
    Runs runs(network, policy, progress, options);
    runs.play();
    return runs.result();
}

}  // namespace brinebell
