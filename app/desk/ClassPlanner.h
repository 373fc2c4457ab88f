// ClassPlanner.h — plans a class and asks what to make ahead of it, beside the window.
//
// Threads: one for each question, none of them the window's. Signals come in the window's own thread. A new question
// of the same kind abandons the one before, which is then not heard of again.
#pragma once

#include <QObject>
#include <atomic>
#include <memory>
#include <vector>

#include "desk/ClassShelf.h"
#include "plan/MakeAhead.h"

class QThread;

namespace brinebell {

class ClassPlanner final : public QObject {
    Q_OBJECT

public:
    /// `conflicts`: of each search, as in PlanOptions.
    explicit ClassPlanner(QObject* parent = nullptr, std::int64_t conflicts = PlanOptions().conflicts);
    /// Stops what runs and waits until it has.
    ~ClassPlanner() override;

    /// Unfolds a class into its network and the sheet of the default order, which takes milliseconds.
    void draft(const ClassPlan& plan);
    void plan(const Network& network);
    void chooseAhead(const ClassPlan& plan);
    void stopPlanning();  ///< planned() follows, with the best sheet so far
    void stopChoosing();  ///< chosen() follows, with the best set so far
    void abandonAll();    ///< nothing follows

    bool isDrafting() const { return m_drafting.stop != nullptr; }
    bool isPlanning() const { return m_planning.stop != nullptr; }
    bool isChoosing() const { return m_choosing.stop != nullptr; }

    static constexpr int kForecastRuns = 2'000;

signals:
    void drafted(const brinebell::PreparedClass& prepared);
    void notDrafted(const brinebell::Error& reason);
    void progressed(const brinebell::PlanProgress& progress);
    void planned(const brinebell::Prospect& prospect);
    void notPlanned(const brinebell::Error& reason);
    void tried(int sets, int ofSets);
    void chosen(const brinebell::MakeAheadAnswer& answer);
    void notChosen(const brinebell::Error& reason);

private:
    using Flag = std::shared_ptr<std::atomic<bool>>;
    struct Job {
        Flag stop;  ///< null: none runs
        std::uint64_t number = 0;
    };

    template <class Tell>
    void tell(Job ClassPlanner::*job, std::uint64_t number, Tell words);
    template <class Work>
    void start(Job ClassPlanner::*job, Work work);
    void abandon(Job& job);
    Result<Prospect> lookAhead(const Network& network, const PlanOptions& options) const;

    std::int64_t m_conflicts;
    Job m_drafting;
    Job m_planning;
    Job m_choosing;
    std::vector<std::pair<QThread*, Flag>> m_threads;  ///< all that have not ended
};

}  // namespace brinebell
