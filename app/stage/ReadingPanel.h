// ReadingPanel.h — a number from an instrument, put in with wet hands or typed: large digits, a unit, what it belongs
// to.
//
// Over the middle of the board, while clocks and cues go on. Digits and the point are typed or pressed; Up and Down (or
// the buttons) choose the unit, Tab what was measured, Enter puts it into the log, Escape goes back.
#pragma once

#include <QFrame>
#include <vector>

#include "bridge/Words.h"
#include "session/Reading.h"
#include "stage/AnswerGuard.h"
#include "stage/BoardType.h"
#include "stage/FitText.h"

class QGridLayout;
class QPushButton;

namespace brinebell {

/// What a reading may belong to: loads that are not finished, steps under way, or nothing in particular (both -1).
struct ReadingPlace {
    QString words;
    int activity = -1;
    int load = -1;
    bool operator==(const ReadingPlace&) const = default;
};
std::vector<ReadingPlace> readingPlaces(const Moment& moment);

class ReadingPanel final : public QFrame {
    Q_OBJECT

public:
    explicit ReadingPanel(const Clock& inputClock, QWidget* parent = nullptr);

    /// Shows itself with the keyboard in it. The unit is the one that was used last.
    void ask(std::vector<ReadingPlace> places);
    void setType(const BoardType& type);
    QString shown() const { return m_value->text(); }
    QString place() const { return m_place->text(); }

signals:
    void taken(const brinebell::Command& command, brinebell::Cause cause);
    void dismissed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool focusNextPrevChild(bool) override { return false; }  // Tab chooses what was measured

private:
    QWidget* buildPad();
    QWidget* buildUnits();
    QPushButton* addButton(QGridLayout* grid, int row, int column, const QString& words);
    void type(QChar digit);
    void rubOut();
    void chooseUnit(int unit);
    void choosePlace();
    void send(Cause cause);
    void dismiss();
    void showValue();

    AnswerGuard m_guard;
    FitText* m_value;
    FitText* m_place;
    FitText* m_foot;
    std::vector<QPushButton*> m_units;
    std::vector<ReadingPlace> m_places;
    std::size_t m_at = 0;
    int m_unit = 0;
    QString m_digits;
};

}  // namespace brinebell
