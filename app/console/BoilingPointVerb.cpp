#include "safety/BoilingPoint.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "console/FaultJson.h"
#include "console/Verbs.h"
#include "quantity/ReadQuantity.h"
#include "safety/Lethality.h"

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

// Bare numbers under keys that name no unit of time: nothing here is a process time.
void addWhy(const AltitudeIllustration& told, nlohmann::ordered_json& document, std::string& text) {
    document["why"] = {{"marked", kIllustrationOnly},
                       {"z_k", kSporeZKelvin},
                       {"sea_level_boiling_point_c", told.boilsAtSeaLevel().celsius()},
                       {"worth_of_a_minute_here", told.worthOfAMinute()},
                       {"to_match_one_minute_at_sea_level", told.toMatchOneMinute()}};
    text += fmt::format(
        "At sea level it boils at {:.1f} °C. By the rule that heat kills hardy spores ten times as fast for every "
        "{:.0f} °C,\na minute of boiling here does the work of {:.2f} at sea level; it takes {:.2f} to match one "
        "there.\nThis is an {}, and it rests on tests of whole jars.\n",
        told.boilsAtSeaLevel().celsius(), kSporeZKelvin, told.worthOfAMinute(), told.toMatchOneMinute(),
        kIllustrationOnly);
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
    if (options.why) {
        const Result<AltitudeIllustration> told = illustratePressure(asked->pressure);
        if (!told) {
            return failure({told.error()});
        }
        addWhy(*told, document, reply.text);
    }
    reply.json = dump(document);
    return reply;
}

}  // namespace brinebell
