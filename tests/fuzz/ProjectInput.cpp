// Both PSPLIB layouts; which of them it is, the text tells. What is read is written and read back.
#include "fuzz/Harness.h"
#include "psplib/ProjectReader.h"

void brinebell::fuzz::tryInput(std::string_view bytes) {
    const auto project = psplib::readProject(bytes, "input");
    mustHold(project || !project.error().message.empty(), "a project is read or refused with a reason");
    if (project) {
        const auto again = psplib::readProject(psplib::writeMaximumLags(*project), "again");
        mustHold(again && again->activities.size() == project->activities.size(), "what is written is read back");
        mustHold(psplib::horizonOf(*project) >= 0, "a horizon is no less than nothing");
    }
}
