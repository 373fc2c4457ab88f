// Quantities.h — strong types for what a kitchen measures, so that no pressure passes for a length.
//
// Each holds one unit nobody could mistake. Length is exact in nanometres, because altitude bands are
// compared with whole feet (1,000 ft = 304.8 m) and an altitude must never be rounded down into the band
// below. The others hold a double in the SI unit named by their functions.
//
// Source of every factor: NIST Handbook 44 (2023), Appendix C; checked against GNU Units in
// tests/core/quantity/.
#pragma once

#include <chrono>
#include <compare>
#include <cstdint>

#include "base/Clock.h"

namespace brinebell {

class Length {
public:
    static constexpr std::int64_t kNanometresPerInch = 25'400'000;
    static constexpr std::int64_t kNanometresPerFoot = 304'800'000;

    constexpr Length() = default;
    static constexpr Length fromNanometres(std::int64_t nm) { return Length(nm); }
    static constexpr Length fromFeet(std::int64_t feet) { return Length(feet * kNanometresPerFoot); }
    /// Rounds half away from zero to the nanometre. Requires |metres| < 9e9.
    static Length fromMetres(double metres);

    constexpr std::int64_t nanometres() const { return m_nanometres; }
    constexpr double metres() const { return static_cast<double>(m_nanometres) / 1e9; }
    constexpr double feet() const {
        return static_cast<double>(m_nanometres) / static_cast<double>(kNanometresPerFoot);
    }
    constexpr double inches() const {
        return static_cast<double>(m_nanometres) / static_cast<double>(kNanometresPerInch);
    }
    constexpr auto operator<=>(const Length&) const = default;

private:
    explicit constexpr Length(std::int64_t nm) : m_nanometres(nm) {}
    std::int64_t m_nanometres = 0;
};

class Mass {
public:
    constexpr Mass() = default;
    static constexpr Mass fromGrams(double g) { return Mass(g); }
    constexpr double grams() const { return m_grams; }
    constexpr auto operator<=>(const Mass&) const = default;

private:
    explicit constexpr Mass(double g) : m_grams(g) {}
    double m_grams = 0;
};

class Volume {
public:
    constexpr Volume() = default;
    static constexpr Volume fromMillilitres(double ml) { return Volume(ml); }
    constexpr double millilitres() const { return m_millilitres; }
    constexpr auto operator<=>(const Volume&) const = default;

private:
    explicit constexpr Volume(double ml) : m_millilitres(ml) {}
    double m_millilitres = 0;
};

/// A point on the temperature scale, not a difference.
class Temperature {
public:
    constexpr Temperature() = default;
    static constexpr Temperature fromCelsius(double c) { return Temperature(c); }
    static constexpr Temperature fromFahrenheit(double f) { return Temperature((f - 32.0) / 1.8); }
    static constexpr Temperature fromKelvin(double k) { return Temperature(k - 273.15); }
    constexpr double celsius() const { return m_celsius; }
    constexpr double fahrenheit() const { return m_celsius * 1.8 + 32.0; }
    constexpr double kelvin() const { return m_celsius + 273.15; }
    constexpr auto operator<=>(const Temperature&) const = default;

private:
    explicit constexpr Temperature(double c) : m_celsius(c) {}
    double m_celsius = 0;
};

/// Absolute, unless the name that holds it says gauge.
class Pressure {
public:
    constexpr Pressure() = default;
    static constexpr Pressure fromPascals(double pa) { return Pressure(pa); }
    constexpr double pascals() const { return m_pascals; }
    constexpr double kilopascals() const { return m_pascals / 1000.0; }
    constexpr auto operator<=>(const Pressure&) const = default;

private:
    explicit constexpr Pressure(double pa) : m_pascals(pa) {}
    double m_pascals = 0;
};

class Power {
public:
    constexpr Power() = default;
    static constexpr Power fromWatts(double w) { return Power(w); }
    constexpr double watts() const { return m_watts; }
    constexpr auto operator<=>(const Power&) const = default;

private:
    explicit constexpr Power(double w) : m_watts(w) {}
    double m_watts = 0;
};

/// A guess at how long something takes. Invariant: zero <= low <= likely <= high.
struct ThreePoint {
    Seconds low{};
    Seconds likely{};
    Seconds high{};
    bool operator==(const ThreePoint&) const = default;
    /// A duration that is what it is (a process time, a published rest).
    static constexpr ThreePoint fixed(Seconds s) { return {s, s, s}; }
    constexpr bool isValid() const { return Seconds::zero() <= low && low <= likely && likely <= high; }
};

}  // namespace brinebell
