// ProspectPanel.h — what a run sheet is worth, in four short blocks: how good it is, how it will end, the latest times,
// and what its end hangs on.
#pragma once

#include <QWidget>

#include "desk/ClassShelf.h"

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace brinebell {

class ProspectPanel final : public QWidget {
    Q_OBJECT

public:
    explicit ProspectPanel(QWidget* parent = nullptr);

    void showSearching(const PlanProgress& progress);
    void showProspect(const Network& network, const Prospect& prospect);
    void showFault(const QString& words);  ///< why there is no plan
    void clear();

    QString quality() const;

signals:
    void stopWanted();

private:
    QLabel* addBlock(QHBoxLayout* row, const QString& head, int share, QPushButton* below = nullptr);

    QPushButton* m_stop;
    QLabel* m_quality;
    QLabel* m_ends;
    QLabel* m_latest;
    QLabel* m_drivers;
};

}  // namespace brinebell
