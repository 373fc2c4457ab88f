// Simulation.h — one forward run of a network under a given order and given waits. The dispatcher's engine
// room.
//
// Time moves from event to event. At each moment: what is over is ended; looks and end work that are due take
// a free hand, or one whose work may be left for a moment; then, in the order given, work that was left is
// taken up again and new work starts.
#pragma once

#include <optional>
#include <vector>

#include "plan/Dispatcher.h"

namespace brinebell {

class Simulation {
public:
    /// What the repair of limits adds to the order: earliest starts, and starts that must come first.
    struct Waits {
        explicit Waits(std::size_t activities) : notBefore(activities, Seconds::min()), yieldTo(activities) {}
        std::vector<Seconds> notBefore;
        std::vector<std::vector<int>> yieldTo;  ///< by activity: those that must have started before it starts
    };

    struct Outcome {
        bool complete = false;
        Seconds end{};
        Seconds lateLooks{};  ///< by how much looks came later than their gap allows, summed
        std::vector<ActivitySpan> spans;
        std::vector<bool> underway;   ///< had started before the run began
        std::vector<bool> heldBack;   ///< started when its wait ended, not earlier
        std::vector<int> stationOf;   ///< by station hold
        std::vector<HandSpan> hands;  ///< by start
        std::vector<StationSpan> stations;
        std::vector<BrokenLimit> broken;
    };

    Simulation(const Network& network, const Order& order, const Progress& progress, std::vector<Seconds> durations);

    Outcome run(const Waits& waits);

    /// Whether `a` must end before `b` can start, by the order of the network.
    bool mustPrecede(int a, int b) const;

private:
    enum class Phase { Waiting, StartWork, Body, EndDue, EndWork, Working, Left, Done };

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
    };

    void reset(const Waits& waits);
    void takeUpProgress();
    void takeUpStations();
    void takeUpRunning(std::size_t i);
    void endWhatIsOver();
    bool endHandWork();
    bool endBodies();
    void serveCalls();
    void serveCall(std::size_t i, HandWork work, Seconds length);
    void startWork();
    bool canStart(std::size_t i) const;
    bool waitIsOver(std::size_t i) const;
    void begin(std::size_t i);
    void beginBody(std::size_t i);
    void finish(std::size_t i);
    void markDone(std::size_t i, Seconds ended);
    void planNextLook(std::size_t i);
    int handFor(std::size_t i, HandWork work, Seconds length);
    bool looksCanBeKept(int hand, Seconds until, std::size_t except) const;
    bool handIsThereBy(std::size_t i, Seconds deadline, int except) const;
    bool bringLooksForward(Seconds length);
    void takeHand(int hand, std::size_t i, HandWork work, Seconds length, bool mayLeave);
    void releaseHand(int hand, bool keepSpan);
    void leaveWork(int hand);
    void takeBackStart(std::size_t i);
    bool stationsFree(std::size_t i) const;
    void holdStations(std::size_t i);
    void takeStation(std::size_t hold);
    void dropStations(std::size_t i);
    Seconds nextMoment() const;
    Seconds endLength(std::size_t i) const;
    bool needsHandToStart(std::size_t i) const;
    void sortCandidates();
    Outcome takeOutcome();

    const Network& m_network;
    const Progress& m_progress;
    std::vector<Seconds> m_durations;
    std::vector<int> m_rank;
    std::vector<int> m_order;
    std::vector<std::vector<int>> m_successors;
    std::vector<std::vector<int>> m_limitsInto;

    const Waits* m_waits = nullptr;
    Seconds m_now{};
    std::vector<Running> m_running;
    std::vector<Hand> m_hands;
    std::vector<int> m_stationOf;  ///< by hold
    std::vector<int> m_holdLeft;   ///< by hold: activities of it that have not ended
    std::vector<Seconds> m_holdFrom;
    std::vector<bool> m_stationTaken;
    std::vector<int> m_candidates;
    std::vector<HandSpan> m_spans;
    std::vector<StationSpan> m_stationSpans;
    Seconds m_lateLooks{};
    int m_done = 0;
};

}  // namespace brinebell
