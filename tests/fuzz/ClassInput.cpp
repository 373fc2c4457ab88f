// A class among sound files; what can be read is unfolded and dispatched, as on opening it.
#include <filesystem>
#include <map>
#include <string>

#include "document/Document.h"
#include "fuzz/Harness.h"
#include "plan/ClassFile.h"
#include "plan/Dispatcher.h"
#include "plan/Unfold.h"

namespace {

using namespace brinebell;

Result<std::string> kept(const std::string& path) {
    static std::map<std::string, Result<std::string>> files;
    auto found = files.find(path);
    if (found == files.end()) {
        found = files.emplace(path, readFile(path)).first;
    }
    return found->second;
}

// The sound files of the tests and the shipped recipes and venue; all else is asked for in vain.
Result<std::string> fetch(const std::string& path) {
    namespace fs = std::filesystem;
    fuzz::mustHold(fs::path(path).lexically_normal().string().rfind("top/", 0) == 0,
                   "no file outside the folder above the class is read");
    const std::string name = fs::path(path).filename().string();
    for (const char* folder : {BRINEBELL_TEST_DATA "/sound/", BRINEBELL_RECIPES "/", BRINEBELL_RECIPES "/venues/"}) {
        if (name.ends_with(".toml") && fs::is_regular_file(folder + name)) {
            return kept(folder + name);
        }
    }
    return fail(ErrorCode::NotFound, "no such file", {path, 0, 0});
}

}  // namespace

void brinebell::fuzz::tryInput(std::string_view bytes) {
    const auto plan = readClass(bytes, "top/folder/input.toml", fetch);
    mustHold(plan || !plan.error().empty(), "a class is read or refused with a reason");
    if (!plan) {
        return;
    }
    const auto network = unfold(*plan);
    mustHold(network || !network.error().message.empty(), "a class unfolds or is refused with a reason");
    if (network) {
        mustHold(faultsIn(*network).empty(), "what unfolds is a sound network");
        mustHold(dispatch(*network, policyFor(*network)).activities.size() == network->activities.size(),
                 "every activity stands on the sheet");
    }
}
