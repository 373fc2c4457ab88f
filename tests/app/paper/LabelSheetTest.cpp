// Labels where the sheet has them, one for each jar that may have one.
#include "paper/LabelSheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <limits>

#include "PdfText.h"
#include "paper/PrintJob.h"

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
    label.cannedUtc = Millis(1'789'732'800'000);  // 2026-09-18T12:00:00Z, the same day from Honolulu to Tokyo
    label.sealsUtc = label.cannedUtc + std::chrono::hours(24);
    label.shelfLife = "Best within one year";
    label.lot = "20260918-1-3f0a";
    label.madeAt = "Salsa and Beans, Tamarack Grange Hall kitchen";
    label.allergens = "mustard";
    return label;
}

class Labels : public testing::Test {
protected:
    std::string path() const { return m_folder.filePath("labels.pdf").toStdString(); }
    /// How many labels.
    int write(const std::vector<JarLabel>& labels, const LabelSheet& sheet, int first = 0) {
        EXPECT_EQ(faultIn(sheet), QString());
        EXPECT_TRUE(savePdf(jobOf(labels, sheet, first, false), QString::fromStdString(path())));
        return labelCount(labels);
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
        for (const char* field : {"2026-09-18", "20260918-1-3f0a", "Best by 2027-09-18 (Best within one year)",
                                  "mustard", "check by", "Refrigerate after opening", "Tamarack Grange Hall"}) {
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
    EXPECT_EQ(labelCount({refused}), 0);
}

TEST_F(Labels, SheetThatDoesNotFitIsToldWithItsMeasures) {
    LabelSheet sheet;
    sheet.columns = 4;
    EXPECT_TRUE(faultIn(sheet).contains(QStringLiteral("mm")));
    sheet.columns = 3;
    sheet.across = 60;
    EXPECT_TRUE(faultIn(sheet).contains(QStringLiteral("overlap")));
}

TEST_F(Labels, NonsenseIsAlwaysAFaultAndNeverPainted) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    std::vector<LabelSheet> nonsense;
    const auto with = [&](auto change) {
        LabelSheet sheet;
        change(sheet);
        nonsense.push_back(sheet);
    };
    for (const double wrong : {nan, infinite, -infinite, -1.0, 1e300}) {
        with([&](LabelSheet& s) { s.left = wrong; });
        with([&](LabelSheet& s) { s.top = wrong; });
        with([&](LabelSheet& s) { s.width = wrong; });
        with([&](LabelSheet& s) { s.height = wrong; });
        with([&](LabelSheet& s) { s.across = wrong; });
        with([&](LabelSheet& s) { s.down = wrong; });
    }
    for (const int wrong : {0, -3, 501, std::numeric_limits<int>::max()}) {
        with([&](LabelSheet& s) { s.columns = wrong; });
        with([&](LabelSheet& s) { s.rows = wrong; });
    }
    with([](LabelSheet& s) { s.columns = s.rows = 65'536; });  // their product overflows
    with([](LabelSheet& s) { s.page = QPageSize(); });
    for (const LabelSheet& sheet : nonsense) {
        EXPECT_NE(faultIn(sheet), QString());
    }
    EXPECT_EQ(nonsense.size(), 40U);
}

}  // namespace
}  // namespace brinebell
