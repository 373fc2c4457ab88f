#include "desk/ClassPlanner.h"

#include <QThread>
#include <algorithm>

namespace brinebell {

namespace {

// Not the seed that the sheet is chosen by: it would be judged by the very runs it was chosen for.
constexpr std::uint64_t kForecastSeed = 2;

}  // namespace

ClassPlanner::ClassPlanner(QObject* parent, std::int64_t conflicts) : QObject(parent), m_conflicts(conflicts) {}

ClassPlanner::~ClassPlanner() {
    abandonAll();
    for (const auto& [thread, stop] : m_threads) {
        thread->wait();
        delete thread;
    }
}

// From a worker to the window. What an abandoned job still says is for nobody.
template <class Tell>
void ClassPlanner::tell(Job ClassPlanner::*job, std::uint64_t number, Tell words) {
    QMetaObject::invokeMethod(
        this,
        [this, job, number, words = std::move(words)] {
            if ((this->*job).stop != nullptr && (this->*job).number == number) {
                words();
            }
        },
        Qt::QueuedConnection);
}

template <class Work>
void ClassPlanner::start(Job ClassPlanner::*job, Work work) {
    abandon(this->*job);
    const Flag stop = std::make_shared<std::atomic<bool>>(false);
    (this->*job).stop = stop;
    const std::uint64_t number = ++(this->*job).number;
    QThread* thread = QThread::create([work = std::move(work), stop, number] { work(*stop, number); });
    m_threads.emplace_back(thread, stop);
    connect(thread, &QThread::finished, this, [this, thread] {
        m_threads.erase(std::find_if(m_threads.begin(), m_threads.end(),
                                     [thread](const auto& running) { return running.first == thread; }));
        thread->deleteLater();
    });
    // The window comes first where cores are few.
    thread->start(QThread::LowPriority);
}

void ClassPlanner::abandon(Job& job) {
    if (job.stop != nullptr) {
        job.stop->store(true);
        job.stop.reset();
    }
}

void ClassPlanner::abandonAll() {
    abandon(m_drafting);
    abandon(m_planning);
    abandon(m_choosing);
}

void ClassPlanner::stopPlanning() {
    if (isPlanning()) {
        m_planning.stop->store(true);
    }
}

void ClassPlanner::stopChoosing() {
    if (isChoosing()) {
        m_choosing.stop->store(true);
    }
}

Result<Prospect> ClassPlanner::lookAhead(const Network& network, const PlanOptions& options) const {
    Result<PlannedSheet> planned = planSheet(network, {}, options);
    if (!planned) {
        return tl::unexpected(planned.error());
    }
    Prospect prospect{std::move(*planned), {}, {}, {}};
    prospect.timing = backTimingOf(network, prospect.planned.sheet, heatingLengths(network));
    prospect.deadlines = deadlinesOf(network, prospect.planned.sheet, prospect.timing);
    ForecastOptions runs;
    runs.runs = kForecastRuns;
    runs.seed = kForecastSeed;
    runs.threads = 1;
    prospect.ahead = forecast(network, prospect.planned.policy, {}, runs);
    return prospect;
}

void ClassPlanner::draft(const ClassPlan& plan) {
    start(&ClassPlanner::m_drafting, [this, plan](const std::atomic<bool>&, std::uint64_t number) {
        const auto prepared = prepareClass(plan);
        tell(&ClassPlanner::m_drafting, number, [this, prepared] {
            m_drafting.stop.reset();
            if (prepared) {
                emit drafted(*prepared);
            } else {
                emit notDrafted(prepared.error().front());
            }
        });
    });
}

void ClassPlanner::plan(const Network& network) {
    start(&ClassPlanner::m_planning, [this, network](const std::atomic<bool>& stop, std::uint64_t number) {
        PlanOptions options;
        options.conflicts = m_conflicts;
        options.stop = &stop;
        options.progress = [this, number](const PlanProgress& progress) {
            tell(&ClassPlanner::m_planning, number, [this, progress] { emit progressed(progress); });
        };
        const Result<Prospect> prospect = lookAhead(network, options);
        tell(&ClassPlanner::m_planning, number, [this, prospect] {
            m_planning.stop.reset();
            if (prospect) {
                emit planned(*prospect);
            } else {
                emit notPlanned(prospect.error());
            }
        });
    });
}

void ClassPlanner::chooseAhead(const ClassPlan& plan) {
    start(&ClassPlanner::m_choosing, [this, plan](const std::atomic<bool>& stop, std::uint64_t number) {
        MakeAheadOptions options;
        options.stop = &stop;
        options.progress = [this, number](int sets, int ofSets) {
            tell(&ClassPlanner::m_choosing, number, [this, sets, ofSets] { emit tried(sets, ofSets); });
        };
        const Result<MakeAheadAnswer> answer = chooseMakeAhead(plan, options);
        tell(&ClassPlanner::m_choosing, number, [this, answer] {
            m_choosing.stop.reset();
            if (answer) {
                emit chosen(*answer);
            } else {
                emit notChosen(answer.error());
            }
        });
    });
}

}  // namespace brinebell
