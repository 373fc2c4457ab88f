// PrintJob.h — one paper ready to go to a PDF, a printer or the preview.
#pragma once

#include <QPageLayout>
#include <QString>
#include <functional>

#include "paper/LabelSheet.h"
#include "paper/Paper.h"

class QPrinter;

namespace brinebell {

struct PrintJob {
    QString title;
    QPageLayout layout;
    std::function<void(QPagedPaintDevice&)> paint;
};

PrintJob jobOf(std::shared_ptr<const Paper> paper, const QPageSize& size);
/// Labels go to the edge of their sheet. `outlines` as in paintLabels(). Requires what paintLabels() requires.
PrintJob jobOf(std::vector<JarLabel> labels, const LabelSheet& sheet, int first, bool outlines);

/// Makes the file whole or leaves what was there. Error: Io.
Result<void> savePdf(const PrintJob& job, const QString& path);

/// The same for one paper. Error: Io.
Result<void> writePdf(const Paper& paper, const QString& path, const QPageSize& size);

/// Sets page and margins of `printer`; then the job may be painted on it.
void setUp(QPrinter& printer, const PrintJob& job);

}  // namespace brinebell
