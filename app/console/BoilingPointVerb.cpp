#include "safety/BoilingPoint.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "console/FaultJson.h"
#include "console/Verbs.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

struct Asked {
    std::optional<Length> altitude;
    Pressure pressure;
};

Result<Asked> readAsked(const BoilingPointOptions& options) {
    if (options.pressure) {
        return readPressure(*options.pressure).map([](Pressure p) { return Asked{std::nullopt, p}; });
    }
    const Result<Length> altitude = readLength(*options.altitude);
    if (!altitude) {
        return tl::unexpected(altitude.error());
    }
    return standardPressure(*altitude).map([&](Pressure p) { return Asked{*altitude, p}; });
}

}  // namespace

Reply boilingPointOf(const BoilingPointOptions& options) {
    const Result<Asked> asked = readAsked(options);
    if (!asked) {
        return failure({asked.error()});
    }
    const Result<Temperature> boils = boilingPoint(asked->pressure);
    if (!boils) {
        return failure({boils.error()});
    }
    nlohmann::ordered_json document;
    std::string where = fmt::format("{:.1f} kPa", asked->pressure.kilopascals());
    if (asked->altitude) {
        document["altitude_m"] = asked->altitude->metres();
        where = fmt::format("{} ({} in a standard atmosphere)", printFeet(*asked->altitude), where);
    }
    document["pressure_kpa"] = asked->pressure.kilopascals();
    document["boiling_point_c"] = boils->celsius();
    document["boiling_point_f"] = boils->fahrenheit();
    Reply reply;
    reply.text =
        fmt::format("At {} water boils at {:.1f} °C ({:.1f} °F).\n", where, boils->celsius(), boils->fahrenheit());
    reply.json = dump(document);
    return reply;
}

}  // namespace brinebell
