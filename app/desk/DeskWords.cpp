#include "desk/DeskWords.h"

#include <array>

#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

constexpr std::array kSizes{JarSize::QuarterPint, JarSize::HalfPint, JarSize::TwelveOunce, JarSize::Pint,
                            JarSize::PintAndHalf, JarSize::Quart,    JarSize::HalfGallon};

}  // namespace

QString DeskWords::jar(JarSize size) {
    switch (size) {
        case JarSize::QuarterPint:
            return tr("quarter-pint");
        case JarSize::HalfPint:
            return tr("half-pint");
        case JarSize::TwelveOunce:
            return tr("12-ounce");
        case JarSize::Pint:
            return tr("pint");
        case JarSize::PintAndHalf:
            return tr("1½-pint");
        case JarSize::Quart:
            return tr("quart");
        case JarSize::HalfGallon:
            return tr("half-gallon");
    }
    return {};
}

QStringList DeskWords::jars() {
    QStringList words;
    for (const JarSize size : kSizes) {
        words << jar(size);
    }
    return words;
}

QStringList DeskWords::jarKeys() {
    QStringList keys;
    for (const JarSize size : kSizes) {
        keys << toQt(toText(size));
    }
    return keys;
}

QString DeskWords::guess(const ThreePoint& guess) {
    if (guess == ThreePoint::fixed(guess.likely)) {
        return toQt(printDuration(guess.likely));
    }
    return QStringLiteral("%1, %2, %3")
        .arg(toQt(printDuration(guess.low)), toQt(printDuration(guess.likely)), toQt(printDuration(guess.high)));
}

Result<ThreePoint> DeskWords::readGuess(std::string_view text) {
    const QStringList parts = toQt(text).split(QLatin1Char(','));
    std::vector<Seconds> read;
    for (const QString& part : parts) {
        const auto duration = readDuration(part.toStdString());
        if (!duration) {
            return tl::unexpected(duration.error());
        }
        read.push_back(*duration);
    }
    if (read.size() != 1 && read.size() != 3) {
        return fail(ErrorCode::InvalidInput, tr("one duration, or three: short, likely, long").toStdString());
    }
    const ThreePoint guess = read.size() == 1 ? ThreePoint::fixed(read[0]) : ThreePoint{read[0], read[1], read[2]};
    if (!guess.isValid() || guess.high == Seconds::zero()) {
        return fail(ErrorCode::InvalidInput,
                    tr("the three must not fall, and the longest is more than zero").toStdString());
    }
    return guess;
}

LineField::Check DeskWords::guessCheck(bool mayBeEmpty) {
    return checkOf([](const std::string& text) { return readGuess(text); }, mayBeEmpty);
}

LineField::Check DeskWords::numberCheck(int least, int most, bool mayBeEmpty) {
    return [least, most, mayBeEmpty](const QString& text) {
        bool isNumber = false;
        const int number = text.trimmed().toInt(&isNumber);
        const bool good = (mayBeEmpty && text.trimmed().isEmpty()) || (isNumber && number >= least && number <= most);
        return good ? QString() : tr("a whole number from %L1 to %L2").arg(least).arg(most);
    };
}

QStringList toQtList(const std::vector<std::string>& texts) {
    QStringList list;
    for (const std::string& text : texts) {
        list << toQt(text);
    }
    return list;
}

std::vector<std::string> fromQtList(const QStringList& texts) {
    std::vector<std::string> list;
    for (const QString& text : texts) {
        list.push_back(text.toStdString());
    }
    return list;
}

}  // namespace brinebell
