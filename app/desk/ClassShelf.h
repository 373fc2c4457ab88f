// ClassShelf.h — where class files lie, and one of them read, unfolded and planned.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "base/Result.h"
#include "plan/BackTiming.h"
#include "plan/ClassPlan.h"
#include "plan/Deadlines.h"
#include "plan/Forecast.h"
#include "plan/Planner.h"

namespace brinebell {

/// The class files that come with the program (Places.h): those of the first folder that has any, sorted.
QStringList classFilesAround(const QString& programFolder);

/// What a searched sheet is worth.
struct Prospect {
    PlannedSheet planned;
    BackTiming timing;
    std::vector<Deadline> deadlines;
    Forecast ahead;
};

/// `sheet` is dispatch(network, policy); both change together. Whoever starts a session hands it the policy.
struct PreparedClass {
    ClassPlan plan;
    Network network;
    Policy policy;
    RunSheet sheet;
    std::vector<std::string> warnings;
    std::optional<Prospect> prospect;  ///< none until the search is over
};

/// Takes over the policy and the sheet that a search has found.
void takeOver(PreparedClass& prepared, Prospect prospect);

/// Every fault of the class and of the files it names, or the class ready to be taught, by the dispatcher's own order.
FileResult<PreparedClass> prepareClass(const QString& path);
/// The same of a class that was read already; faults stand under its file.
FileResult<PreparedClass> prepareClass(ClassPlan plan);

}  // namespace brinebell
