#include "schedule/Branching.h"

#include <limits>

namespace brinebell::search {

namespace {

constexpr double kDecay = 0.95;
constexpr double kRescaleFrom = 1e100;

}  // namespace

int Branching::questionOf(const Literal& literal) {
    const bool upper = (literal.side & 1) != 0;
    const Tick value = upper ? 1 - literal.value : literal.value;
    const Variable variable = literal.side / 2;
    const auto key =
        static_cast<std::uint64_t>(static_cast<std::uint32_t>(variable)) << 32 | static_cast<std::uint32_t>(value);
    const auto [place, added] = m_known.try_emplace(key, static_cast<int>(m_questions.size()));
    if (added) {
        m_questions.push_back({variable, value, 0, -1});
        insert(place->second);
    }
    return place->second;
}

void Branching::bump(const std::vector<Literal>& literals) {
    for (const Literal& literal : literals) {
        Question& question = m_questions[static_cast<std::size_t>(questionOf(literal))];
        question.activity += m_increment;
        if (question.place >= 0) {
            siftUp(static_cast<std::size_t>(question.place));
        }
    }
    m_increment /= kDecay;
    if (m_increment > kRescaleFrom) {
        rescale();
    }
}

void Branching::rescale() {
    for (Question& question : m_questions) {
        question.activity /= kRescaleFrom;
    }
    m_increment /= kRescaleFrom;
}

void Branching::backTo(int level) {
    m_firstOpen = 0;
    while (!m_removed.empty() && m_removed.back().level > level) {
        insert(m_removed.back().question);
        m_removed.pop_back();
    }
}

std::optional<Literal> Branching::next(Style style) {
    std::optional<Literal> decision = style == Style::Active ? mostActive() : std::nullopt;
    if (!decision) {
        decision = earliest();
    }
    return decision ? decision : anyOpen();
}

std::optional<Literal> Branching::earliest() const {
    std::optional<Literal> found;
    Tick least = std::numeric_limits<Tick>::max();
    for (const Variable variable : m_decisions) {
        if (m_trail.bound(sideOf(variable)) < least && !m_trail.fixed(variable)) {
            least = m_trail.bound(sideOf(variable));
            found = Literal{opposite(sideOf(variable)), -least};
        }
    }
    return found;
}

std::optional<Literal> Branching::anyOpen() {
    for (; m_firstOpen < m_variables; ++m_firstOpen) {
        if (!m_trail.fixed(m_firstOpen)) {
            const Side side = sideOf(m_firstOpen);
            return Literal{opposite(side), -m_trail.bound(side)};
        }
    }
    return std::nullopt;
}

std::optional<Literal> Branching::mostActive() {
    while (!m_heap.empty()) {
        const int top = m_heap.front();
        Question& question = m_questions[static_cast<std::size_t>(top)];
        const Literal literal = {sideOf(question.variable), question.value};
        if (!m_trail.isTrue(literal) && !m_trail.isFalse(literal)) {
            return towardsPreferred(question);
        }
        question.place = -1;
        m_removed.push_back({top, m_trail.level()});
        const int last = m_heap.back();
        m_heap.pop_back();
        if (!m_heap.empty()) {
            put(0, last);
            siftDown(0);
        }
    }
    return std::nullopt;
}

Literal Branching::towardsPreferred(const Question& question) const {
    const Literal atLeast = {sideOf(question.variable), question.value};
    const auto variable = static_cast<std::size_t>(question.variable);
    return variable < m_preferred.size() && m_preferred[variable] >= question.value ? atLeast : negated(atLeast);
}

void Branching::put(std::size_t place, int question) {
    m_heap[place] = question;
    m_questions[static_cast<std::size_t>(question)].place = static_cast<int>(place);
}

void Branching::insert(int question) {
    m_heap.push_back(question);
    put(m_heap.size() - 1, question);
    siftUp(m_heap.size() - 1);
}

void Branching::siftUp(std::size_t place) {
    const int question = m_heap[place];
    while (place > 0 && isBefore(question, m_heap[(place - 1) / 2])) {
        put(place, m_heap[(place - 1) / 2]);
        place = (place - 1) / 2;
    }
    put(place, question);
}

void Branching::siftDown(std::size_t place) {
    const int question = m_heap[place];
    for (;;) {
        std::size_t child = 2 * place + 1;
        if (child >= m_heap.size()) {
            break;
        }
        if (child + 1 < m_heap.size() && isBefore(m_heap[child + 1], m_heap[child])) {
            ++child;
        }
        if (!isBefore(m_heap[child], question)) {
            break;
        }
        put(place, m_heap[child]);
        place = child;
    }
    put(place, question);
}

}  // namespace brinebell::search
