// SheetModel.h — a network as a scheduling problem: what every sheet must keep, as variables and constraints.
//
// The rules are those of DEVELOPERS.md, "What a sheet keeps". Pieces of hand work (work throughout, setting up, looks,
// end work) are placed on the presenter or a helper; a call (any piece but work throughout) may interrupt work that may
// be left, which then takes longer by as much. Times are whole ticks of `tick()` seconds, the largest step that divides
// every length of the network.
#pragma once

#include <optional>
#include <vector>

#include "plan/Dispatcher.h"
#include "plan/Network.h"
#include "schedule/ScheduleModel.h"

namespace brinebell {

/// What a model asks for on top of the rules.
struct SheetWishes {
    enum class Aim {
        KitchenEnd,  ///< the end of everything as early as can be
        ClassEnd,    ///< the end of the closing as early as can be
        Stretching,  ///< quality limits stretched as little as can be; they are kept otherwise
    };
    Aim aim = Aim::KitchenEnd;
    Seconds kitchenEndAtMost{};               ///< the horizon: no sheet beyond it is of interest
    std::optional<Seconds> classEndAtMost;    ///< of the closing
    std::vector<Seconds> limitAtMost;         ///< empty, or a longest wait for each limit in place of its own
    const std::vector<Seconds>* durations{};  ///< by activity; null: the likely ones
};

class SheetModel {
public:
    /// Requires faultsIn(network) empty. `progress` need not outlive the constructor; the network must.
    SheetModel(const Network& network, const Progress& progress, const SheetWishes& wishes);

    const ScheduleModel& model() const { return m_model; }
    Seconds tick() const { return m_tick; }
    Seconds toSeconds(Tick ticks) const { return m_tick * ticks; }
    Tick objectiveTicks(Seconds s) const { return static_cast<Tick>(s / m_tick); }

    /// The policy that makes the dispatcher do what `values` say: every start is gated at its own time.
    Policy policyOf(const std::vector<Tick>& values) const;

    /// Values for a search to begin with, read off a sheet of the same network and progress.
    std::vector<Tick> hintFrom(const RunSheet& sheet) const;

    /// The longest waits that `values` of a model with the aim Stretching allow, by limit.
    std::vector<Seconds> stretchedLimits(const std::vector<Tick>& values) const;

private:
    /// A piece of hand work and who may do it.
    struct Piece {
        int activity = -1;
        HandWork work = HandWork::Work;
        Moment start, end;
        std::optional<Variable> present;  ///< looks that need not take place
        std::optional<Variable>
            presenter;                   ///< the presenter's, of more than one hand: by the presenter, not inside work
        std::optional<Variable> helper;  ///< by a helper, not inside work
        struct Inside {
            int work = -1;  ///< index of the piece that is left for it
            Variable truth = -1;
        };
        std::vector<Inside> inside;
    };
    struct Placed {
        Moment start, end;
        bool open = false;               ///< has not ended: part of the model
        bool fresh = false;              ///< has not started either
        std::vector<std::size_t> looks;  ///< pieces
        std::optional<std::size_t> startPiece, endPiece;
    };
    struct StretchLevel {
        std::size_t limit = 0;
        Variable truth = -1;  ///< true: the wait may exceed `before`
        Seconds before{};
    };

    Tick ticks(Seconds s) const;
    Seconds findTick() const;
    void addActivity(std::size_t i);
    void addFresh(std::size_t i);
    void addRunning(std::size_t i);
    void addWork(std::size_t i, Moment start, Tick length, bool mayPause);
    void addBody(std::size_t i, Moment setUp, bool underway);
    void addLooks(std::size_t i, Moment setUp, Moment endWork, Tick body, bool underway);
    std::size_t addPiece(std::size_t i, HandWork work, Moment start, Moment end);
    void addOrder();
    void addInterruptions();
    void addHands();
    void addStations();
    void addLimits();
    void addEnds();
    bool mayInterrupt(const Piece& call, const Piece& work) const;
    bool related(int a, int b) const;
    void between(Moment from, Moment to, Tick low, std::optional<Tick> high, std::optional<Bound> when = {});
    void imply(Bound condition, Bound consequence);
    Moment constant(Seconds s) const { return {-1, ticks(s)}; }
    Seconds durationOf(std::size_t i) const;
    Tick valueOf(const Moment& moment, const std::vector<Tick>& values) const;

    const Network& m_network;
    const Progress& m_progress;
    SheetWishes m_wishes;
    Seconds m_tick{1};
    Tick m_horizon = 0;
    ScheduleModel m_model;
    std::vector<Placed> m_placed;
    std::vector<Piece> m_pieces;
    std::vector<std::size_t> m_pausable;  ///< pieces of work that may be left
    std::vector<std::vector<bool>> m_precedes;
    std::vector<Moment> m_holdStart;
    std::vector<StretchLevel> m_levels;
};

}  // namespace brinebell
