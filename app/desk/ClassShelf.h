// ClassShelf.h — where class files lie, and one of them read, unfolded and planned.
#pragma once

#include <QString>
#include <QStringList>

#include "base/Result.h"
#include "plan/ClassPlan.h"
#include "plan/RunSheet.h"

namespace brinebell {

/// The class files that come with the program: beside an installed one, or in the tree it was built from.
/// Sorted.
QStringList classFilesAround(const QString& programFolder);

struct PreparedClass {
    ClassPlan plan;
    Network network;
    RunSheet sheet;
    std::vector<std::string> warnings;
};

/// Every fault of the class and of the files it names, or the class ready to be taught.
FileResult<PreparedClass> prepareClass(const QString& path);

}  // namespace brinebell
