// RecipeForms.cpp — the forms of the recipe editor: which fields each thing of a recipe has.
#include <array>

#include "desk/DeskWords.h"
#include "desk/RecipeEditor.h"
#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"
#include "recipe/TestedRecipes.h"
#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

QString pathOf(const char* thing, int item, const char* key) {
    return QStringLiteral("%1[%2].%3").arg(QLatin1String(thing)).arg(item).arg(QLatin1String(key));
}

// A form may be asked once more after its thing was removed.
template <class Thing>
Thing at(const std::vector<Thing>& list, int item) {
    const auto index = static_cast<std::size_t>(item);
    return index < list.size() ? list[index] : Thing{};
}

template <class Enum>
Enum fromKey(const QString& key) {
    return static_cast<Enum>(key.toInt());
}

QStringList numbers(int count) {
    QStringList keys;
    for (int key = 0; key < count; ++key) {
        keys << QString::number(key);
    }
    return keys;
}

template <class Enum>
QString keyFor(Enum value) {
    return QString::number(static_cast<int>(value));
}

// "Tested: 1 cup vinegar, 5 % acidity": what the guard holds this one against.
QString testedWords(const Recipe& recipe, const Ingredient& ingredient) {
    const auto tested = recipe.versionOf.empty() ? std::nullopt : builtInRecipe(recipe.versionOf);
    const std::string& id = ingredient.insteadOf.empty() ? ingredient.id : ingredient.insteadOf;
    const Ingredient* found = tested ? findIngredient(*tested, id) : nullptr;
    return found == nullptr ? QString() : toQt(print(found->amount) + " " + found->name);
}

constexpr std::array kKinds{IngredientKind::Unsaid,
                            IngredientKind::Vinegar,
                            IngredientKind::HomemadeVinegar,
                            IngredientKind::BottledLemonJuice,
                            IngredientKind::BottledLimeJuice,
                            IngredientKind::FreshCitrusJuice,
                            IngredientKind::CitricAcid,
                            IngredientKind::Dried,
                            IngredientKind::Fresh};

Result<Fraction> readStrength(std::string_view text) {
    const std::string number(text.substr(0, text.find('%')));
    const auto amount = readAmount(number);
    if (!amount || !amount->unit.empty() || amount->low != amount->high || amount->high > Fraction(100, 1)) {
        return fail(ErrorCode::InvalidInput,
                    QCoreApplication::translate("RecipeEditor", "a percentage, as in 5 %").toStdString());
    }
    return amount->high;
}

}  // namespace

template <class Thing>
void RecipeEditor::textLine(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                            std::string Thing::*member, const QString& hint) {
    addLine(
        label, path, [this, list, item, member] { return toQt(at(value().*list, item).*member); },
        setter(label, path,
               [list, item, member](Recipe& r, const QString& t) {
                   (r.*list)[static_cast<std::size_t>(item)].*member = t.toStdString();
               }))
        ->setHint(hint);
}

template <class Thing>
void RecipeEditor::textBox(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                           std::string Thing::*member, int lines) {
    addText(
        label, path, [this, list, item, member] { return toQt(at(value().*list, item).*member); },
        setter(label, path,
               [list, item, member](Recipe& r, const QString& t) {
                   (r.*list)[static_cast<std::size_t>(item)].*member = t.toStdString();
               }),
        lines);
}

template <class Thing>
void RecipeEditor::listBox(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                           std::vector<std::string> Thing::*member, const QString& hint) {
    addText(
        label, path, [this, list, item, member] { return TextField::joined(at(value().*list, item).*member); },
        setter(label, path,
               [list, item, member](Recipe& r, const QString& t) {
                   (r.*list)[static_cast<std::size_t>(item)].*member = TextField::split(t);
               }),
        2)
        ->setHint(hint);
}

template <class Thing>
void RecipeEditor::checkBox(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                            bool Thing::*member) {
    addCheck(
        label, path, [this, list, item, member] { return at(value().*list, item).*member; },
        [this, label, list, item, member](bool on) {
            edit(QString(label).remove(QLatin1Char('&')), {},
                 [&](Recipe& r) { (r.*list)[static_cast<std::size_t>(item)].*member = on; });
        });
}

void RecipeEditor::buildHeadForm() {
    const auto path = [](const char* key) { return QStringLiteral("recipe.") + QLatin1String(key); };
    const auto text = [&](const QString& label, const char* key, std::string Recipe::*member) {
        return addLine(
            label, path(key), [this, member] { return toQt(value().*member); },
            setter(label, path(key), [member](Recipe& r, const QString& t) { r.*member = t.toStdString(); }));
    };
    const auto list = [&](const QString& label, const char* key, std::vector<std::string> Recipe::*member) {
        addText(
            label, path(key), [this, member] { return TextField::joined(value().*member); },
            setter(label, path(key), [member](Recipe& r, const QString& t) { r.*member = TextField::split(t); }))
            ->setHint(tr("One a line."));
    };
    text(tr("Title"), "title", &Recipe::title);
    addText(
        tr("Summary"), path("summary"), [this] { return toQt(value().summary); },
        setter(tr("Summary"), path("summary"), [](Recipe& r, const QString& t) { r.summary = t.toStdString(); }), 2);
    addText(
        tr("Source of the tested recipe, with edition"), path("source"), [this] { return toQt(value().source); },
        setter(tr("Source"), path("source"), [](Recipe& r, const QString& t) { r.source = t.toStdString(); }), 2);
    addChoice(
        tr("How sure the figures are"), path("confidence"),
        {tr("Held against the source"), tr("From memory: to be held against the source")},
        {keyFor(Confidence::Seen), keyFor(Confidence::Memory)}, [this] { return keyFor(value().confidence); },
        setter(tr("How sure"), path("confidence"),
               [](Recipe& r, const QString& t) { r.confidence = fromKey<Confidence>(t); }));
    const QStringList products = toQtList(ProcessTables::published().products());
    addChoice(
        tr("Product in the published tables"), path("product"), products, products,
        [this] { return toQt(value().product); },
        setter(tr("Product"), path("product"), [](Recipe& r, const QString& t) { r.product = t.toStdString(); }));
    addChoice(
        tr("Pack"), path("pack"), {tr("Hot"), tr("Raw")}, {keyFor(Pack::Hot), keyFor(Pack::Raw)},
        [this] { return keyFor(value().pack); },
        setter(tr("Pack"), path("pack"), [](Recipe& r, const QString& t) { r.pack = fromKey<Pack>(t); }));
    addPick(
        tr("Jars that it is tested for"), path("jars"), DeskWords::jars(), DeskWords::jarKeys(),
        [this] {
            QStringList keys;
            for (const JarSize jar : value().jars) {
                keys << toQt(toText(jar));
            }
            return keys;
        },
        [this](const QStringList& keys) {
            edit(tr("Jars"), {}, [&](Recipe& r) {
                r.jars.clear();
                for (const QString& key : keys) {
                    r.jars.push_back(jarSizeFromText(key.toStdString()).value());
                }
            });
        });
    addLine(
        tr("Yield of a whole batch"), path("yield"), [this] { return toQt(exactText(value().yield)); },
        setter(tr("Yield"), path("yield"),
               [](Recipe& r, const QString& t) {
                   r.yield = readAmount(t.toStdString()).value();
                   r.yieldJar = jarSizeFromText(r.yield.unit).value();
               }),
        checkOf([](const std::string& t) -> Result<Amount> {
            auto amount = readAmount(t);
            const auto jar = amount ? jarSizeFromText(amount->unit) : tl::unexpected(amount.error());
            return jar ? amount : tl::unexpected(jar.error());
        }))
        ->setHint(tr("Counted in jars: 6-8 pints."));
    addLine(
        tr("Headspace"), path("headspace"),
        [this] { return value().headspace ? toQt(exactText(*value().headspace)) : QString(); },
        setter(tr("Headspace"), path("headspace"),
               [](Recipe& r, const QString& t) {
                   r.headspace =
                       t.trimmed().isEmpty() ? std::nullopt : std::optional(readLength(t.toStdString()).value());
               }),
        checkOf(readLength, true))
        ->setHint(tr("As published: 1/2 in."));
    text(tr("Keeps how long"), "shelf_life", &Recipe::shelfLife);
    text(tr("Stored how"), "storage", &Recipe::storage);
    list(tr("Allergens"), "allergens", &Recipe::allergens);
    list(tr("Equipment"), "equipment", &Recipe::equipment);
}

void RecipeEditor::buildIngredient(int item) {
    const auto path = [item](const char* key) { return pathOf("ingredient", item, key); };
    const auto get = [this, item] { return at(value().ingredients, item); };
    const auto set = [this, item](const QString& label, const QString& where, auto change) {
        return setter(label, where, [item, change](Recipe& r, const QString& t) {
            change(r.ingredients[static_cast<std::size_t>(item)], t);
        });
    };
    textLine(tr("Name, as it stands after the amount"), path("name"), &Recipe::ingredients, item, &Ingredient::name);
    LineField* amount = addLine(
        tr("Amount"), path("amount"), [get] { return toQt(exactText(get().amount)); },
        set(tr("Amount"), path("amount"),
            [](Ingredient& i, const QString& t) { i.amount = readAmount(t.toStdString()).value(); }),
        checkOf(readAmount));
    const QString tested = testedWords(value(), get());
    amount->setHint(tested.isEmpty() ? tr("1 1/2 cups, 8-16 heads.") : tr("Tested: %1").arg(tested));
    addChoice(
        tr("What it is for"), path("role"),
        {tr("Low-acid food"), tr("Acid food"), tr("Acid"), tr("Oil"), tr("Salt"), tr("Sugar"), tr("Spice"), tr("Water"),
         tr("Firming")},
        numbers(9), [get] { return keyFor(get().role); },
        set(tr("What it is for"), path("role"),
            [](Ingredient& i, const QString& t) { i.role = fromKey<IngredientRole>(t); }));
    QStringList kinds;
    for (const IngredientKind kind : kKinds) {
        kinds << keyFor(kind);
    }
    addChoice(
        tr("Kind, of an acid or a spice"), path("kind"),
        {tr("Not said"), tr("Vinegar from a shop"), tr("Home-made vinegar"), tr("Bottled lemon juice"),
         tr("Bottled lime juice"), tr("Fresh citrus juice"), tr("Citric acid"), tr("Dried"), tr("Fresh")},
        kinds, [get] { return keyFor(get().kind); },
        set(tr("Kind"), path("kind"), [](Ingredient& i, const QString& t) { i.kind = fromKey<IngredientKind>(t); }));
    addLine(
        tr("Strength, of a vinegar"), path("strength"),
        [get] { return get().strength ? toQt(exactPercent(*get().strength)) : QString(); },
        set(tr("Strength"), path("strength"),
            [](Ingredient& i, const QString& t) {
                i.strength =
                    t.trimmed().isEmpty() ? std::nullopt : std::optional(readStrength(t.toStdString()).value());
            }),
        checkOf(readStrength, true));
    checkBox(tr("It may be &left out"), path("optional"), &Recipe::ingredients, item, &Ingredient::optional);
    checkBox(tr("The amount goes into each &jar"), path("per_jar"), &Recipe::ingredients, item, &Ingredient::perJar);
    if (!value().versionOf.empty()) {
        textLine(tr("Stands in for the tested ingredient of this id"), path("instead_of"), &Recipe::ingredients, item,
                 &Ingredient::insteadOf);
    }
    listBox(tr("May stand in for it"), path("swaps_allowed"), &Recipe::ingredients, item, &Ingredient::swapsAllowed,
            tr("One a line; what the source allows."));
    listBox(tr("May not, and people ask"), path("swaps_refused"), &Recipe::ingredients, item, &Ingredient::swapsRefused,
            tr("One a line."));
    textBox(tr("Note"), path("note"), &Recipe::ingredients, item, &Ingredient::note);
}

void RecipeEditor::buildStep(int item) {
    const auto path = [item](const char* key) { return pathOf("step", item, key); };
    const auto get = [this, item] { return at(value().steps, item); };
    const auto set = [this, item](const QString& label, const QString& where, auto change) {
        return setter(label, where, [item, change](Recipe& r, const QString& t) {
            change(r.steps[static_cast<std::size_t>(item)], t);
        });
    };
    textLine(tr("Title, verb first, at most eight words"), path("title"), &Recipe::steps, item, &RecipeStep::title);
    textBox(tr("In full"), path("detail"), &Recipe::steps, item, &RecipeStep::detail);
    textLine(tr("End-point to look for"), path("look_for"), &Recipe::steps, item, &RecipeStep::lookFor);
    checkBox(tr("It ends when somebody &sees the end-point"), path("ends_by_sight"), &Recipe::steps, item,
             &RecipeStep::endsBySight);
    addLine(
        tr("How long"), path("duration"), [get] { return DeskWords::guess(get().duration); },
        set(tr("How long"), path("duration"),
            [](RecipeStep& s, const QString& t) { s.duration = DeskWords::readGuess(t.toStdString()).value(); }),
        DeskWords::guessCheck())
        ->setHint(tr("Short, likely, long: 4 min, 6 min, 9 min; or one duration for what is fixed."));
    textLine(tr("Where that is published; empty: our estimate"), path("duration_source"), &Recipe::steps, item,
             &RecipeStep::durationSource);
    addChoice(
        tr("Done once for"), path("each"), {tr("The batch"), tr("Each load"), tr("Each jar")}, numbers(3),
        [get] { return keyFor(get().each); },
        set(tr("Done once for"), path("each"), [](RecipeStep& s, const QString& t) { s.each = fromKey<StepEach>(t); }));
    checkBox(tr("It &grows with the batch"), path("duration_scales"), &Recipe::steps, item,
             &RecipeStep::durationScales);
    buildHands(item);
    addChoice(
        tr("Where"), path("station"),
        {tr("Nowhere in particular"), tr("Burner"), tr("Oven"), tr("Sink"), tr("Board"), tr("Counter")},
        {QString(), QStringLiteral("burner"), QStringLiteral("oven"), QStringLiteral("sink"), QStringLiteral("board"),
         QStringLiteral("counter")},
        [get] { return toQt(get().station); },
        set(tr("Where"), path("station"), [](RecipeStep& s, const QString& t) { s.station = t.toStdString(); }));
    textLine(tr("Vessel, where steps share one"), path("vessel"), &Recipe::steps, item, &RecipeStep::vessel);
    buildOrder(item);
    listBox(tr("Cautions"), path("cautions"), &Recipe::steps, item, &RecipeStep::cautions, tr("One a line."));
    for (int hold = 0; hold < static_cast<int>(get().holds.size()); ++hold) {
        buildHold(item, hold);
    }
    addButton(tr("Add a limi&t"), [this, item] {
        edit(tr("Add a limit"), {}, [&](Recipe& r) {
            r.steps[static_cast<std::size_t>(item)].holds.push_back(
                {"lower", std::chrono::minutes(10), LimitKind::Quality, {}});
        });
    });
}

void RecipeEditor::buildHands(int item) {
    const auto path = [item](const char* key) { return pathOf("step", item, key); };
    const auto get = [this, item] { return at(value().steps, item); };
    const auto set = [this, item](const QString& label, const QString& where, auto change) {
        return setter(label, where, [item, change](Recipe& r, const QString& t) {
            change(r.steps[static_cast<std::size_t>(item)], t);
        });
    };
    addChoice(
        tr("Hands"), path("hands"),
        {tr("None"), tr("Throughout"), tr("At its start or end"), tr("A look every so often")}, numbers(4),
        [get] { return keyFor(get().hands); }, set(tr("Hands"), path("hands"), [](RecipeStep& s, const QString& t) {
            s.hands = fromKey<HandsNeed>(t);
            const bool atEnds = s.hands == HandsNeed::Ends || s.hands == HandsNeed::Pulses;
            s.handsAtStart = atEnds ? s.handsAtStart : Seconds{};
            s.handsAtEnd = atEnds ? s.handsAtEnd : Seconds{};
            s.mayPause = s.mayPause && s.hands == HandsNeed::Throughout;
            if (s.hands != HandsNeed::Pulses) {
                s.pulse.reset();
            } else if (!s.pulse) {
                s.pulse = PulseRule{Seconds(60), Seconds(120), Seconds(10), {}};
            }
        }));
    const auto duration = [&](const QString& label, const QString& where, auto member, bool mayBeEmpty) {
        addLine(
            label, where,
            [get, member] {
                RecipeStep step = get();
                const Seconds* seconds = member(step);
                return seconds == nullptr || *seconds == Seconds{} ? QString() : toQt(printDuration(*seconds));
            },
            set(label, where,
                [member](RecipeStep& s, const QString& t) {
                    if (Seconds* seconds = member(s)) {
                        *seconds = t.trimmed().isEmpty() ? Seconds{} : readDuration(t.toStdString()).value();
                    }
                }),
            checkOf(readDuration, mayBeEmpty));
    };
    const HandsNeed hands = get().hands;
    if (hands == HandsNeed::Throughout) {
        checkBox(tr("It can be left for a &moment"), path("may_pause"), &Recipe::steps, item, &RecipeStep::mayPause);
    }
    if (hands == HandsNeed::Ends || hands == HandsNeed::Pulses) {
        duration(
            tr("Hands at its start"), path("hands_at_start"), [](RecipeStep& s) { return &s.handsAtStart; }, true);
        duration(
            tr("Hands at its end"), path("hands_at_end"), [](RecipeStep& s) { return &s.handsAtEnd; }, true);
    }
    if (hands == HandsNeed::Pulses) {
        const auto part = [](Seconds PulseRule::*member) {
            return [member](RecipeStep& s) -> Seconds* { return s.pulse ? &((*s.pulse).*member) : nullptr; };
        };
        duration(tr("Shortest time between looks"), path("pulse"), part(&PulseRule::gapLow), false);
        duration(tr("Longest time between looks"), path("pulse.gap_high"), part(&PulseRule::gapHigh), false);
        duration(tr("One look takes"), path("pulse.takes"), part(&PulseRule::takes), false);
        addLine(
            tr("What is done at a look, verb first"), path("pulse.action"),
            [get] { return get().pulse ? toQt(get().pulse->action) : QString(); },
            set(tr("A look"), path("pulse.action"), [](RecipeStep& s, const QString& t) {
                if (s.pulse) {
                    s.pulse->action = t.toStdString();
                }
            }));
    }
    checkBox(tr("No &helper may do it"), path("presenter_only"), &Recipe::steps, item, &RecipeStep::presenterOnly);
}

void RecipeEditor::stepsFor(QStringList& titles, QStringList& ids, int without) const {
    for (int step = 0; step < static_cast<int>(value().steps.size()); ++step) {
        if (step != without) {
            titles << toQt(value().steps[static_cast<std::size_t>(step)].title);
            ids << toQt(value().steps[static_cast<std::size_t>(step)].id);
        }
    }
}

void RecipeEditor::buildOrder(int item) {
    QStringList titles;
    QStringList ids;
    stepsFor(titles, ids, item);
    const auto pick = [this, item](const QString& label, const char* key, const QStringList& words,
                                   const QStringList& keys, std::vector<std::string> RecipeStep::*member) {
        addPick(
            label, pathOf("step", item, key), words, keys,
            [this, item, member] { return toQtList(at(value().steps, item).*member); },
            [this, item, member, label](const QStringList& chosen) {
                edit(label, {},
                     [&](Recipe& r) { r.steps[static_cast<std::size_t>(item)].*member = fromQtList(chosen); });
            });
    };
    pick(tr("Only after these have ended"), "after", titles, ids, &RecipeStep::after);
    QStringList names;
    QStringList keys;
    for (const Ingredient& ingredient : value().ingredients) {
        names << toQt(ingredient.name);
        keys << toQt(ingredient.id);
    }
    pick(tr("Ingredients handled here"), "ingredients", names, keys, &RecipeStep::ingredients);
}

void RecipeEditor::buildHold(int item, int hold) {
    const auto path = [item, hold](const char* key) {
        return QStringLiteral("step[%1].hold[%2].%3").arg(item).arg(hold).arg(QLatin1String(key));
    };
    const auto get = [this, item, hold] { return at(at(value().steps, item).holds, hold); };
    const auto set = [this, item, hold](const QString& label, const QString& where, auto change) {
        return setter(label, where, [item, hold, change](Recipe& r, const QString& t) {
            change(r.steps[static_cast<std::size_t>(item)].holds[static_cast<std::size_t>(hold)], t);
        });
    };
    addHeading(tr("Limit %L1: the longest wait after this step").arg(hold + 1));
    QStringList titles{tr("The load is lowered into the canner")};
    QStringList ids{QStringLiteral("lower")};
    stepsFor(titles, ids, item);
    addChoice(
        tr("Before"), path("before"), titles, ids, [get] { return toQt(get().before); },
        set(tr("Before"), path("before"), [](StepHold& h, const QString& t) { h.before = t.toStdString(); }));
    addLine(
        tr("At most"), path("at_most"), [get] { return toQt(printDuration(get().atMost)); },
        set(tr("At most"), path("at_most"),
            [](StepHold& h, const QString& t) { h.atMost = readDuration(t.toStdString()).value(); }),
        checkOf(readDuration));
    addChoice(
        tr("Kind of limit"), path("kind"), {tr("Quality: may be stretched"), tr("Safety: never stretched")}, numbers(2),
        [get] { return keyFor(get().kind); },
        set(tr("Kind of limit"), path("kind"), [](StepHold& h, const QString& t) { h.kind = fromKey<LimitKind>(t); }));
    addLine(
        tr("What to do once it was stretched"), path("remedy"), [get] { return toQt(get().remedy); },
        set(tr("What to do"), path("remedy"), [](StepHold& h, const QString& t) { h.remedy = t.toStdString(); }));
    addButton(tr("Take limit &%1 away").arg(hold + 1), [this, item, hold] {
        edit(tr("Take a limit away"), {}, [&](Recipe& r) {
            auto& holds = r.steps[static_cast<std::size_t>(item)].holds;
            holds.erase(holds.begin() + hold);
        });
    });
}

void RecipeEditor::buildTalk(int item) {
    const auto path = [item](const char* key) { return pathOf("talk", item, key); };
    textBox(tr("What is said"), path("text"), &Recipe::talk, item, &TalkPoint::text, 4);
    checkBox(tr("It &must be said"), path("must_say"), &Recipe::talk, item, &TalkPoint::mustSay);
    addLine(
        tr("How long it takes"), path("length"),
        [this, item] { return toQt(printDuration(at(value().talk, item).length)); },
        setter(tr("How long"), path("length"),
               [item](Recipe& r, const QString& t) {
                   r.talk[static_cast<std::size_t>(item)].length = readDuration(t.toStdString()).value();
               }),
        checkOf(readDuration));
    QStringList titles{tr("Any time")};
    QStringList ids{QString()};
    stepsFor(titles, ids, -1);
    addChoice(
        tr("At which step"), path("step"), titles, ids, [this, item] { return toQt(at(value().talk, item).step); },
        setter(tr("At which step"), path("step"),
               [item](Recipe& r, const QString& t) { r.talk[static_cast<std::size_t>(item)].step = t.toStdString(); }));
    textLine(tr("Source"), path("source"), &Recipe::talk, item, &TalkPoint::source);
}

void RecipeEditor::buildStage(int item) {
    const auto path = [item](const char* key) { return pathOf("stage", item, key); };
    textLine(tr("Title"), path("title"), &Recipe::stages, item, &MadeAheadStage::title);
    QStringList titles;
    QStringList ids;
    stepsFor(titles, ids, -1);
    addPick(
        tr("Steps done before class"), path("steps"), titles, ids,
        [this, item] { return toQtList(at(value().stages, item).steps); },
        [this, item](const QStringList& chosen) {
            edit(tr("Steps done before class"), {},
                 [&](Recipe& r) { r.stages[static_cast<std::size_t>(item)].steps = fromQtList(chosen); });
        });
    textLine(tr("Bringing it out, verb first"), path("bring_out_title"), &Recipe::stages, item,
             &MadeAheadStage::bringOutTitle);
    addLine(
        tr("How long that takes"), path("bring_out"),
        [this, item] { return DeskWords::guess(at(value().stages, item).bringOut); },
        setter(tr("How long that takes"), path("bring_out"),
               [item](Recipe& r, const QString& t) {
                   r.stages[static_cast<std::size_t>(item)].bringOut = DeskWords::readGuess(t.toStdString()).value();
               }),
        DeskWords::guessCheck());
    textLine(tr("How it is kept until class"), path("keep"), &Recipe::stages, item, &MadeAheadStage::keep);
}

}  // namespace brinebell
