// Quantiles.h — the rows of tests/data/quantiles.csv, which an independent library wrote.
#pragma once

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace brinebell::support {

struct QuantileRow {
    double low = 0, likely = 0, high = 0;  ///< the guess, in seconds; zeros for the standard normal distribution
    double share = 0;
    double value = 0;
};

/// The rows of one kind: "beta" or "normal".
inline std::vector<QuantileRow> quantileRows(const std::string& kind) {
    std::ifstream file(BRINEBELL_TEST_DATA "/quantiles.csv");
    std::vector<QuantileRow> rows;
    for (std::string line; std::getline(file, line);) {
        if (line.rfind(kind + ",", 0) != 0) {
            continue;
        }
        std::istringstream cells(line.substr(kind.size() + 1));
        QuantileRow row;
        char comma = 0;
        cells >> row.low >> comma >> row.likely >> comma >> row.high >> comma >> row.share >> comma >> row.value;
        rows.push_back(row);
    }
    return rows;
}

}  // namespace brinebell::support
