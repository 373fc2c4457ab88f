// RecordWords.h — words of the batch record for what log and tables hold as values; papers use them too.
#pragma once

#include <optional>
#include <string>

#include "safety/Jar.h"
#include "session/AfterClass.h"
#include "session/Event.h"

namespace brinebell {

std::string notRecorded();

/// How the program learned of it. A key has no name: who pressed it is not known.
std::string meansWords(Cause cause);

/// What a press had said, for the line that tells of its being taken back.
std::string pressWords(EventKind kind);

std::string placeWords(const std::optional<JarsPlace>& place);

/// As toText() of safety/Jar.h, in the language that is spoken: "boiling-water", "hot", "pint".
std::string methodWords(Method method);
std::string packWords(Pack pack);
std::string jarWords(JarSize jar);

}  // namespace brinebell
