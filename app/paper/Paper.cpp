#include "paper/Paper.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QCoreApplication>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>
#include <QTextBlock>
#include <QTextTable>

#include "document/Document.h"
#include "paper/SafetyNotice.h"

namespace brinebell {

namespace {

constexpr double kHeadingGrowth = 1.35;
constexpr double kFootPoints = 7.5;
constexpr double kMarginMillimetres = 15.0;
constexpr double kFootMillimetres = 14.0;
constexpr int kResolution = 300;  // dots per inch; text is vectors, only its rounding hangs on this

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

void Paper::fixed(const QString& text) {
    for (const QString& line : text.split(QLatin1Char('\n'))) {
        block(line, m_points, false, 0);
        QTextCharFormat letters = m_cursor.charFormat();
        QFont font(QStringLiteral("DejaVu Sans Mono"));
        font.setPointSizeF(m_points);
        letters.setFont(font);
        m_cursor.movePosition(QTextCursor::StartOfBlock, QTextCursor::KeepAnchor);
        m_cursor.setCharFormat(letters);
        m_cursor.movePosition(QTextCursor::End);
    }
}

void Paper::newPage() {
    m_breakBefore = true;
}

void Paper::table(const std::vector<QStringList>& rows, const std::vector<int>& shares) {
    QTextTableFormat format;
    format.setBorder(0.75);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderCollapse(true);
    format.setBorderBrush(Qt::black);
    format.setCellPadding(m_points / 3);
    format.setHeaderRowCount(1);
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
        QTextCharFormat letters;
        letters.setFont(fontOf(m_points, r == 0));
        for (int c = 0; c < rows[r].size(); ++c) {
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
        painter.setFont(fontOf(kFootPoints));
        const QRectF line(0, body.height() + foot * 0.15, whole.width(), foot * 0.85);
        painter.drawLine(line.topLeft(), line.topRight());
        const QString number =
            QCoreApplication::translate("Paper", "%1  ·  page %2 of %3").arg(m_title).arg(page + 1).arg(pages);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                         number + QLatin1Char('\n') + safetyNotice());
    }
    return pages;
}

Result<void> writePdf(const Paper& paper, const QString& path, const QPageSize& size) {
    QByteArray bytes;
    {
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        writer.setResolution(kResolution);
        writer.setPageSize(size);
        writer.setPageMargins(QMarginsF(kMarginMillimetres, kMarginMillimetres, kMarginMillimetres, kMarginMillimetres),
                              QPageLayout::Millimeter);
        writer.setTitle(paper.title());
        writer.setCreator(QStringLiteral("Brinebell"));
        paper.paint(writer);
    }
    return writeFileWhole(path.toStdString(),
                          std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

QPageSize usualPageSize() {
    return QPageSize(QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4);
}

}  // namespace brinebell
