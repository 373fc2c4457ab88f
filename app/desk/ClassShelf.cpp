#include "desk/ClassShelf.h"

#include <QDir>

#include "Places.h"
#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/PlanCheck.h"
#include "plan/SheetCheck.h"
#include "plan/Unfold.h"

namespace brinebell {

namespace {

void setSheet(PreparedClass& prepared, RunSheet sheet) {
    prepared.sheet = std::move(sheet);
    prepared.warnings = warningsFor(prepared.network, prepared.sheet);
    prepared.warnings.insert(prepared.warnings.end(), prepared.network.notes.begin(), prepared.network.notes.end());
}

}  // namespace

QStringList classFilesAround(const QString& programFolder) {
    for (const QString& place : sharedFolders(programFolder, QStringLiteral("recipes/classes"))) {
        const QDir folder(place);
        QStringList files;
        for (const QString& name : folder.entryList({QStringLiteral("*.toml")}, QDir::Files, QDir::Name)) {
            files << folder.filePath(name);
        }
        if (!files.isEmpty()) {
            return files;
        }
    }
    return {};
}

void takeOver(PreparedClass& prepared, Prospect prospect) {
    prepared.policy = prospect.planned.policy;
    setSheet(prepared, prospect.planned.sheet);
    prepared.prospect = std::move(prospect);
}

FileResult<PreparedClass> prepareClass(const QString& path) {
    auto plan = readClassFile(path.toStdString());
    if (!plan) {
        return tl::unexpected<std::vector<Error>>(plan.error());
    }
    plan->file = path.toStdString();
    return prepareClass(std::move(*plan));
}

FileResult<PreparedClass> prepareClass(ClassPlan plan) {
    const std::string file = plan.file;
    auto network = unfold(plan);
    if (!network) {
        Error error = network.error();
        if (error.where.file.empty()) {
            error.where.file = file;
        }
        return tl::unexpected<std::vector<Error>>(std::vector<Error>{error});
    }
    PreparedClass prepared{std::move(plan), std::move(*network), {}, {}, {}, {}};
    prepared.policy = Policy(defaultOrder(prepared.network));
    setSheet(prepared, dispatch(prepared.network, prepared.policy));
    // This sheet can be started at once, so it is held against the rules like every other.
    if (const auto breaches = rulesBrokenBy(prepared.network, prepared.sheet); !breaches.empty()) {
        const bool stands = !prepared.sheet.complete && !prepared.warnings.empty();
        return tl::unexpected<std::vector<Error>>(
            std::vector<Error>{{ErrorCode::InvalidInput,
                                stands ? prepared.warnings.front() : breaches.front(),
                                {file, 0, 0}}});
    }
    return prepared;
}

}  // namespace brinebell
