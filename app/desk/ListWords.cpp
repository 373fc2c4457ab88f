#include "desk/ListWords.h"

#include <QCoreApplication>

#include "Customs.h"
#include "desk/DeskWords.h"
#include "plan/Preparation.h"
#include "plan/Shopping.h"

namespace brinebell {

namespace {

struct ListWords {
    Q_DECLARE_TR_FUNCTIONS(ListWords)
};

QString joinedTexts(const std::vector<std::string>& texts) {
    QStringList list;
    for (const std::string& text : texts) {
        list << toQt(text);
    }
    return list.join(QStringLiteral(", "));
}

// What is bought stands first; what is needed of it only where that is less.
QString shoppingWords(const ShoppingLine& line) {
    const ShownAs& as = customs().shownAs;
    // What to buy is in shop units already, and its spoons, quarts and grams stay what they are.
    QString words = toQt(withDecimalMark(print(line.buy), as)) + QLatin1Char(' ') + toQt(line.name);
    if (line.optional) {
        words = ListWords::tr("%1 (optional)").arg(words);
    }
    const QString needed = toQt(shown(line.needed, as));
    const QString dishes = joinedTexts(line.dishes);
    return line.needed == line.buy ? ListWords::tr("%1 · for %2").arg(words, dishes)
                                   : ListWords::tr("%1 · %2 needed, for %3").arg(words, needed, dishes);
}

QStringList equipmentWords(const PreparedClass& prepared) {
    const Network& network = prepared.network;
    const Equipment equipment = equipmentOf(prepared.plan, network, prepared.sheet);
    QStringList list;
    for (const JarsReady& row : equipment.jars) {
        list << ListWords::tr("Jars, %1: %2 and %3 to spare")
                    .arg(DeskWords::jar(row.jar))
                    .arg(row.filled)
                    .arg(kSpareJars);
    }
    list << ListWords::tr("New lids: %1 and %2 to spare. Bands: %1").arg(equipment.lids).arg(kSpareLids);
    for (const CannerReady& canner : equipment.canners) {
        list << ListWords::tr("Canner: %1; loads: %2, jars in one at most: %3")
                    .arg(toQt(canner.name))
                    .arg(canner.loads)
                    .arg(canner.mostJars);
    }
    if (equipment.burnersAtOnce > 0) {
        list << ListWords::tr("Burners alight at once: %1, first at %2")
                    .arg(equipment.burnersAtOnce)
                    .arg(timeOfDay(network.startUtc + equipment.burnersFrom));
    }
    for (const ToolReady& tool : equipment.tools) {
        list << QString(toQt(tool.name)).replace(0, 1, toQt(tool.name).left(1).toUpper());
    }
    return list;
}

QStringList beforeWords(const PreparedClass& prepared) {
    const Network& network = prepared.network;
    const BackTiming timing =
        prepared.prospect ? prepared.prospect->timing : backTimingOf(network, prepared.sheet, heatingLengths(network));
    QStringList list{ListWords::tr("Be in the kitchen by %1: set out, and heat water before anything is cut. The class "
                                   "starts at %2")
                         .arg(timeOfDay(arrivalUtc(network, timing)), timeOfDay(network.startUtc))};
    if (timing.latestHeatOn) {
        list << ListWords::tr("The canner's burner is on by %1 at the latest")
                    .arg(timeOfDay(network.startUtc + *timing.latestHeatOn));
    }
    const DayBefore before = dayBefore(prepared.plan);
    for (const StageBefore& stage : before.stages) {
        list << ListWords::tr("%1 (%2, about %3): %4. Keep: %5")
                    .arg(toQt(stage.title), toQt(stage.dish), spanText(stage.takes), joinedTexts(stage.steps),
                         toQt(stage.keep));
    }
    for (const std::string& recipe : before.toHoldAgainstSource) {
        list << ListWords::tr("%1: hold its amounts against the printed source").arg(toQt(recipe));
    }
    list << ListWords::tr("The day before: shop, look over every jar rim, wash jars and lids")
         << ListWords::tr("Rehearse the class, and hear the sound check from where you will stand")
         << ListWords::tr("Print the run sheet and the lists; charge the laptop and take its cable");
    return list;
}

}  // namespace

QStringList listHeads() {
    return {ListWords::tr("Shopping"), ListWords::tr("Equipment"), ListWords::tr("Before class")};
}

Result<ClassLists> classLists(const PreparedClass& prepared) {
    const auto shopping = shoppingList(prepared.plan, customs().shownAs.units);
    if (!shopping) {
        return tl::unexpected(shopping.error());
    }
    ClassLists lists;
    lists.title =
        QStringList{toQt(prepared.plan.title), toQt(prepared.network.venueName), dayAndTime(prepared.network.startUtc)}
            .join(QStringLiteral("  ·  "));
    for (const ShoppingLine& line : *shopping) {
        lists.shopping << shoppingWords(line);
    }
    lists.equipment = equipmentWords(prepared);
    lists.before = beforeWords(prepared);
    return lists;
}

QString asText(const ClassLists& lists) {
    QStringList lines{lists.title};
    const QStringList heads = listHeads();
    int at = 0;
    for (const QStringList* list : {&lists.shopping, &lists.equipment, &lists.before}) {
        lines << QString() << heads.at(at++);
        for (const QString& line : *list) {
            lines << QStringLiteral("[ ] ") + line;
        }
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

}  // namespace brinebell
