#include "plan/CannerWords.h"

#include <fmt/format.h>

namespace brinebell {

namespace {

// Water over the lids: 1 in, and 2 in where the process is over 30 minutes. Source: NCHFP, using boiling
// water canners.
constexpr std::chrono::minutes kDeepWaterOver{30};

CannerWords boilingWater(const Load& load) {
    const std::string depth = load.processTime > kDeepWaterOver ? "2 in" : "1 in";
    return {"Rack in, half full of water, highest heat, lid on",
            fmt::format("Jars upright, water {} over the lids, lid on, highest heat", depth),
            fmt::format("Water {} over the lids, lid on", depth),
            "Bring the canner to a full rolling boil",
            "Full rolling boil all over, lid on",
            "Lid on; the boil must not stop; jars stay covered",
            "Turn the heat off, take the lid off",
            "Wait five minutes before lifting",
            "Lift"};
}

CannerWords steam(Temperature boil) {
    return {"Rack in, water in the base as its maker says, highest heat, lid on",
            "Hot jars upright on the rack, with little time to cool, lid on, highest heat",
            "Base filled with water as its maker says, lid on",
            "Bring the canner to a full column of steam",
            fmt::format("Unbroken column of steam, 8 in or longer, at {:.0f} °F ({:.0f} °C)", boil.fahrenheit(),
                        boil.celsius()),
            "The steam must not stop; the lid is not opened for any reason",
            "Turn the heat off, take the lid off",
            "Wait five minutes before lifting",
            "Lift"};
}

CannerWords pressure(const Load& load) {
    const bool dial = load.method == Method::PressureDial;
    return {"Rack in, 2 to 3 in of hot water, highest heat, lid not locked yet",
            "Jars upright on the rack, 2 to 3 in of water, lid locked, vent open, highest heat",
            "2 to 3 in of water in the bottom, lid locked, vent open",
            "Bring the canner to a steady column of steam",
            "Steam leaves the vent in a strong, steady funnel",
            dial ? fmt::format("Gauge at {} psi or a little over, never below", load.pressure->gaugePsi)
                 : fmt::format("The {} psi weight keeps rocking as its maker says", load.pressure->gaugePsi),
            dial ? "Open the petcock" : "Take the weight off",
            "Wait ten minutes, then open the lid away from the face",
            "Open the lid, lift"};
}

}  // namespace

CannerWords cannerWords(const Load& load, Temperature boil) {
    switch (load.method) {
        case Method::BoilingWater:
            return boilingWater(load);
        case Method::AtmosphericSteam:
            return steam(boil);
        case Method::PressureDial:
        case Method::PressureWeighted:
            return pressure(load);
    }
    return boilingWater(load);
}

std::string closeVentWords(const Load& load) {
    return load.method == Method::PressureDial ? "shut the petcock"
                                               : fmt::format("put the {} psi weight on", load.pressure->gaugePsi);
}

std::string atPressureWords(const Load& load) {
    return load.method == Method::PressureDial
               ? fmt::format("Gauge at {} psi or more", load.pressure->gaugePsi)
               : fmt::format("The {} psi weight jiggles or rocks as its maker says", load.pressure->gaugePsi);
}

}  // namespace brinebell
