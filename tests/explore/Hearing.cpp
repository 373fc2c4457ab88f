#include "explore/Hearing.h"

#include <fmt/format.h>

namespace brinebell::explore {

std::optional<std::string> notHeardAgain(const std::vector<Cue>& standing, Millis elapsed) {
    CueSounder sounder;
    std::vector<Cue> heard;
    for (Millis later{0}; later < std::chrono::minutes(2); later += std::chrono::seconds(1)) {
        if (const auto cue = sounder.toSound(standing, elapsed + later)) {
            heard.push_back(*cue);
        }
    }
    for (const Cue& cue : standing) {
        int times = 0;
        for (const Cue& burst : heard) {
            times += burst.kind == cue.kind && burst.reason == cue.reason ? 1 : 0;
        }
        const int wanted = cue.kind >= CueKind::Due ? 2 : 1;
        if (times < wanted) {
            return fmt::format("cue {} of activity {} is heard {} times in two minutes", static_cast<int>(cue.reason),
                               cue.activity, times);
        }
    }
    return std::nullopt;
}

}  // namespace brinebell::explore
