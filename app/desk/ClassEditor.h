// ClassEditor.h — the page on which a teacher builds a class: kitchen and slot, dishes, talk; its run sheet stands
// below.
//
// The sheet follows each edit, made beside the window (ClassPlanner.h): first that of the default order, then what the
// search finds, with its chance. Until the new one is there, and as long as the class has faults, the last good sheet
// stays with a word that it is older.
#pragma once

#include <QTimer>

#include "desk/ClassPlanner.h"
#include "desk/DocumentPage.h"
#include "plan/ClassPlan.h"

class QPlainTextEdit;

namespace brinebell {

class SheetChart;

class ClassEditor final : public DocumentPageOf<ClassPlan> {
    Q_OBJECT

public:
    explicit ClassEditor(Library& library, QWidget* parent = nullptr);

    const std::optional<PreparedClass>& prepared() const { return m_prepared; }  ///< of the last good sheet
    bool isSheetOlder() const { return m_older; }                                ///< than what stands in the fields
    bool isPlanning() const { return m_pause.isActive() || m_planner.isDrafting() || m_planner.isPlanning(); }
    static constexpr int kPauseMs = 20;  ///< from an edit to the planning of it

signals:
    void prepareWanted(const QString& path);

protected:
    bool load(const std::string& id, QString& why) override;
    std::string makeNew() override;
    std::string makeCopy() override;
    std::vector<Error> read(const WrittenFile& file) const override;
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
    // ClassForms.cpp
    void buildClass();
    void buildDish(int item);
    void buildTalk(int item);
    void chooseRecipe(int item, const QString& id);
    void chooseVenue(const QString& id);
    void fitBatch(int item);
    std::optional<Recipe> recipeOf(const std::string& id);

    std::string keep(ClassPlan plan);
    void buildSheet();
    void takeEdit();
    void takeDraft(const PreparedClass& prepared);
    void planNow();
    void showSheet();
    void showState(const QString& words);

    ClassPlanner m_planner;
    QTimer m_pause;
    std::optional<PreparedClass> m_prepared;
    bool m_older = false;
    QLabel* m_state = nullptr;
    QLabel* m_ends = nullptr;
    SheetChart* m_chart = nullptr;
    QPlainTextEdit* m_warnings = nullptr;
};

/// The least amount of a batch that fills `jars` of `jar`, in steps that a cook measures (quarters and thirds up to one
/// batch, halves above). None: ten batches are too few.
std::optional<Fraction> batchFor(const Recipe& recipe, int jars, JarSize jar);

}  // namespace brinebell
