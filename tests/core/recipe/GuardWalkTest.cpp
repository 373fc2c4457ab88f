// Random walks through the edits a teacher could make. Whatever the guard accepts on the way, no acid falls below the
// tested recipe for any food or jar, and neither oil nor low-acid food rises for the acid: measured here in teaspoons
// and ounces, with none of the guard's arithmetic.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "base/Random.h"
#include "recipe/Guard.h"
#include "recipe/TestedRecipes.h"

namespace brinebell {
namespace {

constexpr double kSlack = 1e-9;

/// Teaspoons, ounces, or pieces, by the customary measures every cook knows (NIST Handbook 44, Appendix C).
double plain(const Fraction& number, const std::string& unit) {
    static const std::map<std::string, double> kUnits{{"tsp", 1},     {"tbsp", 3},  {"cup", 48}, {"pint", 96},
                                                      {"quart", 192}, {"gal", 768}, {"oz", 1},   {"lb", 16}};
    const auto found = kUnits.find(unit);
    return number.toDouble() * (found == kUnits.end() ? 1 : found->second);
}

const Ingredient* byId(const Recipe& recipe, const std::string& id) {
    for (const Ingredient& i : recipe.ingredients) {
        if (i.id == id) {
            return &i;
        }
    }
    return nullptr;
}

/// Per ounce of jar for what goes into each jar; `worst` is the low end for acids and the high end for the rest.
double measured(const Ingredient& i, bool low) {
    if (low && i.optional) {
        return 0;
    }
    const double amount = plain(low ? i.amount.low : i.amount.high, i.amount.unit);
    return i.perJarOf ? amount / static_cast<double>(fluidOunces(*i.perJarOf)) : amount;
}

/// How much of the tested acid the version has in its place, in measures of that acid. What may stand in is typed from
/// the sources: cup for cup in salsa (eXtension); 1/4 tsp of citric acid or 2 tbsp of vinegar for 1 tbsp of juice in
/// tomatoes (AIB 539 Guide 3).
double acidInPlaceOf(const Ingredient& acid, const Recipe& tested, const Recipe& version) {
    double sum = 0;
    for (const Ingredient& i : version.ingredients) {
        if (i.role != IngredientRole::Acid || (i.insteadOf.empty() ? i.id : i.insteadOf) != acid.id) {
            continue;
        }
        const bool salsa = tested.id == "chile-salsa";
        const bool tomatoes = tested.id == "crushed-tomatoes";
        const bool bottled = i.kind == IngredientKind::BottledLemonJuice || i.kind == IngredientKind::BottledLimeJuice;
        double worth = 0;
        if (i.kind == acid.kind || (salsa && bottled)) {
            worth = 1;
        } else if (tomatoes && i.kind == IngredientKind::CitricAcid) {
            worth = 12;
        } else if (tomatoes && i.kind == IngredientKind::Vinegar) {
            worth = 0.5;
        }
        if (i.kind == IngredientKind::Vinegar && (!i.strength || *i.strength < Fraction(5, 1))) {
            worth = 0;
        }
        sum += worth * measured(i, true);
    }
    return sum;
}

double jarOunces(const Recipe& recipe) {
    return recipe.yield.high.toDouble() * static_cast<double>(fluidOunces(recipe.yieldJar));
}

bool isAtLeast(double part, double whole, double testedPart, double testedWhole) {
    return part * testedWhole >= testedPart * whole * (1 - kSlack);
}

/// What is worse than tested, in words; empty when nothing is.
std::string worseThan(const Recipe& tested, const Recipe& version) {
    std::string worse;
    const auto amountOf = [&](const std::string& id, bool low) {
        const Ingredient* i = byId(version, id);
        return i == nullptr ? 0 : measured(*i, low);
    };
    for (const Ingredient& acid : tested.ingredients) {
        if (acid.role != IngredientRole::Acid) {
            continue;
        }
        const double has = acidInPlaceOf(acid, tested, version);
        const double had = measured(acid, true);
        if (acid.perJarOf) {
            worse += has < had * (1 - kSlack) ? acid.id + " for a jar; " : "";
            continue;
        }
        worse += isAtLeast(has, jarOunces(version), had, jarOunces(tested)) ? "" : acid.id + " for the jars; ";
        for (const Ingredient& other : tested.ingredients) {
            const bool rises = other.role == IngredientRole::LowAcidFood || other.role == IngredientRole::AcidFood ||
                               other.role == IngredientRole::Oil || other.role == IngredientRole::Water;
            if (rises && !other.perJar && !isAtLeast(has, amountOf(other.id, false), had, measured(other, false))) {
                worse += acid.id + " for " + other.id + "; ";
            }
        }
    }
    for (const Ingredient& oil : tested.ingredients) {
        for (const Ingredient& food : tested.ingredients) {
            const bool isFood = food.role == IngredientRole::LowAcidFood || food.role == IngredientRole::AcidFood;
            if (oil.role == IngredientRole::Oil && isFood && !food.optional &&
                !isAtLeast(amountOf(food.id, true), amountOf(oil.id, false), measured(food, true),
                           measured(oil, false))) {
                worse += "oil for " + food.id + "; ";
            }
            if (oil.role == IngredientRole::LowAcidFood && food.role == IngredientRole::AcidFood &&
                !isAtLeast(amountOf(food.id, true), amountOf(oil.id, false), measured(food, true),
                           measured(oil, false))) {
                worse += oil.id + " for " + food.id + "; ";
            }
        }
    }
    for (const Ingredient& i : version.ingredients) {
        const Ingredient* known = byId(tested, i.insteadOf.empty() ? i.id : i.insteadOf);
        const bool acts = i.role == IngredientRole::LowAcidFood || i.role == IngredientRole::Oil ||
                          i.role == IngredientRole::AcidFood || i.role == IngredientRole::Water;
        if ((known == nullptr && acts) || (known != nullptr && known->role != i.role)) {
            worse += i.id + " is not tested; ";
        }
    }
    for (const JarSize jar : version.jars) {
        if (jar > *std::max_element(tested.jars.begin(), tested.jars.end())) {
            worse += "jar; ";
        }
    }
    return worse;
}

class Walk {
public:
    Walk(const Recipe& tested, std::uint64_t seed) : m_tested(tested), m_version(tested), m_random(seed) {}

    const Recipe& version() const { return m_version; }

    /// One random edit; true when the guard let it pass and it became part of the version.
    bool step() {
        Recipe next = m_version;
        edit(next);
        if (!isAccepted(judge(m_tested, next))) {
            return false;
        }
        m_version = std::move(next);
        return true;
    }

private:
    Fraction size() {
        static const Fraction kSizes[] = {{1, 4},   {1, 2}, {2, 3}, {3, 4}, {9, 10},
                                          {11, 10}, {4, 3}, {3, 2}, {2, 1}, {3, 1}};
        return kSizes[m_random.below(std::size(kSizes))];
    }

    void times(Amount& amount, const Fraction& factor) {
        if (const auto made = scaled(amount, factor)) {
            amount = *made;
        }
    }

    void addSomething(Recipe& next) {
        Ingredient added;
        added.id = "added-" + std::to_string(++m_added);
        added.name = m_random.below(2) == 0 ? "bottled lemon juice" : "something else";
        added.amount = readAmount("1/2 cup").value();
        added.role = static_cast<IngredientRole>(m_random.below(9));
        added.kind = static_cast<IngredientKind>(m_random.below(9));
        if (added.kind == IngredientKind::Vinegar) {
            added.strength = Fraction(static_cast<std::int64_t>(4 + m_random.below(3)), 1);
        }
        if (m_random.below(2) == 0) {
            added.insteadOf = m_tested.ingredients[m_random.below(m_tested.ingredients.size())].id;
        }
        next.ingredients.push_back(std::move(added));
    }

    void swapKind(Ingredient& i) {
        i.kind = static_cast<IngredientKind>(m_random.below(9));
        i.strength = std::nullopt;
        if (i.kind == IngredientKind::Vinegar) {
            i.strength = Fraction(static_cast<std::int64_t>(4 + m_random.below(3)), 1);
        }
        if (m_random.below(2) == 0) {
            i.name = i.kind == IngredientKind::BottledLimeJuice ? "bottled lime juice" : "bottled lemon juice";
        }
    }

    void changeUnit(Ingredient& i) {
        if (i.amount.unit == "cup" || i.amount.unit == "lb") {
            times(i.amount, Fraction(16, 1));
            i.amount.unit = i.amount.unit == "cup" ? "tbsp" : "oz";
        } else if (i.amount.unit == "tbsp") {
            times(i.amount, Fraction(3, 1));
            i.amount.unit = "tsp";
        } else if (i.amount.kind == AmountKind::Mass && m_random.below(3) == 0) {
            i.amount.unit = "cup";
            i.amount.kind = AmountKind::Volume;
        }
    }

    void scaleAll(Recipe& next) {
        const Fraction factor = size();
        for (Ingredient& i : next.ingredients) {
            if (!i.perJar) {
                times(i.amount, factor);
            }
        }
        times(next.yield, factor);
    }

    // Oil and food, or acids, change together: what a careful cook would do, and so what gets far.
    void scaleRole(Recipe& next) {
        const Fraction factor = size();
        const auto role = static_cast<IngredientRole>(m_random.below(9));
        for (Ingredient& i : next.ingredients) {
            if (i.role == role) {
                times(i.amount, factor);
            }
        }
    }

    void edit(Recipe& next) {
        Ingredient* any =
            next.ingredients.empty() ? nullptr : &next.ingredients[m_random.below(next.ingredients.size())];
        switch (m_random.below(14)) {
            case 0:
                return scaleAll(next);
            case 1:
                return scaleRole(next);
            case 2:
                return addSomething(next);
            case 3:
                return times(next.yield, size());
            case 4:
                next.jars = {static_cast<JarSize>(m_random.below(7))};
                return;
            case 5:
                next.yieldJar = static_cast<JarSize>(m_random.below(7));
                return;
            default:
                break;
        }
        if (any == nullptr) {
            return;
        }
        switch (m_random.below(9)) {
            case 0:
                next.ingredients.erase(next.ingredients.begin() + (any - next.ingredients.data()));
                return;
            case 1:
                return swapKind(*any);
            case 2:
                return changeUnit(*any);
            case 3:
                any->optional = !any->optional;
                return;
            case 4:
                any->amount.low = m_random.below(2) == 0 ? Fraction() : any->amount.high;
                return;
            case 5:
                if (any->perJarOf) {
                    any->perJarOf = static_cast<JarSize>(m_random.below(7));
                }
                return;
            default:
                return times(any->amount, size());
        }
    }

    const Recipe& m_tested;
    Recipe m_version;
    Random m_random;
    int m_added = 0;
};

constexpr int kSequences = 250;  ///< for each recipe
constexpr int kEdits = 30;

class GuardWalk : public ::testing::TestWithParam<std::string> {};

TEST_P(GuardWalk, NeverGetsWorseThanTested) {
    const Recipe tested = builtInRecipe(GetParam()).value();
    int accepted = 0;
    int refused = 0;
    for (int sequence = 0; sequence < kSequences; ++sequence) {
        Walk walk(tested, static_cast<std::uint64_t>(sequence) + 1);
        for (int i = 0; i < kEdits; ++i) {
            if (!walk.step()) {
                ++refused;
                continue;
            }
            ++accepted;
            ASSERT_EQ(worseThan(tested, walk.version()), "") << GetParam() << " seed " << sequence + 1 << " edit " << i;
        }
    }
    // Walks that go nowhere would prove nothing.
    EXPECT_GT(accepted, kSequences * kEdits / 10);
    EXPECT_GT(refused, kSequences * kEdits / 10);
    RecordProperty("accepted", accepted);
}

std::string recipeName(const ::testing::TestParamInfo<std::string>& about) {
    std::string name = about.param;
    std::erase(name, '-');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Recipes, GuardWalk, ::testing::ValuesIn(builtInRecipeIds()), recipeName);

// The measure itself has to see what is worse.
TEST(GuardWalkMeasure, SeesLessAcidMoreOilAndMoreFood) {
    const Recipe tested = builtInRecipe("marinated-peppers").value();
    for (const auto& [id, times] :
         {std::pair<const char*, Fraction>{"vinegar", {1, 2}}, {"oil", {2, 1}}, {"peppers", {2, 1}}}) {
        Recipe version = tested;
        for (Ingredient& i : version.ingredients) {
            i.amount = i.id == id ? scaled(i.amount, times).value() : i.amount;
        }
        EXPECT_NE(worseThan(tested, version), "") << id;
    }
    EXPECT_EQ(worseThan(tested, tested), "");
}

}  // namespace
}  // namespace brinebell
