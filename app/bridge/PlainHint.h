// PlainHint.h — hints over what people wrote: Qt reads a hint that looks like markup as markup, and loads its pictures.
#pragma once

#include <QString>
#include <QTextDocument>

namespace brinebell {

/// `text` for a hint that shows it as it was written.
inline QString plainHint(const QString& text) {
    return Qt::mightBeRichText(text) ? Qt::convertFromPlainText(text) : text;
}

}  // namespace brinebell
