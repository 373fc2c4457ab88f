// ClosingPanel.h — everything that is still open before a class is closed, each with the key that settles it.
//
// Digits (or a click) settle a line at once: said, seen to be off, answered; a load is set aside with a reason. C held
// for a second (or the button) closes all the same, as far as the session allows it; the log keeps what was left.
#pragma once

#include <QFrame>
#include <vector>

#include "session/Closing.h"
#include "stage/AnswerGuard.h"
#include "stage/BoardType.h"
#include "stage/FitText.h"
#include "stage/OwnKeys.h"
#include "stage/PromptBox.h"

class QPushButton;

namespace brinebell {

/// One line for each open end: what is open, and what settles it. Parked questions come last.
std::vector<Choice> closingChoices(const Moment& moment);

/// What C held for a second would send: EndClass while the class is there, then CloseSession.
Command closingOverride(const Moment& moment);

class ClosingPanel final : public QFrame {
    Q_OBJECT

public:
    static constexpr std::size_t kMostLines = 5;

    explicit ClosingPanel(const Clock& inputClock, QWidget* parent = nullptr);

    void open(const Moment& moment);
    /// Again whenever the session has changed. What is asked counts as new when the lines are not the same.
    void present(const Moment& moment);
    void setType(const BoardType& type);
    /// Asks the held key what it has come to, as StagePage::pollKeys() does.
    void poll();
    bool isQuiet() const { return m_key.isQuiet(); }
    QString list() const;  ///< the lines as they stand

signals:
    void settled(const brinebell::Choice& choice, brinebell::Cause cause);
    void overridden(const brinebell::Command& command, brinebell::Cause cause);
    void pressed();  ///< something is held down: poll
    void dismissed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void pick(std::size_t index, Cause cause);
    void press(int key);
    void release(int key);
    void act(Press press);
    void dismiss();

    AnswerGuard m_guard;
    OneKey m_key;
    Cause m_cause = Cause::HeldKey;
    std::vector<Choice> m_choices;
    Command m_override;
    FitText* m_head;
    std::vector<QPushButton*> m_lines;
    FitText* m_more;
    PromptBox* m_close;
};

}  // namespace brinebell
