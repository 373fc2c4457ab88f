// LabelForm.h — a sheet of labels by its measures: chosen from the common ones, or measured; kept for the next time.
#pragma once

#include <QWidget>
#include <vector>

#include "paper/LabelSheet.h"

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QSpinBox;

namespace brinebell {

class LabelForm final : public QWidget {
    Q_OBJECT

public:
    explicit LabelForm(QWidget* parent = nullptr);

    LabelSheet sheet() const;
    int first() const;      ///< place of the first label, from 0
    QString fault() const;  ///< why no label can be printed on it; empty where it can
    void setSheet(const LabelSheet& sheet);
    void setFirst(int place);  ///< from 0
    void setPreset(int index);

signals:
    void changed();

private:
    QDoubleSpinBox* length(QFormLayout& form, const QString& name);
    QSpinBox* count(QFormLayout& form, const QString& name, int most);
    void restore();
    void keep() const;
    void follow();

    QComboBox* m_preset;
    QComboBox* m_page;
    QSpinBox* m_columns;
    QSpinBox* m_rows;
    QDoubleSpinBox* m_left;
    QDoubleSpinBox* m_top;
    QDoubleSpinBox* m_width;
    QDoubleSpinBox* m_height;
    QDoubleSpinBox* m_gapAcross;
    QDoubleSpinBox* m_gapDown;
    QSpinBox* m_first;
    QLabel* m_fault;
    bool m_isSetting = false;
};

}  // namespace brinebell
