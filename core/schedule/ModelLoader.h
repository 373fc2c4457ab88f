// ModelLoader.h — puts a model's constraints into propagators.
#pragma once

#include <utility>
#include <vector>

#include "schedule/LagClosure.h"
#include "schedule/Propagation.h"

namespace brinebell::search {

/// A truth value that says which of two occupations comes first.
struct Order {
    Variable truth;  ///< true: `first` ends before `second` starts; false: the other way round
    int first;
    int second;
};

/// Variables keep their numbers; those that the search adds come after the model's. Lifetime: used while solve() runs,
/// with the model and the propagation it was given.
class ModelLoader {
public:
    ModelLoader(const ScheduleModel& model, Propagation& propagation) : m_model(model), m_propagation(propagation) {}

    /// Everything the model says, drawn together at the root; false if that is impossible already.
    bool load();

    /// Gives a truth value to each pair of occupations that can only run one after the other and whose order is open,
    /// where there are not too many such pairs; false if that shows the model to be impossible.
    bool addOrders();

    const std::vector<Order>& orders() const { return m_orders; }

    /// What `values` (of the model's variables) say about an order; always true where they say nothing.
    Literal orderIn(const Order& order, const std::vector<Tick>& values) const;
    /// When the earlier of the two starts.
    Tick startIn(const Order& order, const std::vector<Tick>& values) const;

private:
    /// Occupations of the same span on several resources are one interval.
    struct Interval {
        Moment start;
        Moment end;
        Literal when;
    };
    struct Demand {
        Tick amount;
        int interval;
    };

    Side sideAt(const Moment& moment) const;
    static Tick valueOf(const Moment& moment, const std::vector<Tick>& values);
    static Literal conditionOf(const std::optional<Bound>& when);
    void addVariables();
    void addDifference(const Difference& difference);
    void addStretch(const Stretch& stretch);
    void addResource(const Resource& resource);
    void addClause(const std::vector<Bound>& clause);

    using Pairs = std::vector<std::pair<int, int>>;

    /// Of intervals that together take more of a resource than there is; fills m_intervals.
    Pairs pairsApart();
    bool forceOrders(const Pairs& pairs, LagClosure& closure);
    bool isLagForced(const Interval& first, const Interval& second, const LagClosure& closure) const;
    bool isOrdered(int first, int second, const LagClosure& closure) const;
    void addCliques(const Pairs& pairs, const LagClosure& closure);
    static bool isTask(const Interval& interval);
    int intervalOf(const Occupation& occupation);
    bool isNeverEmpty(const Interval& interval) const;
    void addOrder(int first, int second);
    void requirePrecedence(int first, int second, const Literal& when);
    bool canPrecede(const Interval& first, const Interval& second) const;

    const ScheduleModel& m_model;
    Propagation& m_propagation;
    Variable m_zero = -1;  ///< the variable behind constant moments
    std::vector<Interval> m_intervals;
    std::vector<Order> m_orders;
};

}  // namespace brinebell::search
