#include "plan/SheetCheck.h"

#include <algorithm>
#include <tuple>

#include "plan/SheetChecking.h"

namespace brinebell {

std::vector<std::string> SheetChecking::run() {
    checkShape();
    if (!m_broken.empty()) {
        return std::move(m_broken);
    }
    sortPieces();
    for (std::size_t i = 0; i < m_network.activities.size(); ++i) {
        checkActivity(i);
        checkReason(i);
    }
    for (const HandSpan& span : m_sheet.hands) {
        checkHand(span);
    }
    checkHandsApart();
    checkHolds();
    checkStationsApart();
    checkLoads();
    checkTalk();
    checkLimits();
    checkEnds();
    return std::move(m_broken);
}

// ---- whether the sheet can be read at all

void SheetChecking::checkShape() {
    const std::size_t n = m_network.activities.size();
    if (m_sheet.activities.size() != n || m_sheet.reasons.size() != n || m_sheet.waitedFor.size() != n) {
        complain("the sheet places {} activities and gives {} reasons, for {}", m_sheet.activities.size(),
                 m_sheet.reasons.size(), n);
        return;
    }
    if (!m_progress.activities.empty() && m_progress.activities.size() != n) {
        complain("{} activities were lived, of {}", m_progress.activities.size(), n);
        return;
    }
    if (!m_sheet.complete) {
        complain("the sheet is not complete: something finds no time in it");
        return;
    }
    for (const HandSpan& span : m_sheet.hands) {
        if (!isIndex(span.activity, n) || static_cast<std::size_t>(span.work) >= kWorks) {
            complain("a hand works on activity {}, or in a way, that is not there", span.activity);
        } else if (span.hand < 0 || span.hand > m_network.helpers) {
            complain("{}: hand {} is not one of {}", name(span.activity), span.hand, 1 + m_network.helpers);
        }
    }
    for (const StationSpan& span : m_sheet.stations) {
        if (!isIndex(span.station, m_network.stations.size()) ||
            !isIndex(span.stationHold, m_network.stationHolds.size())) {
            complain("station {} is held for hold {}, and one of them is not there", span.station, span.stationHold);
        }
    }
    for (const TalkSpan& span : m_sheet.talk) {
        if (!isIndex(span.talk, m_network.talk.size())) {
            complain("talk {} is placed and is not there", span.talk);
        }
    }
    for (const BrokenLimit& broken : m_sheet.broken) {
        if (!isIndex(broken.limit, m_network.limits.size())) {
            complain("limit {} is reported and is not there", broken.limit);
        }
    }
}

void SheetChecking::checkHand(const HandSpan& span) {
    const auto i = static_cast<std::size_t>(span.activity);
    if (span.to <= span.from) {
        complain("{}: a piece of hand work from {} to {} takes no time", name(i), span.from.count(), span.to.count());
    }
    if (span.from < start(i) || span.to > end(i)) {
        complain("{}: hand work from {} to {} lies outside the activity", name(i), span.from.count(), span.to.count());
    }
    if (span.from < m_progress.now) {
        complain("{}: hand work is planned at {}, which is past", name(i), span.from.count());
    }
    if (activity(i).presenterOnly && span.hand != 0) {
        complain("{}: only the presenter may do this, and hand {} does", name(i), span.hand);
    }
}

void SheetChecking::sortPieces() {
    m_pieces = m_sheet.hands;
    std::sort(m_pieces.begin(), m_pieces.end(), [](const HandSpan& a, const HandSpan& b) {
        return std::tie(a.activity, a.work, a.from) < std::tie(b.activity, b.work, b.from);
    });
    m_firstPiece.assign(m_network.activities.size() * kWorks + 1, 0);
    for (const HandSpan& span : m_pieces) {
        ++m_firstPiece[static_cast<std::size_t>(span.activity) * kWorks + static_cast<std::size_t>(span.work) + 1];
    }
    for (std::size_t slot = 1; slot < m_firstPiece.size(); ++slot) {
        m_firstPiece[slot] += m_firstPiece[slot - 1];
    }
}

// ---- what is shared

void SheetChecking::checkHandsApart() {
    std::vector<Seconds> busyUntil(static_cast<std::size_t>(1 + m_network.helpers));
    Seconds latest{};
    for (const HandSpan& span : m_sheet.hands) {
        if (span.from < latest) {
            complain("hand work at {} is not in the order of time", span.from.count());
        }
        latest = std::max(latest, span.from);
        Seconds& until = busyUntil[static_cast<std::size_t>(span.hand)];
        if (span.from < until) {
            complain("hand {} does two things at {}", span.hand, span.from.count());
        }
        until = std::max(until, span.to);
    }
}

void SheetChecking::checkHolds() {
    std::vector<const StationSpan*> spanOf(m_network.stationHolds.size(), nullptr);
    for (const StationSpan& span : m_sheet.stations) {
        const StationSpan*& mine = spanOf[static_cast<std::size_t>(span.stationHold)];
        if (mine != nullptr) {
            complain("hold {} stands on two stations, or on one twice", span.stationHold);
        }
        mine = &span;
    }
    for (std::size_t h = 0; h < spanOf.size(); ++h) {
        checkHold(h, spanOf[h]);
    }
}

void SheetChecking::checkHold(std::size_t hold, const StationSpan* span) {
    const StationHold& h = m_network.stationHolds[hold];
    const int known = hold < m_progress.stationOf.size() ? m_progress.stationOf[hold] : -1;
    Seconds from = Seconds::max(), usedTo{}, lastTo{};
    bool begunUnseen = false;
    for (const int user : h.activities) {
        const auto i = static_cast<std::size_t>(user);
        lastTo = std::max(lastTo, end(i));
        if (!wasPassedOver(i)) {
            from = std::min(from, start(i));
            usedTo = std::max(usedTo, end(i));
            begunUnseen = begunUnseen || (known < 0 && lived(i).started);
        }
    }
    if (span == nullptr) {
        // What was passed over held nothing, and where the past stood may be unknown.
        if (from != Seconds::max() && !begunUnseen) {
            complain("hold {} ({}) has no station", hold, h.vessel);
        }
        return;
    }
    if (std::find(h.candidates.begin(), h.candidates.end(), span->station) == h.candidates.end()) {
        complain("hold {} ({}): station {} cannot serve it", hold, h.vessel, span->station);
    }
    if (known >= 0 && span->station != known) {
        complain("hold {} ({}) stood on station {} and is said to stand on {}", hold, h.vessel, known, span->station);
    }
    // It is let go with the last of its activities, which may be one that was passed over.
    if (span->from != from || span->to < usedTo || span->to > lastTo) {
        complain("hold {} ({}) is on its station from {} to {}, and is used from {} to {}", hold, h.vessel,
                 span->from.count(), span->to.count(), from.count(), usedTo.count());
    }
}

void SheetChecking::checkStationsApart() {
    std::vector<const StationSpan*> byStation;
    for (const StationSpan& span : m_sheet.stations) {
        byStation.push_back(&span);
    }
    std::sort(byStation.begin(), byStation.end(), [](const StationSpan* a, const StationSpan* b) {
        return std::tie(a->station, a->from, a->to) < std::tie(b->station, b->from, b->to);
    });
    for (std::size_t k = 1; k < byStation.size(); ++k) {
        const StationSpan &before = *byStation[k - 1], &after = *byStation[k];
        if (before.station == after.station && after.from < before.to) {
            complain("station {} holds two things at {}", after.station, after.from.count());
        }
    }
}

void SheetChecking::checkLoads() {
    for (const Load& load : m_network.loads) {
        const auto process = static_cast<std::size_t>(load.process), rest = static_cast<std::size_t>(load.rest);
        if (!isOver(process) && end(process) - start(process) < load.processTime) {
            complain("{} takes {} s, less than the published {} s", name(process),
                     (end(process) - start(process)).count(), load.processTime.count());
        }
        const Seconds leastRest = restBeforeLifting(load.method);
        if (!isOver(rest) && end(rest) - start(rest) < leastRest) {
            complain("{} takes {} s, less than the {} s before lifting", name(rest), (end(rest) - start(rest)).count(),
                     leastRest.count());
        }
        if (load.pressure && !isOver(load.pressure->vent) &&
            end(load.pressure->vent) - start(load.pressure->vent) < load.pressure->ventTime) {
            complain("{} is shorter than the {} s of venting", name(load.pressure->vent),
                     load.pressure->ventTime.count());
        }
        const std::vector<int> chain = cannerChain(load);
        for (std::size_t k = 1; k < chain.size(); ++k) {
            if (isAhead(chain[k]) && start(chain[k]) < end(chain[k - 1])) {
                complain("{} comes before {} is over", name(chain[k]), name(chain[k - 1]));
            }
        }
        const int counted = load.pressure ? load.pressure->pressurise : load.heatUp;
        if (isAhead(process) && start(process) > std::max(end(counted), m_progress.now)) {
            complain("{} is not counted from the {}", name(process), load.pressure ? "pressure" : "boil");
        }
    }
}

void SheetChecking::checkTalk() {
    std::vector<bool> placed(m_network.talk.size());
    for (const TalkSpan& span : m_sheet.talk) {
        const NetworkTalk& talk = m_network.talk[static_cast<std::size_t>(span.talk)];
        if (span.to - span.from != talk.length) {
            complain("{}: this talk is given {} s, not {} s", talk.key, (span.to - span.from).count(),
                     talk.length.count());
        }
        if (placed[static_cast<std::size_t>(span.talk)] || talk.activity != -1) {
            complain("{}: this talk has its place already", talk.key);
        }
        placed[static_cast<std::size_t>(span.talk)] = true;
        const Seconds end = m_network.closing < 0 ? m_sheet.kitchenEnd : m_sheet.classEnd;
        if (span.from < m_progress.now || span.to > end) {
            complain("{}: this talk at {} lies in the past or after the end", talk.key, span.from.count());
        }
    }
    checkTalkApart();
}

// Talk fills what the presenter's hands leave free, one point at a time.
void SheetChecking::checkTalkApart() {
    struct Busy {
        Seconds from, to;
        bool talk;
    };
    std::vector<Busy> busy;
    for (const TalkSpan& span : m_sheet.talk) {
        busy.push_back({span.from, span.to, true});
    }
    for (const HandSpan& span : m_sheet.hands) {
        if (span.hand == 0) {
            busy.push_back({span.from, span.to, false});
        }
    }
    std::sort(busy.begin(), busy.end(), [](const Busy& a, const Busy& b) { return a.from < b.from; });
    Seconds workUntil{}, talkUntil{};
    for (const Busy& b : busy) {
        if (b.from < talkUntil || (b.talk && b.from < workUntil)) {
            complain("talk and other work of the presenter fall together at {}", b.from.count());
        }
        Seconds& until = b.talk ? talkUntil : workUntil;
        until = std::max(until, b.to);
    }
}

// ---- what the sheet says of itself

void SheetChecking::checkLimits() {
    std::vector<const BrokenLimit*> owned(m_network.limits.size(), nullptr);
    for (const BrokenLimit& broken : m_sheet.broken) {
        const BrokenLimit*& mine = owned[static_cast<std::size_t>(broken.limit)];
        if (mine != nullptr) {
            complain("limit {} is reported twice", broken.limit);
        }
        mine = &broken;
    }
    for (std::size_t l = 0; l < owned.size(); ++l) {
        const HoldLimit& limit = m_network.limits[l];
        const Seconds wait = start(limit.to) - end(limit.from);
        const bool counts = isAhead(limit.to) && !lived(static_cast<std::size_t>(limit.from)).skipped;
        const bool stretched = counts && wait > limit.atMost;
        if (stretched && owned[l] == nullptr) {
            complain("limit {} from {} to {} is stretched to {} s, over {} s, in silence", l, name(limit.from),
                     name(limit.to), wait.count(), limit.atMost.count());
        } else if (!stretched && owned[l] != nullptr) {
            complain("limit {} is reported as stretched and is not", l);
        } else if (stretched && owned[l]->wait != wait) {
            complain("limit {} waits {} s and the sheet says {} s", l, wait.count(), owned[l]->wait.count());
        }
    }
}

void SheetChecking::checkEnds() {
    Seconds last{};
    for (const ActivitySpan& span : m_sheet.activities) {
        last = std::max(last, span.end);
    }
    if (m_sheet.kitchenEnd != last) {
        complain("the kitchen ends at {} and the sheet says {}", last.count(), m_sheet.kitchenEnd.count());
    }
    const Seconds classEnd = m_network.closing >= 0 ? end(m_network.closing) : last;
    if (m_sheet.classEnd != classEnd) {
        complain("the class ends at {} and the sheet says {}", classEnd.count(), m_sheet.classEnd.count());
    }
    if (m_sheet.lowerBound > last) {
        complain("no sheet is said to end before {}, and this one ends at {}", m_sheet.lowerBound.count(),
                 last.count());
    }
    if (m_sheet.lateLooks != m_lateLooks) {
        complain("looks are late by {} s and the sheet says {} s", m_lateLooks.count(), m_sheet.lateLooks.count());
    }
}

std::vector<std::string> rulesBrokenBy(const Network& network, const RunSheet& sheet, const Progress& progress) {
    return SheetChecking(network, sheet, progress).run();
}

}  // namespace brinebell
