#include "sound/CueMailbox.h"

#include <utility>

namespace brinebell {

bool CueRequest::isStaleAt(std::chrono::steady_clock::time_point now) const {
    return now - asked > kCueStaleAfter;
}

void CueMailbox::put(const CueRequest& request) {
    const std::lock_guard lock(m_mutex);
    if (!m_waiting || m_waiting->isStaleAt(request.asked) || request.sound >= m_waiting->sound) {
        m_waiting = request;
    }
}

std::optional<CueRequest> CueMailbox::take(std::optional<CueSound> sounding,
                                           std::chrono::steady_clock::time_point now) {
    const std::lock_guard lock(m_mutex);
    if (m_waiting && m_waiting->isStaleAt(now)) {
        m_waiting.reset();
    }
    if (!m_waiting || (sounding && m_waiting->sound <= *sounding)) {
        return std::nullopt;
    }
    return std::exchange(m_waiting, std::nullopt);
}

}  // namespace brinebell
