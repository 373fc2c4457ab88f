#include "console/ClassNetwork.h"
#include "console/SheetText.h"
#include "console/Verbs.h"
#include "plan/Forecast.h"
#include "plan/SheetJson.h"

namespace brinebell {

namespace {

constexpr int kRunsForTheChance = 2'000;

}  // namespace

Reply sheet(const SheetOptions& options) {
    const FileResult<Network> network = readNetwork(options.file);
    if (!network) {
        return inputFailure(network.error());
    }
    PlanOptions how;
    how.seed = options.seed;
    how.conflicts = options.conflicts;
    how.seconds = options.seconds.value_or(how.seconds);
    const Result<PlannedSheet> planned = planSheet(*network, {}, how);
    if (!planned) {
        return failure({inFile(planned.error(), options.file)});
    }
    const BackTiming timing = backTimingOf(*network, planned->sheet, heatingLengths(*network));
    ForecastOptions ahead;
    ahead.runs = kRunsForTheChance;
    ahead.seed = options.seed + kForecastSeed;
    Reply reply;
    reply.text = sheetText(*network, *planned, timing, forecast(*network, planned->policy, {}, ahead));
    reply.json = plannedSheetToJson(*network, *planned, timing);
    return reply;
}

}  // namespace brinebell
