#include "plan/Unfold.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/Language.h"
#include "plan/Impossible.h"
#include "plan/Planner.h"
#include "plan/Unfolding.h"
#include "quantity/ReadQuantity.h"
#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

Seconds times(Seconds s, const Fraction& f) {
    const auto product = s.count() * f.numerator();
    return Seconds((product + f.denominator() - 1) / f.denominator());
}

ThreePoint times(const ThreePoint& d, const Fraction& f) {
    return {times(d.low, f), times(d.likely, f), times(d.high, f)};
}

bool isMadeAhead(const PlannedDish& planned, const std::string& step) {
    return std::any_of(planned.recipe.stages.begin(), planned.recipe.stages.end(), [&](const MadeAheadStage& stage) {
        const bool chosen =
            std::find(planned.madeAhead.begin(), planned.madeAhead.end(), stage.id) != planned.madeAhead.end();
        return chosen && std::find(stage.steps.begin(), stage.steps.end(), step) != stage.steps.end();
    });
}

}  // namespace

std::string jarsInWords(int jars, JarSize size) {
    return fmt::format("{} {}{}", jars, toText(size), jars == 1 ? "" : "s");
}

int Unfolding::addActivity(Activity a) {
    m_network.activities.push_back(std::move(a));
    return static_cast<int>(m_network.activities.size()) - 1;
}

int Unfolding::addHold(std::string vessel, std::vector<int> candidates, std::vector<int> activities) {
    const int hold = static_cast<int>(m_network.stationHolds.size());
    for (const int i : activities) {
        activity(i).stationHolds.push_back(hold);
    }
    m_network.stationHolds.push_back({std::move(vessel), std::move(candidates), std::move(activities)});
    return hold;
}

void Unfolding::takeClass() {
    m_network.classId = m_plan.id;
    m_network.title = m_plan.title;
    m_network.teacher = m_plan.teacher;
    m_network.venueName = m_plan.venue.name;
    m_network.altitude =
        fmt::format("{} ({})", printFeet(m_plan.venue.altitude->height), m_plan.venue.altitude->howKnown);
    m_network.readingDistance = m_plan.venue.readingDistance;
    m_network.startUtc = m_plan.startUtc;
    m_network.slot = m_plan.slot;
    m_network.kitchenSlot = m_plan.kitchenSlot;
    m_network.kitchenCloser = m_plan.kitchenCloser;
    m_network.helpers = m_plan.helpers;
    m_network.stations = m_plan.venue.stations;
    for (const Canner& canner : m_plan.venue.canners) {
        m_network.stations.push_back({canner.id, canner.name, StationKind::Canner, HeatKind::None, std::nullopt});
    }
    for (const Canner& canner : m_plan.venue.canners) {
        const bool used = std::any_of(m_plan.dishes.begin(), m_plan.dishes.end(),
                                      [&](const PlannedDish& d) { return d.canner == canner.id; });
        for (std::size_t s = 0; s < m_network.stations.size() && used; ++s) {
            if (m_network.stations[s].id == canner.burner) {
                m_cannerBurners.insert(static_cast<int>(s));
            }
        }
    }
}

void Unfolding::addOpening() {
    if (m_plan.opening <= Seconds::zero()) {
        return;
    }
    Activity opening;
    opening.key = "class/opening";
    opening.kind = ActivityKind::Opening;
    opening.title = core::say("Welcome the class, wash hands");
    opening.duration = ThreePoint::fixed(m_plan.opening);
    opening.hands = HandsNeed::Throughout;
    opening.presenterOnly = true;
    m_network.opening = addActivity(std::move(opening));
}

// ---- a dish
// --------------------------------------------------------------------------------------------------------

Unfolding::Step Unfolding::addDish(int dish) {
    const PlannedDish& planned = m_plan.dishes[static_cast<std::size_t>(dish)];
    const Recipe& recipe = planned.recipe;
    if (!recipe.versionOf.empty()) {
        m_network.notes.push_back(core::say("{}: a class version of {}, with no departure that its rules refuse",
                                            recipe.title, recipe.versionOf));
    }
    if (!recipe.untested.empty()) {
        m_network.notes.push_back(
            core::say("{}: NOT held against a tested recipe, and not to be eaten; its file says: {}", recipe.title,
                      recipe.untested));
    }
    if (recipe.confidence == Confidence::Memory) {
        m_network.notes.push_back(core::say("{}: its amounts come from memory; hold them against {} before class",
                                            recipe.title, recipe.source));
    }
    m_network.dishes.push_back({recipe.id, recipe.title, recipe.source, planned.jars, planned.jar, recipe.shelfLife,
                                recipe.storage, recipe.allergens, recipe.untested});
    if (auto error = addLoads(dish, planned)) {
        return error;
    }
    // A small file may ask for many loads of many steps: count before anything is built.
    const Load& first = m_network.loads[static_cast<std::size_t>(m_loadsOf[dish].front())];
    const std::size_t atCanner = cannerChain(first).size() + 1;
    const std::size_t wanted = m_network.activities.size() + m_loadsOf[dish].size() * (recipe.steps.size() + atCanner);
    if (wanted > kMaxActivities) {
        return Error{ErrorCode::OutOfRange,
                     core::say("{}: {} loads make about {} activities; at most {} fit a class", recipe.title,
                               m_loadsOf[dish].size(), wanted, kMaxActivities),
                     {}};
    }
    if (auto error = addSteps(dish, planned)) {
        return error;
    }
    linkSteps(dish, planned);
    if (auto error = addStations(dish, planned)) {
        return error;
    }
    addTalk(dish, planned);
    return std::nullopt;
}

Unfolding::Step Unfolding::addLoads(int dish, const PlannedDish& planned) {
    const auto canner = std::find_if(m_plan.venue.canners.begin(), m_plan.venue.canners.end(),
                                     [&](const Canner& c) { return c.id == planned.canner; });
    if (canner == m_plan.venue.canners.end()) {
        return Error{ErrorCode::NotFound,
                     core::say("{}: the venue has no canner \"{}\"", planned.recipe.title, planned.canner),
                     {}};
    }
    if (const auto why = whyNotForClasses(*canner)) {
        return Error{ErrorCode::NoTestedValue, fmt::format("{}: {}", planned.recipe.title, *why), {}};
    }
    const auto answer = ProcessTables::published().find(processQuery(m_plan, planned, canner->method));
    if (!answer) {
        return Error{answer.error().code, fmt::format("{}: {}", planned.recipe.title, answer.error().message), {}};
    }
    const int capacity = capacityFor(*canner, planned.jar);
    if (capacity < 1 || planned.jars < 1) {
        return Error{ErrorCode::OutOfRange,
                     core::say("{}: {} takes no {} jars", planned.recipe.title, canner->name, toText(planned.jar)),
                     {}};
    }
    if (answer->confirmed) {
        m_network.confirmed.push_back(*answer->confirmed);
    }
    for (const std::string& caution : answer->cautions) {
        m_network.notes.push_back(fmt::format("{}: {}", planned.recipe.title, caution));
    }
    if (!answer->acidify.empty()) {
        m_network.notes.push_back(core::say("{}: acid that must be in it: {}", planned.recipe.title, answer->acidify));
    }
    const auto minutes = std::max(answer->time, answer->longerPublished.value_or(answer->time));
    const auto cannerStation =
        m_plan.venue.stations.size() + static_cast<std::size_t>(canner - m_plan.venue.canners.begin());
    for (int left = planned.jars; left > 0; left -= capacity) {
        Load load;
        load.dish = dish;
        load.canner = static_cast<int>(cannerStation);
        load.jars = std::min(left, capacity);
        load.jar = planned.jar;
        load.pack = planned.recipe.pack;
        load.method = canner->method;
        load.processTime = minutes;
        load.tableEntry = fmt::format("{}, {}", answer->entryId, bandText(*answer));
        load.tableSource = answer->source;
        if (answer->gaugePsi) {
            load.pressure = PressureWork{*answer->gaugePsi, {}, -1, -1, -1};
        }
        m_loadsOf[dish].push_back(static_cast<int>(m_network.loads.size()));
        m_network.loads.push_back(std::move(load));
        m_sterile.push_back(answer->sterileJarsRequired);
    }
    return std::nullopt;
}

std::vector<std::string> Unfolding::amountsFor(const PlannedDish& planned, const RecipeStep& step) const {
    std::vector<std::string> lines;
    for (const std::string& id : step.ingredients) {
        const auto found = std::find_if(planned.recipe.ingredients.begin(), planned.recipe.ingredients.end(),
                                        [&](const Ingredient& i) { return i.id == id; });
        if (found == planned.recipe.ingredients.end()) {
            continue;
        }
        const auto amount = amountFor(*found, planned.batch, planned.jar);
        lines.push_back(fmt::format("{} {}{}{}", amount ? print(*amount) : print(found->amount), found->name,
                                    found->perJar ? core::say(" in each jar") : std::string(),
                                    found->optional ? core::say(" (optional)") : std::string()));
    }
    return lines;
}

void Unfolding::addSwaps(int activity, const PlannedDish& planned, const RecipeStep& step) {
    for (const Ingredient& ingredient : planned.recipe.ingredients) {
        const bool handled =
            std::find(step.ingredients.begin(), step.ingredients.end(), ingredient.id) != step.ingredients.end();
        if (handled && !(ingredient.swapsAllowed.empty() && ingredient.swapsRefused.empty())) {
            m_network.swaps.push_back({activity, ingredient.name, ingredient.swapsAllowed, ingredient.swapsRefused});
        }
    }
}

// What is made ahead must not need something that is only made in class.
Unfolding::Step Unfolding::checkStages(const PlannedDish& planned) const {
    for (const RecipeStep& step : planned.recipe.steps) {
        if (!isMadeAhead(planned, step.id)) {
            continue;
        }
        if (step.each != StepEach::Batch) {
            return Error{ErrorCode::InvalidInput,
                         core::say("{}: \"{}\" is done for each load and cannot be made ahead", planned.recipe.title,
                                   step.title),
                         {}};
        }
        for (const std::string& before : step.after) {
            if (!isMadeAhead(planned, before)) {
                return Error{ErrorCode::InvalidInput,
                             core::say("{}: \"{}\" is made ahead but follows \"{}\", which is not",
                                       planned.recipe.title, step.id, before),
                             {}};
            }
        }
    }
    return std::nullopt;
}

void Unfolding::addBringOuts(int dish, const PlannedDish& planned) {
    for (const MadeAheadStage& stage : planned.recipe.stages) {
        if (std::find(planned.madeAhead.begin(), planned.madeAhead.end(), stage.id) == planned.madeAhead.end()) {
            continue;
        }
        Activity out;
        out.key = fmt::format("{}/bring-out/{}", planned.recipe.id, stage.id);
        out.kind = ActivityKind::BringOut;
        out.dish = dish;
        out.title = stage.bringOutTitle;
        out.detail = stage.keep;
        out.duration = stage.bringOut;
        out.hands = HandsNeed::Throughout;
        const int i = addActivity(std::move(out));
        m_followOpening.push_back(i);
        for (const std::string& step : stage.steps) {
            m_ofStep[{dish, step}] = {i};
        }
    }
}

Unfolding::Step Unfolding::addSteps(int dish, const PlannedDish& planned) {
    if (auto error = checkStages(planned)) {
        return error;
    }
    addBringOuts(dish, planned);
    for (const RecipeStep& step : planned.recipe.steps) {
        if (isMadeAhead(planned, step.id)) {
            continue;
        }
        if (auto error = addStep(dish, planned, step)) {
            return error;
        }
    }
    return std::nullopt;
}

Unfolding::Step Unfolding::addStep(int dish, const PlannedDish& planned, const RecipeStep& step) {
    const std::vector<int>& loads = m_loadsOf[dish];
    const bool perLoad = step.each != StepEach::Batch;
    const std::size_t copies = perLoad ? loads.size() : 1;
    for (std::size_t c = 0; c < copies; ++c) {
        Activity a;
        a.key = perLoad && copies > 1 ? fmt::format("{}/{}/load-{}", planned.recipe.id, step.id, c + 1)
                                      : fmt::format("{}/{}", planned.recipe.id, step.id);
        a.dish = dish;
        a.load = perLoad ? loads[c] : -1;
        a.title = step.title;
        a.detail = step.detail;
        a.lookFor = step.lookFor;
        a.amounts = amountsFor(planned, step);
        a.cautions = step.cautions;
        a.duration = step.duration;
        if (step.each == StepEach::Jar) {
            a.jars = m_network.loads[static_cast<std::size_t>(loads[c])].jars;
            a.duration = times(step.duration, Fraction(a.jars, 1));
        } else if (step.durationScales) {
            a.duration = times(step.duration, planned.batch);
        }
        a.hands = step.hands;
        a.handsAtStart = step.handsAtStart;
        a.handsAtEnd = step.handsAtEnd;
        a.pulse = step.pulse;
        a.mayPause = step.mayPause;
        a.presenterOnly = step.presenterOnly;
        a.endsBySight = step.endsBySight;
        if (a.handsAtStart + a.handsAtEnd > a.duration.low) {
            return Error{ErrorCode::OutOfRange,
                         core::say("{}: \"{}\" is over before its hand work is, for so small a batch",
                                   planned.recipe.title, step.title),
                         {}};
        }
        const int i = addActivity(std::move(a));
        addSwaps(i, planned, step);
        m_ofStep[{dish, step.id}].push_back(i);
        m_followOpening.push_back(i);
    }
    return std::nullopt;
}

std::vector<int> Unfolding::activitiesOf(int dish, const std::string& step) const {
    const auto found = m_ofStep.find({dish, step});
    return found == m_ofStep.end() ? std::vector<int>{} : found->second;
}

// The copy of `step` that serves `load`; a step done once serves every load.
int Unfolding::activityFor(int dish, const std::string& step, int load) const {
    const std::vector<int> copies = activitiesOf(dish, step);
    for (const int i : copies) {
        if (copies.size() == 1 || m_network.activities[static_cast<std::size_t>(i)].load == load) {
            return i;
        }
    }
    return -1;
}

void Unfolding::linkSteps(int dish, const PlannedDish& planned) {
    for (const RecipeStep& step : planned.recipe.steps) {
        if (isMadeAhead(planned, step.id)) {
            continue;
        }
        for (const int i : activitiesOf(dish, step.id)) {
            std::set<int> before;
            for (const std::string& id : step.after) {
                if (activity(i).load >= 0) {
                    before.insert(activityFor(dish, id, activity(i).load));
                } else {
                    const std::vector<int> all = activitiesOf(dish, id);
                    before.insert(all.begin(), all.end());
                }
            }
            activity(i).after.assign(before.begin(), before.end());
        }
    }
}

std::vector<int> Unfolding::stationsOfKind(StationKind kind) const {
    std::vector<int> found;
    for (std::size_t s = 0; s < m_network.stations.size(); ++s) {
        if (m_network.stations[s].kind == kind && m_cannerBurners.count(static_cast<int>(s)) == 0) {
            found.push_back(static_cast<int>(s));
        }
    }
    return found;
}

Unfolding::Step Unfolding::addStations(int dish, const PlannedDish& planned) {
    std::map<std::string, std::pair<StationKind, std::vector<int>>> vessels;
    for (const RecipeStep& step : planned.recipe.steps) {
        if (isMadeAhead(planned, step.id) || step.station.empty()) {
            continue;
        }
        const auto kind = stationKindFromText(step.station);
        if (!kind) {
            return Error{kind.error().code, fmt::format("{}: {}", step.title, kind.error().message), {}};
        }
        if (*kind == StationKind::Counter) {
            continue;  // a counter takes as much as is put on it
        }
        const std::vector<int> candidates = stationsOfKind(*kind);
        if (candidates.empty()) {
            return Error{ErrorCode::OutOfRange,
                         core::say("{}: \"{}\" needs a {} and the venue has none free of canners", planned.recipe.title,
                                   step.title, step.station),
                         {}};
        }
        const std::vector<int> users = activitiesOf(dish, step.id);
        if (step.vessel.empty()) {
            for (const int i : users) {
                addHold(fmt::format("{}: {}", planned.recipe.title, step.title), candidates, {i});
            }
            continue;
        }
        auto& [heldKind, all] = vessels.try_emplace(step.vessel, *kind, std::vector<int>{}).first->second;
        if (heldKind != *kind) {
            return Error{ErrorCode::InvalidInput,
                         core::say("{}: {} stands on a {} in one step and a {} in another", planned.recipe.title,
                                   step.vessel, toText(heldKind), step.station),
                         {}};
        }
        all.insert(all.end(), users.begin(), users.end());
    }
    for (auto& [vessel, use] : vessels) {
        addHold(vessel, stationsOfKind(use.first), std::move(use.second));
    }
    return std::nullopt;
}

void Unfolding::addLimits(int dish, const PlannedDish& planned) {
    for (const RecipeStep& step : planned.recipe.steps) {
        if (isMadeAhead(planned, step.id)) {
            continue;
        }
        for (const StepHold& hold : step.holds) {
            for (const int load : m_loadsOf[dish]) {
                const int from = activityFor(dish, step.id, load);
                const int to = hold.before == "lower" ? m_network.loads[static_cast<std::size_t>(load)].lower
                                                      : activityFor(dish, hold.before, load);
                const HoldLimit limit{from, to, hold.atMost, hold.kind, hold.remedy};
                if (std::find(m_network.limits.begin(), m_network.limits.end(), limit) == m_network.limits.end()) {
                    m_network.limits.push_back(limit);
                }
            }
        }
    }
}

void Unfolding::addTalk(int dish, const PlannedDish& planned) {
    for (const TalkPoint& point : planned.recipe.talk) {
        // Two recipes may bring the same safety point; it is said once.
        const auto known = std::find_if(m_network.talk.begin(), m_network.talk.end(),
                                        [&](const NetworkTalk& t) { return t.text == point.text; });
        if (known != m_network.talk.end()) {
            known->mustSay = known->mustSay || point.mustSay;
            continue;
        }
        const std::vector<int> at = point.step.empty() ? std::vector<int>{} : activitiesOf(dish, point.step);
        m_network.talk.push_back({fmt::format("{}/{}", planned.recipe.id, point.id), point.text, point.mustSay, false,
                                  point.length, at.empty() ? -1 : at.front(), dish});
    }
}

// ---- the end of class
// ----------------------------------------------------------------------------------------------

// Whether the class can close after the last load and still keep its slot. Most often the dispatcher alone can tell.
bool Unfolding::canCloseInTime() const {
    if (dispatch(m_network, defaultOrder(m_network)).classEnd <= m_plan.slot) {
        return true;
    }
    if (lowerBoundOf(m_network) > m_plan.slot || !faultsIn(m_network).empty()) {
        return false;
    }
    PlanOptions options;
    options.conflicts = 2'000;
    options.riskRuns = 0;
    const auto planned = planSheet(m_network, {}, options);
    return planned && !planned->stretches && planned->sheet.classEnd <= m_plan.slot;
}

void Unfolding::addClosing() {
    if (m_plan.closing <= Seconds::zero()) {
        return;
    }
    Activity closing;
    closing.key = "class/closing";
    closing.kind = ActivityKind::Closing;
    closing.title = core::say("Close the class: questions, what to take home");
    closing.duration = ThreePoint::fixed(m_plan.closing);
    closing.hands = HandsNeed::Throughout;
    closing.presenterOnly = true;
    for (std::size_t i = 0; i < m_network.activities.size(); ++i) {
        closing.after.push_back(static_cast<int>(i));
    }
    m_network.closing = addActivity(std::move(closing));
    if (m_plan.kitchenCloser.empty() || canCloseInTime()) {
        return;
    }
    // Somebody stays for the kitchen, so the room may empty while the last load is still in the canner.
    auto& after = activity(m_network.closing).after;
    after.clear();
    for (std::size_t i = 0; i < m_network.activities.size(); ++i) {
        const ActivityKind kind = m_network.activities[i].kind;
        const bool last = m_network.activities[i].load == static_cast<int>(m_network.loads.size()) - 1;
        const bool inCanner = isLoadWork(kind) && kind != ActivityKind::Lower;
        if (kind != ActivityKind::Closing && !(last && inCanner)) {
            after.push_back(static_cast<int>(i));
        }
    }
    m_network.notes.push_back(
        core::say("the class ends before the last load is lifted; {} stays for the kitchen end", m_plan.kitchenCloser));
}

void Unfolding::addClassTalk() {
    for (const ClassTalk& talk : m_plan.talk) {
        m_network.talk.push_back({fmt::format("class/{}", talk.point.id), talk.point.text, talk.point.mustSay,
                                  talk.mayDrop, talk.point.length, -1, -1});
    }
}

Result<Network> Unfolding::run() {
    if (!m_plan.venue.altitude) {
        return fail(ErrorCode::NoTestedValue,
                    core::say("{}: no class runs without the altitude of its kitchen", m_plan.venue.name));
    }
    takeClass();
    addOpening();
    for (std::size_t d = 0; d < m_plan.dishes.size(); ++d) {
        if (auto error = addDish(static_cast<int>(d))) {
            return tl::unexpected<Error>(*error);
        }
    }
    for (const Canner& canner : m_plan.venue.canners) {
        if (auto error = addCanner(canner)) {
            return tl::unexpected<Error>(*error);
        }
    }
    for (std::size_t d = 0; d < m_plan.dishes.size(); ++d) {
        addLimits(static_cast<int>(d), m_plan.dishes[d]);
    }
    if (m_network.opening >= 0) {
        for (const int i : m_followOpening) {
            activity(i).after.push_back(m_network.opening);
        }
    }
    addClassTalk();
    if (auto faults = faultsIn(m_network); !faults.empty()) {
        return fail(ErrorCode::InvalidInput, faults.front());
    }
    addClosing();
    if (auto faults = faultsIn(m_network); !faults.empty()) {
        return fail(ErrorCode::InvalidInput, faults.front());
    }
    if (auto why = whyImpossible(m_network)) {
        return fail(ErrorCode::InvalidInput, std::move(*why));
    }
    return std::move(m_network);
}

Result<Network> unfold(const ClassPlan& plan) {
    return Unfolding(plan).run();
}

}  // namespace brinebell
