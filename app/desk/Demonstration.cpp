#include "desk/Demonstration.h"

#include <QFile>

// A static library's resources are not registered by themselves; the macro wants to stand outside any namespace.
static void registerTexts() {
    Q_INIT_RESOURCE(demonstration);
}

namespace {

std::string textOf(const QString& name) {
    QFile file(QStringLiteral(":/demonstration/") + name);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

}  // namespace

namespace brinebell {

Demonstration demonstrationTexts() {
    registerTexts();
    return {"tamarack-salsa-and-beans",
            textOf(QStringLiteral("classes/tamarack-salsa-and-beans.toml")),
            "tamarack-grange-hall",
            textOf(QStringLiteral("venues/tamarack-grange-hall.toml")),
            {"chile-salsa", "dilled-beans"}};
}

}  // namespace brinebell
