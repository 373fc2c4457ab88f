// ListWords.h — the lists of a class in words: what to buy, what stands ready, what is done before, when to arrive.
#pragma once

#include <QString>
#include <QStringList>

#include "bridge/TimeText.h"
#include "desk/ClassShelf.h"

namespace brinebell {

struct ClassLists {
    QString title;  ///< of the class, with its place and day
    QStringList shopping;
    QStringList equipment;
    QStringList before;  ///< when to arrive first
};

/// In the units and by the clock of the window. Error: OutOfRange, for amounts that cannot be added up.
Result<ClassLists> classLists(const PreparedClass& prepared);

/// The names of the three lists, in their order.
QStringList listHeads();

/// All of them as plain text, one thing a line.
QString asText(const ClassLists& lists);

}  // namespace brinebell
