#include "schedule/ModelLoader.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "schedule/Cliques.h"

namespace brinebell::search {

namespace {

/// More truth values than this cost more than they help.
constexpr std::size_t kMostOrders = 4000;
/// With more variables than this, a table of the lags between all of them takes too long.
constexpr std::size_t kMostForClosure = 150;
constexpr std::size_t kMostCliques = 6;

}  // namespace

Side ModelLoader::sideAt(const Moment& moment) const {
    return sideOf(moment.variable < 0 ? m_zero : moment.variable);
}

Literal ModelLoader::conditionOf(const std::optional<Bound>& when) {
    return when ? literalOf(*when) : Literal{};
}

bool ModelLoader::load() {
    addVariables();
    for (const Difference& difference : m_model.differences) {
        addDifference(difference);
    }
    if (m_propagation.differences.hasRisingCycle()) {
        return false;
    }
    for (const Stretch& stretch : m_model.stretches) {
        addStretch(stretch);
    }
    for (const Resource& resource : m_model.resources) {
        addResource(resource);
    }
    for (const std::vector<Bound>& clause : m_model.clauses) {
        addClause(clause);
    }
    return !m_propagation.failed() && m_propagation.settleNewConstraints();
}

void ModelLoader::addVariables() {
    bool possible = true;
    for (const ScheduleModel::Domain& domain : m_model.variables) {
        possible = possible && domain.low <= domain.high;
        m_propagation.trail.addVariable(domain.low, domain.high);
    }
    m_zero = m_propagation.trail.addVariable(0, 0) / 2;
    if (!possible) {
        m_propagation.requireOne({});
    }
}

void ModelLoader::addDifference(const Difference& difference) {
    const Side from = sideAt(difference.from);
    const Side to = sideAt(difference.to);
    const Tick weight = difference.length + difference.from.offset - difference.to.offset;
    const Literal when = conditionOf(difference.when);
    if (from != to) {
        m_propagation.differences.add(from, to, weight, when);
    } else if (weight > 0) {
        m_propagation.requireOne(when.side < 0 ? std::vector<Literal>{} : std::vector<Literal>{negated(when)});
    }
}

void ModelLoader::addStretch(const Stretch& stretch) {
    const Side start = sideAt(stretch.start);
    const Side end = sideAt(stretch.end);
    const Tick weight = stretch.base + stretch.start.offset - stretch.end.offset;
    Tick total = 0;
    std::vector<SumStore::Part> held;
    std::vector<SumStore::Part> missing;
    for (const Stretch::Part& part : stretch.parts) {
        if (part.length > 0) {
            total += part.length;
            held.push_back({literalOf(part.when), part.length});
            missing.push_back({negated(literalOf(part.when)), part.length});
        }
    }
    if (start != end) {
        m_propagation.sums.add(start, end, weight, std::move(held));
        m_propagation.sums.add(end, start, -weight - total, std::move(missing));
        return;
    }
    // Both ends hang on one variable, so that a helper of 0 stands in for the difference between them.
    const Side zero = sideOf(m_zero);
    const Side helper = m_propagation.trail.addVariable(0, 0);
    m_propagation.sums.add(zero, helper, weight, std::move(held));
    m_propagation.sums.add(helper, zero, -weight - total, std::move(missing));
}

void ModelLoader::addResource(const Resource& resource) {
    std::vector<TableStore::Part> parts;
    for (const Occupation& occupation : resource.occupations) {
        const Literal when = conditionOf(occupation.when);
        if (occupation.demand <= 0) {
            continue;
        }
        if (occupation.demand > resource.capacity) {
            addDifference({occupation.end, occupation.start, 0, occupation.when});  // it has to be empty
            continue;
        }
        parts.push_back({sideAt(occupation.start), occupation.start.offset, sideAt(occupation.end),
                         occupation.end.offset, occupation.demand, when});
    }
    if (parts.empty()) {
        return;
    }
    m_propagation.tables.addTable(resource.capacity, parts);
    std::vector<EnergyStore::Task> tasks;
    for (const TableStore::Part& part : parts) {
        if (part.start == part.end && part.startOffset < part.endOffset) {
            tasks.push_back({part.start, part.startOffset, part.endOffset - part.startOffset, part.demand, part.when});
        }
    }
    if (tasks.size() > 2) {
        m_propagation.energy.addResource(resource.capacity, std::move(tasks));
    }
}

void ModelLoader::addClause(const std::vector<Bound>& clause) {
    std::vector<Literal> literals;
    for (const Bound& bound : clause) {
        literals.push_back(literalOf(bound));
    }
    m_propagation.requireOne(std::move(literals));
}

bool ModelLoader::isNeverEmpty(const Interval& interval) const {
    if (interval.start.variable == interval.end.variable) {
        return interval.start.offset < interval.end.offset;
    }
    const Side start = sideAt(interval.start);
    const Side end = sideAt(interval.end);
    if (m_propagation.trail.limit(start) + interval.start.offset <
        m_propagation.trail.bound(end) + interval.end.offset) {
        return true;
    }
    for (const DifferenceStore::Arc& arc : m_propagation.differences.arcs()) {
        if (arc.from == start && arc.to == end && arc.when.side < 0 &&
            arc.weight + interval.end.offset > interval.start.offset) {
            return true;
        }
    }
    return std::any_of(m_model.stretches.begin(), m_model.stretches.end(), [&](const Stretch& stretch) {
        return stretch.start == interval.start && stretch.end == interval.end && stretch.base > 0;
    });
}

int ModelLoader::intervalOf(const Occupation& occupation) {
    m_intervals.push_back({occupation.start, occupation.end, conditionOf(occupation.when)});
    return static_cast<int>(m_intervals.size()) - 1;
}

bool ModelLoader::canPrecede(const Interval& first, const Interval& second) const {
    return m_propagation.trail.bound(sideAt(first.end)) + first.end.offset <=
           m_propagation.trail.limit(sideAt(second.start)) + second.start.offset;
}

void ModelLoader::requirePrecedence(int first, int second, const Literal& when) {
    const Moment& end = m_intervals[static_cast<std::size_t>(first)].end;
    const Moment& start = m_intervals[static_cast<std::size_t>(second)].start;
    m_propagation.differences.add(sideAt(end), sideAt(start), end.offset - start.offset, when);
}

void ModelLoader::addOrder(int first, int second) {
    const Interval& a = m_intervals[static_cast<std::size_t>(first)];
    const Interval& b = m_intervals[static_cast<std::size_t>(second)];
    if (sideAt(a.end) == sideAt(b.start) || sideAt(b.end) == sideAt(a.start)) {
        return;
    }
    const bool always = a.when.side < 0 && b.when.side < 0;
    const bool forwards = canPrecede(a, b);
    const bool backwards = canPrecede(b, a);
    if (always && !(forwards && backwards)) {
        forwards ? requirePrecedence(first, second, {}) : requirePrecedence(second, first, {});
        return;
    }
    if (m_orders.size() >= kMostOrders || !(forwards && backwards)) {
        return;  // the time-table knows as much
    }
    const Variable truth = m_propagation.trail.addVariable(0, 1) / 2;
    requirePrecedence(first, second, literalOf(isTrue(truth)));
    if (always) {
        requirePrecedence(second, first, literalOf(isFalse(truth)));
        m_orders.push_back({truth, first, second});
        return;
    }
    // Where one of the two may be absent, neither order need hold, so there are two truth values.
    const Variable other = m_propagation.trail.addVariable(0, 1) / 2;
    requirePrecedence(second, first, literalOf(isTrue(other)));
    std::vector<Literal> either = {literalOf(isTrue(truth)), literalOf(isTrue(other))};
    for (const Literal& when : {a.when, b.when}) {
        if (when.side >= 0) {
            either.push_back(negated(when));
        }
    }
    m_propagation.requireOne(std::move(either));
    m_orders.push_back({truth, first, second});
    m_orders.push_back({other, second, first});
}

Tick ModelLoader::valueOf(const Moment& moment, const std::vector<Tick>& values) {
    return moment.offset + (moment.variable < 0 ? 0 : values[static_cast<std::size_t>(moment.variable)]);
}

Literal ModelLoader::orderIn(const Order& order, const std::vector<Tick>& values) const {
    const Interval& first = m_intervals[static_cast<std::size_t>(order.first)];
    const Interval& second = m_intervals[static_cast<std::size_t>(order.second)];
    if (valueOf(first.end, values) <= valueOf(second.start, values)) {
        return literalOf(isTrue(order.truth));
    }
    return valueOf(second.end, values) <= valueOf(first.start, values) ? literalOf(isFalse(order.truth)) : Literal{};
}

Tick ModelLoader::startIn(const Order& order, const std::vector<Tick>& values) const {
    return std::min(valueOf(m_intervals[static_cast<std::size_t>(order.first)].start, values),
                    valueOf(m_intervals[static_cast<std::size_t>(order.second)].start, values));
}

ModelLoader::Pairs ModelLoader::pairsApart() {
    using Key = std::tuple<Variable, Tick, Variable, Tick, Side, Tick>;
    std::map<Key, int> known;
    Pairs pairs;
    for (const Resource& resource : m_model.resources) {
        std::vector<Demand> demands;
        for (const Occupation& one : resource.occupations) {
            const Literal when = conditionOf(one.when);
            if (one.demand <= 0 || m_propagation.trail.isFalse(when)) {
                continue;
            }
            const Key key = {one.start.variable, one.start.offset, one.end.variable,
                             one.end.offset,     when.side,        when.value};
            const auto [place, added] = known.try_emplace(key, 0);
            if (added) {
                place->second = intervalOf(one);
            }
            if (isNeverEmpty(m_intervals[static_cast<std::size_t>(place->second)])) {
                demands.push_back({one.demand, place->second});
            }
        }
        std::sort(demands.begin(), demands.end(), [](const Demand& a, const Demand& b) {
            return a.amount != b.amount ? a.amount > b.amount : a.interval < b.interval;
        });
        for (std::size_t i = 0; i < demands.size(); ++i) {
            for (std::size_t j = i + 1; j < demands.size(); ++j) {
                if (demands[i].amount + demands[j].amount <= resource.capacity) {
                    break;
                }
                pairs.emplace_back(std::minmax(demands[i].interval, demands[j].interval));
            }
        }
    }
    std::sort(pairs.begin(), pairs.end());
    pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
    std::erase_if(pairs, [](const auto& pair) { return pair.first == pair.second; });
    return pairs;
}

bool ModelLoader::isTask(const Interval& interval) {
    return interval.when.side < 0 && interval.start.variable >= 0 && interval.start.variable == interval.end.variable &&
           interval.start.offset < interval.end.offset;
}

/// Whether the lags alone keep `second` from ending before `first` starts.
bool ModelLoader::isLagForced(const Interval& first, const Interval& second, const LagClosure& closure) const {
    const std::int64_t lag = closure.lag(first.start.variable, second.end.variable);
    return lag > LagClosure::kNoPath && lag + second.end.offset - first.start.offset > 0;
}

/// Whether the lags put the end of `first` before the start of `second`.
bool ModelLoader::isOrdered(int first, int second, const LagClosure& closure) const {
    const Moment& end = m_intervals[static_cast<std::size_t>(first)].end;
    const Moment& start = m_intervals[static_cast<std::size_t>(second)].start;
    return end.variable >= 0 && start.variable >= 0 &&
           closure.lag(end.variable, start.variable) >= end.offset - start.offset;
}

/// Where the lags leave a pair one order only, that order brings lags of its own. False if some pair has none.
bool ModelLoader::forceOrders(const Pairs& pairs, LagClosure& closure) {
    for (bool news = true; news && !closure.isImpossible();) {
        news = false;
        for (const auto& pair : pairs) {
            for (const auto& [first, second] : {pair, std::pair(pair.second, pair.first)}) {
                const Interval& a = m_intervals[static_cast<std::size_t>(first)];
                const Interval& b = m_intervals[static_cast<std::size_t>(second)];
                if (!isTask(a) || !isTask(b) || a.start.variable == b.start.variable || !isLagForced(a, b, closure)) {
                    continue;
                }
                const Tick weight = a.end.offset - b.start.offset;
                if (closure.require(a.end.variable, b.start.variable, weight)) {
                    requirePrecedence(first, second, {});
                    news = true;
                }
            }
        }
    }
    return !closure.isImpossible();
}

/// Tasks of which no two can run at once share a resource of capacity 1, whatever keeps them apart.
void ModelLoader::addCliques(const Pairs& pairs, const LagClosure& closure) {
    std::vector<std::size_t> tasks;
    std::vector<std::size_t> taskOf(m_intervals.size(), m_intervals.size());
    std::vector<int> work;
    for (std::size_t i = 0; i < m_intervals.size(); ++i) {
        if (isTask(m_intervals[i])) {
            taskOf[i] = tasks.size();
            tasks.push_back(i);
            work.push_back(m_intervals[i].end.offset - m_intervals[i].start.offset);
        }
    }
    std::vector<std::vector<bool>> apart(tasks.size(), std::vector<bool>(tasks.size(), false));
    for (const auto& [first, second] : pairs) {
        const std::size_t a = taskOf[static_cast<std::size_t>(first)];
        const std::size_t b = taskOf[static_cast<std::size_t>(second)];
        if (a < tasks.size() && b < tasks.size()) {
            apart[a][b] = apart[b][a] = true;
        }
    }
    for (std::size_t a = 0; a < tasks.size(); ++a) {
        for (std::size_t b = 0; b < tasks.size(); ++b) {
            if (a != b && isOrdered(static_cast<int>(tasks[a]), static_cast<int>(tasks[b]), closure)) {
                apart[a][b] = apart[b][a] = true;
            }
        }
    }
    for (const std::vector<std::size_t>& clique : heavyCliques(apart, work, kMostCliques)) {
        std::vector<EnergyStore::Task> members;
        for (const std::size_t member : clique) {
            const Interval& interval = m_intervals[tasks[member]];
            members.push_back({sideAt(interval.start), interval.start.offset, work[member], 1, {}});
        }
        m_propagation.energy.addResource(1, std::move(members));
    }
}

bool ModelLoader::addOrders() {
    Pairs pairs = pairsApart();
    if (m_propagation.trail.sides() / 2 <= kMostForClosure) {
        LagClosure closure(m_propagation.differences.arcs(), m_propagation.trail.sides() / 2);
        if (!forceOrders(pairs, closure)) {
            return m_propagation.requireOne({});
        }
        addCliques(pairs, closure);
        std::erase_if(pairs, [&](const auto& pair) {
            return isOrdered(pair.first, pair.second, closure) || isOrdered(pair.second, pair.first, closure);
        });
    }
    for (const auto& [first, second] : pairs) {
        addOrder(first, second);
    }
    return m_propagation.settleNewConstraints();
}

}  // namespace brinebell::search
