// OwnKeys.h — what a key of its own could send in the present state: boil seen, boil lost, heat off, and the
// rarer things behind "More". Values only; the session still decides.
#pragma once

#include <QString>
#include <vector>

#include "bridge/Words.h"
#include "session/Drill.h"

namespace brinebell {

struct Choice {
    QString words;
    Command command;
    bool wantsReason = false;         ///< a few words are asked for and put into the command's text
    bool reasonMayLack = false;       ///< without any, the command says by its value 1 that no reason is given
    bool atOnce = false;              ///< sent by the digit, without a second look
    std::optional<Drill> drill = {};  ///< in a rehearsal, instead of the command
};

/// One choice for each load it could mean. Never empty: with no load it could mean, the one choice names the
/// first load, so that the session refuses it with the reason.
std::vector<Choice> boilSeenChoices(const Moment& moment);
/// Whether the one choice may be sent by the key alone: the board's own held prompt stands for that very boil, steam or
/// pressure, or nothing is awaited and the session is to say why not. Anything else is asked about first, by value.
bool isSeenAtOnce(const std::vector<Choice>& choices, const Guide& guide, const Moment& moment);
std::vector<Choice> boilLostChoices(const Moment& moment);
std::vector<Choice> heatOffChoices(const Moment& moment);

/// What the class asked and was put off, and a way to put off one more.
std::vector<Choice> questionChoices(const Moment& moment);

/// Every drill in its own place, whether it fits now or not.
std::vector<Choice> drillChoices();

/// Leave a step out, put something in the place of something, set a load aside, end the class.
std::vector<Choice> rareChoices(const Guide& guide, const Moment& moment);

}  // namespace brinebell
