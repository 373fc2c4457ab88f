#include "bridge/OutlookWorker.h"

#include <QThread>

namespace brinebell {

OutlookWorker::OutlookWorker(const Network& network, QObject* parent)
    : QObject(parent), m_network(network), m_thread(QThread::create([this] { work(); })) {
    // The window comes first where cores are few.
    m_thread->start(QThread::LowPriority);
}

OutlookWorker::~OutlookWorker() {
    {
        const std::lock_guard lock(m_mutex);
        m_stop = true;
    }
    m_wake.notify_one();
    m_thread->wait();
}

void OutlookWorker::ask(OutlookQuestion question) {
    {
        const std::lock_guard lock(m_mutex);
        m_slot = std::move(question);
    }
    m_wake.notify_one();
}

std::optional<OutlookQuestion> OutlookWorker::take() {
    std::unique_lock lock(m_mutex);
    m_wake.wait(lock, [this] { return m_slot || m_stop; });
    return m_stop ? std::nullopt : std::exchange(m_slot, std::nullopt);
}

void OutlookWorker::work() {
    while (const std::optional<OutlookQuestion> question = take()) {
        ReplanBudget budget;
        budget.seconds = kLiveReplanSeconds;
        budget.stop = &m_stop;
        const OutlookAnswer answer{
            liveOutlook(m_network, question->policy, question->progress, question->said, budget, kRuns, kSeed),
            question->sequence, question->late};
        QMetaObject::invokeMethod(
            this, [this, answer] { emit answered(answer); }, Qt::QueuedConnection);
    }
}

}  // namespace brinebell
