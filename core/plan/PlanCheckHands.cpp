#include <algorithm>

#include "base/Language.h"
#include "plan/PlanChecking.h"
#include "quantity/ReadQuantity.h"

// Where two things want the same hands, and how often the board would call for them.

namespace brinebell {

namespace {

// An end that waits for other work is worth telling when it waits this long; one that waits for another call always.
constexpr Seconds kWorthTelling{60};
constexpr Seconds kTenMinutes{600};
// The sounder merges equal cues that fall due this close together.
constexpr Seconds kMergeWithin{30};

enum SoundReason { kTimeUp, kBoilExpected, kProcessOver, kRestOver, kLookLate, kHoldOver, kClassEnd };

}  // namespace

void PlanChecking::findHands() {
    Seconds untold = m_sheet.lateLooks;
    for (int i = 0; i < count(); ++i) {
        for (const Call& call : lateCalls(i)) {
            tellOfCall(call);
            untold -= call.look ? call.served - call.due : Seconds::zero();
        }
    }
    // In the middle of a class the look before may be past and no longer in the sheet.
    if (untold > Seconds::zero()) {
        add(PlanFindingKind::HandsTwice, Seconds::zero(), m_sheet.kitchenEnd, -1,
            core::mark("looks come {} late in all; ask for a helper, or start less at once"), printDuration(untold));
    }
}

// Looks that come after their gap, and end work that comes after the step was due to be over.
std::vector<PlanChecking::Call> PlanChecking::lateCalls(int i) const {
    const Activity& a = activity(i);
    std::vector<Call> late;
    if (a.hands != HandsNeed::Ends && a.hands != HandsNeed::Pulses) {
        return late;
    }
    Seconds seen = span(i).start + a.handsAtStart;
    for (const HandSpan& piece : m_pieces[static_cast<std::size_t>(i)]) {
        const bool end = piece.work == HandWork::End;
        if (a.pulse && piece.work != HandWork::Start && piece.from > seen + a.pulse->gapHigh) {
            late.push_back({i, true, seen + a.pulse->gapHigh, piece.from});
        } else if (const Seconds due = span(i).start + a.duration.likely - endWorkOf(a); end && piece.from > due) {
            late.push_back({i, false, due, piece.from});
        }
        if (piece.work == HandWork::Pulse) {
            seen = piece.to;
        }
    }
    return late;
}

void PlanChecking::tellOfCall(const Call& call) {
    std::string others;
    bool otherCall = false, notToBeLeft = false;
    std::vector<int> named;
    for (const HandSpan& piece : m_sheet.hands) {
        const bool meanwhile = piece.from < call.served && piece.to > call.due;
        if (!meanwhile || piece.activity == call.activity ||
            (activity(call.activity).presenterOnly && piece.hand != 0)) {
            continue;
        }
        const bool work = piece.work == HandWork::Work;
        otherCall = otherCall || !work;
        notToBeLeft = notToBeLeft || (work && !activity(piece.activity).mayPause);
        if (std::find(named.begin(), named.end(), piece.activity) == named.end()) {
            named.push_back(piece.activity);
            others += fmt::format(
                "{}\"{}\"{}", others.empty() ? "" : ", ", title(piece.activity),
                work && !activity(piece.activity).mayPause ? core::say(" (not to be left)") : std::string());
        }
    }
    const Seconds wait = call.served - call.due;
    if (!call.look && (named.empty() || (!otherCall && (!notToBeLeft || wait < kWorthTelling)))) {
        return;  // the planner lets it wait, or it waits for a moment
    }
    add(PlanFindingKind::HandsTwice, call.due, call.served, call.activity, core::mark("{} \"{}\" {} {}{} at {}{}; {}"),
        call.look ? core::say("the look at") : core::say("the end of"), title(call.activity),
        call.look ? core::say("comes") : core::say("waits"), printDuration(wait),
        call.look ? core::say(" late") : std::string(), classTime(call.due),
        others.empty() ? std::string() : core::say(": the hands are on {}", others),
        m_network.helpers < 3 ? core::say("ask for a helper, or start one of them at another time")
                              : core::say("start one of them at another time"));
}

// ---- cues

// What would sound when all goes as planned: one for each thing that falls due. Looks at a tray that come in time are
// ticks, which stay below "due", and the word a minute ahead belongs to the cue that it announces.
std::vector<PlanChecking::Sound> PlanChecking::plannedSounds() const {
    std::vector<Sound> sounds;
    for (int i = 0; i < count(); ++i) {
        const Activity& a = activity(i);
        if (a.pulse) {
            addLateLooks(i, sounds);
        }
        if (a.kind == ActivityKind::Process || a.kind == ActivityKind::Rest) {
            sounds.push_back({span(i).end, a.kind == ActivityKind::Process ? kProcessOver : kRestOver, i});
        } else if (a.hands != HandsNeed::Throughout) {
            sounds.push_back({span(i).start + a.duration.likely, a.endsBySight ? kBoilExpected : kTimeUp, i});
        }
    }
    for (const BrokenLimit& broken : m_sheet.broken) {
        const HoldLimit& limit = m_network.limits[static_cast<std::size_t>(broken.limit)];
        sounds.push_back({span(limit.from).end + limit.atMost, kHoldOver, limit.to});
    }
    if (m_sheet.classEnd > m_network.slot) {
        sounds.push_back({m_network.slot, kClassEnd, m_network.closing});
    }
    std::stable_sort(sounds.begin(), sounds.end(), [](const Sound& a, const Sound& b) { return a.at < b.at; });
    std::vector<Sound> heard;
    for (const Sound& sound : sounds) {
        const bool merged = std::any_of(heard.rbegin(), heard.rend(), [&](const Sound& h) {
            return h.reason == sound.reason && sound.at - h.at < kMergeWithin;
        });
        if (!merged) {
            heard.push_back(sound);
        }
    }
    return heard;
}

// A look is asked for in earnest when it has not been taken by the end of its gap and the time that it takes.
void PlanChecking::addLateLooks(int i, std::vector<Sound>& sounds) const {
    for (const Call& call : lateCalls(i)) {
        const Seconds earnest = call.due + activity(i).pulse->takes;
        if (call.look && call.served > earnest) {
            sounds.push_back({earnest, kLookLate, i});
        }
    }
}

void PlanChecking::findCueFloods() {
    const std::vector<Sound> sounds = plannedSounds();
    std::size_t worstFrom = 0, worst = 0;
    for (std::size_t from = 0, to = 0; from < sounds.size(); ++from) {
        while (to < sounds.size() && sounds[to].at < sounds[from].at + kTenMinutes) {
            ++to;
        }
        if (to - from > worst) {
            worst = to - from;
            worstFrom = from;
        }
    }
    if (worst > static_cast<std::size_t>(kMostCuesInTenMinutes)) {
        std::vector<int> about;
        for (std::size_t k = worstFrom; k < worstFrom + worst; ++k) {
            about.push_back(sounds[k].activity);
        }
        const Seconds from = sounds[worstFrom].at;
        add(PlanFindingKind::CueFlood, from, from + kTenMinutes, about.front(),
            "{} cues sound between {} and {}, and {} in ten minutes are too many to heed: {}; start some of them at "
            "another time, or make a stage ahead",
            worst, classTime(from), classTime(from + kTenMinutes), kMostCuesInTenMinutes + 1, someTitles(about));
    }
    const auto people = 1 + m_network.helpers;
    const Seconds length = std::max(m_sheet.kitchenEnd, kTenMinutes);
    const auto cues = static_cast<std::int64_t>(sounds.size());
    if (cues * kTenMinutes.count() > kMostMeanCuesPerPerson * people * length.count()) {
        add(PlanFindingKind::CueFlood, Seconds::zero(), m_sheet.kitchenEnd, -1,
            core::mark("{} cues sound in {}, more than {} in ten minutes for each of the {} in the kitchen; ask for a "
                       "helper, or "
                       "make a stage ahead"),
            cues, printDuration(m_sheet.kitchenEnd), kMostMeanCuesPerPerson, people);
    }
}

std::string PlanChecking::someTitles(const std::vector<int>& activities) const {
    constexpr std::size_t kSome = 3;
    std::vector<std::string> titles;
    for (const int i : activities) {
        if (i >= 0 && std::find(titles.begin(), titles.end(), title(i)) == titles.end()) {
            titles.push_back(title(i));
        }
    }
    std::string text;
    for (std::size_t k = 0; k < std::min(kSome, titles.size()); ++k) {
        text += fmt::format("{}\"{}\"", k == 0 ? "" : ", ", titles[k]);
    }
    return titles.size() > kSome ? core::say("{} and {} more", text, titles.size() - kSome) : text;
}

}  // namespace brinebell
