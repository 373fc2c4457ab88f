// Random tiny models against an enumerator that shares nothing with the search.
#include <gtest/gtest.h>

#include "base/Random.h"
#include "core/schedule/BruteForce.h"
#include "schedule/ScheduleSearch.h"

namespace brinebell {
namespace {

/// Starts, one stretchable end, truths, and a bit of everything between them.
class RandomModel {
public:
    explicit RandomModel(std::uint64_t seed) : m_random(seed) {}

    ScheduleModel make() {
        addVariables();
        for (int i = below(5); i >= 0; --i) {
            m_model.differences.push_back({moment(), moment(), between(-4, 3), maybeCondition(3)});
        }
        for (int i = below(3); i > 0; --i) {
            addClause();
        }
        if (below(2) == 0) {
            addStretch();
        }
        for (int i = below(3); i >= 0; --i) {
            addResource();
        }
        addObjective();
        return std::move(m_model);
    }

private:
    int below(int n) { return static_cast<int>(m_random.below(static_cast<std::uint64_t>(n))); }
    Tick between(Tick low, Tick high) { return low + below(high - low + 1); }

    void addVariables() {
        m_starts = 3 + below(2);
        for (int i = 0; i < m_starts; ++i) {
            const Tick low = between(-1, 2);
            m_model.decisions.push_back(m_model.addVariable(low, low + between(2, 5)));
        }
        m_truths = 1 + below(3);
        for (int i = 0; i < m_truths; ++i) {
            m_model.addTruth();
        }
    }

    Moment moment() {
        const int variable = below(m_starts + 1) - (below(6) == 0 ? 1 : 0);
        return {std::min(variable, m_starts - 1), between(-1, 2)};
    }

    Bound condition() {
        const Variable truth = m_starts + below(m_truths);
        const int kind = below(7);
        if (kind == 0) {
            return {below(m_starts), below(2) == 0, between(0, 4)};
        }
        return kind < 4 ? isTrue(truth) : isFalse(truth);
    }

    std::optional<Bound> maybeCondition(int oneIn) {
        return below(oneIn) == 0 ? std::optional(condition()) : std::nullopt;
    }

    void addClause() {
        std::vector<Bound> clause;
        for (int i = below(3); i >= 0; --i) {
            clause.push_back(condition());
        }
        clause.push_back({below(m_starts), below(2) == 0, between(0, 5)});
        m_model.clauses.push_back(clause);
    }

    void addStretch() {
        Stretch stretch = {moment(), moment(), between(0, 2), {}};
        for (int i = below(3); i > 0; --i) {
            stretch.parts.push_back({condition(), between(0, 3)});
        }
        m_model.stretches.push_back(stretch);
    }

    void addResource() {
        Resource resource{between(1, 3), {}};
        for (int i = below(5); i >= 0; --i) {
            const Moment start = {below(m_starts), between(0, 1)};
            const Moment end = below(4) == 0 ? moment() : Moment{start.variable, start.offset + between(1, 3)};
            resource.occupations.push_back({start, end, between(0, resource.capacity), maybeCondition(3)});
        }
        if (below(8) == 0) {
            resource.occupations.push_back({moment(), moment(), resource.capacity + 1, maybeCondition(2)});
        }
        m_model.resources.push_back(resource);
    }

    void addObjective() {
        if (below(10) == 0) {
            return;
        }
        m_model.objective = m_model.addVariable(-2, 9);
        for (int i = 0; i < m_starts; ++i) {
            m_model.differences.push_back({{i, 0}, {m_model.objective, 0}, between(0, 2), maybeCondition(4)});
        }
    }

    Random m_random;
    ScheduleModel m_model;
    int m_starts = 0;
    int m_truths = 0;
};

void expectSameAnswer(const ScheduleModel& model, std::uint64_t seed, int& feasible) {
    SCOPED_TRACE("model of seed " + std::to_string(seed));
    const std::optional<Tick> expected = bruteForceOptimum(model);
    const ScheduleAnswer answer = solve(model);
    feasible += expected ? 1 : 0;
    ASSERT_EQ(answer.status, expected ? ScheduleStatus::Optimal : ScheduleStatus::Infeasible);
    if (expected) {
        EXPECT_EQ(brokenConstraints(model, answer.values), 0);
        EXPECT_TRUE(violationsOf(model, answer.values).empty());
        if (model.objective >= 0) {
            EXPECT_EQ(answer.objective, *expected);
            EXPECT_EQ(answer.lowerBound, *expected);
        }
    }
}

TEST(RandomModel, IsSolvedLikeByTryingEverything) {
    constexpr int kModels = 400;
    int feasible = 0;
    for (std::uint64_t seed = 1; seed <= kModels; ++seed) {
        expectSameAnswer(RandomModel(seed).make(), seed, feasible);
        if (HasFatalFailure()) {
            return;
        }
    }
    EXPECT_GT(feasible, kModels / 4);
    EXPECT_LT(feasible, kModels - kModels / 10) << "infeasible models are wanted as well";
}

/// Five tasks on two scarce resources between minimum and maximum lags.
ScheduleModel tightProject(std::uint64_t seed) {
    Random random(seed);
    const auto between = [&](Tick low, Tick high) {
        return low + static_cast<Tick>(random.below(static_cast<std::uint64_t>(high - low + 1)));
    };
    ScheduleModel model;
    constexpr int kTasks = 5;
    std::vector<Tick> lengths;
    for (int i = 0; i < kTasks; ++i) {
        model.decisions.push_back(model.addVariable(0, 6));
        lengths.push_back(between(1, 3));
    }
    model.objective = model.addVariable(0, 8);
    for (int i = 0; i < kTasks; ++i) {
        model.differences.push_back({{i, 0}, {model.objective, 0}, lengths[static_cast<std::size_t>(i)], std::nullopt});
    }
    for (int i = between(1, 4); i > 0; --i) {
        const int from = between(0, kTasks - 2);
        const int to = between(from + 1, kTasks - 1);
        const Tick lag = between(0, 3);
        model.differences.push_back({{from, 0}, {to, 0}, lag, std::nullopt});
        if (between(0, 1) == 0) {
            model.differences.push_back({{to, 0}, {from, 0}, -lag - between(0, 3), std::nullopt});
        }
    }
    for (int k = 0; k < 2; ++k) {
        Resource resource{between(1, 4), {}};
        for (int i = 0; i < kTasks; ++i) {
            const Tick end = lengths[static_cast<std::size_t>(i)];
            resource.occupations.push_back({{i, 0}, {i, end}, between(0, resource.capacity), std::nullopt});
        }
        model.resources.push_back(resource);
    }
    return model;
}

TEST(RandomModel, OfATightProjectIsSolvedLikeByTryingEverything) {
    int feasible = 0;
    constexpr int kModels = 60;
    for (std::uint64_t seed = 1; seed <= kModels && !HasFatalFailure(); ++seed) {
        expectSameAnswer(tightProject(seed), seed, feasible);
    }
    EXPECT_GT(feasible, kModels / 4);
    EXPECT_LT(feasible, kModels);
}

TEST(RandomModel, IsNotProvedImpossibleByAClauseThatCoveredItself) {
    // A learned clause lost a literal because of a weaker one on the same side, which that literal itself covered.
    int feasible = 0;
    expectSameAnswer(RandomModel(4061).make(), 4061, feasible);
    EXPECT_EQ(feasible, 1);
}

}  // namespace
}  // namespace brinebell
