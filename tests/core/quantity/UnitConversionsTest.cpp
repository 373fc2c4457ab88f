// Holds every unit the readers know to GNU Units, through the table that
// tests/reference/make-unit-conversions writes.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <span>
#include <string>
#include <vector>

#include "quantity/ReadQuantity.h"
#include "quantity/Units.h"

namespace brinebell {
namespace {

struct Conversion {
    std::string text;
    std::string kind;
    std::string siValue;
};

std::vector<std::string> splitCsvLine(const std::string& line) {
    std::vector<std::string> fields(1);
    bool inQuotes = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool doubled = inQuotes && line[i] == '"' && i + 1 < line.size() && line[i + 1] == '"';
        if (doubled) {
            fields.back() += '"';
            ++i;
        } else if (line[i] == '"') {
            inQuotes = !inQuotes;
        } else if (line[i] == ',' && !inQuotes) {
            fields.emplace_back();
        } else {
            fields.back() += line[i];
        }
    }
    return fields;
}

std::vector<Conversion> readTable() {
    std::ifstream file(BRINEBELL_TEST_DATA "/unit-conversions.csv");
    std::vector<Conversion> table;
    std::string line;
    std::getline(file, line);  // the source
    std::getline(file, line);  // the names of the columns
    while (std::getline(file, line)) {
        const auto fields = splitCsvLine(line);
        if (fields.size() == 3) {
            table.push_back({fields[0], fields[1], fields[2]});
        }
    }
    return table;
}

std::vector<Conversion> rowsOf(const std::string& kind) {
    std::vector<Conversion> rows = readTable();
    std::erase_if(rows, [&](const Conversion& row) { return row.kind != kind; });
    return rows;
}

// "-85.9536" metres as -85'953'600'000 nanometres, without passing through a double.
std::int64_t exactNanometres(const std::string& metres) {
    const bool negative = metres.starts_with('-');
    std::int64_t value = 0;
    int places = -1;
    for (const char c : metres.substr(negative ? 1 : 0)) {
        if (c == '.') {
            places = 0;
        } else {
            value = value * 10 + (c - '0');
            places += places >= 0 ? 1 : 0;
        }
    }
    for (int i = std::max(places, 0); i < 9; ++i) {
        value *= 10;
    }
    return negative ? -value : value;
}

// Compares each row of `kind`, read and turned into its SI unit by `inSi`, within a relative 1e-9; gives the
// row count.
template <class ReadInSi>
std::size_t compareRows(const std::string& kind, ReadInSi readInSi) {
    const auto rows = rowsOf(kind);
    for (const Conversion& row : rows) {
        const Result<double> value = readInSi(row.text);
        if (!value) {
            ADD_FAILURE() << value.error().message;
            continue;
        }
        const double expected = std::stod(row.siValue);
        EXPECT_NEAR(*value, expected, 1e-9 * std::abs(expected)) << row.text;
    }
    return rows.size();
}

TEST(UnitConversions, TableIsComplete) {
    EXPECT_EQ(readTable().size(), 100U);
}

TEST(UnitConversions, LengthsAreExact) {
    const auto rows = rowsOf("length");
    for (const Conversion& row : rows) {
        const auto length = readLength(row.text);
        ASSERT_TRUE(length) << length.error().message;
        EXPECT_EQ(length->nanometres(), exactNanometres(row.siValue)) << row.text;
    }
    EXPECT_EQ(rows.size(), 26U);
}

TEST(UnitConversions, MassesAgree) {
    EXPECT_EQ(compareRows("mass",
                          [](const std::string& text) {
                              return readMass(text).map([](Mass mass) { return mass.grams() / 1000; });
                          }),
              11U);
}

TEST(UnitConversions, VolumesAgree) {
    EXPECT_EQ(compareRows("volume",
                          [](const std::string& text) {
                              return readVolume(text).map([](Volume v) { return v.millilitres() / 1e6; });
                          }),
              19U);
}

TEST(UnitConversions, TemperaturesAgree) {
    EXPECT_EQ(compareRows("temperature",
                          [](const std::string& text) {
                              return readTemperature(text).map([](Temperature t) { return t.kelvin(); });
                          }),
              12U);
}

TEST(UnitConversions, PressuresAgree) {
    EXPECT_EQ(compareRows("pressure",
                          [](const std::string& text) {
                              return readPressure(text).map([](Pressure p) { return p.pascals(); });
                          }),
              10U);
}

TEST(UnitConversions, PowersAgree) {
    EXPECT_EQ(
        compareRows("power",
                    [](const std::string& text) { return readPower(text).map([](Power p) { return p.watts(); }); }),
        4U);
}

TEST(UnitConversions, DurationsAgree) {
    EXPECT_EQ(compareRows("duration",
                          [](const std::string& text) {
                              return readDuration(text).map([](Seconds s) { return static_cast<double>(s.count()); });
                          }),
              18U);
}

// The texts that name a unit by one of our spellings, after a number and perhaps a space.
bool isSpelledSomewhere(const std::vector<Conversion>& rows, std::string_view spelling) {
    return std::any_of(rows.begin(), rows.end(), [&](const Conversion& row) {
        if (!row.text.ends_with(spelling)) {
            return false;
        }
        const std::string before = row.text.substr(0, row.text.size() - spelling.size());
        const char last = before.empty() ? 'x' : before.back();
        return last == ' ' || (last >= '0' && last <= '9');
    });
}

TEST(UnitConversions, CoverEverySpelling) {
    const auto uncovered = [](const std::string& kind, std::span<const Unit> units) {
        std::vector<std::string> missing;
        for (const Unit& unit : units) {
            if (!isSpelledSomewhere(rowsOf(kind), unit.spelling)) {
                missing.emplace_back(unit.spelling);
            }
        }
        return missing;
    };
    const std::vector<std::string> none;
    EXPECT_EQ(uncovered("length", lengthUnits()), none);
    EXPECT_EQ(uncovered("mass", massUnits()), none);
    EXPECT_EQ(uncovered("volume", volumeUnits()), none);
    EXPECT_EQ(uncovered("pressure", pressureUnits()), none);
    EXPECT_EQ(uncovered("power", powerUnits()), none);
    EXPECT_EQ(uncovered("duration", durationUnits()), none);
    for (const char* spelling : {"°F", "F", "°C", "C", "K"}) {
        EXPECT_TRUE(isSpelledSomewhere(rowsOf("temperature"), spelling)) << spelling;
    }
}

}  // namespace
}  // namespace brinebell
