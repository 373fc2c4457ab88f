// MemoryStore.h — a store of events that forgets everything, and fails when it is told to.
#pragma once

#include <functional>
#include <vector>

#include "session/SessionRunner.h"

namespace brinebell::support {

class MemoryStore final : public EventStore {
public:
    Result<void> append(std::span<const Event> batch) override {
        if (onAppend) {
            onAppend(batch);
        }
        if (failing) {
            return fail(ErrorCode::Io, "the disk is full");
        }
        events.insert(events.end(), batch.begin(), batch.end());
        return {};
    }

    std::vector<Event> events;
    bool failing = false;
    std::function<void(std::span<const Event>)> onAppend;
};

}  // namespace brinebell::support
