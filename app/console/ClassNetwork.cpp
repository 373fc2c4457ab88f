#include "console/ClassNetwork.h"

#include "plan/ClassFile.h"
#include "plan/Unfold.h"

namespace brinebell {

FileResult<Network> readNetwork(const std::string& classFile) {
    const FileResult<ClassPlan> plan = readClassFile(classFile);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    Result<Network> network = unfold(*plan);
    if (!network) {
        Error fault = network.error();
        if (fault.where.file.empty()) {
            fault.where.file = classFile;
        }
        return tl::unexpected(std::vector<Error>{std::move(fault)});
    }
    return std::move(*network);
}

}  // namespace brinebell
