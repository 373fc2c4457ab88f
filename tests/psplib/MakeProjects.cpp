// MakeProjects.cpp — writes random projects in the PSPLIB formats, one for each cell of the published designs and
// repetition: 48 cells without maximum lags, 27 with.
#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "psplib/ProjectGenerator.h"
#include "psplib/ProjectReader.h"

namespace {

using namespace brinebell::psplib;

void write(const std::filesystem::path& path, const std::string& text) {
    std::ofstream(path) << text;
}

void makeSingleMode(const std::filesystem::path& folder, int activities, int repetitions, std::uint64_t seed) {
    int cell = 0;
    for (const double complexity : {1.5, 1.8, 2.1}) {
        for (const double factor : {0.25, 0.5, 0.75, 1.0}) {
            for (const double strength : {0.2, 0.5, 0.7, 1.0}) {
                ++cell;
                for (int i = 1; i <= repetitions; ++i) {
                    const auto own = seed * 1'000'003 + static_cast<std::uint64_t>(cell * 1000 + i);
                    const Project project = generateProject({activities, 4, complexity, factor, strength, 0, 0}, own);
                    write(folder / fmt::format("j{}_{:02}_{:02}.sm", activities, cell, i), writeSingleMode(project));
                }
            }
        }
    }
}

void makeMaximumLags(const std::filesystem::path& folder, int activities, int repetitions, std::uint64_t seed) {
    int cell = 0;
    for (const double factor : {0.5, 0.75, 1.0}) {
        for (const double strength : {0.0, 0.25, 0.5}) {
            for (const double order : {0.25, 0.5, 0.75}) {
                ++cell;
                for (int i = 1; i <= repetitions; ++i) {
                    const auto own = seed * 1'000'003 + static_cast<std::uint64_t>(cell * 1000 + i);
                    const int cycles = activities / 10 + 2 + i % 3;
                    const double slack = 0.7 + 0.3 * ((cell + i) % 3);
                    const ProjectKind kind = {activities, 5, 0, factor, strength, cycles, slack, order};
                    write(folder / fmt::format("ubo{}_{:02}_{:02}.sch", activities, cell, i),
                          writeMaximumLags(generateProject(kind, own)));
                }
            }
        }
    }
}

}  // namespace

int main(int count, char** words) {
    if (count != 6) {
        fmt::print(stderr, "usage: brinebell-make-projects FOLDER sm|sch ACTIVITIES REPETITIONS SEED\n");
        return 2;
    }
    const std::string kind = words[2];
    const int activities = std::stoi(words[3]);
    const int repetitions = std::stoi(words[4]);
    const auto seed = static_cast<std::uint64_t>(std::stoull(words[5]));
    std::filesystem::create_directories(words[1]);
    kind == "sm" ? makeSingleMode(words[1], activities, repetitions, seed)
                 : makeMaximumLags(words[1], activities, repetitions, seed);
    return 0;
}
