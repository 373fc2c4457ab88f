// Network.h — the steps of all dishes unfolded into activities: durations, hands, stations, order, limits.
// Pure data.
//
// A network is frozen into the logbook when a session starts, so that a session can be replayed and reviewed
// when recipe files have changed since. All times are whole seconds.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "kitchen/Venue.h"
#include "plan/Policy.h"
#include "quantity/Quantities.h"
#include "recipe/Recipe.h"

namespace brinebell {

enum class ActivityKind {
    Opening,     ///< welcome; comes before everything that needs the presenter
    Step,        ///< a step of a recipe
    Sterilise,   ///< empty jars boiled in the canner before they are filled; never left out
    BringOut,    ///< the short swap that replaces a made-ahead stage
    Preheat,     ///< the canner's water to the preheat temperature of the first load's pack
    Lower,       ///< jars into the canner, water over the lids, lid on
    HeatUp,      ///< to a full rolling boil, or to a steady column of steam; ends when somebody sees it
    Vent,        ///< pressure canner: steam drives the air out, unbroken, for its whole time; ends with the vent closed
    Pressurise,  ///< pressure canner: to the gauge pressure of the table; ends when somebody sees it
    Process,     ///< the published time, counted from the boil or from the pressure; nothing shortens it
    CoolDown,    ///< pressure canner: heat off (hands at the start), then nothing until no pressure is left
    Rest,        ///< lid off, or weight off a pressure canner (hands at the start), then the wait before lifting
    Lift,        ///< jars out, one inch apart
    Closing,     ///< questions and good-bye; the class end is its end
};

/// Invariants: duration.isValid(); `pulse` exactly when hands is Pulses; handsAtStart + handsAtEnd <=
/// duration.low when hands is Ends; `after` holds smaller or larger indices but never forms a circle.
struct Activity {
    std::string key;  ///< unique and stable: "chile-salsa/roast", "canner-1/load-2/process"
    ActivityKind kind = ActivityKind::Step;
    int dish = -1;      ///< index into dishes; -1 for the class's own
    int load = -1;      ///< index into loads; -1 when not bound to one
    std::string title;  ///< verb first
    std::string detail;
    std::string lookFor;
    std::vector<std::string> amounts;  ///< "2 lb chile peppers", for this batch
    std::vector<std::string> cautions;
    ThreePoint duration;
    HandsNeed hands = HandsNeed::None;
    Seconds handsAtStart{};
    Seconds handsAtEnd{};
    std::optional<PulseRule> pulse;
    bool mayPause = false;
    bool presenterOnly = false;
    bool endsBySight = false;
    int jars = 0;  ///< counted off inside the activity; 0 when it is not per jar
    std::vector<int> after;
    std::vector<int> stationHolds;  ///< indices of the holds it belongs to
    bool operator==(const Activity&) const = default;
};

/// One station taken from the start of the first of its activities to the end of the last.
/// The station is any of `candidates` (indices into stations), the same one throughout.
struct StationHold {
    std::string vessel;
    std::vector<int> candidates;
    std::vector<int> activities;
    bool operator==(const StationHold&) const = default;
};

/// A longest wait from the end of `from` to the start of `to`.
struct HoldLimit {
    int from = -1;
    int to = -1;
    Seconds atMost{};
    LimitKind kind = LimitKind::Quality;
    std::string remedy;
    bool operator==(const HoldLimit&) const = default;
};

/// What a pressure canner asks for beside the process time.
struct PressureWork {
    int gaugePsi = 0;                               ///< of the published table at the venue's altitude; never below it
    Seconds ventTime{};                             ///< of unbroken venting before the vent is closed
    int vent = -1, pressurise = -1, coolDown = -1;  ///< activities
    bool operator==(const PressureWork&) const = default;
};

/// One canner load.
struct Load {
    int dish = -1;
    int canner = -1;  ///< index into stations
    int number = 1;   ///< 1, 2, … in the order of that canner
    int jars = 0;
    JarSize jar = JarSize::Pint;
    Pack pack = Pack::Hot;
    Method method = Method::BoilingWater;
    Seconds processTime{};   ///< from the published table at the venue's altitude; never below it
    std::string tableEntry;  ///< which row and band: "chile-salsa.hot, 1,001 ft to 6,000 ft"
    std::string tableSource;
    int lower = -1, heatUp = -1, process = -1, rest = -1, lift = -1;  ///< activities
    std::optional<PressureWork> pressure;  ///< exactly where `method` is one of the pressure canners
    std::string waterCheck;  ///< what somebody confirms before a boil or steam counts; empty: nothing (older logbooks)
    bool operator==(const Load&) const = default;
};

struct NetworkTalk {
    std::string key;
    std::string text;
    bool mustSay = false;
    bool mayDrop = false;
    Seconds length{};
    int activity = -1;  ///< the activity it belongs to; -1: fills any wait
    int dish = -1;
    bool operator==(const NetworkTalk&) const = default;
};

struct NetworkDish {
    std::string id;
    std::string title;
    std::string source;
    int jars = 0;
    JarSize jar = JarSize::Pint;
    std::string shelfLife;
    std::string storage;
    std::vector<std::string> allergens;
    std::string untested{};  ///< why its recipe was held against no tested one; mostly empty
    bool operator==(const NetworkDish&) const = default;
};

/// What the recipe says about putting something else in the place of an ingredient that `activity` handles.
struct SwapAdvice {
    int activity = -1;
    std::string ingredient;
    std::vector<std::string> allowed;
    std::vector<std::string> refused;
    bool operator==(const SwapAdvice&) const = default;
};

struct Network {
    std::string classId;
    std::string title;
    std::string teacher;
    std::string venueName;
    std::string altitude;  ///< as shown: "4,200 ft (survey map)"
    Length readingDistance;
    Millis startUtc{};  ///< planned start of the slot
    Seconds slot{};
    std::optional<Seconds> kitchenSlot;
    std::string kitchenCloser;
    int helpers = 0;                ///< hands = 1 + helpers; hand 0 is the presenter's
    std::vector<Station> stations;  ///< the venue's, then its canners as StationKind::Canner
    std::vector<NetworkDish> dishes;
    std::vector<Activity> activities;
    std::vector<StationHold> stationHolds;
    std::vector<HoldLimit> limits;
    std::vector<Load> loads;
    std::vector<NetworkTalk> talk;
    std::vector<Confirmation> confirmed;  ///< who vouched for each table entry from memory that a load rests on
    std::vector<SwapAdvice> swaps;        ///< by activity; only where the recipe says something
    std::vector<std::string> notes;       ///< what the unfolding decided and a teacher should know
    int opening = -1;
    int closing = -1;
    Policy policy;  ///< what a search found for this class; an empty order: the dispatcher's own
    bool operator==(const Network&) const = default;
};

inline constexpr Seconds kRestBeforeLifting{300};  ///< heat off, lid off, five minutes. Illinois Extension, NCHFP
inline constexpr Seconds kVentTime{600};  ///< steady steam before the vent is closed. K-State Extension, PNW 421
inline constexpr Seconds kWaitBeforeOpening{
    600};  ///< no pressure left, weight off, ten minutes. AIB 539 (2015), memory
inline constexpr Seconds kLongestCall{
    600};  ///< calls shorter than this may interrupt work that may be left; our estimate
inline constexpr int kMaxActivities = 400;
inline constexpr int kMaxLooks = 500;                                      ///< that one activity may call for
inline constexpr Seconds kLongestDuration = std::chrono::hours(400 * 24);  ///< what readDuration() takes

/// Whether it is done to a load in its canner: lowering, lifting and all between them.
bool isLoadWork(ActivityKind kind);

/// The activities of a load from lowering to lifting, each of which follows the one before it.
std::vector<int> cannerChain(const Load& load);

/// The least wait between the lid's opening (or a pressure canner's pressure being gone) and lifting.
constexpr Seconds restBeforeLifting(Method method) {
    return isPressure(method) ? kWaitBeforeOpening : kRestBeforeLifting;
}

/// Whether `i` is the place of something in a list of `size`.
constexpr bool isIndex(int i, std::size_t size) {
    return i >= 0 && static_cast<std::size_t>(i) < size;
}

std::optional<int> findActivity(const Network& network, std::string_view key);

/// Hand work at the end of an activity that has hands at its ends or in pulses; zero for the others. The look that sees
/// the end-point of a pulsed one is its end work: its own where it has some, an ordinary look where not.
Seconds endWorkOf(const Activity& activity);

/// Who vouched for the table entry of a load, if it rests on memory; null where it does not.
const Confirmation* confirmationOf(const Network& network, const Load& load);

/// For each activity, the activities that list it in `after`.
std::vector<std::vector<int>> successorsOf(const Network& network);

/// Everything a network promises (indices in range, no circle of order, invariants above). Empty when sound;
/// each fault in words otherwise. Run on every network that was unfolded or read back.
std::vector<std::string> faultsIn(const Network& network);

/// The network as one JSON document, and back. Error: Corrupt.
std::string networkToJson(const Network& network);
Result<Network> networkFromJson(std::string_view json);

}  // namespace brinebell
