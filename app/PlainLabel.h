// PlainLabel.h — a label of plain text that wraps; all text of files and people is shown through it, never as markup.
#pragma once

#include <QLabel>
#include <QString>

namespace brinebell {

/// `kind` chooses the look of Theme: "title", "head", "quiet", "fault", or none.
inline QLabel* plainLabel(const QString& words = {}, const char* kind = "") {
    auto* label = new QLabel(words);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    return label;
}

}  // namespace brinebell
