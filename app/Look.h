// Look.h — the dark and the light look of the stage: which ink stands on which ground.
//
// Whatever is painted on the stage names an ink and a ground; no file of the stage names a colour. So every pair there
// can be is known, and a test holds each of them to a contrast of 7:1 (WCAG 2, level AAA).
// Threads: the thread of the window only. There is one look for the board and the audience screen.
#pragma once

#include <QColor>
#include <array>

namespace brinebell::theme {

enum class Look { Dark, Light };
inline constexpr std::array kLooks{Look::Dark, Look::Light};

enum class Ground {
    Board,
    Panel,
    Due,  ///< wants the hands
    Stop  ///< wants an answer before anything else
};
inline constexpr std::array kGrounds{Ground::Board, Ground::Panel, Ground::Due, Ground::Stop};

/// On Due and Stop grounds all inks are the same: there the ground itself speaks.
enum class Ink {
    Text,
    Quiet,
    Steady,  ///< something runs as it should
    Call,    ///< keys, and what wants the hands soon
    Alarm    ///< faults
};
inline constexpr std::array kInks{Ink::Text, Ink::Quiet, Ink::Steady, Ink::Call, Ink::Alarm};

Look look();
/// Remembered for the next start of the program where `keep` says so.
enum class Keep { No, Yes };
void setLook(Look look, Keep keep);
void restoreLook();  ///< what was last kept; dark where nothing was

QColor ground(Ground ground, Look look = theme::look());
QColor ink(Ink ink, Ground on, Look look = theme::look());
QColor line(Look look = theme::look());  ///< frames only, never text; 3:1 on board and panel

}  // namespace brinebell::theme
