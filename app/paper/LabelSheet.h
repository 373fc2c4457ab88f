// LabelSheet.h — jar labels on a sheet of labels, given by its measures.
#pragma once

#include <QPageSize>
#include <QString>
#include <vector>

#include "logbook/BatchRecord.h"

class QPagedPaintDevice;

namespace brinebell {

/// All lengths in millimetres, from the top left corner of the page. Invariant: faultIn() is empty.
struct LabelSheet {
    QPageSize page{QPageSize::Letter};
    int columns = 3;
    int rows = 10;
    double left = 4.8;  ///< to the first label
    double top = 12.7;
    double width = 66.7;  ///< of a label
    double height = 25.4;
    double across = 69.8;  ///< from one label's left edge to the next one's
    double down = 25.4;    ///< from one label's top edge to the next one's
};

/// Why labels cannot be printed on it, in words; empty when they can.
QString faultIn(const LabelSheet& sheet);

/// Measures of sheets that are sold in many places (common practice; measure yours): name and sheet.
struct NamedSheet {
    const char* name;
    LabelSheet sheet;
};
const std::vector<NamedSheet>& commonLabelSheets();

/// One label for every jar of every load that may have one, beginning at place `first` (0 is top left) so that a sheet
/// that was begun can be used up. `outlines`: the edges of the labels as well, to see where they fall. The number of
/// labels painted. Requires faultIn() empty and 0 <= first < columns x rows.
int paintLabels(const std::vector<JarLabel>& labels, const LabelSheet& sheet, int first, QPagedPaintDevice& device,
                bool outlines = false);

/// How many labels that will be.
int labelCount(const std::vector<JarLabel>& labels);

}  // namespace brinebell
