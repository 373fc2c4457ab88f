#include "paper/LabelSheet.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <QPdfWriter>
#include <algorithm>

#include "bridge/TimeText.h"
#include "document/Document.h"

namespace brinebell {

namespace {

constexpr double kPadding = 1.5;  // mm
constexpr double kMostPoints = 9.0;
constexpr double kLeastPoints = 4.0;
constexpr double kMillimetresInInch = 25.4;
constexpr int kResolution = 600;

QString tr(const char* text) {
    return QCoreApplication::translate("LabelSheet", text);
}

QString wordsOf(const JarLabel& label) {
    QStringList lines;
    if (label.rehearsal) {
        lines << tr("REHEARSAL – not for a jar");
    }
    lines << tr("Canned %1  ·  lot %2").arg(toQt(label.canned), toQt(label.lot));
    lines << tr("Keeps: %1").arg(toQt(label.bestBy));
    lines << tr("Allergens: %1").arg(toQt(label.allergens));
    lines << tr("Seal: %1").arg(toQt(label.seals));
    lines << tr("Refrigerate after opening. Made at %1").arg(toQt(label.madeAt));
    return lines.join(QLatin1Char('\n'));
}

QFont fontOf(double points, bool strong) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(points);
    font.setBold(strong);
    return font;
}

// The largest letters with which both texts stay inside.
double pointsThatFit(QPainter& painter, const QString& head, const QString& words, const QRectF& inside) {
    for (double points = kMostPoints; points > kLeastPoints; points -= 0.25) {
        painter.setFont(fontOf(points * 1.2, true));
        const QRectF top = painter.boundingRect(inside, Qt::TextWordWrap, head);
        painter.setFont(fontOf(points, false));
        const QRectF rest = painter.boundingRect(inside, Qt::TextWordWrap, words);
        if (top.height() + rest.height() <= inside.height() && std::max(top.width(), rest.width()) <= inside.width()) {
            return points;
        }
    }
    return kLeastPoints;
}

void paintLabel(QPainter& painter, const JarLabel& label, const QRectF& inside) {
    const QString head = toQt(label.contents);
    const QString words = wordsOf(label);
    const double points = pointsThatFit(painter, head, words, inside);
    painter.save();
    painter.setClipRect(inside);
    painter.setFont(fontOf(points * 1.2, true));
    QRectF used;
    painter.drawText(inside, Qt::TextWordWrap, head, &used);
    painter.setFont(fontOf(points, false));
    painter.drawText(inside.adjusted(0, used.height(), 0, 0), Qt::TextWordWrap, words);
    painter.restore();
}

}  // namespace

QString faultIn(const LabelSheet& sheet) {
    const QSizeF page = sheet.page.size(QPageSize::Millimeter);
    if (sheet.columns < 1 || sheet.rows < 1 || sheet.columns * sheet.rows > 500) {
        return tr("a sheet has 1 to 500 labels");
    }
    if (sheet.width < 15 || sheet.height < 10) {
        return tr("a label is at least 15 mm wide and 10 mm high");
    }
    if ((sheet.columns > 1 && sheet.across < sheet.width) || (sheet.rows > 1 && sheet.down < sheet.height)) {
        return tr("the labels would overlap");
    }
    const double right = sheet.left + (sheet.columns - 1) * sheet.across + sheet.width;
    const double bottom = sheet.top + (sheet.rows - 1) * sheet.down + sheet.height;
    if (sheet.left < 0 || sheet.top < 0 || right > page.width() + 0.5 || bottom > page.height() + 0.5) {
        return tr("the labels need %1 x %2 mm and the page has %3 x %4 mm")
            .arg(right)
            .arg(bottom)
            .arg(page.width())
            .arg(page.height());
    }
    return {};
}

const std::vector<NamedSheet>& commonLabelSheets() {
    static const std::vector<NamedSheet> sheets{
        {"30 on Letter, 66.7 x 25.4 mm", LabelSheet{}},
        {"10 on Letter, 101.6 x 50.8 mm", {QPageSize(QPageSize::Letter), 2, 5, 4.0, 12.7, 101.6, 50.8, 106.4, 50.8}},
        {"21 on A4, 63.5 x 38.1 mm", {QPageSize(QPageSize::A4), 3, 7, 7.2, 15.1, 63.5, 38.1, 66.0, 38.1}},
        {"8 on A4, 99.1 x 67.7 mm", {QPageSize(QPageSize::A4), 2, 4, 4.7, 13.1, 99.1, 67.7, 101.6, 67.7}},
    };
    return sheets;
}

int paintLabels(const std::vector<JarLabel>& labels, const LabelSheet& sheet, int first, QPagedPaintDevice& device) {
    QPainter painter(&device);
    const double dots = device.logicalDpiX() / kMillimetresInInch;
    const int onPage = sheet.columns * sheet.rows;
    int place = first;
    int painted = 0;
    for (const JarLabel& label : labels) {
        for (int jar = 0; jar < label.jars && label.noLabel.empty(); ++jar, ++place, ++painted) {
            if (place > first && place % onPage == 0) {
                device.newPage();
            }
            const int here = place % onPage;
            const QRectF edge((sheet.left + (here % sheet.columns) * sheet.across) * dots,
                              (sheet.top + (here / sheet.columns) * sheet.down) * dots, sheet.width * dots,
                              sheet.height * dots);
            const double padding = kPadding * dots;
            paintLabel(painter, label, edge.adjusted(padding, padding, -padding, -padding));
        }
    }
    return painted;
}

Result<int> writeLabelsPdf(const std::vector<JarLabel>& labels, const LabelSheet& sheet, int first,
                           const QString& path) {
    const QString fault = faultIn(sheet);
    if (!fault.isEmpty()) {
        return fail(ErrorCode::InvalidInput, fault.toStdString());
    }
    if (first < 0 || first >= sheet.columns * sheet.rows) {
        return fail(ErrorCode::InvalidInput, "there is no such place on the sheet");
    }
    QByteArray bytes;
    int painted = 0;
    {
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        writer.setResolution(kResolution);
        writer.setPageSize(sheet.page);
        writer.setPageMargins(QMarginsF());
        writer.setCreator(QStringLiteral("Brinebell"));
        painted = paintLabels(labels, sheet, first, writer);
    }
    if (painted == 0) {
        return fail(ErrorCode::InvalidInput, "no jar of this session may have a label");
    }
    const Result<void> written =
        writeFileWhole(path.toStdString(), std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    return written ? Result<int>(painted) : tl::unexpected(written.error());
}

}  // namespace brinebell
