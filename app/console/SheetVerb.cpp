#include "console/ClassNetwork.h"
#include "console/SheetText.h"
#include "console/Verbs.h"
#include "plan/Dispatcher.h"
#include "plan/SheetJson.h"

namespace brinebell {

Reply sheet(const SheetOptions& options) {
    const FileResult<Network> network = readNetwork(options.file);
    if (!network) {
        return inputFailure(network.error());
    }
    const RunSheet planned = dispatch(*network, defaultOrder(*network));
    Reply reply;
    reply.text = sheetText(*network, planned);
    reply.json = sheetToJson(*network, planned);
    return reply;
}

}  // namespace brinebell
