// ClassFiles.h — a class file and the files it names, held in memory.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "plan/ClassFile.h"
#include "support/SoundFiles.h"

namespace brinebell {

/// A class at "lessons/class.toml" with the files around it. Remembers which were fetched, in order.
struct ClassFiles {
    std::string text = soundText("small-class.toml");
    std::map<std::string, std::string> files{{"sound/small-venue.toml", soundText("small-venue.toml")},
                                             {"sound/small-recipe.toml", soundText("small-recipe.toml")}};
    std::vector<std::string> fetched;

    void change(std::string_view from, std::string_view to) { text = with(text, from, to); }
    void changeVenue(std::string_view from, std::string_view to) {
        files["sound/small-venue.toml"] = with(files["sound/small-venue.toml"], from, to);
    }
    void changeRecipe(std::string_view from, std::string_view to) {
        files["sound/small-recipe.toml"] = with(files["sound/small-recipe.toml"], from, to);
    }

    FileResult<ClassPlan> read() {
        return readClass(text, "lessons/class.toml", [this](const std::string& path) -> Result<std::string> {
            fetched.push_back(path);
            const auto found = files.find(path);
            if (found == files.end()) {
                return fail(ErrorCode::Io, "no such file");
            }
            return found->second;
        });
    }
    std::string faults() { return faultsOf(read()); }
};

}  // namespace brinebell
