// SealPage.h — the seal check: what is due, and one load after the other as it was found.
//
// Each load is saved by itself and at once; what was not saved is asked for again at the next start.
#pragma once

#include <QWidget>
#include <vector>

#include "logbook/Afterwards.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QRadioButton;
class QSpinBox;
class QVBoxLayout;

namespace brinebell {

class SealPage final : public QWidget {
    Q_OBJECT

public:
    explicit SealPage(const Clock& clock, QWidget* parent = nullptr);

    /// Reads again what is open. A null logbook shows why.
    void showOpen(Logbook* logbook, const QString& whyNoLogbook = {});

    const std::vector<SealsOpen>& open() const { return m_open; }
    QString told() const;  ///< what stands at the top: what was saved, or what is wrong

signals:
    void leaveWanted();

private:
    QVBoxLayout* buildList();
    QVBoxLayout* buildLoad();
    QFormLayout* buildCounts();
    void fillList();
    void showLoad(int row);
    void follow();
    void save();
    bool tell(const std::vector<Command>& commands);
    void inform(const QString& words, bool isFault);
    const SealsOpen* chosen() const;
    QString missing() const;

    const Clock& m_clock;
    Logbook* m_logbook = nullptr;
    std::vector<SealsOpen> m_open;
    QLabel* m_told;
    QListWidget* m_list;
    QWidget* m_form;
    QLabel* m_load;
    QLabel* m_standing;
    QRadioButton* m_checked;
    QRadioButton* m_wentHome;
    QWidget* m_counts;
    QSpinBox* m_sealed;
    QSpinBox* m_unsealed;
    QSpinBox* m_broken;
    QPushButton* m_allSealed;
    QLabel* m_sum;
    QLabel* m_rule;
    QComboBox* m_unsealedWent;
    QComboBox* m_jarsWent;
    QLineEdit* m_by;
    QCheckBox* m_early;
    QPushButton* m_save;
};

/// For the front page: how many loads wait, since when and until when; empty where none does.
QString sealsOpenWords(const std::vector<SealsOpen>& open);

/// Whether one of them can be checked now, or should have been.
bool isAnySealDue(const std::vector<SealsOpen>& open);

}  // namespace brinebell
