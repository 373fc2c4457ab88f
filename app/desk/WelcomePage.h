// WelcomePage.h — the first page of the first start: how high the kitchen lies, how this person reads, and nothing
// more.
//
// What is entered becomes a kitchen in the library and choices in the settings. It can be skipped, and is reached again
// from the settings.
#pragma once

#include <QWidget>

#include "Choices.h"
#include "desk/Fields.h"
#include "desk/Library.h"

class QLabel;

namespace brinebell {

class WelcomePage final : public QWidget {
    Q_OBJECT

public:
    explicit WelcomePage(Library& library, QWidget* parent = nullptr);
    void focusStart();
    QString faults() const;

    /// What has been typed so far, so that it can go into a page in another language.
    struct Typed {
        QString altitude, howKnown, distance;
    };
    Typed typed() const;
    void type(const Typed& typed);

signals:
    void languageChosen();  ///< and kept
    void skipped();
    /// The kitchen is in the library and the choices are kept. `classFile`: the demonstration, where it was wanted.
    void done(const QString& classFile);

private:
    void begin(bool demonstration);
    void showReading();
    Result<Length> altitude() const;
    Choices choices() const;
    Venue kitchen() const;
    bool showFaults(const Venue& venue);

    Library& m_library;
    ChoiceField* m_language;
    ChoiceField* m_units;
    LineField* m_altitude;
    LineField* m_howKnown;
    LineField* m_distance;
    QLabel* m_reading;
    QLabel* m_fault;
};

}  // namespace brinebell
