// ChoicePanel.h — asks which, and whether, without a dialog: over the middle of the board, while clocks and
// cues go on.
//
// Choices are numbered buttons (digits press them). A choice that wants a reason or a second look is asked
// about once more before it is sent. Escape goes back and changes nothing.
#pragma once

#include <QFrame>

#include "stage/AnswerGuard.h"
#include "stage/OwnKeys.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QStackedLayout;
class QVBoxLayout;

namespace brinebell {

class ChoicePanel final : public QFrame {
    Q_OBJECT

public:
    enum class Ask { Once, Confirm };

    explicit ChoicePanel(const Clock& inputClock, QWidget* parent = nullptr);

    /// Shows itself with the keyboard in it. `title` is the question.
    void ask(const QString& title, std::vector<Choice> choices, Ask ask);

signals:
    void chosen(const brinebell::Command& command, brinebell::Cause cause);
    void drillChosen(brinebell::Drill drill);
    void tooSoon();  ///< not taken: the question had only just come onto the screen
    void dismissed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* buildList();
    QWidget* buildConfirmation();
    void choose(std::size_t index, Cause cause);
    void confirm(Cause cause);
    void pick(std::size_t index, Cause cause);
    void send(Cause cause);
    void dismiss();

    AnswerGuard m_guard;
    QStackedLayout* m_pages;
    QLabel* m_title;
    QVBoxLayout* m_buttons;
    QLabel* m_question;
    QLabel* m_reasonLabel;
    QLineEdit* m_reason;
    QPushButton* m_confirm;
    std::vector<Choice> m_choices;
    std::size_t m_picked = 0;
    Ask m_ask = Ask::Once;
};

}  // namespace brinebell
