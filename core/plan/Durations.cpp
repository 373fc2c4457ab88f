#include "plan/Durations.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "base/Random.h"

namespace brinebell {

namespace {

// The standard normal distribution from tables, where a draw cannot afford erfc. Errors stay under 0.0005 of a
// standard deviation.
class NormalTable {
public:
    static const NormalTable& get() {
        static const NormalTable table;
        return table;
    }

    /// From 64 random bits, evenly spread.
    double fromBits(std::uint64_t bits) const {
        const std::uint64_t cell = bits >> (64 - kCellBits);
        // The curve is steep in the outermost cells, so they go the long way round.
        if (cell < kSteepCells || cell >= kCells - kSteepCells) {
            return quantile((static_cast<double>(bits >> 11) + 0.5) * 0x1.0p-53);
        }
        const double within = static_cast<double>((bits << kCellBits) >> 11) * 0x1.0p-53;
        return m_cells[cell] + within * (m_cells[cell + 1] - m_cells[cell]);
    }

    double share(double z) const {
        const double below = lowerShare(std::max(-std::abs(z), -static_cast<double>(kReach)));
        return z < 0 ? below : 1 - below;
    }

    /// Requires 0 <= share <= 1; ends at 8 standard deviations.
    double quantile(double share) const { return share > 0.5 ? -lowerQuantile(1 - share) : lowerQuantile(share); }

private:
    static constexpr unsigned kCellBits = 10;
    static constexpr std::size_t kCells = std::size_t{1} << kCellBits;
    static constexpr std::size_t kSteepCells = 16;
    static constexpr int kReach = 8;
    static constexpr int kSteps = 32;  // for each standard deviation

    NormalTable() {
        for (std::size_t k = 0; k < m_shares.size(); ++k) {
            m_shares[k] = normalShare(static_cast<double>(k) / kSteps - kReach);
        }
        for (std::size_t k = kSteepCells; k <= kCells - kSteepCells; ++k) {
            m_cells[k] = normalQuantile(static_cast<double>(k) / kCells);
        }
    }

    double lowerShare(double z) const {
        const double position = (z + kReach) * kSteps;
        const auto k = std::min(static_cast<std::size_t>(position), m_shares.size() - 2);
        return m_shares[k] + (position - static_cast<double>(k)) * (m_shares[k + 1] - m_shares[k]);
    }

    double lowerQuantile(double share) const {
        const auto above = std::upper_bound(m_shares.begin() + 1, m_shares.end() - 1, share);
        const double below = *(above - 1);
        const double within = std::clamp((share - below) / (*above - below), 0.0, 1.0);
        return (static_cast<double>(above - m_shares.begin()) - 1 + within) / kSteps - kReach;
    }

    std::array<double, kReach * kSteps + 1> m_shares{};  // below -8, -8 + 1/32, … 0
    std::array<double, kCells + 1> m_cells{};
};

Random randomFor(std::uint64_t seed, std::uint64_t run) {
    // Any odd factor but the step of the generator's own seeding, with which neighbouring runs would overlap.
    return Random(seed + run * 0xd1342543de82ef95U);
}

bool neverVaries(const Activity& activity) {
    return activity.kind == ActivityKind::Process || activity.kind == ActivityKind::Rest ||
           activity.duration.low == activity.duration.high;
}

}  // namespace

// ---- sums

double Spread::quantile(double share) const {
    return mean + sd * normalQuantile(share);
}

Spread spreadOf(const ThreePoint& guess) {
    const auto low = static_cast<double>(guess.low.count());
    const auto likely = static_cast<double>(guess.likely.count());
    const auto high = static_cast<double>(guess.high.count());
    return {(low + 4 * likely + high) / 6, (high - low) / 6};
}

Spread spreadOfPath(const std::vector<ThreePoint>& path, double correlation) {
    assert(correlation >= 0 && correlation <= 1);
    double mean = 0, variances = 0, deviations = 0;
    for (const ThreePoint& guess : path) {
        const Spread spread = spreadOf(guess);
        mean += spread.mean;
        variances += spread.sd * spread.sd;
        deviations += spread.sd;
    }
    return {mean, std::sqrt((1 - correlation) * variances + correlation * deviations * deviations)};
}

// ---- tables

DurationDraw::DurationDraw(const Network& network, DurationModel model) {
    assert(model.correlation >= 0 && model.correlation <= 1);
    m_fixed.reserve(network.activities.size());
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        m_fixed.push_back(network.activities[i].duration.likely);
        if (!neverVaries(network.activities[i])) {
            addVarying(static_cast<int>(i), network.activities[i], model);
        }
    }
}

void DurationDraw::addVarying(int index, const Activity& activity, const DurationModel& model) {
    const ThreePoint& guess = activity.duration;
    Varying varying;
    varying.activity = index;
    varying.shape = shapeOf(guess);
    varying.low = static_cast<double>(guess.low.count());
    varying.span = static_cast<double>((guess.high - guess.low).count());
    const Seconds handWork = activity.handsAtStart + activity.handsAtEnd + Seconds(1);
    varying.most = guess.high.count();
    varying.least = std::min(std::max(guess.low, handWork), guess.high).count();
    if (activity.hands == HandsNeed::Throughout) {
        varying.common = std::sqrt(model.correlation);
        varying.own = std::sqrt(1 - model.correlation);
    }
    m_varying.push_back(varying);
}

// Many guesses have one shape (a low of three quarters, a high of three halves), so each is tabulated once.
std::size_t DurationDraw::shapeOf(const ThreePoint& guess) {
    const Spread spread = spreadOf(guess);
    const auto span = static_cast<double>((guess.high - guess.low).count());
    const auto shape =
        BetaShape::withMoments((spread.mean - static_cast<double>(guess.low.count())) / span, spread.sd / span);
    const auto isIt = [&](const BetaShape& known) {
        return std::abs(known.alpha - shape.alpha) < 1e-9 && std::abs(known.beta - shape.beta) < 1e-9;
    };
    const auto known = std::find_if(m_shapes.begin(), m_shapes.end(), isIt);
    const auto index = static_cast<std::size_t>(known - m_shapes.begin());
    if (known == m_shapes.end()) {
        m_shapes.push_back(shape);
        Table& table = m_tables.emplace_back();
        double near = 0.5;
        for (std::size_t k = 0; k < table.size(); ++k) {
            const double z = static_cast<double>(k) / kTableSteps - kTableReach;
            near = shape.quantileNear(normalShare(z), near);
            table[k] = static_cast<float>(near);
        }
    }
    return index;
}

Seconds DurationDraw::quantile(int activity, double p) const {
    const auto isIt = [activity](const Varying& varying) { return varying.activity == activity; };
    const auto found = std::find_if(m_varying.begin(), m_varying.end(), isIt);
    if (found == m_varying.end()) {
        return m_fixed.at(static_cast<std::size_t>(activity));
    }
    const double drawn = found->low + found->span * m_shapes[found->shape].quantile(p);
    return Seconds(std::clamp<std::int64_t>(std::llround(drawn), found->least, found->most));
}

// ---- draws

Seconds DurationDraw::at(const Varying& varying, double z) const {
    const Table& table = m_tables[varying.shape];
    const double position = std::clamp((z + kTableReach) * kTableSteps, 0.0, static_cast<double>(table.size() - 1));
    const auto k = std::min(static_cast<std::size_t>(position), table.size() - 2);
    const double step = static_cast<double>(table[k + 1]) - static_cast<double>(table[k]);
    const double x = static_cast<double>(table[k]) + (position - static_cast<double>(k)) * step;
    const auto drawn = static_cast<std::int64_t>(varying.low + varying.span * x + 0.5);
    return Seconds(std::clamp(drawn, varying.least, varying.most));
}

void DurationDraw::draw(std::uint64_t seed, std::uint64_t run, std::vector<Seconds>& durations) const {
    const NormalTable& normal = NormalTable::get();
    Random random = randomFor(seed, run);
    durations = m_fixed;
    const double common = normal.fromBits(random.next());
    for (const Varying& varying : m_varying) {
        const double own = normal.fromBits(random.next());
        durations[static_cast<std::size_t>(varying.activity)] =
            at(varying, varying.common * common + varying.own * own);
    }
}

// The z at which the duration is `elapsed`: the table the other way round.
double DurationDraw::whereReached(const Varying& varying, Seconds elapsed) const {
    const Table& table = m_tables[varying.shape];
    const double x = (static_cast<double>(elapsed.count()) - varying.low) / varying.span;
    if (x <= 0) {
        return -2.0 * kTableReach;
    }
    const auto above = std::upper_bound(table.begin(), table.end(), static_cast<float>(x));
    if (above == table.begin() || above == table.end()) {
        return above == table.end() ? kTableReach : -kTableReach;
    }
    const double below = static_cast<double>(*(above - 1));
    const double within = (x - below) / (static_cast<double>(*above) - below);
    return (static_cast<double>(above - table.begin()) - 1 + within) / kTableSteps - kTableReach;
}

// A value of the common factor at `share` of its distribution, given how long hand work has already lasted. Its density
// is the normal one times, for each work under way, the chance that it lasts longer; added up in narrow cells.
double DurationDraw::commonGiven(const std::vector<Seconds>& elapsed, double share) const {
    constexpr int kHalf = 32;
    constexpr double kStep = 1.0 / 8;
    constexpr double kFarthestEvidence = 2.326;  // 99 in 100 would have ended
    const NormalTable& normal = NormalTable::get();
    std::array<double, 2 * kHalf + 1> weight;
    for (int k = -kHalf; k <= kHalf; ++k) {
        const double c = k * kStep;
        weight[static_cast<std::size_t>(k + kHalf)] = normal.share(c + kStep / 2) - normal.share(c - kStep / 2);
    }
    for (const Varying& varying : m_varying) {
        const Seconds lasted = elapsed[static_cast<std::size_t>(varying.activity)];
        if (varying.common <= 0 || lasted < Seconds::zero()) {
            continue;
        }
        const double reached = std::min(whereReached(varying, lasted), kFarthestEvidence);
        const double own = std::max(varying.own, 1e-9);
        for (int k = -kHalf; k <= kHalf; ++k) {
            weight[static_cast<std::size_t>(k + kHalf)] *= normal.share((varying.common * k * kStep - reached) / own);
        }
    }
    double total = 0;
    for (const double w : weight) {
        total += w;
    }
    double left = share * total;
    for (int k = -kHalf; k <= kHalf; ++k) {
        const double w = weight[static_cast<std::size_t>(k + kHalf)];
        if (left < w) {
            return (k - 0.5 + left / w) * kStep;
        }
        left -= w;
    }
    return kHalf * kStep;
}

void DurationDraw::draw(std::uint64_t seed, std::uint64_t run, const std::vector<Seconds>& elapsed,
                        std::vector<Seconds>& durations) const {
    assert(elapsed.size() == m_fixed.size());
    const NormalTable& normal = NormalTable::get();
    Random random = randomFor(seed, run);
    durations = m_fixed;
    const double common = commonGiven(elapsed, random.unit());
    for (const Varying& varying : m_varying) {
        const Seconds lasted = elapsed[static_cast<std::size_t>(varying.activity)];
        double own = 0;
        if (lasted < Seconds::zero()) {
            own = normal.fromBits(random.next());
        } else {
            const double reached = whereReached(varying, lasted);
            const double beyond = (reached - varying.common * common) / std::max(varying.own, 1e-9);
            own = -normal.quantile((1 - random.unit()) * normal.share(-beyond));
        }
        durations[static_cast<std::size_t>(varying.activity)] =
            at(varying, varying.common * common + varying.own * own);
    }
    for (std::size_t i = 0; i < durations.size(); ++i) {
        if (elapsed[i] >= Seconds::zero()) {
            durations[i] = std::max(durations[i], elapsed[i] + Seconds(1));
        }
    }
}

}  // namespace brinebell
