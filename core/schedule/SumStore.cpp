#include "schedule/SumStore.h"

#include <utility>

namespace brinebell::search {

namespace {

constexpr std::size_t kNone = static_cast<std::size_t>(-1);

}  // namespace

void SumStore::add(Side from, Side to, Tick weight, std::vector<Part> parts) {
    const auto index = static_cast<std::uint32_t>(m_sums.size());
    m_watches.resize(m_trail.sides());
    m_watches[static_cast<std::size_t>(from)].push_back(index);
    m_watches[static_cast<std::size_t>(opposite(to))].push_back(index);
    for (const Part& part : parts) {
        m_watches[static_cast<std::size_t>(part.when.side)].push_back(index);
    }
    m_sums.push_back({from, to, weight, std::move(parts)});
}

bool SumStore::wake(Side side) {
    if (static_cast<std::size_t>(side) >= m_watches.size()) {
        return true;
    }
    for (const std::uint32_t index : m_watches[static_cast<std::size_t>(side)]) {
        if (!settle(index)) {
            return false;
        }
    }
    return true;
}

bool SumStore::wakeAll() {
    for (std::uint32_t index = 0; index < m_sums.size(); ++index) {
        if (!settle(index)) {
            return false;
        }
    }
    return true;
}

bool SumStore::settle(std::uint32_t index) {
    const Sum& sum = m_sums[index];
    Tick total = sum.weight;
    for (const Part& part : sum.parts) {
        total += m_trail.isTrue(part.when) ? part.length : 0;
    }
    const Literal forward = {sum.to, m_trail.bound(sum.from) + total};
    if (!m_trail.isTrue(forward) && !m_trail.raise(forward, {Reason::Kind::SumForward, index, 0})) {
        return false;
    }
    const Literal backward = {opposite(sum.from), m_trail.bound(opposite(sum.to)) + total};
    if (!m_trail.isTrue(backward) && !m_trail.raise(backward, {Reason::Kind::SumBackward, index, 0})) {
        return false;
    }
    return settleParts(index, total);
}

bool SumStore::settleParts(std::uint32_t index, Tick total) {
    const Sum& sum = m_sums[index];
    const Tick room = m_trail.limit(sum.to) - m_trail.bound(sum.from) - total;
    for (std::size_t i = 0; i < sum.parts.size(); ++i) {
        const Part& part = sum.parts[i];
        if (part.length <= room || m_trail.isTrue(part.when) || m_trail.isFalse(part.when)) {
            continue;
        }
        if (!m_trail.raise(negated(part.when), {Reason::Kind::SumCondition, index, static_cast<std::int32_t>(i)})) {
            return false;
        }
    }
    return true;
}

Tick SumStore::totalBefore(const Sum& sum, int position, std::size_t left) const {
    Tick total = sum.weight;
    for (std::size_t i = 0; i < sum.parts.size(); ++i) {
        total += i != left && m_trail.heldBefore(sum.parts[i].when, position) ? sum.parts[i].length : 0;
    }
    return total;
}

/// Appends as few true parts as `spare` allows and gives the weight together with their lengths; what is left of
/// `spare` can be taken off the bounds.
Tick SumStore::addPartsBefore(const Sum& sum, int position, std::size_t left, Tick& spare,
                              std::vector<Literal>& because) const {
    Tick total = sum.weight;
    for (std::size_t i = 0; i < sum.parts.size(); ++i) {
        const Part& part = sum.parts[i];
        if (i == left || !m_trail.heldBefore(part.when, position)) {
            continue;
        }
        if (part.length <= spare) {
            spare -= part.length;
            continue;
        }
        total += part.length;
        because.push_back(part.when);
    }
    return total;
}

void SumStore::explain(int position, Tick value, std::vector<Literal>& because) const {
    const Trail::Entry& entry = m_trail.entry(position);
    const Sum& sum = m_sums[entry.reason.index];
    if (entry.reason.kind == Reason::Kind::SumCondition) {
        const auto left = static_cast<std::size_t>(entry.reason.detail);
        const Tick from = m_trail.boundBefore(sum.from, position);
        const Tick closing = m_trail.boundBefore(opposite(sum.to), position);
        const Tick length = sum.parts[left].length;
        Tick spare = from + totalBefore(sum, position, left) + length + closing - 1;
        const Tick total = addPartsBefore(sum, position, left, spare, because);
        because.push_back({sum.from, 1 - total - length - closing});
        because.push_back({opposite(sum.to), closing});
        return;
    }
    const bool forward = entry.reason.kind == Reason::Kind::SumForward;
    const Side source = forward ? sum.from : opposite(sum.to);
    Tick spare = m_trail.boundBefore(source, position) + totalBefore(sum, position, kNone) - value;
    const Tick total = addPartsBefore(sum, position, kNone, spare, because);
    because.push_back({source, value - total});
}

}  // namespace brinebell::search
