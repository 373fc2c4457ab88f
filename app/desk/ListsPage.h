// ListsPage.h — what the chosen class wants before it: shopping, equipment, work before class, when to arrive.
//
// To be read here, copied as text, or saved as a PDF with boxes to tick.
#pragma once

#include <QWidget>
#include <array>

#include "desk/ListWords.h"
#include "paper/Paper.h"

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace brinebell {

/// The lists with boxes to tick.
Paper listsPaper(const ClassLists& lists);

class ListsPage final : public QWidget {
    Q_OBJECT

public:
    explicit ListsPage(QWidget* parent = nullptr);
    void setClass(const PreparedClass& prepared);
    void clear(const QString& why);  ///< no class, or no lists of it
    QString text() const;
    void focusStart();
    /// Whole or not at all; the answer stands on the page.
    bool savePdf(const QString& path);

signals:
    void leaveWanted();

private:
    void copyText();
    void askForPdf();
    void tell(const QString& words, bool isFault);

    ClassLists m_lists;
    QLabel* m_title;
    QLabel* m_told;
    std::array<QPlainTextEdit*, 3> m_texts{};
    QPushButton* m_copy;
    QPushButton* m_pdf;
};

}  // namespace brinebell
