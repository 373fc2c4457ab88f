// SheetChecking.h — the work of rulesBrokenBy(). Internal to this room.
//
// SheetCheck.cpp holds what is shared and what the sheet says of itself, SheetCheckActivity.cpp one activity.
#pragma once

#include <fmt/format.h>

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "plan/Dispatcher.h"
#include "plan/RunSheet.h"

namespace brinebell {

class SheetChecking {
public:
    SheetChecking(const Network& network, const RunSheet& sheet, const Progress& progress)
        : m_network(network), m_sheet(sheet), m_progress(progress) {}

    std::vector<std::string> run();

private:
    static constexpr std::size_t kWorks = 4;  // kinds of HandWork
    using Pieces = std::span<const HandSpan>;

    template <class... Args>
    void complain(fmt::format_string<Args...> text, Args&&... args) {
        m_broken.push_back(fmt::format(text, std::forward<Args>(args)...));
    }

    const Activity& activity(std::size_t i) const { return m_network.activities[i]; }
    const std::string& name(std::size_t i) const { return m_network.activities[i].key; }
    const std::string& name(int i) const { return name(static_cast<std::size_t>(i)); }
    Seconds start(std::size_t i) const { return m_sheet.activities[i].start; }
    Seconds end(std::size_t i) const { return m_sheet.activities[i].end; }
    Seconds start(int i) const { return start(static_cast<std::size_t>(i)); }
    Seconds end(int i) const { return end(static_cast<std::size_t>(i)); }

    const ActivityProgress& lived(std::size_t i) const {
        static const ActivityProgress kNothing;
        return m_progress.activities.empty() ? kNothing : m_progress.activities[i];
    }
    bool isOver(std::size_t i) const { return lived(i).ended.has_value(); }
    bool isUnderway(std::size_t i) const { return lived(i).started && !lived(i).ended; }
    bool isAhead(std::size_t i) const { return !lived(i).started && !lived(i).ended; }
    bool isAhead(int i) const { return isAhead(static_cast<std::size_t>(i)); }
    bool wasPassedOver(std::size_t i) const { return lived(i).ended && !lived(i).started; }

    Pieces pieces(std::size_t i, HandWork work) const {
        const std::size_t slot = i * kWorks + static_cast<std::size_t>(work);
        return {m_pieces.data() + m_firstPiece[slot], m_firstPiece[slot + 1] - m_firstPiece[slot]};
    }

    void checkShape();
    void checkHand(const HandSpan& span);
    void sortPieces();
    void checkActivity(std::size_t i);
    void checkPast(std::size_t i);
    void checkLength(std::size_t i);
    void checkThroughout(std::size_t i);
    void checkStartWork(std::size_t i);
    void checkEndWork(std::size_t i);
    void checkLooks(std::size_t i);
    Seconds lastSeen(std::size_t i) const;
    void checkReason(std::size_t i);
    void checkHandsApart();
    void checkHolds();
    void checkHold(std::size_t hold, const StationSpan* span);
    void checkStationsApart();
    void checkLoads();
    void checkTalk();
    void checkTalkApart();
    void checkLimits();
    void checkEnds();

    const Network& m_network;
    const RunSheet& m_sheet;
    const Progress& m_progress;
    std::vector<HandSpan> m_pieces;  ///< by activity, kind of work and start
    std::vector<std::size_t> m_firstPiece;
    Seconds m_lateLooks{};
    std::vector<std::string> m_broken;
};

}  // namespace brinebell
