// What a pressure canner does between the first steam and the rest: venting, coming to pressure, losing it again.
#include <fmt/format.h>

#include "base/Language.h"
#include "plan/CannerWords.h"
#include "plan/Unfolding.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

namespace {

// Our estimates for the hand work.
constexpr Seconds kCloseVent{15};
constexpr Seconds kSeePressure{10};
constexpr Seconds kPressureHeatOff{15};
constexpr Seconds kSeeZero{10};
// Three to five minutes to come to pressure: AIB 539 and its 1994 text on recommended canners; the high end is our
// estimate.
constexpr ThreePoint kToPressure{Seconds(180), Seconds(300), Seconds(600)};
// Twenty to sixty minutes to cool: AIB 539 (1994), recommended canners. Thirty for pints and forty-five for quarts in
// heavy older canners: PNW 421. How the range falls to the sizes is our estimate.
constexpr ThreePoint kCoolPints{std::chrono::minutes(20), std::chrono::minutes(30), std::chrono::minutes(45)};
constexpr ThreePoint kCoolQuarts{std::chrono::minutes(30), std::chrono::minutes(45), std::chrono::minutes(60)};

// The lock shows it, and the gauge where there is one; a canner without a lock is waited for by the clock. A weight
// that is nudged to see whether steam comes is a vent that is opened early. Sources: PNW 421, AIB 539.
std::string noPressureWords(const Load& load) {
    const std::string seen =
        load.method == Method::PressureDial ? core::say("Gauge at zero and the lock down") : core::say("Lock down");
    return core::say("{}; a heavy older canner without a lock: {} min after heat off", seen,
                     load.jar <= JarSize::Pint ? 30 : 45);
}

}  // namespace

void Unfolding::addVenting(Load& made, Activity vent, Activity pressurise) {
    PressureWork& work = *made.pressure;
    work.ventTime = kVentTime;
    vent.title = core::say("Vent the canner for {}", printDuration(kVentTime));
    vent.detail = core::say("The steam must not stop; after the whole time {}", closeVentWords(made));
    vent.duration = ThreePoint::fixed(kVentTime + kCloseVent);
    vent.hands = HandsNeed::Ends;
    vent.handsAtEnd = kCloseVent;
    vent.after = {made.heatUp};
    work.vent = addActivity(std::move(vent));

    pressurise.title = core::say("Bring the canner to {} psi", work.gaugePsi);
    pressurise.detail = core::say("High heat; lower it a little as the pressure comes near");
    pressurise.lookFor = atPressureWords(made);
    pressurise.duration = kToPressure;
    pressurise.hands = HandsNeed::Ends;
    pressurise.handsAtEnd = kSeePressure;
    pressurise.endsBySight = true;
    pressurise.after = {work.vent};
    work.pressurise = addActivity(std::move(pressurise));
}

void Unfolding::addCoolDown(Load& made, Activity cool) {
    cool.title = core::say("Turn the heat off, let the pressure fall");
    cool.detail = core::say("By itself: no water, no cold towel; weight and vent stay untouched");
    cool.lookFor = noPressureWords(made);
    cool.duration = made.jar <= JarSize::Pint ? kCoolPints : kCoolQuarts;
    cool.hands = HandsNeed::Ends;
    cool.handsAtStart = kPressureHeatOff;
    cool.handsAtEnd = kSeeZero;
    cool.endsBySight = true;
    cool.after = {made.process};
    made.pressure->coolDown = addActivity(std::move(cool));
}

}  // namespace brinebell
