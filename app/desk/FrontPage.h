// FrontPage.h — the first page of a start without a class: where to go, and what is wrong or waits.
//
// It is kept light, because it is what a start waits for: a few labels and buttons, no table, nothing read from files.
#pragma once

#include <QWidget>

class QFrame;
class QGridLayout;
class QLabel;
class QPushButton;

namespace brinebell {

class FrontPage final : public QWidget {
    Q_OBJECT

public:
    explicit FrontPage(QWidget* parent = nullptr);

    void setFault(const QString& words);  ///< why nothing is kept; empty: nothing is wrong
    /// What waits for its seal check; empty: nothing. Where some is due, its button gets the keyboard.
    void setSeals(const QString& words, bool isDue);
    void focusStart();

signals:
    void prepareWanted();
    void reviewWanted();
    void soundWanted();
    void classesWanted();
    void kitchensWanted();
    void recipesWanted();
    void settingsWanted();
    void sealsWanted();
    void papersWanted();
    void exchangeWanted();

private:
    QFrame* buildSeals();
    QPushButton* addChoice(const QString& text, const QString& what);

    QLabel* m_fault;
    QFrame* m_seals;
    QLabel* m_sealWords;
    QPushButton* m_checkSeals;
    bool m_sealsDue = false;
    QGridLayout* m_choices;
    QPushButton* m_prepare;
};

}  // namespace brinebell
