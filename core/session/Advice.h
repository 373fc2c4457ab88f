// Advice.h — the sheet that the board follows from the present state: dispatched, held against the rules of a kitchen,
// and only then shown.
//
// A sheet that breaks a rule (plan/SheetCheck.h) is a fault of ours and is never shown: what the default order gives
// stands in for it, and where that is no better, the last sheet that was sound. fault() says so as long as it lasts.
// The check runs in every build: it costs some microseconds, and a presenter would follow what it finds.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

#include "plan/Dispatcher.h"

namespace brinebell {

struct AdviceFault {
    enum class StandIn { DefaultOrder, LastSound };
    std::string broken;  ///< the first rule that the advice would have broken, for whoever mends it
    StandIn standIn = StandIn::DefaultOrder;
    bool operator==(const AdviceFault&) const = default;
};

class Advice {
public:
    /// dispatch(); tests hand in one that errs.
    using Dispatch = std::function<RunSheet(const Network&, const Policy&, const Progress&)>;

    explicit Advice(Policy policy, Dispatch dispatchWith = {});

    const Policy& policy() const { return m_policy; }
    void follow(Policy policy);

    /// From `progress`, which stands for the state after event `sequence`; worked out at most once a second.
    const RunSheet& sheet(const Network& network, const Progress& progress, std::int64_t sequence);

    /// Of the sheet that sheet() gave last.
    const std::optional<AdviceFault>& fault() const { return m_fault; }

private:
    void workOut(const Network& network, const Progress& progress);

    Policy m_policy;
    Dispatch m_dispatch;
    RunSheet m_sheet;
    bool m_haveSheet = false;
    std::optional<AdviceFault> m_fault;
    std::int64_t m_sequence = -1;
    Seconds m_at{-1};
};

}  // namespace brinebell
