// HelpTexts.h — what each page is for, in a few sentences, and the keys that work on it.
#pragma once

#include <QString>
#include <QStringList>

class QWidget;

namespace brinebell {

struct HelpText {
    QString title;
    QString text;      ///< plain; paragraphs a line each. Empty: there is none for such a page
    QStringList keys;  ///< "B   Seen (hold)": those that no button or label of the page shows
};

/// `page`: name of its class, without the namespace ("PreparePage").
HelpText helpFor(const QString& page);

/// The Alt keys of what can be seen on `page`, read off its buttons, labels and tabs: "Alt+P   Prepare".
QStringList altKeysOn(const QWidget& page);

}  // namespace brinebell
