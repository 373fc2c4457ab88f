// SettingsPage.h — how this person reads: language, units, clock, decimals, look, the size of the screen.
//
// What is chosen is kept and put on at once; there is nothing to confirm. Files are never changed by it.
#pragma once

#include <QWidget>

#include "Choices.h"
#include "desk/Fields.h"

namespace brinebell {

class ScreenPanel;

class SettingsPage final : public QWidget {
    Q_OBJECT

public:
    explicit SettingsPage(QWidget* parent = nullptr);
    ScreenPanel& screenPanel() { return *m_screen; }
    /// Puts the keyboard on the field of this path ("choice.units"); empty: the first.
    void focusField(const QString& path);
    QString focusedField() const;

signals:
    void changed();  ///< and kept: every page is to be made anew
    void welcomeWanted();
    void leaveWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void keep();

    ChoiceField* m_language;
    ChoiceField* m_units;
    ChoiceField* m_clock;
    ChoiceField* m_decimal;
    LineField* m_distance;
    ScreenPanel* m_screen;
};

}  // namespace brinebell
