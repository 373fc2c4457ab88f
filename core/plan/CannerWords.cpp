#include "plan/CannerWords.h"

#include "base/Language.h"

#include <fmt/format.h>

namespace brinebell {

namespace {

// Water over the lids: 1 in, and 2 in where the process is over 30 minutes. Source: NCHFP, using boiling
// water canners.
constexpr std::chrono::minutes kDeepWaterOver{30};

CannerWords boilingWater(const Load& load) {
    const std::string depth = load.processTime > kDeepWaterOver ? "2 in" : "1 in";
    return {core::say("Rack in, half full of water, highest heat, lid on"),
            core::say("Jars upright, water {} over the lids, lid on, highest heat", depth),
            core::say("Water {} over the lids, lid on", depth),
            core::say("Bring the canner to a full rolling boil"),
            core::say("Full rolling boil all over, lid on"),
            core::say("Lid on; the boil must not stop; jars stay covered"),
            core::say("Turn the heat off, take the lid off"),
            core::say("Wait five minutes before lifting"),
            core::say("Lift")};
}

CannerWords steam(Temperature boil) {
    return {core::say("Rack in, water in the base as its maker says, highest heat, lid on"),
            core::say("Hot jars upright on the rack, with little time to cool, lid on, highest heat"),
            core::say("Base filled with water as its maker says, lid on"),
            core::say("Bring the canner to a full column of steam"),
            core::say("Unbroken column of steam, 8 in or longer, at {:.0f} °F ({:.0f} °C)", boil.fahrenheit(),
                      boil.celsius()),
            core::say("The steam must not stop; the lid is not opened for any reason"),
            core::say("Turn the heat off, take the lid off"),
            core::say("Wait five minutes before lifting"),
            core::say("Lift")};
}

CannerWords pressure(const Load& load) {
    const bool dial = load.method == Method::PressureDial;
    return {core::say("Rack in, 2 to 3 in of hot water, highest heat, lid not locked yet"),
            core::say("Jars upright on the rack, 2 to 3 in of water, lid locked, vent open, highest heat"),
            core::say("2 to 3 in of water in the bottom, lid locked, vent open"),
            core::say("Bring the canner to a steady column of steam"),
            core::say("Steam leaves the vent in a strong, steady funnel"),
            dial ? core::say("Gauge at {} psi or a little over, never below", load.pressure->gaugePsi)
                 : core::say("The {} psi weight keeps rocking as its maker says", load.pressure->gaugePsi),
            dial ? core::say("Open the petcock") : core::say("Take the weight off"),
            core::say("Wait ten minutes, then open the lid away from the face"),
            core::say("Open the lid, lift")};
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
    return load.method == Method::PressureDial ? core::say("shut the petcock")
                                               : core::say("put the {} psi weight on", load.pressure->gaugePsi);
}

std::string atPressureWords(const Load& load) {
    return load.method == Method::PressureDial
               ? core::say("Gauge at {} psi or more", load.pressure->gaugePsi)
               : core::say("The {} psi weight jiggles or rocks as its maker says", load.pressure->gaugePsi);
}

}  // namespace brinebell
