// Unfolding.h — the work of unfold(): one class becomes one network. Internal to this room.
//
// Unfold.cpp turns dishes into activities, UnfoldCanner.cpp adds what happens at the canners, UnfoldPressure.cpp what
// is a pressure canner's own.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "plan/CannerWords.h"
#include "plan/ClassPlan.h"
#include "plan/Network.h"

namespace brinebell {

class Unfolding {
public:
    explicit Unfolding(const ClassPlan& plan) : m_plan(plan) {}

    Result<Network> run();

private:
    using Step = std::optional<Error>;  // an error, or on to the next

    void takeClass();
    void addOpening();
    Step addDish(int dish);
    Step addLoads(int dish, const PlannedDish& planned);
    Step addSteps(int dish, const PlannedDish& planned);
    Step checkStages(const PlannedDish& planned) const;
    void addBringOuts(int dish, const PlannedDish& planned);
    Step addStep(int dish, const PlannedDish& planned, const RecipeStep& step);
    void linkSteps(int dish, const PlannedDish& planned);
    Step addStations(int dish, const PlannedDish& planned);
    void addLimits(int dish, const PlannedDish& planned);
    void addTalk(int dish, const PlannedDish& planned);
    Step addCanner(const Canner& canner);
    std::vector<int> addLoad(const Canner& canner, const CannerWords& words, int load, int preheat, int previousLift);
    void addVenting(Load& made, Activity vent, Activity pressurise);
    void addCoolDown(Load& made, Activity coolDown);
    int addSterilising(const Canner& canner, int load, const std::string& prefix, std::vector<int> after);
    std::vector<int> readyFor(int load) const;
    bool canCloseInTime() const;
    void addClosing();
    void addClassTalk();

    int addActivity(Activity activity);
    int addHold(std::string vessel, std::vector<int> candidates, std::vector<int> activities);
    std::vector<int> stationsOfKind(StationKind kind) const;
    std::vector<int> activitiesOf(int dish, const std::string& step) const;
    int activityFor(int dish, const std::string& step, int load) const;
    Activity& activity(int i) { return m_network.activities[static_cast<std::size_t>(i)]; }
    void addSwaps(int activity, const PlannedDish& planned, const RecipeStep& step);
    std::vector<std::string> amountsFor(const PlannedDish& planned, const RecipeStep& step) const;

    const ClassPlan& m_plan;
    Network m_network;
    std::map<std::pair<int, std::string>, std::vector<int>> m_ofStep;  ///< dish, step id -> activities by load
    std::map<int, std::vector<int>> m_loadsOf;                         ///< dish -> loads
    std::vector<bool> m_sterile;                                       ///< by load
    std::set<int> m_cannerBurners;
    std::vector<int> m_followOpening;
};

/// "1 pint", "4 half-pints".
std::string jarsInWords(int jars, JarSize size);

}  // namespace brinebell
