#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "console/ClassNetwork.h"
#include "console/FaultJson.h"
#include "console/Verbs.h"
#include "document/Document.h"
#include "kitchen/VenueFile.h"
#include "recipe/RecipeFile.h"

namespace brinebell {

namespace {

using Faults = std::vector<Error>;

struct Checked {
    std::string kind = "unknown";  ///< "recipe", "venue", "class"
    Faults faults;
};

template <class Value>
Faults faultsOf(const FileResult<Value>& result) {
    return result ? Faults{} : result.error();
}

// Which table a file holds says what it is.
Checked checkFile(const std::string& path) {
    const Result<std::string> bytes = readFile(path);
    if (!bytes) {
        return {"unknown", {bytes.error()}};
    }
    FileResult<Document> document = Document::parse(*bytes, path);
    if (!document) {
        return {"unknown", document.error()};
    }
    const Table root = document->root();
    if (root.has("recipe")) {
        return {"recipe", faultsOf(readRecipe(*bytes, path))};
    }
    if (root.has("venue")) {
        return {"venue", faultsOf(readVenue(*bytes, path))};
    }
    if (root.has("class")) {
        return {"class", faultsOf(readNetwork(path))};
    }
    return {"unknown",
            {{ErrorCode::InvalidInput, "the file has none of the tables [recipe], [venue] and [class]", {path, 0, 0}}}};
}

}  // namespace

Reply check(const CheckOptions& options) {
    nlohmann::ordered_json files = nlohmann::ordered_json::array();
    Faults all;
    Reply reply;
    for (const std::string& path : options.files) {
        const Checked checked = checkFile(path);
        files.push_back({{"file", path},
                         {"kind", checked.kind},
                         {"sound", checked.faults.empty()},
                         {"faults", faultsToJson(checked.faults)}});
        // A class brings up the faults of the files it names, which may be on the command line as well.
        std::copy_if(checked.faults.begin(), checked.faults.end(), std::back_inserter(all),
                     [&](const Error& fault) { return std::find(all.begin(), all.end(), fault) == all.end(); });
        if (checked.faults.empty()) {
            reply.text += fmt::format("{}: {}, no faults\n", oneLine(path), checked.kind);
        }
    }
    if (!all.empty()) {
        const Reply failed = inputFailure(all);
        reply.status = failed.status;
        reply.faults = failed.faults;
    }
    reply.json = dump({{"files", std::move(files)}, {"faults", faultsToJson(all)}});
    return reply;
}

}  // namespace brinebell
