#include <fmt/format.h>

#include <iterator>

#include "psplib/ProjectReader.h"

namespace brinebell::psplib {

namespace {

const std::string kRule = std::string(72, '*') + "\n";

std::string resourceNames(const Project& project) {
    std::string names;
    for (std::size_t k = 1; k <= project.capacities.size(); ++k) {
        names += fmt::format("  R {}", k);
    }
    return names + "\n";
}

void appendDemands(const Project& project, int firstNumber, std::string& text) {
    int number = firstNumber;
    for (const Activity& activity : project.activities) {
        text += fmt::format("{:4}\t1\t{:3}", number++, activity.duration);
        for (const Tick demand : activity.demands) {
            text += fmt::format("\t{}", demand);
        }
        text += '\n';
    }
}

void appendCapacities(const Project& project, std::string& text) {
    for (const Tick capacity : project.capacities) {
        text += fmt::format(" {:4}", capacity);
    }
    text += '\n';
}

}  // namespace

std::string writeSingleMode(const Project& project) {
    std::string text = kRule;
    text += fmt::format("projects                      :  1\njobs (incl. supersource/sink ):  {}\nhorizon : {}\n",
                        project.activities.size(), horizonOf(project));
    text += fmt::format("RESOURCES\n  - renewable                 :  {}   R\n", project.capacities.size());
    text += "  - nonrenewable              :  0   N\n  - doubly constrained        :  0   D\n" + kRule;
    text += "PRECEDENCE RELATIONS:\njobnr.    #modes  #successors   successors\n";
    int number = 1;
    for (const Activity& activity : project.activities) {
        text += fmt::format("{:4}\t1\t{:3}\t", number++, activity.lags.size());
        for (const Lag& lag : activity.lags) {
            text += fmt::format(" {:3}", lag.successor + 1);
        }
        text += '\n';
    }
    text += kRule + "REQUESTS/DURATIONS:\njobnr. mode duration" + resourceNames(project) + std::string(72, '-') + "\n";
    appendDemands(project, 1, text);
    text += kRule + "RESOURCEAVAILABILITIES:\n" + resourceNames(project);
    appendCapacities(project, text);
    return text + kRule;
}

std::string writeMaximumLags(const Project& project) {
    std::string text = fmt::format("{}\t{}\t0\t0\n", project.activities.size() - 2, project.capacities.size());
    int number = 0;
    for (const Activity& activity : project.activities) {
        std::string lags;
        text += fmt::format("{}\t1\t{}", number++, activity.lags.size());
        for (const Lag& lag : activity.lags) {
            text += fmt::format("\t{}", lag.successor);
            lags += fmt::format("\t[{}]", lag.length);
        }
        text += lags + '\n';
    }
    appendDemands(project, 0, text);
    appendCapacities(project, text);
    return text;
}

}  // namespace brinebell::psplib
