// PreparePage.h — choose a class, read its run sheet, start it live or as a rehearsal.
//
// A file with faults shows them all, each with its place, and is read again at a press once it has been
// mended.
#pragma once

#include <QWidget>
#include <optional>

#include "bridge/Sessions.h"
#include "desk/ClassPlanner.h"
#include "desk/ClassShelf.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QListWidget;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;
class QTableView;
class QVBoxLayout;

namespace brinebell {

class ClassPlanner;
class MakeAheadPanel;
class ProspectPanel;
class RunSheetModel;
class ScreenPanel;
class SheetChart;

class PreparePage final : public QWidget {
    Q_OBJECT

public:
    explicit PreparePage(QWidget* parent = nullptr);

    void setClassFiles(const QStringList& paths);
    void openClass(const QString& path);         ///< adds it to the list when it is not there
    void setLogbookFault(const QString& words);  ///< shown until it is empty

    QString chosenFile() const;  ///< path; empty: none
    /// Its sheet and policy are the best so far, from the moment the class is read.
    const std::optional<PreparedClass>& prepared() const { return m_prepared; }
    QString faults() const;
    ClassPlanner& planner() { return *m_planner; }
    /// Searching, or about to as soon as the page has been painted.
    bool isPlanning() const { return m_planWaits || m_planner->isPlanning(); }
    ScreenPanel& screenPanel() { return *m_screen; }
    void focusStart();  ///< puts the keyboard on the button that starts the class

protected:
    void resizeEvent(QResizeEvent* event) override;

signals:
    void frontWanted();
    void startWanted(const brinebell::SessionStart& start);
    void reviewWanted();
    void soundWanted();
    void listsWanted();
    void papersWanted();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QVBoxLayout* buildShelf();
    QVBoxLayout* buildSheet();
    QHBoxLayout* buildButtons();
    void chooseFile();
    void readSelected();
    void showPrepared();
    void fitColumns();
    void connectPlanner();
    void openMakeAhead(bool open);
    void openAltitude();
    void showFaults(const std::vector<Error>& faults);
    QString describePlan() const;
    QString describeEnds() const;

    std::optional<PreparedClass> m_prepared;
    QListWidget* m_files;
    ScreenPanel* m_screen;
    QLabel* m_title;
    QLabel* m_plan;
    QLabel* m_ends;
    QLabel* m_logbookFault;
    void planOncePainted();

    ClassPlanner* m_planner;
    bool m_planWaits = false;  ///< for the page to stand on the screen
    ProspectPanel* m_prospect;
    SheetChart* m_chart;
    RunSheetModel* m_model;
    QTableView* m_table;
    MakeAheadPanel* m_ahead;
    QStackedWidget* m_lower;  ///< the table, or what could be made ahead
    bool m_stoppedChoosing = false;
    QPlainTextEdit* m_notes;
    QPushButton* m_makeAhead;
    QPushButton* m_papers;
    QPushButton* m_why;
    QPushButton* m_lists;
    QPushButton* m_live;
    QPushButton* m_rehearse;
    QComboBox* m_speed;
};

}  // namespace brinebell
