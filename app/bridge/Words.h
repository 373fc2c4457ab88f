// Words.h — values from core/ put into translated words. The one place where a reason becomes a sentence.
//
// Every switch names every enumerator, so that a new one does not compile before it has words. Sentences are
// plain text; names and titles come from files and are never read as markup.
#pragma once

#include <QCoreApplication>
#include <QString>

#include "session/Guide.h"

namespace brinebell {

/// What a sentence about "now" needs. Lifetime: no longer than the session it was taken from.
struct Moment {
    const Network& network;
    const State& state;
    Millis elapsed{};
    Millis utc{};
    Millis utcAt(Millis sessionTime) const { return utc + (sessionTime - elapsed); }
};

class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
public:
    static QString prompt(const Prompt& prompt, const Moment& moment);  ///< what the press will do
    static QString refusal(const Refusal& refusal, const Moment& moment);
    static QString cue(const Cue& cue, const Moment& moment);
    static QString cueKind(CueKind kind);                              ///< "SOON", "DUE": a word beside a shape
    static QString event(const Event& event, const Network& network);  ///< "Load 1: rolling boil seen"
    static QString eventKind(EventKind kind);
    static QString cause(Cause cause);
    static QString phase(LoadPhase phase);
    static QString startReason(StartReason reason, int waitedFor, const Network& network);
    static QString handWork(HandWork work);

    static QString activity(int index, const Network& network);  ///< its title; a dash when there is none
    static QString load(int index, const Network& network);      ///< "load 1", "load 1 in Big canner"
    static QString jars(int count, JarSize size);                ///< "7 pints"
    static QString sentence(QString words);                      ///< first letter large
    static QString inSentence(QString words);                    ///< first letter small, initialisms kept

private:
    static QString refusalWithDetail(const Refusal& refusal, const Moment& moment);
};

}  // namespace brinebell
