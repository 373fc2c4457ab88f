#include "plan/MakeAhead.h"

#include <algorithm>
#include <map>
#include <optional>

#include "plan/Forecast.h"
#include "plan/Planner.h"
#include "plan/TalkRoom.h"
#include "plan/Unfold.h"

namespace brinebell {

namespace {

/// Indices into the stages of all dishes, ascending.
using StageSet = std::vector<int>;

/// How a class with some stages made ahead comes out.
struct Outcome {
    Seconds end{};                     ///< class end at the confidence, with what free talk there was no wait for
    std::vector<std::string> dropped;  ///< may-drop points left out to make it fit
    bool fits = false;
    bool cutShort = false;  ///< the search for its sheet ended before its proof
};

class Choosing {
public:
    Choosing(const ClassPlan& plan, const MakeAheadOptions& options) : m_plan(plan), m_options(options) {
        for (std::size_t d = 0; d < plan.dishes.size(); ++d) {
            const PlannedDish& dish = plan.dishes[d];
            for (const MadeAheadStage& stage : dish.recipe.stages) {
                StageChoice choice;
                choice.dish = static_cast<int>(d);
                choice.stage = stage.id;
                choice.title = stage.title;
                choice.prepares = workIn(dish, stage);
                choice.inClass =
                    std::find(dish.madeAhead.begin(), dish.madeAhead.end(), stage.id) != dish.madeAhead.end();
                m_stages.push_back(std::move(choice));
            }
        }
    }

    Result<MakeAheadAnswer> run();

private:
    static Seconds workIn(const PlannedDish& dish, const MadeAheadStage& stage);
    std::optional<Outcome> outcomeOf(const StageSet& chosen);
    Result<Outcome> tryOut(const StageSet& chosen) const;
    Result<Outcome> rate(const Network& network) const;
    bool trySize(std::size_t size);
    Seconds prepares(const StageSet& chosen) const;
    void keep(const StageSet& chosen, const Outcome& outcome);
    Seconds endOf(StageSet chosen, int changed);
    bool outOfTime() const { return m_options.stop != nullptr && m_options.stop->load(); }

    const ClassPlan& m_plan;
    const MakeAheadOptions& m_options;
    std::vector<StageChoice> m_stages;
    std::map<StageSet, std::optional<Outcome>> m_known;  ///< none: such a class cannot be made
    std::optional<StageSet> m_best;
    Outcome m_bestOutcome;
    int m_tried = 0;
    bool m_cutShort = false;
};

Seconds Choosing::workIn(const PlannedDish& dish, const MadeAheadStage& stage) {
    Seconds work{};
    for (const std::string& id : stage.steps) {
        if (const auto step = findStep(dish.recipe, id)) {
            work += dish.recipe.steps[*step].duration.likely;
        }
    }
    return work;
}

Seconds Choosing::prepares(const StageSet& chosen) const {
    Seconds work{};
    for (const int s : chosen) {
        work += m_stages[static_cast<std::size_t>(s)].prepares;
    }
    return work;
}

// Free talk that finds no wait of the presenter is said behind everything else. May-drop points are left out in the
// teacher's order, the first ones first, as long as that is what keeps the class from fitting.
Result<Outcome> Choosing::rate(const Network& network) const {
    PlanOptions planning;
    planning.seed = m_options.seed;
    planning.conflicts = m_options.conflicts;
    planning.riskRuns = 0;
    planning.stop = m_options.stop;
    const auto planned = planSheet(network, {}, planning);
    if (!planned) {
        return tl::unexpected<Error>(planned.error());
    }
    const Policy& policy = planned->policy;
    const bool safe = std::none_of(planned->sheet.broken.begin(), planned->sheet.broken.end(), [&](const auto& broken) {
        return network.limits[static_cast<std::size_t>(broken.limit)].kind == LimitKind::Safety;
    });
    Outcome outcome;
    outcome.cutShort = planned->stopped;
    ForecastOptions forecasting;
    forecasting.runs = m_options.runs;
    forecasting.seed = m_options.seed;
    forecasting.confidence = m_options.confidence;
    const Forecast seen = forecast(network, policy, {}, forecasting);
    const Seconds end = seen.classEnd.atConfidence;
    const bool kitchenFits = safe && (!m_plan.kitchenSlot || seen.kitchenEnd.atConfidence <= *m_plan.kitchenSlot);

    Network kept = network;
    for (;;) {
        const RunSheet sheet = dispatch(kept, policy);
        Seconds homeless{};
        auto firstToDrop = kept.talk.end();
        for (auto talk = kept.talk.begin(); talk != kept.talk.end(); ++talk) {
            const bool placed = hasRoom(kept, sheet, static_cast<std::size_t>(talk - kept.talk.begin()));
            homeless += placed ? Seconds::zero() : talk->length;
            if (talk->mayDrop && !talk->mustSay && firstToDrop == kept.talk.end()) {
                firstToDrop = talk;
            }
        }
        outcome.end = end + homeless;
        outcome.fits = kitchenFits && outcome.end <= m_plan.slot;
        if (outcome.fits || !kitchenFits || homeless == Seconds::zero() || firstToDrop == kept.talk.end()) {
            return outcome;
        }
        outcome.dropped.push_back(firstToDrop->key);
        kept.talk.erase(firstToDrop);
    }
}

Result<Outcome> Choosing::tryOut(const StageSet& chosen) const {
    ClassPlan plan = m_plan;
    for (PlannedDish& dish : plan.dishes) {
        dish.madeAhead.clear();
    }
    for (const int s : chosen) {
        const StageChoice& stage = m_stages[static_cast<std::size_t>(s)];
        plan.dishes[static_cast<std::size_t>(stage.dish)].madeAhead.push_back(stage.stage);
    }
    const auto network = unfold(plan);
    if (!network) {
        return tl::unexpected<Error>(network.error());
    }
    return rate(*network);
}

std::optional<Outcome> Choosing::outcomeOf(const StageSet& chosen) {
    const auto known = m_known.find(chosen);
    if (known != m_known.end()) {
        return known->second;
    }
    const auto outcome = tryOut(chosen);
    ++m_tried;
    const auto kept = outcome ? std::optional<Outcome>(*outcome) : std::nullopt;
    m_known.emplace(chosen, kept);
    if (m_options.progress) {
        const auto all = m_stages.size() < 20 ? 1 << m_stages.size() : m_options.mostSets;
        m_options.progress(m_tried, std::min(all, m_options.mostSets));
    }
    return kept;
}

void Choosing::keep(const StageSet& chosen, const Outcome& outcome) {
    if (m_best) {
        const auto rank = [this](const StageSet& set, const Outcome& o) {
            return std::tuple(!o.fits, o.fits ? o.dropped.size() : 0, o.fits ? prepares(set) : o.end);
        };
        if (rank(*m_best, m_bestOutcome) <= rank(chosen, outcome)) {
            return;
        }
    }
    m_best = chosen;
    m_bestOutcome = outcome;
}

// Tries every set of this many stages. False when it had to be given up.
bool Choosing::trySize(std::size_t size) {
    StageSet chosen(size);
    for (std::size_t k = 0; k < size; ++k) {
        chosen[k] = static_cast<int>(k);
    }
    const auto stages = static_cast<int>(m_stages.size());
    for (;;) {
        if (m_tried >= m_options.mostSets || outOfTime()) {
            return false;
        }
        if (const auto outcome = outcomeOf(chosen)) {
            m_cutShort = m_cutShort || (outcome->cutShort && !outcome->fits);
            keep(chosen, *outcome);
        }
        // The next combination in lexicographic order.
        int k = static_cast<int>(size) - 1;
        while (k >= 0 && chosen[static_cast<std::size_t>(k)] == stages - static_cast<int>(size) + k) {
            --k;
        }
        if (k < 0) {
            return true;
        }
        ++chosen[static_cast<std::size_t>(k)];
        for (auto next = static_cast<std::size_t>(k) + 1; next < size; ++next) {
            chosen[next] = chosen[next - 1] + 1;
        }
    }
}

// The class end of a set with one stage more, or one less. A set that cannot be made saves nothing.
Seconds Choosing::endOf(StageSet chosen, int changed) {
    const auto at = std::find(chosen.begin(), chosen.end(), changed);
    if (at != chosen.end()) {
        chosen.erase(at);
    } else {
        chosen.insert(std::upper_bound(chosen.begin(), chosen.end(), changed), changed);
    }
    const auto outcome = outcomeOf(chosen);
    return outcome ? outcome->end : m_bestOutcome.end;
}

Result<MakeAheadAnswer> Choosing::run() {
    const auto nothing = tryOut({});
    if (!nothing) {
        return tl::unexpected<Error>(nothing.error());
    }
    m_known.emplace(StageSet{}, *nothing);
    ++m_tried;
    keep({}, *nothing);
    m_cutShort = nothing->cutShort && !nothing->fits;
    bool everySmallerSet = true;
    bool smallerCutShort = false;
    for (std::size_t size = 1; size <= m_stages.size() && !m_bestOutcome.fits && everySmallerSet; ++size) {
        smallerCutShort = m_cutShort;
        everySmallerSet = trySize(size);
    }
    MakeAheadAnswer answer;
    answer.fits = m_bestOutcome.fits;
    answer.stopped = !everySmallerSet;
    answer.smallest = answer.fits && everySmallerSet && !smallerCutShort;
    answer.dropped = m_bestOutcome.dropped;
    answer.endWithout = nothing->end;
    answer.end = m_bestOutcome.end;
    answer.slot = m_plan.slot;
    const StageSet best = *m_best;
    for (std::size_t s = 0; s < m_stages.size(); ++s) {
        StageChoice choice = m_stages[s];
        const bool isChosen = std::find(best.begin(), best.end(), static_cast<int>(s)) != best.end();
        const Seconds other = outOfTime() ? answer.end : endOf(best, static_cast<int>(s));
        choice.saves = std::max(Seconds::zero(), isChosen ? other - answer.end : answer.end - other);
        (isChosen ? answer.chosen : answer.others).push_back(std::move(choice));
    }
    answer.tried = m_tried;
    return answer;
}

}  // namespace

Result<MakeAheadAnswer> chooseMakeAhead(const ClassPlan& plan, const MakeAheadOptions& options) {
    return Choosing(plan, options).run();
}

}  // namespace brinebell
