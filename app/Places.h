// Places.h — where the program finds what comes with it.
//
// A folder of its own share/brinebell, seen from the program, comes first: an installation may then lie anywhere, and
// the build folder is laid out like one. After it come the folders that the platform names for shared data.
#pragma once

#include <QString>
#include <QStringList>

namespace brinebell {

/// The folders that are there and are called `what` ("recipes/classes"), nearest first, with links resolved. The order
/// is that in which they are to be looked into.
QStringList sharedFolders(const QString& programFolder, const QString& what);

}  // namespace brinebell
