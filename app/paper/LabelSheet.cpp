#include "paper/LabelSheet.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QPagedPaintDevice>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "bridge/TimeText.h"
#include "logbook/BestBy.h"

namespace brinebell {

namespace {

constexpr double kPadding = 1.5;  // mm
constexpr double kMostPoints = 9.0;
constexpr double kLeastPoints = 4.0;
constexpr double kMillimetresInInch = 25.4;
constexpr int kMostLabels = 500;
constexpr double kOutlineMillimetres = 0.15;

struct LabelSheetWords {
    Q_DECLARE_TR_FUNCTIONS(LabelSheetWords)
};

// A label carries the day of its kitchen, which the machine's zone tells.
QDateTime localTime(Millis utc) {
    return QDateTime::fromMSecsSinceEpoch(utc.count());
}

QString dayOf(Millis utc) {
    return localTime(utc).date().toString(Qt::ISODate);
}

QString bestByWords(const JarLabel& label) {
    if (label.shelfLife.empty()) {
        return LabelSheetWords::tr("Best by: not recorded");
    }
    const std::chrono::seconds offset(localTime(label.cannedUtc).offsetFromUtc());
    const auto day = bestByDay(label.cannedUtc + offset, label.shelfLife);
    return day ? LabelSheetWords::tr("Best by %1 (%2)").arg(toQt(*day), toQt(label.shelfLife))
               : LabelSheetWords::tr("Best by: %1, from the day canned").arg(toQt(label.shelfLife));
}

QString wordsOf(const JarLabel& label) {
    QStringList lines;
    if (label.rehearsal) {
        lines << LabelSheetWords::tr("REHEARSAL – not for a jar");
    }
    lines << LabelSheetWords::tr("Canned %1  ·  lot %2").arg(dayOf(label.cannedUtc), toQt(label.lot));
    lines << bestByWords(label);
    lines << LabelSheetWords::tr("Allergens: %1").arg(toQt(label.allergens));
    lines << (label.sealsChecked ? LabelSheetWords::tr("Seal: checked %1").arg(dayOf(label.sealsUtc))
                                 : LabelSheetWords::tr("Seal: check by %1").arg(dayAndTime(label.sealsUtc)));
    lines << LabelSheetWords::tr("Refrigerate after opening. Made at %1").arg(toQt(label.madeAt));
    return lines.join(QLatin1Char('\n'));
}

QFont labelFont(double points, bool strong) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(points);
    font.setBold(strong);
    return font;
}

// The largest letters with which both texts stay inside.
double pointsThatFit(QPainter& painter, const QString& head, const QString& words, const QRectF& inside) {
    for (double points = kMostPoints; points > kLeastPoints; points -= 0.25) {
        painter.setFont(labelFont(points * 1.2, true));
        const QRectF top = painter.boundingRect(inside, Qt::TextWordWrap, head);
        painter.setFont(labelFont(points, false));
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
    painter.setFont(labelFont(points * 1.2, true));
    QRectF used;
    painter.drawText(inside, Qt::TextWordWrap, head, &used);
    painter.setFont(labelFont(points, false));
    painter.drawText(inside.adjusted(0, used.height(), 0, 0), Qt::TextWordWrap, words);
    painter.restore();
}

}  // namespace

QString faultIn(const LabelSheet& sheet) {
    const QSizeF page = sheet.page.size(QPageSize::Millimeter);
    const auto countable = [](int count) { return count >= 1 && count <= kMostLabels; };
    if (!countable(sheet.columns) || !countable(sheet.rows) || !countable(sheet.columns * sheet.rows)) {
        return LabelSheetWords::tr("a sheet has 1 to 500 labels");
    }
    for (const double length : {sheet.left, sheet.top, sheet.width, sheet.height, sheet.across, sheet.down}) {
        if (!std::isfinite(length)) {
            return LabelSheetWords::tr("a measure of the sheet is not a number");
        }
    }
    if (sheet.width < 15 || sheet.height < 10) {
        return LabelSheetWords::tr("a label is at least 15 mm wide and 10 mm high");
    }
    if ((sheet.columns > 1 && sheet.across < sheet.width) || (sheet.rows > 1 && sheet.down < sheet.height)) {
        return LabelSheetWords::tr("the labels would overlap");
    }
    const double right = sheet.left + (sheet.columns - 1) * sheet.across + sheet.width;
    const double bottom = sheet.top + (sheet.rows - 1) * sheet.down + sheet.height;
    if (sheet.left < 0 || sheet.top < 0 || right > page.width() + 0.5 || bottom > page.height() + 0.5) {
        return LabelSheetWords::tr("the labels need %1 x %2 mm and the page has %3 x %4 mm")
            .arg(right)
            .arg(bottom)
            .arg(page.width())
            .arg(page.height());
    }
    return {};
}

const std::vector<NamedSheet>& commonLabelSheets() {
    static const std::vector<NamedSheet> sheets{
        {QT_TRANSLATE_NOOP("LabelSheetWords", "30 on Letter, 66.7 x 25.4 mm"), LabelSheet{}},
        {QT_TRANSLATE_NOOP("LabelSheetWords", "10 on Letter, 101.6 x 50.8 mm"),
         {QPageSize(QPageSize::Letter), 2, 5, 4.0, 12.7, 101.6, 50.8, 106.4, 50.8}},
        {QT_TRANSLATE_NOOP("LabelSheetWords", "21 on A4, 63.5 x 38.1 mm"),
         {QPageSize(QPageSize::A4), 3, 7, 7.2, 15.1, 63.5, 38.1, 66.0, 38.1}},
        {QT_TRANSLATE_NOOP("LabelSheetWords", "8 on A4, 99.1 x 67.7 mm"),
         {QPageSize(QPageSize::A4), 2, 4, 4.7, 13.1, 99.1, 67.7, 101.6, 67.7}},
    };
    return sheets;
}

int paintLabels(const std::vector<JarLabel>& labels, const LabelSheet& sheet, int first, QPagedPaintDevice& device,
                bool outlines) {
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
            if (outlines) {
                painter.setPen(QPen(Qt::gray, kOutlineMillimetres * dots, Qt::DashLine));
                painter.drawRect(edge);
                painter.setPen(Qt::black);
            }
            paintLabel(painter, label, edge.adjusted(padding, padding, -padding, -padding));
        }
    }
    return painted;
}

int labelCount(const std::vector<JarLabel>& labels) {
    int count = 0;
    for (const JarLabel& label : labels) {
        count += label.noLabel.empty() ? label.jars : 0;
    }
    return count;
}

}  // namespace brinebell
