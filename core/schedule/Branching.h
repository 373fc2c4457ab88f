// Branching.h — what to decide next: the earliest start first, or the bound that conflicts have been about lately.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "schedule/Trail.h"

namespace brinebell::search {

enum class Style {
    Earliest,  ///< like a serial schedule: the decision variable that can be earliest, at its earliest
    Active,    ///< the bound of most recent conflicts, on the side of the best schedule known
};

class Branching {
public:
    /// The first `variables` variables make a schedule; what the search added follows from them.
    Branching(const Trail& trail, const std::vector<Variable>& decisions, std::size_t variables)
        : m_trail(trail), m_decisions(decisions), m_variables(static_cast<Variable>(variables)) {}

    /// Values to go towards; there may be fewer than variables.
    void prefer(const std::vector<Tick>& values) { m_preferred = values; }
    const std::vector<Tick>& preferred() const { return m_preferred; }

    /// These took part in a conflict.
    void bump(const std::vector<Literal>& literals);
    /// The trail went back to `level`.
    void backTo(int level);

    /// A literal that is neither true nor false; none if every variable of the schedule is fixed.
    std::optional<Literal> next(Style style);

private:
    /// The question whether a variable is at least a value.
    struct Question {
        Variable variable;
        Tick value;
        double activity;
        int place;  ///< in the heap; -1: not in it
    };
    struct Removed {
        int question;
        int level;
    };

    std::optional<Literal> earliest() const;
    std::optional<Literal> mostActive();
    std::optional<Literal> anyOpen();
    Literal towardsPreferred(const Question& question) const;
    int questionOf(const Literal& literal);
    void rescale();

    bool isBefore(int a, int b) const {
        return m_questions[static_cast<std::size_t>(a)].activity > m_questions[static_cast<std::size_t>(b)].activity;
    }
    void insert(int question);
    void siftUp(std::size_t place);
    void siftDown(std::size_t place);
    void put(std::size_t place, int question);

    const Trail& m_trail;
    const std::vector<Variable>& m_decisions;
    Variable m_variables;
    Variable m_firstOpen = 0;  ///< all before it are fixed
    std::vector<Tick> m_preferred;
    std::vector<Question> m_questions;
    std::unordered_map<std::uint64_t, int> m_known;
    std::vector<int> m_heap;
    std::vector<Removed> m_removed;  ///< found answered at that level, and out of the heap since
    double m_increment = 1;
};

}  // namespace brinebell::search
