// MakeAheadPanel.h — what to make before class so that it fits its slot: the smallest set, and what each stage saves.
#pragma once

#include <QWidget>

#include "plan/MakeAhead.h"
#include "plan/Network.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace brinebell {

class MakeAheadPanel final : public QWidget {
    Q_OBJECT

public:
    explicit MakeAheadPanel(QWidget* parent = nullptr);

    void showTrying(int sets, int ofSets);
    /// `stopped`: somebody ended the search before it was over.
    void showAnswer(const ClassPlan& plan, const MakeAheadAnswer& answer, bool stopped);
    void showFault(const QString& words);

    QString verdict() const;
    int stages() const;

signals:
    void stopWanted();

private:
    void addStage(const ClassPlan& plan, const StageChoice& stage, bool isChosen);

    QLabel* m_verdict;
    QLabel* m_ends;
    QTableWidget* m_stages;
    QPushButton* m_stop;
};

}  // namespace brinebell
