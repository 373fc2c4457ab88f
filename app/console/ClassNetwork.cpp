#include "console/ClassNetwork.h"

#include "plan/ClassFile.h"
#include "plan/Unfold.h"

namespace brinebell {

Error inFile(Error fault, const std::string& file) {
    if (fault.where.file.empty()) {
        fault.where.file = file;
    }
    return fault;
}

FileResult<Network> readNetwork(const std::string& classFile) {
    const FileResult<ClassPlan> plan = readClassFile(classFile);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    Result<Network> network = unfold(*plan);
    if (!network) {
        return tl::unexpected(std::vector<Error>{inFile(network.error(), classFile)});
    }
    return std::move(*network);
}

}  // namespace brinebell
