#include "paper/PrintJob.h"

#include <QBuffer>
#include <QPdfWriter>
#include <QPrinter>

#include "document/Document.h"

namespace brinebell {

namespace {

constexpr double kMarginMillimetres = 15.0;
constexpr int kPdfResolution = 600;  // dots per inch; text is vectors, only its rounding hangs on this

}  // namespace

PrintJob jobOf(std::shared_ptr<const Paper> paper, const QPageSize& size) {
    const QMarginsF margins(kMarginMillimetres, kMarginMillimetres, kMarginMillimetres, kMarginMillimetres);
    const QString title = paper->title();
    return {title, QPageLayout(size, QPageLayout::Portrait, margins, QPageLayout::Millimeter),
            [paper = std::move(paper)](QPagedPaintDevice& device) { paper->paint(device); }};
}

PrintJob jobOf(std::vector<JarLabel> labels, const LabelSheet& sheet, int first, bool outlines) {
    QPageLayout layout(sheet.page, QPageLayout::Portrait, QMarginsF());
    layout.setMode(QPageLayout::FullPageMode);
    return {{}, layout, [labels = std::move(labels), sheet, first, outlines](QPagedPaintDevice& device) {
                paintLabels(labels, sheet, first, device, outlines);
            }};
}

Result<void> savePdf(const PrintJob& job, const QString& path) {
    QByteArray bytes;
    {
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        writer.setResolution(kPdfResolution);
        writer.setPageLayout(job.layout);
        writer.setTitle(job.title);
        writer.setCreator(QStringLiteral("Brinebell"));
        job.paint(writer);
    }
    return writeFileWhole(path.toStdString(),
                          std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

Result<void> writePdf(const Paper& paper, const QString& path, const QPageSize& size) {
    // Not its owner: the job ends here.
    return savePdf(jobOf(std::shared_ptr<const Paper>(std::shared_ptr<void>(), &paper), size), path);
}

void setUp(QPrinter& printer, const PrintJob& job) {
    printer.setFullPage(job.layout.mode() == QPageLayout::FullPageMode);
    printer.setPageLayout(job.layout);
    printer.setDocName(job.title);
    printer.setCreator(QStringLiteral("Brinebell"));
}

}  // namespace brinebell
