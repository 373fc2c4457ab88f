// Lethality.h — why a higher kitchen needs more minutes, as an illustration that can never change a time.
//
// Model:   the z-value: heat that kills ten times as fast for every z degrees, L = 10^((T - Tref) / z). With z = 10 °C
//          (18 °F), the value taken for the spores of Clostridium botulinum since Townsend, Esty and Baselt (1938).
// Use:     explains. Published tables come from tests of whole jars, with heat that creeps to their middle and acid
// that
//          helps; this looks at one minute of boiling water and at nothing else, so its answers are neither minutes
//          of a process nor convertible to them: they are bare numbers in a type of their own, which no session, plan
//          or table takes.
// Checked: tests/core/safety/LethalityTest.cpp.
#pragma once

#include "base/Result.h"
#include "quantity/Quantities.h"

namespace brinebell {

inline constexpr double kSporeZKelvin = 10.0;

/// How many minutes at `reference` do what one minute at `t` does. Requires zKelvin above 0.
double relativeLethality(Temperature t, Temperature reference, double zKelvin = kSporeZKelvin);

class AltitudeIllustration {
public:
    Temperature boilsHere() const { return m_boilsHere; }
    Temperature boilsAtSeaLevel() const { return m_boilsAtSeaLevel; }
    /// What a minute of boiling here is worth in minutes of boiling at sea level.
    double worthOfAMinute() const { return relativeLethality(m_boilsHere, m_boilsAtSeaLevel); }
    /// What it takes here to match one minute there. A bare number on purpose.
    double toMatchOneMinute() const { return relativeLethality(m_boilsAtSeaLevel, m_boilsHere); }

private:
    friend Result<AltitudeIllustration> illustrateAltitude(Length altitude);
    friend Result<AltitudeIllustration> illustratePressure(Pressure pressure);
    AltitudeIllustration(Temperature here, Temperature seaLevel) : m_boilsHere(here), m_boilsAtSeaLevel(seaLevel) {}
    Temperature m_boilsHere;
    Temperature m_boilsAtSeaLevel;
};

/// Against sea level in a standard atmosphere. Ranges and errors: those of boilingPointAt() and boilingPoint().
Result<AltitudeIllustration> illustrateAltitude(Length altitude);
Result<AltitudeIllustration> illustratePressure(Pressure pressure);

/// Said wherever an illustration is shown.
inline constexpr const char* kIllustrationOnly = "illustration; the published table rules";

}  // namespace brinebell
