#include "session/Advice.h"

#include "plan/SheetCheck.h"

namespace brinebell {

Advice::Advice(Policy policy, Dispatch dispatchWith)
    : m_policy(std::move(policy)), m_dispatch(std::move(dispatchWith)) {
    if (!m_dispatch) {
        m_dispatch = [](const Network& network, const Policy& followed, const Progress& progress) {
            return dispatch(network, followed, progress);
        };
    }
}

void Advice::follow(Policy policy) {
    m_policy = std::move(policy);
    m_sequence = -1;
    m_at = Seconds(-1);
}

const RunSheet& Advice::sheet(const Network& network, const Progress& progress, std::int64_t sequence) {
    if (m_sequence != sequence || m_at != progress.now) {
        workOut(network, progress);
        m_sequence = sequence;
        m_at = progress.now;
    }
    return m_sheet;
}

void Advice::workOut(const Network& network, const Progress& progress) {
    m_fault.reset();
    RunSheet sheet = m_dispatch(network, m_policy, progress);
    const std::vector<std::string> broken = rulesBrokenBy(network, sheet, progress);
    if (!broken.empty()) {
        m_fault = AdviceFault{broken.front(), AdviceFault::StandIn::DefaultOrder};
        sheet = m_dispatch(network, Policy(defaultOrder(network)), progress);
        if (!rulesBrokenBy(network, sheet, progress).empty()) {
            m_fault->standIn = AdviceFault::StandIn::LastSound;
            if (m_haveSheet) {
                return;
            }
            // Nothing sound has ever been found: the board needs a sheet to stand on, and says what it is worth.
        }
    }
    m_sheet = std::move(sheet);
    m_haveSheet = true;
}

}  // namespace brinebell
