// FrontPage.h — the first page of a start without a class: where to go, and what is wrong or waits.
//
// It is kept light, because it is what a start waits for: a few labels and buttons, no table, nothing read from files.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace brinebell {

class FrontPage final : public QWidget {
    Q_OBJECT

public:
    explicit FrontPage(QWidget* parent = nullptr);

    void setFault(const QString& words);  ///< why nothing is kept; empty: nothing is wrong
    void focusStart();

signals:
    void prepareWanted();
    void reviewWanted();
    void soundWanted();
    void kitchensWanted();
    void recipesWanted();
    void settingsWanted();

private:
    QPushButton* addChoice(QVBoxLayout& page, const QString& text, const QString& what);

    QLabel* m_fault;
    QPushButton* m_prepare;
};

}  // namespace brinebell
