// OwnKeys.h — what a key of its own could send in the present state: boil seen, boil lost, heat off, and the
// rarer things behind "More". Values only; the session still decides.
#pragma once

#include <QString>
#include <vector>

#include "bridge/Words.h"

namespace brinebell {

struct Choice {
    QString words;
    Command command;
    bool wantsReason = false;  ///< a few words are asked for and put into the command's text
};

/// One choice for each load it could mean. Never empty: with no load it could mean, the one choice names the
/// first load, so that the session refuses it with the reason.
std::vector<Choice> boilSeenChoices(const Moment& moment);
std::vector<Choice> boilLostChoices(const Moment& moment);
std::vector<Choice> heatOffChoices(const Moment& moment);

/// Leave a step out, set a load aside, end the class, close with points still open.
std::vector<Choice> rareChoices(const Guide& guide, const Moment& moment);

}  // namespace brinebell
