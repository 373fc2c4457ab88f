// AltitudePage.h — why this altitude needs more: an illustration to show to a class, which changes no time.
//
// Its type is large enough to be read at arm's length. Escape closes it.
#pragma once

#include <QDialog>

#include "plan/Network.h"

class QLabel;

namespace brinebell {

class AltitudePage final : public QDialog {
    Q_OBJECT

public:
    AltitudePage(const Network& network, Length altitude, QWidget* parent = nullptr);

    QString words() const;  ///< all of its text

private:
    QLabel* addWords(const QString& text, const char* kind = "");
    QString physics(Length altitude) const;
    QString published(const Network& network) const;
    void setType();

    std::vector<QLabel*> m_labels;
};

}  // namespace brinebell
