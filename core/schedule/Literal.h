// Literal.h — a one-sided view of variables, in which every bound is "this side is at least that".
//
// Side 2v stands for the value of variable v and side 2v + 1 for its negative, so that an upper bound on v is a lower
// bound on the other side. Every propagator is then written once and works in both directions.
#pragma once

#include "schedule/ScheduleModel.h"

namespace brinebell::search {

using Side = int;

constexpr Side sideOf(Variable variable) {
    return 2 * variable;
}
constexpr Side opposite(Side side) {
    return side ^ 1;
}

/// True once the bound of `side` has risen to `value`, false once the opposite side has risen to 1 - value.
struct Literal {
    Side side = -1;  ///< -1: always true
    Tick value = 0;
    bool operator==(const Literal&) const = default;
};

constexpr Literal negated(const Literal& literal) {
    return {opposite(literal.side), 1 - literal.value};
}

constexpr Literal literalOf(const Bound& bound) {
    const Side side = sideOf(bound.variable);
    return bound.atLeast ? Literal{side, bound.value} : Literal{opposite(side), -bound.value};
}

}  // namespace brinebell::search
