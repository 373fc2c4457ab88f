// Labels where the sheet has them, one for each jar that may have one.
#include "paper/LabelSheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "PdfText.h"

namespace brinebell {
namespace {

using test::pdfPages;
using test::pdfText;
using testing::HasSubstr;
using testing::Not;

JarLabel labelFor(int jars) {
    JarLabel label;
    label.contents = "Chile Salsa";
    label.jars = jars;
    label.canned = "2026-09-18";
    label.lot = "20260918-1-3f0a";
    label.madeAt = "Salsa and Beans, Tamarack Grange Hall kitchen";
    label.bestBy = "within one year (from the day canned)";
    label.allergens = "mustard";
    label.seals = "check by 2026-09-19 02:00:00 UTC";
    return label;
}

class Labels : public testing::Test {
protected:
    std::string path() const { return m_folder.filePath("labels.pdf").toStdString(); }
    Result<int> write(const std::vector<JarLabel>& labels, const LabelSheet& sheet, int first = 0) {
        return writeLabelsPdf(labels, sheet, first, QString::fromStdString(path()));
    }
    QTemporaryDir m_folder;
};

TEST_F(Labels, EveryCommonSheetFitsItsPage) {
    ASSERT_GE(commonLabelSheets().size(), 4U);
    for (const NamedSheet& named : commonLabelSheets()) {
        EXPECT_EQ(faultIn(named.sheet), QString()) << named.name;
    }
}

TEST_F(Labels, EveryJarGetsOneWithEveryField) {
    for (const NamedSheet& named : commonLabelSheets()) {
        ASSERT_EQ(write({labelFor(7)}, named.sheet), 7) << named.name;
        const std::string text = pdfText(path());
        std::size_t jars = 0;
        for (std::size_t at = text.find("Chile Salsa"); at != std::string::npos;
             at = text.find("Chile Salsa", at + 1)) {
            ++jars;
        }
        EXPECT_EQ(jars, 7U) << named.name;
        for (const char* field : {"2026-09-18", "20260918-1-3f0a", "within one year", "mustard", "check by",
                                  "Refrigerate after opening", "Tamarack Grange Hall"}) {
            EXPECT_THAT(text, HasSubstr(field)) << named.name;
        }
    }
}

TEST_F(Labels, GoOnAtThePlaceWhereASheetWasBegun) {
    const LabelSheet sheet = commonLabelSheets()[2].sheet;  // 21 on a page
    EXPECT_EQ(write({labelFor(7)}, sheet, 14), 7);
    EXPECT_EQ(pdfPages(path()), 1);
    EXPECT_EQ(write({labelFor(7)}, sheet, 15), 7);
    EXPECT_EQ(pdfPages(path()), 2);
}

TEST_F(Labels, JarsThatWereNotCannedGetNone) {
    JarLabel refused;
    refused.contents = "Dilled Beans";
    refused.noLabel = "set aside: boil lost";
    EXPECT_EQ(write({refused, labelFor(2)}, commonLabelSheets()[0].sheet), 2);
    EXPECT_THAT(pdfText(path()), Not(HasSubstr("Dilled Beans")));
    EXPECT_EQ(write({refused}, commonLabelSheets()[0].sheet).error().code, ErrorCode::InvalidInput);
}

TEST_F(Labels, SheetThatDoesNotFitIsToldWithItsMeasures) {
    LabelSheet sheet;
    sheet.columns = 4;
    EXPECT_TRUE(faultIn(sheet).contains(QStringLiteral("mm")));
    EXPECT_FALSE(write({labelFor(1)}, sheet));
    sheet.columns = 3;
    sheet.across = 60;
    EXPECT_TRUE(faultIn(sheet).contains(QStringLiteral("overlap")));
}

}  // namespace
}  // namespace brinebell
