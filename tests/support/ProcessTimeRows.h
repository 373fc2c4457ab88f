// ProcessTimeRows.h — tests/data/process-times.csv: published figures at the edges of their bands, read from the table
// by tests/reference/make-process-times and not by the program.
#pragma once

#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace brinebell::support {

struct ProcessTimeRow {
    std::string entry, pack, jar, method, altitude;
    std::optional<int> minutes;  ///< none: there is no tested value
    std::optional<int> gaugePsi;

    std::string product() const { return entry.substr(0, entry.find('.')); }
    std::string words() const { return entry + " " + pack + " " + jar + " " + method + " " + altitude; }
};

inline std::vector<ProcessTimeRow> readProcessTimeRows(const std::string& path) {
    const auto number = [](const std::string& text) {
        return text.empty() ? std::nullopt : std::optional(std::stoi(text));
    };
    std::ifstream file(path);
    std::vector<ProcessTimeRow> rows;
    std::string line;
    std::getline(file, line);  // where it comes from
    std::getline(file, line);  // the names of the columns
    while (std::getline(file, line)) {
        std::istringstream cells(line);
        ProcessTimeRow row;
        std::string minutes, psi;
        for (std::string* cell : {&row.entry, &row.pack, &row.jar, &row.method, &row.altitude, &minutes, &psi}) {
            std::getline(cells, *cell, ',');
        }
        row.minutes = number(minutes);
        row.gaugePsi = number(psi);
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace brinebell::support
