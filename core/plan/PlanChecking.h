// PlanChecking.h — the work of planFindings(). Internal to this room.
//
// PlanCheck.cpp tells of limits, ends, talk and text, PlanCheckHands.cpp of hands and cues, PlanCheckStations.cpp of
// burners and their like.
#pragma once

#include <fmt/format.h>

#include <string>
#include <utility>
#include <vector>

#include "base/Language.h"
#include "plan/PlanCheck.h"

namespace brinebell {

class PlanChecking {
public:
    PlanChecking(const Network& network, const RunSheet& sheet);
    std::vector<PlanFinding> run();

private:
    /// A look or an end that needs somebody: by when it should have been served, and when it is.
    struct Call {
        int activity = -1;
        bool look = false;
        Seconds due{};
        Seconds served{};
    };
    /// Something that would be heard.
    struct Sound {
        Seconds at{};
        int reason = 0;
        int activity = -1;
    };

    template <class... Args>
    void add(PlanFindingKind kind, Seconds from, Seconds to, int activity, fmt::format_string<Args...> text,
             Args&&... args) {
        m_findings.push_back({kind, core::say(text, std::forward<Args>(args)...), from, to, activity});
    }
    const Activity& activity(int i) const { return m_network.activities[static_cast<std::size_t>(i)]; }
    const ActivitySpan& span(int i) const { return m_sheet.activities[static_cast<std::size_t>(i)]; }
    const std::string& title(int i) const { return activity(i).title; }
    int count() const { return static_cast<int>(m_network.activities.size()); }

    void findWhatNeverStarts();
    void findLimits();
    void findOverruns();
    void findTalk();
    void findText();

    void findHands();
    std::vector<Call> lateCalls(int i) const;
    void tellOfCall(const Call& call);
    void findCueFloods();
    std::vector<Sound> plannedSounds() const;
    void addLateLooks(int i, std::vector<Sound>& sounds) const;
    std::string someTitles(const std::vector<int>& activities) const;

    void findStations();
    void findStationTime(const std::vector<int>& candidates, const std::vector<int>& holds);
    void findCrowds(const std::vector<int>& candidates, const std::vector<int>& holds);
    Seconds leastTimeOf(const StationHold& hold) const;
    void startAsSoonAsOrderAllows(std::vector<Seconds>& starts) const;
    std::string stationsInWords(const std::vector<int>& stations) const;
    std::string vesselsInWords(const std::vector<int>& holds) const;

    const Network& m_network;
    const RunSheet& m_sheet;
    std::vector<std::vector<HandSpan>> m_pieces;  ///< by activity, by start
    std::vector<Seconds> m_byOrder;               ///< by activity: the start that the order alone would allow
    std::vector<PlanFinding> m_findings;
};

/// "0:05", "1:40": hours and minutes of the class, as the run sheet shows them.
std::string classTime(Seconds at);

}  // namespace brinebell
