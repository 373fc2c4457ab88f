#include "plan/TalkRoom.h"

#include <algorithm>

namespace brinebell {

bool hasRoom(const Network& network, const RunSheet& sheet, std::size_t talk) {
    return network.talk[talk].activity != -1 ||
           std::any_of(sheet.talk.begin(), sheet.talk.end(),
                       [talk](const TalkSpan& s) { return s.talk == static_cast<int>(talk); });
}

int mustSayWithoutRoom(const Network& network, const RunSheet& sheet) {
    int without = 0;
    for (std::size_t t = 0; t < network.talk.size(); ++t) {
        without += network.talk[t].mustSay && !hasRoom(network, sheet, t) ? 1 : 0;
    }
    return without;
}

}  // namespace brinebell
