// Simulation.h — one forward run of a network under a given policy and given waits. The dispatcher's engine room.
//
// Time moves from event to event. At each moment: what is over is ended; looks and end work that are due take
// a free hand, or one whose work may be left for a moment; hands go back to the work they left;
// then, in the order given, new work starts.
//
// A simulation is built once for a network and run many times; a run allocates next to nothing.
#pragma once

#include <optional>
#include <vector>

#include "plan/Dispatcher.h"

namespace brinebell {

class Simulation {
public:
    /// What the repair of limits adds to the policy: earliest starts, and starts that must come first.
    struct Waits {
        explicit Waits(std::size_t activities) : notBefore(activities, Seconds::min()), yieldTo(activities) {}
        std::vector<Seconds> notBefore;
        std::vector<std::vector<int>> yieldTo;  ///< by activity: those that must have started before it starts
    };

    struct Outcome {
        bool complete = false;
        Seconds end{};
        Seconds classEnd{};   ///< end of the closing; the end where there is none
        Seconds lateLooks{};  ///< by how much looks came later than their gap allows, summed
        std::vector<BrokenLimit> broken;
        // The rest is filled in only when the run is recorded.
        std::vector<ActivitySpan> spans;
        std::vector<bool> underway;   ///< had started before the run began
        std::vector<bool> heldBack;   ///< started when its wait ended, not earlier
        std::vector<int> stationOf;   ///< by station hold
        std::vector<HandSpan> hands;  ///< by start
        std::vector<StationSpan> stations;
    };

    /// How much of a run is kept.
    enum class Keep { Everything, EndsOnly };

    /// The network must outlive the simulation.
    Simulation(const Network& network, Policy policy);

    /// The outcome stands until the next run. `durations` by activity; `waits` may be null.
    const Outcome& run(const Progress& progress, const std::vector<Seconds>& durations, const Waits* waits = nullptr,
                       Keep keep = Keep::Everything);

    /// Whether `a` must end before `b` can start, by the order of the network.
    bool mustPrecede(int a, int b) const;

    void setPolicy(Policy policy);
    const Policy& policy() const { return m_policy; }

private:
    static constexpr Seconds kNever = Seconds::max();

    enum class Phase { Waiting, StartWork, Body, EndDue, EndWork, Working, Left, Done };

    /// What does not change from run to run, close together.
    struct Fixed {
        HandsNeed hands = HandsNeed::None;
        bool pulses = false, mayPause = false, presenterOnly = false, needsHandToStart = false;
        int rank = 0;
        Seconds atStart{}, atEnd{};  ///< hand work at the ends; the last look counts as end work
        Seconds gapLow{}, gapHigh{}, takes{};
    };

    struct Running {
        Phase phase = Phase::Waiting;
        Seconds started{};
        Seconds ended{};
        Seconds phaseEnd{};  ///< of StartWork, Body, EndWork, Working
        Seconds workLeft{};  ///< hand work still to do when it was left for a moment
        Seconds lastLook{};
        Seconds nextLook{};  ///< when the next look is wanted; max() when the end comes first
        bool looking = false;
        int pieces = 0;
        int looks = 0;
        bool underway = false;
        bool skipped = false;
        bool heldBack = false;
        int openBefore = 0;  ///< activities it follows that have not ended
    };

    struct Hand {
        int activity = -1;
        HandWork work = HandWork::Work;
        Seconds from{};
        Seconds until{};
        bool mayLeave = false;
        int goesBackTo = -1;  ///< work that was left for what the hand does now
    };

    struct Call {
        Seconds deadline;
        int rank;
        std::size_t activity;
        HandWork work;
    };

    void reset();
    void takeUpProgress();
    void takeUpPast();
    void takeUpStations();
    void takeUpRunning(std::size_t i);
    void endWhatIsOver();
    bool endHandWork();
    bool endBodies();
    void serveCalls();
    void serveCall(std::size_t i, HandWork work, Seconds length);
    bool startWork();
    bool tryCandidate(std::size_t i, bool& lookFirst);
    bool canStart(std::size_t i) const;
    bool waitIsOver(std::size_t i) const;
    Seconds gateOf(std::size_t i) const;
    void begin(std::size_t i);
    void beginBody(std::size_t i);
    void finish(std::size_t i);
    void markDone(std::size_t i, Seconds ended);
    void becomeReady(std::size_t i);
    void noLongerReady(std::size_t i);
    void enterBodies(std::size_t i);
    void leaveBodies(std::size_t i);
    void planNextLook(std::size_t i);
    const PlannedPiece* plannedPiece(std::size_t i, HandWork work) const;
    int handFor(std::size_t i, HandWork work, Seconds length) const;
    int freeHand(int hands, HandWork work, WantedHand wanted) const;
    int handToLeave(std::size_t i, int hands, HandWork work, Seconds length, const PlannedPiece* planned) const;
    bool looksCanBeKept(int hand, Seconds until, std::size_t except) const;
    bool handIsThereBy(std::size_t i, Seconds deadline, int except) const;
    bool bringLooksForward(Seconds length);
    void takeHand(int hand, std::size_t i, HandWork work, Seconds length, bool mayLeave);
    void releaseHand(int hand);
    void leaveWork(int hand);
    void goBackToWork();
    void takeBackStart(std::size_t i);
    bool stationsFree(std::size_t i) const;
    bool itsTurn(std::size_t hold) const;
    void holdStations(std::size_t i);
    void takeStation(std::size_t hold);
    void dropStations(std::size_t i);
    Seconds nextMoment() const;
    void sortCandidates();
    void takeEnds();
    void takeEverything();

    const Network& m_network;
    Policy m_policy;
    std::vector<Fixed> m_fixed;
    std::vector<std::vector<int>> m_successors;
    std::vector<std::vector<int>> m_limitsInto;
    std::vector<std::vector<int>> m_holdsBefore;  ///< by hold: those that come first on a station both want
    bool m_mayWaitForStart = false;               ///< something may hang on the start of another activity

    const Progress* m_progress = nullptr;
    const std::vector<Seconds>* m_durations = nullptr;
    const Waits* m_waits = nullptr;
    Keep m_keep = Keep::Everything;
    bool m_waitsLifted = false;  ///< nothing else could go on: waits and turns no longer count
    Seconds m_now{};
    std::vector<Running> m_running;
    std::vector<Hand> m_hands;
    std::vector<int> m_ready;      ///< activities that wait for hands or stations only, or were left; by rank
    std::vector<int> m_bodies;     ///< activities in Body or EndDue, by index
    std::vector<int> m_stationOf;  ///< by hold
    std::vector<int> m_holdLeft;   ///< by hold: activities of it that have not ended
    std::vector<Seconds> m_holdFrom;
    std::vector<char> m_stationTaken;
    std::vector<int> m_candidates;
    std::vector<std::pair<Seconds, int>> m_urgent;
    std::vector<Call> m_calls;
    std::vector<HandSpan> m_spans;
    std::vector<StationSpan> m_stationSpans;
    Seconds m_lateLooks{};
    int m_done = 0;
    Outcome m_outcome;
};

}  // namespace brinebell
