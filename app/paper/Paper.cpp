#include "paper/Paper.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QLocale>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QTextBlock>
#include <QTextTable>

#include "paper/SafetyNotice.h"

namespace brinebell {

namespace {

constexpr double kHeadingGrowth = 1.35;
constexpr double kFootPoints = 7.5;
constexpr double kFootMillimetres = 14.0;
constexpr double kFootLineMillimetres = 0.2;

QFont fontOf(double points, bool strong = false) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(points);
    font.setBold(strong);
    return font;
}

double dots(const QPagedPaintDevice& device, double millimetres) {
    return millimetres / 25.4 * device.logicalDpiY();
}

}  // namespace

Paper::Paper(QString title, double points)
    : m_title(std::move(title)), m_points(points), m_text(std::make_unique<QTextDocument>()), m_cursor(m_text.get()) {
    m_text->setDefaultFont(fontOf(points));
    m_text->setDocumentMargin(0);
    m_text->setUndoRedoEnabled(false);
    block(m_title, points * kHeadingGrowth * kHeadingGrowth, true, 0);
}

void Paper::block(const QString& text, double points, bool strong, double above) {
    QTextBlockFormat format;
    format.setTopMargin(above);
    if (m_breakBefore) {
        format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
        m_breakBefore = false;
    }
    QTextCharFormat letters;
    letters.setFont(fontOf(points, strong));
    m_cursor.movePosition(QTextCursor::End);
    // A new document begins with an empty block.
    if (m_text->isEmpty()) {
        m_cursor.setBlockFormat(format);
        m_cursor.setCharFormat(letters);
    } else {
        m_cursor.insertBlock(format, letters);
    }
    m_cursor.insertText(text, letters);
}

void Paper::heading(const QString& text) {
    block(text, m_points * kHeadingGrowth, true, m_points);
}

void Paper::paragraph(const QString& text, bool strong) {
    block(text, m_points, strong, m_points / 3);
}

void Paper::item(const QString& text) {
    block(QStringLiteral("–  ") + text, m_points, false, m_points / 4);
}

void Paper::tickItem(const QString& text) {
    block(QStringLiteral("☐  ") + text, m_points, false, m_points / 3);
}

void Paper::note(const QString& text) {
    constexpr double kSmaller = 0.85;
    block(text, m_points * kSmaller, false, 0);
    QTextBlockFormat format = m_cursor.blockFormat();
    format.setLeftMargin(m_points * 2);
    m_cursor.setBlockFormat(format);
}

void Paper::newPage() {
    m_breakBefore = true;
}

void Paper::table(const std::vector<QStringList>& rows, const std::vector<int>& shares, Head head) {
    QTextTableFormat format;
    format.setBorder(1);  // anything less is not drawn
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderCollapse(true);
    format.setBorderBrush(Qt::black);
    format.setCellPadding(m_points / 3);
    format.setHeaderRowCount(head == Head::FirstRow ? 1 : 0);
    format.setTopMargin(m_points / 2);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    QVector<QTextLength> widths;
    for (const int share : shares) {
        widths.append(QTextLength(QTextLength::PercentageLength, share));
    }
    format.setColumnWidthConstraints(widths);
    m_cursor.movePosition(QTextCursor::End);
    QTextTable* made = m_cursor.insertTable(static_cast<int>(rows.size()), static_cast<int>(shares.size()), format);
    for (std::size_t r = 0; r < rows.size(); ++r) {
        for (int c = 0; c < rows[r].size(); ++c) {
            QTextCharFormat letters;
            letters.setFont(fontOf(m_points, head == Head::FirstRow ? r == 0 : c == 0));
            made->cellAt(static_cast<int>(r), c).firstCursorPosition().insertText(rows[r][c], letters);
        }
    }
    m_cursor.movePosition(QTextCursor::End);
}

int Paper::paint(QPagedPaintDevice& device) const {
    const std::unique_ptr<QTextDocument> text(m_text->clone());
    text->documentLayout()->setPaintDevice(&device);
    QPainter painter(&device);
    const QRectF whole(QPointF(0, 0), QSizeF(device.width(), device.height()));
    const double foot = dots(device, kFootMillimetres);
    const QSizeF body(whole.width(), whole.height() - foot);
    text->setPageSize(body);
    const int pages = text->pageCount();
    for (int page = 0; page < pages; ++page) {
        if (page > 0) {
            device.newPage();
        }
        painter.save();
        painter.translate(0, -page * body.height());
        QAbstractTextDocumentLayout::PaintContext context;
        context.palette.setColor(QPalette::Text, Qt::black);
        context.clip = QRectF(0, page * body.height(), body.width(), body.height());
        painter.setClipRect(context.clip);
        text->documentLayout()->draw(&painter, context);
        painter.restore();
        // A table leaves its own pen behind.
        painter.setPen(QPen(Qt::black, dots(device, kFootLineMillimetres)));
        painter.setFont(fontOf(kFootPoints));
        const QRectF line(0, body.height() + foot * 0.25, whole.width(), foot * 0.75);
        const double above = body.height() + foot * 0.15;
        painter.drawLine(QPointF(0, above), QPointF(whole.width(), above));
        const QString number =
            QCoreApplication::translate("Paper", "%1  ·  page %2 of %3").arg(m_title).arg(page + 1).arg(pages);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                         number + QLatin1Char('\n') + safetyNotice());
    }
    return pages;
}

QPageSize usualPageSize() {
    return QPageSize(QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4);
}

}  // namespace brinebell
