// StageKeys.h — which key does what on the board. One table, shown on the board as it is obeyed.
#pragma once

#include <QString>
#include <vector>

#include "session/Event.h"

namespace brinebell {

enum class StageKey {
    None,
    Next,
    LookBack,
    BoilSeen,
    BoilLost,
    HeatOff,
    Undo,
    TickPoint,
    Note,
    Reading,    ///< from an instrument
    Questions,  ///< hands stop, and go on
    Park,       ///< a question put off
    CountJar,
    Close,  ///< what is open before the class is closed
    WhereWasI,
    Remedies,
    Details,
    Audience,
    Look,
    More,
    Sound,
    Leave
};

/// The meaning of a Qt key code. Digits are not in it; the board reads them where something is numbered.
StageKey stageKeyOf(int qtKey);

/// Page-turning pedals send page keys or arrows; everything else is a key of the keyboard.
Cause causeOf(int qtKey);

struct KeyHint {
    StageKey key = StageKey::None;
    QString cap;    ///< "B"
    QString words;  ///< "Boil seen (hold)"
};
std::vector<KeyHint> keyHints();

}  // namespace brinebell
