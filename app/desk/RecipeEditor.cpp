#include "desk/RecipeEditor.h"

#include <algorithm>

#include "desk/DeskWords.h"
#include "recipe/RecipeWriter.h"
#include "recipe/TestedRecipes.h"
#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

enum RecipeSection { kRecipe, kIngredients, kSteps, kTalk, kStages };

template <class Thing>
std::string freeIdIn(const std::vector<Thing>& things, const std::string& stem) {
    for (int number = 1;; ++number) {
        const std::string id = stem + "-" + std::to_string(number);
        if (std::none_of(things.begin(), things.end(), [&](const Thing& thing) { return thing.id == id; })) {
            return id;
        }
    }
}

// Runs `act` on the list that a section shows.
template <class Act>
void onList(Recipe& recipe, int section, Act act) {
    switch (section) {
        case kIngredients:
            return act(recipe.ingredients);
        case kSteps:
            return act(recipe.steps);
        case kTalk:
            return act(recipe.talk);
        case kStages:
            return act(recipe.stages);
        default:
            return;
    }
}

// A step that goes leaves no name behind that points nowhere.
void forgetStep(Recipe& recipe, const std::string& id) {
    for (RecipeStep& step : recipe.steps) {
        std::erase(step.after, id);
        std::erase_if(step.holds, [&](const StepHold& hold) { return hold.before == id; });
    }
    for (TalkPoint& point : recipe.talk) {
        if (point.step == id) {
            point.step.clear();
        }
    }
    for (MadeAheadStage& stage : recipe.stages) {
        std::erase(stage.steps, id);
    }
}

}  // namespace

RecipeEditor::RecipeEditor(Library& library, QWidget* parent)
    : DocumentPageOf<Recipe>(library, Library::Kind::Recipe, tr("Recipes"), parent, writeRecipe) {
    begin();
}

bool RecipeEditor::load(const std::string& id, QString& why) {
    auto draft = library().openRecipe(id);
    if (!draft) {
        why = toQt(describe(draft.error().front()));
        return false;
    }
    m_history.open(std::move(draft->value));
    return true;
}

std::string RecipeEditor::keep(Recipe recipe) {
    const auto saved = library().save(recipe, OldFile::Keep);
    if (!saved) {
        tell(toQt(describe(saved.error())));
        return {};
    }
    return recipe.id;
}

std::string RecipeEditor::makeNew() {
    Recipe recipe;
    recipe.title = tr("New recipe").toStdString();
    recipe.id = library().freeId(Library::Kind::Recipe, recipe.title);
    recipe.confidence = Confidence::Memory;
    recipe.jars = {JarSize::Pint};
    recipe.yield = readAmount("1 pint").value();
    RecipeStep first;
    first.id = "step-1";
    first.title = tr("Wash jars and keep them hot").toStdString();
    first.duration = ThreePoint::fixed(std::chrono::minutes(5));
    recipe.steps = {first};
    return keep(std::move(recipe));
}

std::string RecipeEditor::makeCopy() {
    Recipe recipe = value();
    const bool isTested = isReadOnly();
    recipe.title = tr("%1, our version").arg(toQt(recipe.title)).toStdString();
    recipe.id = library().freeId(Library::Kind::Recipe, recipe.title);
    if (isTested) {
        recipe.versionOf = openId();
        // How much may stand in for what is the tested recipe's to say.
        for (Ingredient& ingredient : recipe.ingredients) {
            ingredient.standIns.clear();
        }
    }
    return keep(std::move(recipe));
}

std::vector<Error> RecipeEditor::read(const WrittenFile& file) const {
    auto draft = draftOfRecipe(file.toml, value().file, [](const std::string& path) { return readFile(path); });
    return draft ? std::move(draft->faults) : std::move(draft.error());
}

bool RecipeEditor::isReadOnly() const {
    return builtInRecipeText(openId()).has_value();
}

QString RecipeEditor::standing() const {
    if (isReadOnly()) {
        return tr("A tested recipe: it is shown and not changed. “Make a class version” copies it for you to fit.");
    }
    if (!value().versionOf.empty()) {
        const auto tested = builtInRecipe(value().versionOf);
        return tr("A class version of “%1”. The guard holds every ingredient against it; what it refuses stands at the "
                  "ingredient with rule and source.")
            .arg(toQt(tested ? tested->title : value().versionOf));
    }
    return {};
}

QStringList RecipeEditor::sections() const {
    return {tr("Recipe"), tr("Ingredients"), tr("Steps"), tr("Talk"), tr("Made ahead")};
}

bool RecipeEditor::hasItems(int section) const {
    return section != kRecipe;
}

QString RecipeEditor::keyOf(int section) const {
    static constexpr const char* kKeys[] = {"recipe", "ingredient", "step", "talk", "stage"};
    return QLatin1String(kKeys[section]);
}

QStringList RecipeEditor::itemsOf(int section) const {
    QStringList items;
    if (section == kIngredients) {
        for (const Ingredient& ingredient : value().ingredients) {
            items << toQt(print(ingredient.amount) + " " + ingredient.name);
        }
    } else if (section == kSteps) {
        for (const RecipeStep& step : value().steps) {
            items << toQt(step.title);
        }
    } else if (section == kTalk) {
        for (const TalkPoint& point : value().talk) {
            items << toQt(point.text);
        }
    } else {
        for (const MadeAheadStage& stage : value().stages) {
            items << toQt(stage.title);
        }
    }
    return items;
}

void RecipeEditor::addItem(int section) {
    edit(tr("Add"), {}, [&](Recipe& recipe) {
        if (section == kIngredients) {
            Ingredient made;
            made.id = freeIdIn(recipe.ingredients, "ingredient");
            made.amount = readAmount("1 cup").value();
            recipe.ingredients.push_back(std::move(made));
        } else if (section == kSteps) {
            RecipeStep made;
            made.id = freeIdIn(recipe.steps, "step");
            made.duration = ThreePoint::fixed(std::chrono::minutes(5));
            if (!recipe.steps.empty()) {
                made.after = {recipe.steps.back().id};
            }
            recipe.steps.push_back(std::move(made));
        } else if (section == kTalk) {
            TalkPoint made;
            made.id = freeIdIn(recipe.talk, "talk");
            made.source = tr("our own teaching note").toStdString();
            recipe.talk.push_back(std::move(made));
        } else {
            MadeAheadStage made;
            made.id = freeIdIn(recipe.stages, "stage");
            made.bringOut = ThreePoint::fixed(std::chrono::minutes(1));
            recipe.stages.push_back(std::move(made));
        }
    });
}

void RecipeEditor::removeItem(int section, int item) {
    edit(tr("Remove"), {}, [&](Recipe& recipe) {
        const auto at = static_cast<std::size_t>(item);
        if (section == kSteps) {
            forgetStep(recipe, recipe.steps[at].id);
        } else if (section == kIngredients) {
            for (RecipeStep& step : recipe.steps) {
                std::erase(step.ingredients, recipe.ingredients[at].id);
            }
        }
        onList(recipe, section, [&](auto& list) { list.erase(list.begin() + item); });
    });
}

void RecipeEditor::moveItem(int section, int from, int to) {
    edit(tr("Move"), {}, [&](Recipe& recipe) {
        onList(recipe, section, [&](auto& list) {
            std::swap(list[static_cast<std::size_t>(from)], list[static_cast<std::size_t>(to)]);
        });
    });
}

QString RecipeEditor::shapeOf(int section, int item) const {
    const auto at = static_cast<std::size_t>(item);
    if (section == kSteps && item >= 0 && at < value().steps.size()) {
        const RecipeStep& step = value().steps[at];
        return QStringLiteral("%1 %2 %3 %4")
            .arg(item)
            .arg(static_cast<int>(step.hands))
            .arg(step.holds.size())
            .arg(value().steps.size());
    }
    return QString::number(item);
}

void RecipeEditor::buildForm(int section, int item) {
    switch (section) {
        case kIngredients:
            return buildIngredient(item);
        case kSteps:
            return buildStep(item);
        case kTalk:
            return buildTalk(item);
        case kStages:
            return buildStage(item);
        default:
            return buildHeadForm();
    }
}

}  // namespace brinebell
