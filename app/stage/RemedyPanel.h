// RemedyPanel.h — all that would help a late class, over the middle of the board. It changes nothing.
#pragma once

#include <QFrame>

#include "stage/BoardType.h"
#include "stage/BoardView.h"
#include "stage/FitText.h"

namespace brinebell {

class RemedyPanel final : public QFrame {
    Q_OBJECT

public:
    explicit RemedyPanel(QWidget* parent = nullptr);
    void present(const RemedyView& view);
    void setType(const BoardType& type);
    QString list() const { return m_list->text(); }

private:
    FitText* m_head;
    FitText* m_list;
};

}  // namespace brinebell
