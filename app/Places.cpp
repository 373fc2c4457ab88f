#include "Places.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace brinebell {

QStringList sharedFolders(const QString& programFolder, const QString& what) {
    const QString own = QStringLiteral("brinebell/") + what;
    QStringList found{QDir(programFolder).filePath(QStringLiteral("../share/") + own)};
    found += QStandardPaths::locateAll(QStandardPaths::GenericDataLocation, own, QStandardPaths::LocateDirectory);
    QStringList folders;
    for (const QString& folder : found) {
        // Resolved, so that a file has one name however it was come by.
        const QString real = QFileInfo(folder).canonicalFilePath();
        if (QFileInfo(real).isDir() && !folders.contains(real)) {
            folders << real;
        }
    }
    return folders;
}

}  // namespace brinebell
