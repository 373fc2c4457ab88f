// AwakeKeeper.h — keeps the screen lit and the machine awake while a class runs, and says so where it cannot.
#pragma once

#include <QObject>
#include <QString>
#include <memory>

namespace brinebell {

struct AwakeState {
    bool isWanted = false;
    bool isAsking = false;  ///< the machine has not answered everything yet
    bool isScreenKept = false;
    bool isMachineKept = false;
    bool operator==(const AwakeState&) const = default;
};

/// What the board must say of it; empty while all is well or nothing is wanted.
QString standingWords(const AwakeState& state);

/// Threads: one, with an event loop. Nothing here waits for an answer.
class AwakeKeeper : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// `why` is shown by the desktop where it lists who keeps it awake. Asked again, it does nothing.
    virtual void keepAwake(const QString& why) = 0;
    virtual void release() = 0;
    virtual AwakeState state() const = 0;

signals:
    void changed();
    void woke();  ///< the machine has just come back from sleep
};

/// This system's own. Never null.
std::unique_ptr<AwakeKeeper> makeAwakeKeeper();

}  // namespace brinebell
