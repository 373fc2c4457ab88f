// OutlookWorker.h — looks ahead from a state of the session on a thread of its own: a better policy, the forecast under
// it, and what helps when the class runs late.
//
// The window never waits for it. There is one slot for what is asked: a newer state takes the place of one that still
// waits, so that however fast events come the answer is never more than one question behind.
// Threads: ask() and answered() belong to the thread that made it; one thread of its own, ended by the destructor.
#pragma once

#include <QObject>
#include <atomic>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>

#include "plan/Replan.h"

class QThread;

namespace brinebell {

struct OutlookQuestion {
    Policy policy;
    Progress progress;
    std::vector<bool> said;
    std::int64_t sequence = 0;  ///< the last event of the state asked about
    bool late = false;          ///< the class ended past its slot by then
};

struct OutlookAnswer {
    LiveOutlook outlook;
    std::int64_t sequence = 0;  ///< of the question
    bool late = false;          ///< of the question; while false, nobody has asked what would help
};

class OutlookWorker final : public QObject {
    Q_OBJECT

public:
    static constexpr int kRuns = 2'000;
    static constexpr std::uint64_t kSeed = 1;

    explicit OutlookWorker(const Network& network, QObject* parent = nullptr);
    /// Stops the search and waits for the thread, at the most as long as one forecast takes. Nothing is answered after.
    ~OutlookWorker() override;

    void ask(OutlookQuestion question);

signals:
    void answered(const brinebell::OutlookAnswer& answer);

private:
    std::optional<OutlookQuestion> take();
    void work();

    const Network m_network;
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::optional<OutlookQuestion> m_slot;
    std::atomic<bool> m_stop = false;
    std::unique_ptr<QThread> m_thread;
};

}  // namespace brinebell
