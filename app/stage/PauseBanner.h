// PauseBanner.h — over the place of "then": the class asks, since when, and which press goes on.
#pragma once

#include <QFrame>

#include "bridge/Words.h"
#include "stage/BoardType.h"
#include "stage/FitText.h"

namespace brinebell {

class PauseBanner final : public QFrame {
    Q_OBJECT

public:
    explicit PauseBanner(QWidget* parent = nullptr);
    void present(const Moment& moment);  ///< requires inQuestions(moment.state)
    void setType(const BoardType& type);
    QString length() const { return m_length->text(); }

private:
    FitText* m_head;
    FitText* m_length;
    FitText* m_foot;
};

}  // namespace brinebell
