#include "support/RandomNetwork.h"

#include <fmt/format.h>

#include <algorithm>

#include "support/NetworkMaking.h"

namespace brinebell::support {

namespace {

class Making final : public NetworkMaking {
public:
    using NetworkMaking::NetworkMaking;
    Network run() override;

private:
    void makeStep(Activity& a) override;
    bool wantsLimit() override { return chance(25); }
    Seconds limitLength() override { return Seconds(between(0, 400)); }
    bool wantsLoadLimit() override { return chance(70); }
    std::chrono::minutes processTime() override { return std::chrono::minutes(between(5, 45)); }
};

void Making::makeStep(Activity& a) {
    const std::int64_t likely = between(30, 900);
    a.duration = around(likely);
    a.presenterOnly = chance(12);
    a.endsBySight = chance(40);
    switch (m_random.below(8)) {
        case 0:
            a.hands = HandsNeed::None;
            break;
        case 1:
        case 2:
            a.hands = HandsNeed::Ends;
            a.handsAtStart = Seconds(chance(80) ? between(5, 30) : 0);
            a.handsAtEnd = Seconds(chance(60) ? between(5, 30) : 0);
            a.duration = around(std::max<std::int64_t>(likely, 120));
            break;
        case 3:
            a.hands = HandsNeed::Pulses;
            a.handsAtStart = Seconds(chance(80) ? between(5, 30) : 0);
            a.handsAtEnd = Seconds(chance(50) ? between(5, 20) : 0);
            a.duration = around(std::max<std::int64_t>(likely, 200));
            a.pulse = PulseRule{Seconds(60), Seconds(between(90, 180)), Seconds(between(5, 20)), "Turn it"};
            break;
        default:
            a.hands = HandsNeed::Throughout;
            a.mayPause = chance(60);
            break;
    }
}

Network Making::run() {
    m_network.classId = "made-up";
    m_network.slot = Seconds(7200);
    m_network.helpers = static_cast<int>(between(0, 3));
    addStations();
    const std::int64_t dishes = between(1, 3);
    for (std::int64_t d = 0; d < dishes; ++d) {
        addDish(static_cast<int>(d), between(dishes == 1 ? 8 : 4, 10));
    }
    addLoads(std::min<std::size_t>(m_random.below(3), m_network.dishes.size()));
    if (chance(60)) {
        addOpening();
    }
    if (chance(60)) {
        addClosing();
    }
    for (std::int64_t t = between(0, 4); t > 0; --t) {
        NetworkTalk talk;
        talk.key = fmt::format("talk-{}", t);
        talk.text = talk.key;
        talk.mustSay = chance(50);
        talk.mayDrop = !talk.mustSay;
        talk.length = Seconds(between(1, 4) * 30);
        m_network.talk.push_back(std::move(talk));
    }
    return std::move(m_network);
}

}  // namespace

Network randomNetwork(std::uint64_t seed) {
    return Making(seed).run();
}

}  // namespace brinebell::support
