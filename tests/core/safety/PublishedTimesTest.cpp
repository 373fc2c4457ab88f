// Every figure of the published table, at every edge of its band, through the answers of the program.
//
// Expected values: resources/process-times.toml, read here with the TOML library alone. Each entry there
// names the guide and page it comes from. The counts were taken from the file with a separate script.
#include <gtest/gtest.h>

#include <toml++/toml.h>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "safety/ProcessTables.h"
#include "safety/PublishedText.h"

namespace brinebell {
namespace {

constexpr const char* kTablePath = BRINEBELL_SOURCE_DIR "/resources/process-times.toml";
constexpr int kTopOfAnswers = 10'000;

const toml::table& publishedFile() {
    static const toml::table file = toml::parse_file(kTablePath);
    return file;
}

std::string textOf(const toml::table& table, const char* key) {
    return table[key].value_or(std::string());
}

/// One row of one entry, for one pack and jar size.
struct Row {
    std::string id;
    ProcessQuery query;
    int fromFeet = 0;
    int toFeet = 0;  ///< the top of all answers where the band is open
    bool isTop = false;
    bool isOpen = false;
    bool allowed = true;
    int minutes = 0;
    std::optional<int> psi;
};

std::vector<Pack> packsOf(const std::string& text) {
    if (text == "hot or raw") {
        return {Pack::Hot, Pack::Raw};
    }
    return {text == "hot" ? Pack::Hot : Pack::Raw};
}

JarSize jarOf(const std::string& word) {
    const std::map<std::string, JarSize> sizes{{"quarter-pint", JarSize::QuarterPint},
                                               {"half-pint", JarSize::HalfPint},
                                               {"12-ounce", JarSize::TwelveOunce},
                                               {"pint", JarSize::Pint},
                                               {"quart", JarSize::Quart}};
    return sizes.at(word);
}

Method methodOf(const std::string& word) {
    const std::map<std::string, Method> methods{{"boiling-water", Method::BoilingWater},
                                                {"pressure-dial", Method::PressureDial},
                                                {"pressure-weighted", Method::PressureWeighted}};
    return methods.at(word);
}

Row bandRow(const toml::table& entry, const toml::table& band) {
    Row row;
    row.id = textOf(entry, "id");
    row.query.product = row.id.substr(0, row.id.find('.'));
    row.query.method = methodOf(textOf(entry, "method"));
    row.fromFeet = *band["from_ft"].value<int>();
    row.toFeet = band["to_ft"].value_or(kTopOfAnswers);
    row.isOpen = !band.contains("to_ft");
    row.allowed = band["allowed"].value_or(true);
    row.minutes = band.contains("minutes") ? *band["minutes"].value<int>() : *entry["minutes"].value<int>();
    row.psi = band["psi"].value<int>();
    return row;
}

void addRows(const toml::table& entry, std::vector<Row>& rows) {
    const toml::array& bands = *(entry.contains("times") ? entry["times"] : entry["pressure"]).as_array();
    for (const Pack pack : packsOf(textOf(entry, "pack"))) {
        for (const toml::node& jar : *entry["jars"].as_array()) {
            for (const toml::node& band : bands) {
                Row row = bandRow(entry, *band.as_table());
                row.query.pack = pack;
                row.query.jar = jarOf(*jar.value<std::string>());
                row.isTop = &band == &bands.back();
                rows.push_back(row);
            }
        }
    }
}

/// The rows of all current entries of that confidence; `bands` counts them once an entry.
std::vector<Row> rowsOf(const std::string& confidence, int& entries) {
    std::vector<Row> rows;
    for (const toml::node& node : *publishedFile()["process"].as_array()) {
        const toml::table& entry = *node.as_table();
        if (textOf(entry, "confidence") == confidence && !entry.contains("status")) {
            addRows(entry, rows);
            ++entries;
        }
    }
    return rows;
}

const ProcessAnswer* answerOf(const std::vector<ProcessAnswer>& answers, const std::string& id) {
    for (const ProcessAnswer& answer : answers) {
        if (answer.entryId == id) {
            return &answer;
        }
    }
    return nullptr;
}

/// The entry's own answer at `altitude`, or nothing when the program gives none.
std::optional<ProcessAnswer> ask(Row row, Length altitude, const std::string& confirmedBy = "") {
    row.query.altitude = altitude;
    row.query.confirmedBy = confirmedBy;
    const auto answers = ProcessTables::published().findAll(row.query);
    const ProcessAnswer* answer = answers ? answerOf(*answers, row.id) : nullptr;
    return answer == nullptr ? std::nullopt : std::optional(*answer);
}

Length nanometreAbove(int feet) {
    return Length::fromNanometres(Length::fromFeet(feet).nanometres() + 1);
}

/// The altitudes that belong to a row: both edges, in feet, in metres (1 ft = 0.3048 m) and to the nanometre.
std::vector<Length> altitudesOf(const Row& row) {
    std::vector<Length> altitudes{Length::fromFeet(row.fromFeet), Length::fromMetres(row.fromFeet * 0.3048),
                                  Length::fromFeet(row.toFeet), Length::fromMetres(row.toFeet * 0.3048),
                                  Length::fromNanometres(Length::fromFeet(row.toFeet).nanometres() - 1)};
    if (row.fromFeet > 0) {
        altitudes.push_back(nanometreAbove(row.fromFeet - 1));
    }
    return altitudes;
}

void expectFigures(const Row& row, Length altitude, const std::string& confirmedBy) {
    const auto answer = ask(row, altitude, confirmedBy);
    ASSERT_EQ(answer.has_value(), row.allowed) << row.id << " at " << altitude.feet() << " ft";
    if (answer) {
        EXPECT_EQ(answer->time, std::chrono::minutes(row.minutes)) << row.id << " at " << altitude.feet() << " ft";
        EXPECT_EQ(answer->gaugePsi, row.psi) << row.id << " at " << altitude.feet() << " ft";
        EXPECT_EQ(answer->bandFromFeet, row.fromFeet) << row.id;
        EXPECT_EQ(answer->bandToFeet, row.isOpen ? std::nullopt : std::optional(row.toFeet)) << row.id;
    }
}

TEST(PublishedTimes, AreBuiltIntoTheProgramByteForByte) {
    std::ifstream file(kTablePath, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    EXPECT_GT(bytes.str().size(), 90'000u);
    EXPECT_TRUE(publishedProcessTimes() == bytes.str());
}

TEST(PublishedTimes, EverySeenFigureIsAnsweredAtEveryEdgeOfItsBand) {
    int entries = 0;
    const std::vector<Row> rows = rowsOf("seen", entries);
    int checked = 0;
    for (const Row& row : rows) {
        for (const Length altitude : altitudesOf(row)) {
            expectFigures(row, altitude, "");
            ++checked;
        }
    }
    EXPECT_EQ(entries, 106);
    EXPECT_EQ(rows.size(), 517u);
    EXPECT_GE(checked, 5 * 517);
}

// The row above in the file, not the row itself, must answer just above an edge; above the top row nothing
// does.
TEST(PublishedTimes, OneNanometreAndOneFootAboveAnEdgeAnswerFromTheNextBand) {
    int entries = 0;
    const std::vector<Row> rows = rowsOf("seen", entries);
    int next = 0;
    int beyond = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        for (const Length altitude : {nanometreAbove(rows[i].toFeet), Length::fromFeet(rows[i].toFeet + 1)}) {
            if (rows[i].isTop) {
                EXPECT_FALSE(ask(rows[i], altitude)) << rows[i].id;
                ++beyond;
            } else {
                expectFigures(rows[i + 1], altitude, "");
                ++next;
            }
        }
    }
    EXPECT_EQ(next + beyond, 2 * 517);
    EXPECT_GT(next, 600);
    EXPECT_GT(beyond, 300);
}

TEST(PublishedTimes, NoMemoryFigureIsAnsweredUnconfirmed) {
    int entries = 0;
    const std::vector<Row> rows = rowsOf("memory", entries);
    for (const Row& row : rows) {
        for (const char* nobody : {"", " ", "\t\n"}) {
            EXPECT_FALSE(ask(row, Length::fromFeet(row.fromFeet), nobody)) << row.id;
        }
    }
    EXPECT_EQ(entries, 19);
    EXPECT_EQ(rows.size(), 123u);
}

TEST(PublishedTimes, EveryMemoryFigureIsAnsweredOnceConfirmed) {
    int entries = 0;
    const std::vector<Row> rows = rowsOf("memory", entries);
    int notAllowed = 0;
    for (const Row& row : rows) {
        for (const Length altitude : altitudesOf(row)) {
            expectFigures(row, altitude, "Ada Brook");
        }
        notAllowed += row.allowed ? 0 : 1;
    }
    EXPECT_EQ(rows.size(), 123u);
    EXPECT_EQ(notAllowed, 6);
}

TEST(PublishedTimes, NoVariantEverAnswers) {
    std::set<std::string> variants;
    for (const toml::node& node : *publishedFile()["process"].as_array()) {
        if (node.as_table()->contains("status")) {
            variants.insert(textOf(*node.as_table(), "id"));
        }
    }
    EXPECT_EQ(variants.size(), 3u);
    int asked = 0;
    for (const auto& entry : ProcessTables::published().entries()) {
        for (const Pack pack : {Pack::Hot, Pack::Raw}) {
            for (const JarSize jar : entry.jars) {
                const ProcessQuery query{entry.product, pack, jar, Length::fromFeet(500), entry.method, "Ada Brook"};
                const auto answers = ProcessTables::published().findAll(query);
                for (const ProcessAnswer& answer : answers.value_or(std::vector<ProcessAnswer>{})) {
                    EXPECT_FALSE(variants.contains(answer.entryId)) << answer.entryId;
                }
                ++asked;
            }
        }
    }
    EXPECT_GT(asked, 256);
}

TEST(PublishedTimes, MinutesNeverFallAsAltitudeRises) {
    int entries = 0;
    std::vector<Row> rows = rowsOf("seen", entries);
    for (Row& row : rows) {
        std::chrono::minutes last{0};
        for (int feet = 0; feet <= kTopOfAnswers; feet += 100) {
            const auto answer = ask(row, Length::fromFeet(feet));
            if (answer) {
                EXPECT_GE(answer->time, last) << row.id << " at " << feet << " ft";
                last = answer->time;
            }
        }
    }
    EXPECT_EQ(rows.size(), 517u);
}

/// The entry a test case names, as a query.
Row rowNamed(const std::string& id) {
    for (const toml::node& node : *publishedFile()["process"].as_array()) {
        if (textOf(*node.as_table(), "id") == id) {
            std::vector<Row> rows;
            addRows(*node.as_table(), rows);
            return rows.back();
        }
    }
    ADD_FAILURE() << "no entry " << id;
    return {};
}

void expectTestCase(const toml::table& test) {
    const Length altitude = Length::fromFeet(*test["altitude_ft"].value<int>());
    Row row = rowNamed(textOf(test, "process"));
    const auto answer = ask(row, altitude, "Ada Brook");
    ASSERT_EQ(answer.has_value(), !test["expect_refusal"].value_or(false));
    if (!answer) {
        return;
    }
    EXPECT_EQ(answer->time.count(), *test["expect_minutes"].value<int>());
    if (test.contains("expect_psi")) {
        EXPECT_EQ(answer->gaugePsi, test["expect_psi"].value<int>());
    }
    if (test.contains("expect_sterile_jars")) {
        EXPECT_EQ(answer->sterileJarsRequired, *test["expect_sterile_jars"].value<bool>());
    }
    if (test.contains("expect_steam_canner_ok")) {
        row.query.method = Method::AtmosphericSteam;
        const auto steam = ask(row, altitude, "Ada Brook");
        ASSERT_EQ(steam.has_value(), *test["expect_steam_canner_ok"].value<bool>());
        EXPECT_TRUE(!steam || steam->time == answer->time);
    }
}

TEST(PublishedTimes, EveryTestCaseOfTheFileHolds) {
    int checked = 0;
    for (const toml::node& node : *publishedFile()["test_case"].as_array()) {
        const toml::table& test = *node.as_table();
        SCOPED_TRACE(textOf(test, "name"));
        if (test.contains("rule")) {
            EXPECT_EQ(textOf(test, "rule"), "sterilise-empty-jars");
            const Length altitude = Length::fromFeet(*test["altitude_ft"].value<int>());
            EXPECT_EQ(jarSterilisingTime(altitude).value().count(), *test["expect_minutes"].value<int>());
        } else {
            expectTestCase(test);
        }
        ++checked;
    }
    EXPECT_EQ(checked, 19);
}

TEST(PublishedTimes, ListEveryProductWithACurrentEntry) {
    std::set<std::string> names;
    for (const toml::node& node : *publishedFile()["process"].as_array()) {
        const std::string id = textOf(*node.as_table(), "id");
        if (!node.as_table()->contains("status")) {
            names.insert(id.substr(0, id.find('.')));
        }
    }
    EXPECT_EQ(names.size(), 48u);
    EXPECT_EQ(ProcessTables::published().products(), std::vector<std::string>(names.begin(), names.end()));
}

}  // namespace
}  // namespace brinebell
