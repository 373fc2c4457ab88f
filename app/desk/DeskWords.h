// DeskWords.h — what the editors share: words for the values of files, and quantities as one line of text.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>
#include <string>
#include <vector>

#include "desk/Fields.h"
#include "quantity/Quantities.h"
#include "safety/Jar.h"

namespace brinebell {

struct DeskWords {
    Q_DECLARE_TR_FUNCTIONS(DeskWords)

public:
    static QString jar(JarSize size);
    static QStringList jars();     ///< every size, smallest first
    static QStringList jarKeys();  ///< as files write them

    /// "6 min, 7 min, 9 min", or one duration for what is fixed.
    static QString guess(const ThreePoint& guess);
    static Result<ThreePoint> readGuess(std::string_view text);
    static LineField::Check guessCheck(bool mayBeEmpty = false);
    /// Between `least` and `most`.
    static LineField::Check numberCheck(int least, int most, bool mayBeEmpty = false);
};

QStringList toQtList(const std::vector<std::string>& texts);
std::vector<std::string> fromQtList(const QStringList& texts);

}  // namespace brinebell
