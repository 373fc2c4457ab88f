// Paper.h — what is printed: a document of plain text in blocks and tables, put on pages for a printer or into a PDF.
//
// Black on white, readable without colour. Every page carries the title, its number and the safety notice. All text is
// plain: nothing from a file is read as markup.
#pragma once

#include <QPageSize>
#include <QString>
#include <QTextCursor>
#include <QTextDocument>
#include <memory>
#include <vector>

#include "base/Result.h"

class QPagedPaintDevice;

namespace brinebell {

class Paper {
public:
    /// `points`: size of ordinary text.
    explicit Paper(QString title, double points = 11.0);

    void heading(const QString& text);
    void paragraph(const QString& text, bool strong = false);
    void item(const QString& text);      ///< of a list, with a dash
    void tickItem(const QString& text);  ///< with a box to tick
    void note(const QString& text);      ///< smaller, below the item it belongs to
    void newPage();                      ///< what comes next begins a page
    enum class Head {
        FirstRow,     ///< stands again on every page
        FirstColumn,  ///< names of what stands beside them
    };
    /// Rows of equal length. `shares` of the width, in per cent.
    void table(const std::vector<QStringList>& rows, const std::vector<int>& shares, Head head = Head::FirstRow);

    const QString& title() const { return m_title; }
    QString plainText() const { return m_text->toPlainText(); }

    /// The number of pages that were painted.
    int paint(QPagedPaintDevice& device) const;

private:
    void block(const QString& text, double points, bool strong, double above);

    QString m_title;
    double m_points;
    std::unique_ptr<QTextDocument> m_text;
    QTextCursor m_cursor;
    bool m_breakBefore = false;
};

/// The size of paper that is usual where the machine stands.
QPageSize usualPageSize();

}  // namespace brinebell
