#include "plan/SheetModel.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <numeric>

namespace brinebell {

namespace {

// Levels by which a quality limit may be stretched, and what going beyond each costs, in minutes of stretching.
struct Level {
    Seconds beyond;
    Tick cost;
};
constexpr Level kLevels[] = {{Seconds(0), 1},   {Seconds(60), 1},   {Seconds(120), 2},
                             {Seconds(240), 4}, {Seconds(480), 12}, {Seconds(1200), 60}};

Moment later(const Moment& moment, Tick by) {
    return {moment.variable, moment.offset + by};
}

}  // namespace

SheetModel::SheetModel(const Network& network, const Progress& progress, const SheetWishes& wishes)
    : m_network(network), m_progress(progress), m_wishes(wishes) {
    m_tick = findTick();
    m_horizon = ticks(wishes.kitchenEndAtMost);
    const std::size_t n = network.activities.size();
    m_precedes.assign(n, std::vector<bool>(n));
    std::vector<char> known(n, 0);
    // What must end before each activity, found by going back along the order; a depth-first walk meets each arc once.
    const auto collect = [&](auto&& self, std::size_t i) -> void {
        known[i] = 1;
        for (const int before : network.activities[i].after) {
            const auto b = static_cast<std::size_t>(before);
            if (known[b] == 0) {
                self(self, b);
            }
            m_precedes[b][i] = true;
            for (std::size_t k = 0; k < n; ++k) {
                if (m_precedes[k][b]) {
                    m_precedes[k][i] = true;
                }
            }
        }
    };
    for (std::size_t i = 0; i < n; ++i) {
        if (known[i] == 0) {
            collect(collect, i);
        }
    }
    m_placed.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        addActivity(i);
    }
    addOrder();
    addInterruptions();
    addHands();
    addStations();
    addLimits();
    addEnds();
}

Tick SheetModel::ticks(Seconds s) const {
    return static_cast<Tick>(s / m_tick);
}

// The largest step that divides every length; one second in the middle of a class, where the clock stands anywhere.
Seconds SheetModel::findTick() const {
    if (m_progress.now != Seconds::zero()) {
        return Seconds(1);
    }
    std::int64_t step = 0;
    const auto take = [&step](Seconds s) { step = std::gcd(step, s.count()); };
    for (std::size_t i = 0; i < m_network.activities.size(); ++i) {
        const Activity& a = m_network.activities[i];
        take(durationOf(i));
        take(a.handsAtStart);
        take(endWorkOf(a));
        if (a.pulse) {
            take(a.pulse->gapLow);
            take(a.pulse->gapHigh);
            take(a.pulse->takes);
        }
    }
    for (std::size_t l = 0; l < m_network.limits.size(); ++l) {
        take(m_wishes.limitAtMost.empty() ? m_network.limits[l].atMost : m_wishes.limitAtMost[l]);
    }
    for (const ActivityProgress& lived : m_progress.activities) {
        take(lived.started.value_or(Seconds::zero()));
        take(lived.ended.value_or(Seconds::zero()));
        take(lived.paused);
    }
    return Seconds(std::max<std::int64_t>(step, 1));
}

Seconds SheetModel::durationOf(std::size_t i) const {
    return m_wishes.durations != nullptr ? (*m_wishes.durations)[i] : m_network.activities[i].duration.likely;
}

// low <= to - from (<= high), whenever `when` holds.
void SheetModel::between(Moment from, Moment to, Tick low, std::optional<Tick> high, std::optional<Bound> when) {
    m_model.differences.push_back({from, to, low, when});
    if (high) {
        m_model.differences.push_back({to, from, -*high, when});
    }
}

void SheetModel::imply(Bound condition, Bound consequence) {
    m_model.clauses.push_back({negated(condition), consequence});
}

// ---- activities and their pieces
// ---------------------------------------------------------------------------------

void SheetModel::addActivity(std::size_t i) {
    const ActivityProgress lived = m_progress.activities.empty() ? ActivityProgress{} : m_progress.activities[i];
    Placed& placed = m_placed[i];
    if (lived.ended) {
        placed.start = constant(lived.started.value_or(*lived.ended));
        placed.end = constant(*lived.ended);
        return;
    }
    placed.open = true;
    placed.fresh = !lived.started;
    if (placed.fresh) {
        addFresh(i);
    } else {
        addRunning(i);
    }
}

std::size_t SheetModel::addPiece(std::size_t i, HandWork work, Moment start, Moment end) {
    Piece piece;
    piece.activity = static_cast<int>(i);
    piece.work = work;
    piece.start = start;
    piece.end = end;
    m_pieces.push_back(std::move(piece));
    return m_pieces.size() - 1;
}

void SheetModel::addFresh(std::size_t i) {
    const Activity& a = m_network.activities[i];
    Placed& placed = m_placed[i];
    placed.start = {m_model.addVariable(ticks(m_progress.now), m_horizon), 0};
    m_model.decisions.push_back(placed.start.variable);
    if (a.hands == HandsNeed::Throughout) {
        addWork(i, placed.start, ticks(durationOf(i)), a.mayPause);
        return;
    }
    const Moment setUp = later(placed.start, ticks(a.handsAtStart));
    if (a.handsAtStart > Seconds::zero()) {
        placed.startPiece = addPiece(i, HandWork::Start, placed.start, setUp);
    }
    if (endWorkOf(a) > Seconds::zero()) {
        // The end may come late, when nobody has a hand free.
        placed.end = {m_model.addVariable(ticks(m_progress.now), m_horizon), 0};
        between(placed.start, placed.end, ticks(durationOf(i)), std::nullopt);
    } else {
        placed.end = later(placed.start, ticks(durationOf(i)));
    }
    addBody(i, setUp, false);
}

void SheetModel::addRunning(std::size_t i) {
    const Activity& a = m_network.activities[i];
    const ActivityProgress& lived = m_progress.activities[i];
    Placed& placed = m_placed[i];
    const Seconds now = m_progress.now;
    placed.start = constant(*lived.started);
    if (a.hands == HandsNeed::Throughout) {
        const Tick left = ticks(workLeft(lived, durationOf(i), now));
        // What may not be left is in somebody's hands; what may be left can be lying there.
        const Moment from = a.mayPause ? Moment{m_model.addVariable(ticks(now), m_horizon), 0} : constant(now);
        if (a.mayPause) {
            m_model.decisions.push_back(from.variable);
        }
        addWork(i, from, left, a.mayPause);
        return;
    }
    const Seconds settingUp = *lived.started + a.handsAtStart;
    if (settingUp > now) {
        placed.startPiece = addPiece(i, HandWork::Start, constant(now), constant(settingUp));
    }
    const Seconds endWork = endWorkOf(a);
    const Seconds due = std::max(now + Seconds(1), *lived.started + durationOf(i) - endWork);
    if (endWork > Seconds::zero()) {
        placed.end = {m_model.addVariable(ticks(due + endWork), m_horizon), 0};
        m_model.decisions.push_back(placed.end.variable);
    } else {
        placed.end = constant(due);
    }
    addBody(i, constant(std::max(lived.lastPulse.value_or(settingUp), settingUp)), true);
}

void SheetModel::addWork(std::size_t i, Moment start, Tick length, bool mayPause) {
    Placed& placed = m_placed[i];
    if (mayPause) {
        placed.end = {m_model.addVariable(0, m_horizon), 0};
    } else {
        placed.end = later(start, length);
    }
    placed.startPiece = addPiece(i, HandWork::Work, start, placed.end);
    if (mayPause) {
        m_pausable.push_back(*placed.startPiece);
        m_model.stretches.push_back({start, placed.end, length, {}});
    }
}

// Looks and end work. `setUp` is when the hands were last on it.
void SheetModel::addBody(std::size_t i, Moment setUp, bool underway) {
    const Activity& a = m_network.activities[i];
    Placed& placed = m_placed[i];
    const Tick endWork = ticks(endWorkOf(a));
    const Moment endStart = later(placed.end, -endWork);
    if (endWork > 0) {
        placed.endPiece = addPiece(i, HandWork::End, endStart, placed.end);
    }
    if (a.pulse) {
        const Seconds body =
            underway ? *m_progress.activities[i].started + durationOf(i) - endWorkOf(a) - m_tick * setUp.offset
                     : durationOf(i) - endWorkOf(a) - a.handsAtStart;
        addLooks(i, setUp, endStart, ticks(std::max(body, Seconds::zero())), underway);
    }
}

// A chain of looks, each within its gap after the one before. Those that the gap does not force are optional, the last
// ones first; one that does not take place stands where the look before it does.
void SheetModel::addLooks(std::size_t i, Moment setUp, Moment endWork, Tick body, bool underway) {
    const PulseRule& rule = *m_network.activities[i].pulse;
    const Tick low = ticks(rule.gapLow), high = ticks(rule.gapHigh), takes = ticks(rule.takes);
    const Tick forced = body <= high ? 0 : (body - high + high + takes - 1) / (high + takes);
    // A body that lasts longer, because no hand is free at its end, may need one look more.
    const Tick most = std::max(forced, body / (low + takes)) + 1;
    Moment last = setUp;
    const bool overdue = underway && m_tick * (setUp.offset + high) < m_progress.now;
    for (Tick k = 0; k < most; ++k) {
        const Moment look{
            m_model.addVariable(underway ? setUp.offset - takes : ticks(m_progress.now) - takes, m_horizon), 0};
        const std::size_t piece = addPiece(i, HandWork::Pulse, look, later(look, takes));
        const bool lateIsPast = overdue && k == 0;
        std::optional<Bound> when;
        if (k >= forced) {
            const Variable present = m_model.addTruth();
            m_pieces[piece].present = present;
            when = isTrue(present);
            between(last, later(look, takes), 0, 0, isFalse(present));
            if (k > forced) {
                imply(*when, isTrue(*m_pieces[piece - 1].present));
            }
        }
        between(last, look, low, lateIsPast ? std::nullopt : std::optional<Tick>(high), when);
        if (underway) {
            m_model.differences.push_back({constant(m_progress.now), look, 0, when});
        }
        last = later(look, takes);
        m_placed[i].looks.push_back(piece);
    }
    between(last, endWork, 0, overdue && forced == 0 ? std::nullopt : std::optional<Tick>(high));
}

void SheetModel::addOrder() {
    for (std::size_t i = 0; i < m_placed.size(); ++i) {
        if (!m_placed[i].fresh) {
            continue;
        }
        for (const int before : m_network.activities[i].after) {
            const Placed& b = m_placed[static_cast<std::size_t>(before)];
            if (b.open) {
                between(b.end, m_placed[i].start, 0, std::nullopt);
            }
        }
    }
}

// ---- who does what
// -----------------------------------------------------------------------------------------------

bool SheetModel::related(int a, int b) const {
    return m_precedes[static_cast<std::size_t>(a)][static_cast<std::size_t>(b)] ||
           m_precedes[static_cast<std::size_t>(b)][static_cast<std::size_t>(a)];
}

bool SheetModel::mayInterrupt(const Piece& call, const Piece& work) const {
    const Tick length = call.end.offset - call.start.offset;  // both ends of a call hang on one variable
    return call.activity != work.activity && !related(call.activity, work.activity) && m_tick * length < kLongestCall &&
           call.start.variable >= 0;
}

// A call inside work begins a tick after it or later, and ends a tick before it or earlier.
void SheetModel::addInterruptions() {
    std::size_t stretch = 0;
    for (const std::size_t w : m_pausable) {
        const Piece& work = m_pieces[w];
        for (Piece& call : m_pieces) {
            if (call.work == HandWork::Work || !mayInterrupt(call, work)) {
                continue;
            }
            const Variable inside = m_model.addTruth();
            call.inside.push_back({static_cast<int>(w), inside});
            between(work.start, call.start, 1, std::nullopt, isTrue(inside));
            between(call.end, work.end, 1, std::nullopt, isTrue(inside));
            if (call.present) {
                imply(isTrue(inside), isTrue(*call.present));
            }
            m_model.stretches[stretch].parts.push_back({isTrue(inside), call.end.offset - call.start.offset});
        }
        ++stretch;
    }
}

// With one hand, everything but a call inside work takes it, and calls never overlap. With more, each piece is the
// presenter's or a helper's; a call inside work is done by whoever does the work.
void SheetModel::addHands() {
    const bool alone = m_network.helpers == 0;
    Resource presenter{1, {}}, helpers{m_network.helpers, {}}, all{1 + m_network.helpers, {}}, calls{1, {}};
    std::vector<Resource> insideOf(m_pieces.size(), Resource{1, {}});
    for (Piece& piece : m_pieces) {
        const bool presenterOnly = m_network.activities[static_cast<std::size_t>(piece.activity)].presenterOnly;
        const bool isCall = piece.work != HandWork::Work;
        const bool always = !piece.present && piece.inside.empty();
        if (always) {
            all.occupations.push_back({piece.start, piece.end, 1, std::nullopt});
        }
        if (alone && isCall) {
            const auto when = piece.present ? std::optional<Bound>(isTrue(*piece.present)) : std::nullopt;
            calls.occupations.push_back({piece.start, piece.end, 1, when});
        }
        if (always && (alone || presenterOnly)) {
            presenter.occupations.push_back({piece.start, piece.end, 1, std::nullopt});
            continue;
        }
        std::vector<Bound> somebody;
        if (piece.present) {
            somebody.push_back(isFalse(*piece.present));
        }
        piece.presenter = m_model.addTruth();
        presenter.occupations.push_back({piece.start, piece.end, 1, isTrue(*piece.presenter)});
        somebody.push_back(isTrue(*piece.presenter));
        if (!alone && !presenterOnly) {
            piece.helper = m_model.addTruth();
            helpers.occupations.push_back({piece.start, piece.end, 1, isTrue(*piece.helper)});
            somebody.push_back(isTrue(*piece.helper));
            imply(isTrue(*piece.helper), isFalse(*piece.presenter));
        }
        for (const Piece::Inside& inside : piece.inside) {
            somebody.push_back(isTrue(inside.truth));
            imply(isTrue(inside.truth), isFalse(*piece.presenter));
            if (piece.helper) {
                imply(isTrue(inside.truth), isFalse(*piece.helper));
            }
            insideOf[static_cast<std::size_t>(inside.work)].occupations.push_back(
                {piece.start, piece.end, 1, isTrue(inside.truth)});
        }
        if (piece.present) {
            imply(isTrue(*piece.presenter), isTrue(*piece.present));
            if (piece.helper) {
                imply(isTrue(*piece.helper), isTrue(*piece.present));
            }
        }
        m_model.clauses.push_back(std::move(somebody));
    }
    if (!alone) {
        for (const Piece& piece : m_pieces) {
            for (const Piece::Inside& inside : piece.inside) {
                // The presenter alone may do it, so the work that is left for it must be the presenter's.
                const auto& work = m_pieces[static_cast<std::size_t>(inside.work)];
                if (!piece.helper && work.presenter) {
                    imply(isTrue(inside.truth), isTrue(*work.presenter));
                }
            }
        }
        for (Resource& resource : insideOf) {
            if (resource.occupations.size() > 1) {
                m_model.resources.push_back(std::move(resource));
            }
        }
        m_model.resources.push_back(std::move(helpers));
        m_model.resources.push_back(std::move(all));
    } else {
        m_model.resources.push_back(std::move(calls));
    }
    m_model.resources.push_back(std::move(presenter));
}

// ---- stations, limits, ends
// ------------------------------------------------------------------------------------

// Holds that can take the same stations share a resource of as many units; each set of stations that some hold can
// take bounds all the holds that cannot go elsewhere.
void SheetModel::addStations() {
    m_holdStart.resize(m_network.stationHolds.size());
    std::vector<Occupation> spans(m_network.stationHolds.size());
    std::vector<bool> open(m_network.stationHolds.size());
    for (std::size_t h = 0; h < m_network.stationHolds.size(); ++h) {
        const std::vector<int>& users = m_network.stationHolds[h].activities;
        const auto at = [this](int i) -> const Placed& { return m_placed[static_cast<std::size_t>(i)]; };
        open[h] = std::any_of(users.begin(), users.end(), [&](int i) { return at(i).open; });
        if (!open[h]) {
            continue;
        }
        const bool begun = std::any_of(users.begin(), users.end(), [&](int i) { return !at(i).fresh; });
        Moment start = constant(m_progress.now), end;
        const auto first = std::find_if(users.begin(), users.end(), [&](int i) {
            return std::all_of(users.begin(), users.end(), [&](int other) {
                return other == i || m_precedes[static_cast<std::size_t>(i)][static_cast<std::size_t>(other)];
            });
        });
        if (!begun && first != users.end()) {
            start = at(*first).start;
        } else if (!begun) {
            start = {m_model.addVariable(ticks(m_progress.now), m_horizon), 0};
            for (const int i : users) {
                between(start, at(i).start, 0, std::nullopt);
            }
        }
        const auto last = std::find_if(users.begin(), users.end(), [&](int i) {
            return std::all_of(users.begin(), users.end(), [&](int other) {
                return other == i || m_precedes[static_cast<std::size_t>(other)][static_cast<std::size_t>(i)];
            });
        });
        if (last != users.end()) {
            end = at(*last).end;
        } else {
            end = {m_model.addVariable(ticks(m_progress.now), m_horizon), 0};
            for (const int i : users) {
                if (at(i).open) {
                    between(at(i).end, end, 0, std::nullopt);
                }
            }
        }
        m_holdStart[h] = start;
        spans[h] = {start, end, 1, std::nullopt};
    }
    std::map<std::vector<int>, Resource> groups;
    for (std::size_t h = 0; h < m_network.stationHolds.size(); ++h) {
        std::vector<int> stations = m_network.stationHolds[h].candidates;
        std::sort(stations.begin(), stations.end());
        groups.try_emplace(std::move(stations), Resource{});
    }
    for (auto& [stations, resource] : groups) {
        resource.capacity = static_cast<Tick>(stations.size());
        for (std::size_t h = 0; h < m_network.stationHolds.size(); ++h) {
            std::vector<int> wanted = m_network.stationHolds[h].candidates;
            std::sort(wanted.begin(), wanted.end());
            if (open[h] && std::includes(stations.begin(), stations.end(), wanted.begin(), wanted.end())) {
                resource.occupations.push_back(spans[h]);
            }
        }
        if (resource.occupations.size() > static_cast<std::size_t>(resource.capacity)) {
            m_model.resources.push_back(std::move(resource));
        }
    }
}

void SheetModel::addLimits() {
    for (std::size_t l = 0; l < m_network.limits.size(); ++l) {
        const HoldLimit& limit = m_network.limits[l];
        const Placed& from = m_placed[static_cast<std::size_t>(limit.from)];
        const Placed& to = m_placed[static_cast<std::size_t>(limit.to)];
        const bool skipped =
            !m_progress.activities.empty() && m_progress.activities[static_cast<std::size_t>(limit.from)].skipped;
        if (!to.fresh || skipped) {
            continue;
        }
        const Seconds atMost = m_wishes.limitAtMost.empty() ? limit.atMost : m_wishes.limitAtMost[l];
        if (m_wishes.aim != SheetWishes::Aim::Stretching || limit.kind == LimitKind::Safety) {
            between(to.start, from.end, -ticks(atMost), std::nullopt);
            continue;
        }
        for (const Level& level : kLevels) {
            const Variable beyond = m_model.addTruth();
            const Seconds allowed = atMost + level.beyond;
            between(to.start, from.end, -ticks(allowed), std::nullopt, isFalse(beyond));
            if (!m_levels.empty() && m_levels.back().limit == l) {
                imply(isTrue(beyond), isTrue(m_levels.back().truth));
            }
            m_levels.push_back({l, beyond, allowed});
        }
    }
}

void SheetModel::addEnds() {
    const Moment end{m_model.addVariable(ticks(m_progress.now), m_horizon), 0};
    const auto successors = successorsOf(m_network);
    for (std::size_t i = 0; i < m_placed.size(); ++i) {
        // The end of an activity that others follow is before theirs.
        if (m_placed[i].open && successors[i].empty()) {
            between(m_placed[i].end, end, 0, std::nullopt);
        }
    }
    if (m_network.closing >= 0 && m_wishes.classEndAtMost) {
        between(m_placed[static_cast<std::size_t>(m_network.closing)].end, constant(*m_wishes.classEndAtMost), 0,
                std::nullopt);
    }
    switch (m_wishes.aim) {
        case SheetWishes::Aim::KitchenEnd:
            m_model.objective = end.variable;
            break;
        case SheetWishes::Aim::ClassEnd: {
            const Moment closing =
                m_network.closing >= 0 ? m_placed[static_cast<std::size_t>(m_network.closing)].end : end;
            const Moment target{m_model.addVariable(ticks(m_progress.now), m_horizon), 0};
            between(closing, target, 0, std::nullopt);
            m_model.objective = target.variable;
            break;
        }
        case SheetWishes::Aim::Stretching: {
            const Variable cost = m_model.addVariable(0, static_cast<Tick>(100 * (m_levels.size() + 1)));
            Stretch sum{{-1, 0}, {cost, 0}, 0, {}};
            for (std::size_t k = 0; k < m_levels.size(); ++k) {
                sum.parts.push_back({isTrue(m_levels[k].truth), kLevels[k % std::size(kLevels)].cost});
            }
            m_model.stretches.push_back(std::move(sum));
            m_model.objective = cost;
            break;
        }
    }
}

}  // namespace brinebell
