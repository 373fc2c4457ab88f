// RecipeEditor.h — the page on which a teacher writes a recipe, or a class version of a tested one under the guard.
//
// A tested recipe is shown and not changed: "Make a class version" copies it under an id of its own with `version_of`.
// What then departs from it is judged by the guard at each edit; a refusal stands at the ingredient, with rule and
// source.
#pragma once

#include "desk/DocumentPage.h"
#include "recipe/Recipe.h"

namespace brinebell {

class RecipeEditor final : public DocumentPageOf<Recipe> {
    Q_OBJECT

public:
    explicit RecipeEditor(Library& library, QWidget* parent = nullptr);

protected:
    bool load(const std::string& id, QString& why) override;
    std::string makeNew() override;
    std::string makeCopy() override;
    std::vector<Error> read(const WrittenFile& file) const override;
    QString standing() const override;
    bool isReadOnly() const override;
    QStringList sections() const override;
    bool hasItems(int section) const override;
    QString keyOf(int section) const override;
    QStringList itemsOf(int section) const override;
    void addItem(int section) override;
    void removeItem(int section, int item) override;
    void moveItem(int section, int from, int to) override;
    void buildForm(int section, int item) override;
    QString shapeOf(int section, int item) const override;

private:
    void buildHeadForm();
    void buildIngredient(int item);
    void buildStep(int item);
    void buildHands(int item);
    void buildOrder(int item);
    void buildHold(int item, int hold);
    void buildTalk(int item);
    void buildStage(int item);
    /// Titles and ids of the steps, but for the one at `without` (-1: none).
    void stepsFor(QStringList& titles, QStringList& ids, int without) const;
    std::string keep(Recipe recipe);
    template <class Thing>
    void textLine(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                  std::string Thing::*member, const QString& hint = {});
    template <class Thing>
    void textBox(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                 std::string Thing::*member, int lines = 2);
    template <class Thing>
    void listBox(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                 std::vector<std::string> Thing::*member, const QString& hint = {});
    template <class Thing>
    void checkBox(const QString& label, const QString& path, std::vector<Thing> Recipe::*list, int item,
                  bool Thing::*member);
};

}  // namespace brinebell
