// LiveWords.cpp — the half of Words that tells how a running class will end.
#include "bridge/TimeText.h"
#include "bridge/Words.h"
#include "plan/Chance.h"

namespace brinebell {

namespace {

/// Never more than is saved.
QString savedSpan(Seconds saves) {
    return spanText(saves < std::chrono::minutes(1) ? saves : std::chrono::floor<std::chrono::minutes>(saves));
}

}  // namespace

QString Words::spread(const Forecast& ahead, const Moment& moment) {
    const QString by = tr("8 in 10 by %1").arg(timeOfDay(moment.utcAt(ahead.classEnd.atConfidence)));
    return moment.network.slot <= Seconds::zero()
               ? by
               : tr("%1; %2 in the slot").arg(by, toQt(printShare(ahead.classEnd.chance)));
}

QString Words::latest(const LatestMoment& latest, const Network& network) {
    switch (latest.kind) {
        case LatestMoment::Kind::HeatOn:
            return tr("latest heat-on");
        case LatestMoment::Kind::LoadIn:
            return tr("latest in: %1").arg(load(latest.load, network));
    }
    return {};
}

QString Words::untilLatest(Seconds left) {
    if (left < Seconds::zero()) {
        return tr("■ PAST by %1").arg(spanText(left));
    }
    return left < kLatestSoon ? tr("▲ SOON: in %1").arg(savedSpan(left)) : tr("in %1").arg(savedSpan(left));
}

QString Words::remedy(const Remedy& remedy, const Network& network) {
    const QString saved = savedSpan(remedy.saves);
    switch (remedy.kind) {
        case RemedyKind::AnotherHand:
            switch (network.helpers) {
                case 0:
                    return tr("a second pair of hands saves %1").arg(saved);
                case 1:
                    return tr("a third pair of hands saves %1").arg(saved);
                default:
                    return tr("one more pair of hands saves %1").arg(saved);
            }
        case RemedyKind::CloseBeforeLift:
            return tr("closing before the last load is lifted (%2 stays) saves %1").arg(saved, toQt(remedy.who));
        case RemedyKind::DropTalk:
            return remedy.talk.size() == 1
                       ? tr("leaving out one talking point saves %1").arg(saved)
                       : tr("leaving out %1 talking points saves %2").arg(remedy.talk.size()).arg(saved);
    }
    return {};
}

QString Words::late(Seconds by, const std::vector<Remedy>* remedies, const Network& network) {
    if (by <= Seconds::zero()) {
        return {};
    }
    const QString late = tr("%1 late").arg(spanText(by));
    if (remedies == nullptr) {
        return late;
    }
    return remedies->empty() ? tr("%1, and nothing left to change saves time").arg(late)
                             : tr("%1: %2").arg(late, remedy(remedies->front(), network));
}

QString Words::adviceFault(const AdviceFault& fault) {
    const QString broken = toQt(fault.broken);
    switch (fault.standIn) {
        case AdviceFault::StandIn::DefaultOrder:
            return tr("The plan has a fault (%1): advice goes by the plain order").arg(broken);
        case AdviceFault::StandIn::LastSound:
            return tr("Advice has a fault (%1): what is shown is older").arg(broken);
    }
    return {};
}

}  // namespace brinebell
