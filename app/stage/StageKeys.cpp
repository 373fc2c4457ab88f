#include "stage/StageKeys.h"

#include <QCoreApplication>

namespace brinebell {

namespace {

struct KeyWords {
    Q_DECLARE_TR_FUNCTIONS(KeyWords)
};

}  // namespace

StageKey stageKeyOf(int qtKey) {
    switch (qtKey) {
        case Qt::Key_Space:
        case Qt::Key_Enter:
        case Qt::Key_Return:
        case Qt::Key_Right:
        case Qt::Key_Down:
        case Qt::Key_PageDown:
            return StageKey::Next;
        case Qt::Key_PageUp:
        case Qt::Key_Left:
        case Qt::Key_Up:
            return StageKey::LookBack;
        case Qt::Key_B:
            return StageKey::BoilSeen;
        case Qt::Key_L:
            return StageKey::BoilLost;
        case Qt::Key_H:
            return StageKey::HeatOff;
        case Qt::Key_U:
            return StageKey::Undo;
        case Qt::Key_T:
            return StageKey::TickPoint;
        case Qt::Key_N:
            return StageKey::Note;
        case Qt::Key_V:
            return StageKey::Reading;
        case Qt::Key_Q:
            return StageKey::Questions;
        case Qt::Key_P:
            return StageKey::Park;
        case Qt::Key_J:
            return StageKey::CountJar;
        case Qt::Key_C:
            return StageKey::Close;
        case Qt::Key_W:
            return StageKey::WhereWasI;
        case Qt::Key_R:
            return StageKey::Remedies;
        case Qt::Key_D:
            return StageKey::Details;
        case Qt::Key_A:
            return StageKey::Audience;
        case Qt::Key_K:
            return StageKey::Look;
        case Qt::Key_M:
            return StageKey::More;
        case Qt::Key_S:
            return StageKey::Sound;
        case Qt::Key_Escape:
            return StageKey::Leave;
        default:
            return StageKey::None;
    }
}

Cause causeOf(int qtKey) {
    return qtKey == Qt::Key_PageDown || qtKey == Qt::Key_PageUp ? Cause::Pedal : Cause::Key;
}

std::vector<KeyHint> keyHints() {
    return {
        {StageKey::BoilSeen, QStringLiteral("B"), KeyWords::tr("Seen (hold)")},
        {StageKey::BoilLost, QStringLiteral("L"), KeyWords::tr("Lost")},
        {StageKey::HeatOff, QStringLiteral("H"), KeyWords::tr("Heat off")},
        {StageKey::Undo, QStringLiteral("U"), KeyWords::tr("Undo")},
        {StageKey::TickPoint, QStringLiteral("T"), KeyWords::tr("Said")},
        {StageKey::CountJar, QStringLiteral("J"), KeyWords::tr("Jar")},
        {StageKey::Questions, QStringLiteral("Q"), KeyWords::tr("Questions")},
        {StageKey::Park, QStringLiteral("P"), KeyWords::tr("Put off")},
        {StageKey::Note, QStringLiteral("N"), KeyWords::tr("Note")},
        {StageKey::Reading, QStringLiteral("V"), KeyWords::tr("Value")},
        {StageKey::WhereWasI, QStringLiteral("W"), KeyWords::tr("Where was I")},
        {StageKey::Remedies, QStringLiteral("R"), KeyWords::tr("If late")},
        {StageKey::Close, QStringLiteral("C"), KeyWords::tr("Close")},
        {StageKey::Details, QStringLiteral("D"), KeyWords::tr("Step in full")},
        {StageKey::Audience, QStringLiteral("A"), KeyWords::tr("Audience")},
        {StageKey::Look, QStringLiteral("K"), KeyWords::tr("Light/dark")},
        {StageKey::More, QStringLiteral("M"), KeyWords::tr("More")},
        {StageKey::Sound, QStringLiteral("S"), KeyWords::tr("Sound")},
        {StageKey::Leave, QStringLiteral("Esc"), KeyWords::tr("Leave")},
    };
}

}  // namespace brinebell
