// SpokenNames.h — says in words, after its tone, what a cue is for. Where the program was built without Qt's
// TextToSpeech, or the machine has no voice, it says that it cannot and stays silent.
#pragma once

#include <QString>
#include <memory>

namespace brinebell {

/// Threads: one, with an event loop.
class SpokenNames {
public:
    virtual ~SpokenNames() = default;

    /// Why this machine cannot speak, as one sentence to show, without a full stop; empty when it can.
    virtual QString whyNot() const = 0;

    /// Returns at once; cuts off what is being said. `volume`: more than 0, up to 1.
    virtual void say(const QString& words, double volume) = 0;
    virtual void beSilent() = 0;
};

/// The machine's own voice. Never null.
std::unique_ptr<SpokenNames> makeSpokenNames();

}  // namespace brinebell
