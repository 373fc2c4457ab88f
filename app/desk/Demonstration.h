// Demonstration.h — the demonstration class and its venue, built into the program as files.
#pragma once

#include <string>
#include <vector>

namespace brinebell {

struct Demonstration {
    std::string classId;
    std::string lesson;  ///< the class file
    std::string venueId;
    std::string venue;                 ///< the venue file
    std::vector<std::string> recipes;  ///< ids of the built-in recipes that it teaches
};

Demonstration demonstrationTexts();

}  // namespace brinebell
