// BoardType.h — type sizes of the board in pixels, from the reading distance and the screen, and the heights of its
// rows that follow from them.
//
// What is read live (action, its amount or end-point, what comes next, the clock with its end, the countdowns of the
// stations) stands at 22 minutes of arc. Where the screen is too low for that, live type shrinks until the rows fit,
// and reach() says so before class.
#pragma once

#include <QSize>

#include "quantity/Quantities.h"

namespace brinebell {

struct BoardType {
    int live = 60;   ///< what must be read from the counter
    int least = 44;  ///< 16 minutes of arc from there
    int near = 18;   ///< for the moment when the presenter steps up
    static BoardType forDistance(Length distance, double pixelsPerMillimetre);
    bool operator==(const BoardType&) const = default;
};

/// A rehearsal has a row more than a class.
enum class BoardUse { Class, Rehearsal };

/// Heights in pixels; what is over goes to the details.
struct BoardRows {
    int clock = 0;
    int action = 0;  ///< two lines of title and one of end-point or amount
    int next = 0;
    int details = 0;  ///< at least
    int stations = 0;
    int lines = 0;  ///< cues and notices
    int prompts = 0;
    int keys = 0;
    int gap = 0;        ///< between rows
    int margin = 0;     ///< above the first and below the last
    int rehearsal = 0;  ///< its own row; none in a class
    static BoardRows forType(const BoardType& type, BoardUse use = BoardUse::Class);
    int sum() const;
};

/// `wanted`, with its live type made smaller until the rows fit a board of `size`, or all of it larger where there is
/// room.
BoardType fittedTo(QSize size, const BoardType& wanted, BoardUse use = BoardUse::Class);

/// What a board of `size` pixels can show from `distance`.
struct BoardReach {
    double arcMinutes = 0;   ///< at which live lines stand; at most 22
    Length farthest;         ///< from where they would stand at 22
    int stationsAcross = 0;  ///< whose countdowns stand at that size side by side
    bool isEnough() const;   ///< 22, as pixels allow
};
BoardReach boardReach(QSize size, Length distance, double pixelsPerMillimetre);

inline constexpr double kUsualDistanceMetres = 2.0;  ///< where a venue names none

}  // namespace brinebell
