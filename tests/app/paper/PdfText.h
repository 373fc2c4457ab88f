// PdfText.h — what stands in a PDF, read back by a reader of another maker (pdftotext and pdfinfo of poppler).
#pragma once

#include <string>

namespace brinebell::test {

/// The words of the whole file in reading order, every run of white space as one blank.
std::string pdfText(const std::string& path);
int pdfPages(const std::string& path);

}  // namespace brinebell::test
