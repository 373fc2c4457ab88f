// ResumePage.h — a live session was left without its end: take it up again, or go on without it.
#pragma once

#include <QWidget>

#include "logbook/Logbook.h"

class QLabel;
class QPushButton;

namespace brinebell {

class ResumePage final : public QWidget {
    Q_OBJECT

public:
    explicit ResumePage(QWidget* parent = nullptr);

    void setSession(const SessionInfo& info);
    void setFault(const QString& words);  ///< why it could not be taken up
    void focusResume();

signals:
    void resumeWanted(const QString& sessionId);
    void declined();

private:
    QLabel* m_words;
    QLabel* m_fault;
    QPushButton* m_resume;
    QString m_sessionId;
};

}  // namespace brinebell
