#include "window/SixCountdowns.h"

namespace brinebell {

namespace {

constexpr int kBurners = 6;

class NoDisk final : public EventStore {
public:
    Result<void> append(std::span<const Event>) override { return {}; }
};

}  // namespace

Network sixCountdowns() {
    Network network;
    network.classId = "six-countdowns";
    network.title = "Six countdowns";
    network.slot = std::chrono::hours(2);
    network.readingDistance = Length::fromMetres(2.0);
    for (int burner = 0; burner < kBurners; ++burner) {
        const std::string name = "Burner " + std::to_string(burner + 1);
        network.stations.push_back(
            {"burner-" + std::to_string(burner + 1), name, StationKind::Burner, HeatKind::Gas, {}});
        Activity pot;
        pot.key = "pots/pot-" + std::to_string(burner + 1);
        pot.title = "Simmer pot " + std::to_string(burner + 1);
        // Far enough apart that no two of them stand at the same second.
        pot.duration = ThreePoint::fixed(std::chrono::minutes(50 + 3 * burner));
        pot.hands = HandsNeed::None;
        pot.stationHolds = {burner};
        network.activities.push_back(pot);
        network.stationHolds.push_back({"pot", {burner}, {burner}});
    }
    return network;
}

std::unique_ptr<SessionAdapter> countingSession(const Clock& clock) {
    SessionKeep keep;
    keep.clock = &clock;
    keep.store = std::make_unique<NoDisk>();
    SessionRunner runner(sixCountdowns(), clock, *keep.store);
    auto session = std::make_unique<SessionAdapter>(std::move(runner), std::move(keep));
    Command start;
    start.kind = CommandKind::StartSession;
    start.value = 1;
    session->perform(start, Cause::Key);
    for (int burner = 0; burner < kBurners; ++burner) {
        Command pot;
        pot.kind = CommandKind::Start;
        pot.activity = burner;
        session->perform(pot, Cause::Key);
    }
    return session;
}

}  // namespace brinebell
