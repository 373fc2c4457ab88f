#include "desk/ClassShelf.h"

#include <QDir>

#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/Unfold.h"

namespace brinebell {

QStringList classFilesAround(const QString& programFolder) {
    for (const char* place : {"../share/brinebell/recipes/classes", "../../recipes/classes"}) {
        const QDir folder(QDir(programFolder).filePath(QLatin1String(place)));
        QStringList files;
        for (const QString& name : folder.entryList({QStringLiteral("*.toml")}, QDir::Files, QDir::Name)) {
            files << QDir::cleanPath(folder.filePath(name));
        }
        if (!files.isEmpty()) {
            return files;
        }
    }
    return {};
}

FileResult<PreparedClass> prepareClass(const QString& path) {
    auto plan = readClassFile(path.toStdString());
    if (!plan) {
        return tl::unexpected<std::vector<Error>>(plan.error());
    }
    auto network = unfold(*plan);
    if (!network) {
        Error error = network.error();
        if (error.where.file.empty()) {
            error.where.file = path.toStdString();
        }
        return tl::unexpected<std::vector<Error>>(std::vector<Error>{error});
    }
    PreparedClass prepared{std::move(*plan), std::move(*network), {}, {}};
    prepared.sheet = dispatch(prepared.network, defaultOrder(prepared.network));
    prepared.warnings = prepared.network.notes;
    for (std::string& warning : warningsFor(prepared.network, prepared.sheet)) {
        prepared.warnings.push_back(std::move(warning));
    }
    return prepared;
}

}  // namespace brinebell
