// Settings.h — where the window keeps what a person chose: one small file in the home folder.
#pragma once

#include <QSettings>

namespace brinebell {

/// A file that cannot be written loses the choice at the end of the program, and nothing else.
inline QSettings settings() {
    return {QSettings::IniFormat, QSettings::UserScope, QStringLiteral("brinebell"), QStringLiteral("window")};
}

}  // namespace brinebell
