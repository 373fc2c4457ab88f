// The forms of the class editor: the class, one dish, one thing that is said.
#include <QDateTime>
#include <QFileInfo>
#include <algorithm>

#include "bridge/TimeText.h"
#include "desk/ClassEditor.h"
#include "desk/DeskWords.h"
#include "kitchen/VenueFile.h"
#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"
#include "recipe/RecipeFile.h"

namespace brinebell {

namespace {

const QString kStartForm = QStringLiteral("yyyy-MM-dd HH:mm");

Result<Fraction> readBatchText(std::string_view text) {
    const auto amount = readAmount(text);
    if (!amount) {
        return tl::unexpected(amount.error());
    }
    if (!amount->unit.empty() || amount->low != amount->high || amount->high <= Fraction(0, 1)) {
        return fail(
            ErrorCode::InvalidInput,
            QCoreApplication::translate("ClassEditor", "one number above 0 without a unit, as in 1/2").toStdString());
    }
    return amount->high;
}

PlannedDish dishOf(const ClassPlan& plan, int item) {
    const auto at = static_cast<std::size_t>(item);
    return at < plan.dishes.size() ? plan.dishes[at] : PlannedDish();
}

ClassTalk talkOf(const ClassPlan& plan, int item) {
    const auto at = static_cast<std::size_t>(item);
    return at < plan.talk.size() ? plan.talk[at] : ClassTalk();
}

}  // namespace

void ClassEditor::buildForm(int section, int item) {
    section == 0 ? buildClass() : section == 1 ? buildDish(item) : buildTalk(item);
}

void ClassEditor::buildClass() {
    const auto path = [](const char* key) { return QStringLiteral("class.") + QLatin1String(key); };
    const auto text = [&](const QString& label, const char* key, std::string ClassPlan::*member) {
        return addLine(
            label, path(key), [this, member] { return toQt(value().*member); },
            setter(label, path(key), [member](ClassPlan& p, const QString& t) { p.*member = t.toStdString(); }));
    };
    const auto duration = [&](const QString& label, const char* key, Seconds ClassPlan::*member) {
        return addLine(
            label, path(key), [this, member] { return toQt(printDuration(value().*member)); },
            setter(label, path(key),
                   [member](ClassPlan& p, const QString& t) { p.*member = readDuration(t.toStdString()).value(); }),
            checkOf(readDuration));
    };
    text(tr("Title of the class"), "title", &ClassPlan::title);
    text(tr("Who teaches"), "teacher", &ClassPlan::teacher);
    QStringList names, ids;
    for (const Library::Entry& entry : library().list(Library::Kind::Venue)) {
        names << plainText(toQt(entry.title), false);
        ids << toQt(entry.id);
    }
    addChoice(
        tr("Kitchen"), path("venue"), names, ids,
        [this] { return QFileInfo(toQt(value().venue.file)).completeBaseName(); },
        [this](const QString& id) { chooseVenue(id); });
    addLine(
        tr("Start"), path("start"),
        [this] { return QDateTime::fromMSecsSinceEpoch(value().startUtc.count()).toString(kStartForm); },
        setter(tr("Start"), path("start"),
               [](ClassPlan& p, const QString& t) {
                   p.startUtc = Millis(QDateTime::fromString(t.trimmed(), kStartForm).toMSecsSinceEpoch());
               }),
        [](const QString& t) {
            return QDateTime::fromString(t.trimmed(), kStartForm).isValid()
                       ? QString()
                       : tr("day and time as in 2026-09-17 18:00 are expected");
        })
        ->setHint(tr("Year, month, day and time by the clock of this computer: 2026-09-17 18:00."));
    duration(tr("Slot: the room must be empty after"), "slot", &ClassPlan::slot);
    addLine(
        tr("The kitchen must be empty after"), path("kitchen_slot"),
        [this] { return value().kitchenSlot ? toQt(printDuration(*value().kitchenSlot)) : QString(); },
        setter(tr("The kitchen must be empty after"), path("kitchen_slot"),
               [](ClassPlan& p, const QString& t) {
                   p.kitchenSlot =
                       t.trimmed().isEmpty() ? std::nullopt : std::optional(readDuration(t.toStdString()).value());
               }),
        checkOf(readDuration, true))
        ->setHint(tr("Empty where it is not limited."));
    constexpr int kMostHelpers = 3;
    addLine(
        tr("Helpers"), path("helpers"), [this] { return QString::number(value().helpers); },
        setter(tr("Helpers"), path("helpers"), [](ClassPlan& p, const QString& t) { p.helpers = t.trimmed().toInt(); }),
        DeskWords::numberCheck(0, kMostHelpers));
    text(tr("Who stays until the last load is lifted"), "kitchen_closer", &ClassPlan::kitchenCloser);
    duration(tr("Opening: welcome and hand washing"), "opening", &ClassPlan::opening);
    duration(tr("Closing: questions and good-bye"), "closing", &ClassPlan::closing);
}

void ClassEditor::chooseVenue(const QString& id) {
    const auto file = library().pathOf(Library::Kind::Venue, id.toStdString());
    auto venue = readVenueFile(file ? *file : std::string());
    if (!venue) {
        tell(toQt(describe(venue.error().front())));
        return;
    }
    tell({});
    edit(tr("Kitchen"), {}, [&](ClassPlan& plan) {
        plan.venue = std::move(*venue);
        // Another kitchen has other canners; one that is named alike stays.
        for (PlannedDish& dish : plan.dishes) {
            const auto& canners = plan.venue.canners;
            if (!canners.empty() && std::none_of(canners.begin(), canners.end(),
                                                 [&](const Canner& canner) { return canner.id == dish.canner; })) {
                dish.canner = canners.front().id;
            }
        }
    });
}

std::optional<Recipe> ClassEditor::recipeOf(const std::string& id) {
    const auto file = library().recipeFile(id);
    if (!file) {
        tell(toQt(describe(file.error())));
        return std::nullopt;
    }
    auto recipe = readRecipeFile(*file);
    if (!recipe) {
        tell(toQt(describe(recipe.error().front())));
        return std::nullopt;
    }
    tell({});
    return std::move(*recipe);
}

void ClassEditor::chooseRecipe(int item, const QString& id) {
    auto recipe = recipeOf(id.toStdString());
    if (!recipe) {
        return;
    }
    edit(item < 0 ? tr("Add") : tr("Recipe"), {}, [&](ClassPlan& plan) {
        PlannedDish dish;
        dish.recipe = std::move(*recipe);
        dish.jar = dish.recipe.yieldJar;
        dish.jars = wholeJars(dish.recipe);
        dish.canner = item < 0 ? std::string() : plan.dishes[static_cast<std::size_t>(item)].canner;
        if (dish.canner.empty() && !plan.venue.canners.empty()) {
            dish.canner = plan.venue.canners.front().id;
        }
        if (item < 0) {
            plan.dishes.push_back(std::move(dish));
        } else {
            plan.dishes[static_cast<std::size_t>(item)] = std::move(dish);
        }
    });
}

void ClassEditor::fitBatch(int item) {
    const PlannedDish dish = dishOf(value(), item);
    const auto batch = batchFor(dish.recipe, dish.jars, dish.jar);
    if (!batch) {
        tell(tr("Ten batches are too few for so many jars."));
        return;
    }
    tell({});
    edit(tr("Batch"), {}, [&](ClassPlan& plan) { plan.dishes[static_cast<std::size_t>(item)].batch = *batch; });
}

void ClassEditor::buildDish(int item) {
    const auto at = static_cast<std::size_t>(item);
    const auto path = [item](const char* key) {
        return QStringLiteral("dish[%1].%2").arg(item).arg(QLatin1String(key));
    };
    QStringList titles, ids;
    for (const Library::Entry& entry : library().list(Library::Kind::Recipe)) {
        if (entry.sound()) {
            titles << plainText(toQt(entry.title), false);
            ids << toQt(entry.id);
        }
    }
    addChoice(
        tr("Recipe"), path("recipe"), titles, ids, [this, item] { return toQt(dishOf(value(), item).recipe.id); },
        [this, item](const QString& id) { chooseRecipe(item, id); });
    constexpr int kMostJars = 200;
    addLine(
        tr("Jars"), path("jars"), [this, item] { return QString::number(dishOf(value(), item).jars); },
        setter(tr("Jars"), path("jars"),
               [at](ClassPlan& p, const QString& t) { p.dishes[at].jars = t.trimmed().toInt(); }),
        DeskWords::numberCheck(1, kMostJars));
    addChoice(
        tr("Size of the jars"), path("jar"), DeskWords::jars(), DeskWords::jarKeys(),
        [this, item] { return QString::fromUtf8(toText(dishOf(value(), item).jar).data()); },
        setter(tr("Size of the jars"), path("jar"),
               [at](ClassPlan& p, const QString& t) { p.dishes[at].jar = jarSizeFromText(t.toStdString()).value(); }));
    addLine(
        tr("How much of the recipe's batch"), path("batch"),
        [this, item] { return toQt(exactText(dishOf(value(), item).batch)); },
        setter(tr("Batch"), path("batch"),
               [at](ClassPlan& p, const QString& t) { p.dishes[at].batch = readBatchText(t.toStdString()).value(); }),
        checkOf(readBatchText))
        ->setHint(tr("1 is the whole batch, 1/2 the half, 2 two batches."));
    addButton(tr("&Fit the batch to the jars"), [this, item] { fitBatch(item); });
    QStringList names, canners;
    for (const Canner& canner : value().venue.canners) {
        names << plainText(toQt(canner.name), false);
        canners << toQt(canner.id);
    }
    addChoice(
        tr("Canner"), path("canner"), names, canners, [this, item] { return toQt(dishOf(value(), item).canner); },
        setter(tr("Canner"), path("canner"),
               [at](ClassPlan& p, const QString& t) { p.dishes[at].canner = t.toStdString(); }));
    QStringList stages, stageIds;
    for (const MadeAheadStage& stage : dishOf(value(), item).recipe.stages) {
        stages << plainText(toQt(stage.title), false);
        stageIds << toQt(stage.id);
    }
    if (!stages.isEmpty()) {
        addPick(
            tr("Made ahead of the class"), path("made_ahead"), stages, stageIds,
            [this, item] { return toQtList(dishOf(value(), item).madeAhead); },
            [this, at](const QStringList& chosen) {
                edit(tr("Made ahead of the class"), {},
                     [&](ClassPlan& p) { p.dishes[at].madeAhead = fromQtList(chosen); });
            });
    }
}

void ClassEditor::buildTalk(int item) {
    const auto at = static_cast<std::size_t>(item);
    const auto path = [item](const char* key) {
        return QStringLiteral("talk[%1].%2").arg(item).arg(QLatin1String(key));
    };
    addText(
        tr("What is said"), path("text"), [this, item] { return toQt(talkOf(value(), item).point.text); },
        setter(tr("What is said"), path("text"),
               [at](ClassPlan& p, const QString& t) { p.talk[at].point.text = t.toStdString(); }));
    addCheck(
        tr("It &must be said"), path("must_say"), [this, item] { return talkOf(value(), item).point.mustSay; },
        [this, at](bool on) { edit(tr("It must be said"), {}, [&](ClassPlan& p) { p.talk[at].point.mustSay = on; }); });
    addCheck(
        tr("It may be dropped &when time is short"), path("may_drop"),
        [this, item] { return talkOf(value(), item).mayDrop; },
        [this, at](bool on) { edit(tr("It may be dropped"), {}, [&](ClassPlan& p) { p.talk[at].mayDrop = on; }); });
    addLine(
        tr("How long it takes"), path("length"),
        [this, item] { return toQt(printDuration(talkOf(value(), item).point.length)); },
        setter(
            tr("How long it takes"), path("length"),
            [at](ClassPlan& p, const QString& t) { p.talk[at].point.length = readDuration(t.toStdString()).value(); }),
        checkOf(readDuration));
    addLine(
        tr("Source"), path("source"), [this, item] { return toQt(talkOf(value(), item).point.source); },
        setter(tr("Source"), path("source"),
               [at](ClassPlan& p, const QString& t) { p.talk[at].point.source = t.toStdString(); }));
}

}  // namespace brinebell
