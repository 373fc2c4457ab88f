// LateStore.h — a planted fault: events are handed on one press late, when their effect has long been shown.
#pragma once

#include <vector>

#include "session/SessionRunner.h"

namespace brinebell::soak {

class LateStore final : public EventStore {
public:
    explicit LateStore(EventStore& real) : m_real(&real) {}
    Result<void> append(std::span<const Event> events) override {
        const Result<void> stored = m_held.empty() ? Result<void>{} : m_real->append(m_held);
        m_held.assign(events.begin(), events.end());
        return stored;
    }

private:
    EventStore* m_real;
    std::vector<Event> m_held;
};

}  // namespace brinebell::soak
