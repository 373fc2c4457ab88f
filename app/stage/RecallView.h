// RecallView.h — "where was I": what was done last and how long ago, what runs, what is overdue, what is
// next.
#pragma once

#include <QString>
#include <vector>

#include "bridge/Words.h"

namespace brinebell {

struct RecallView {
    QString done;
    QString running;
    QString overdue;
    QString next;
};

RecallView recallView(const std::vector<Event>& events, const Guide& guide, const Moment& moment);

}  // namespace brinebell
