#include "base/Language.h"

#include <atomic>

namespace brinebell::core {
namespace {

std::atomic<Translator> theTranslator{nullptr};

}  // namespace

void speakThrough(Translator translator) {
    theTranslator = translator;
}

std::string say(const char* english) {
    const Translator translator = theTranslator;
    return translator ? translator(english) : std::string(english);
}

std::string filled(const char* english, fmt::format_args values) {
    if (theTranslator.load()) {
        try {
            return fmt::vformat(say(english), values);
        } catch (const fmt::format_error&) {
            // A faulty translation must not cost the reader the text.
        }
    }
    return fmt::vformat(english, values);
}

}  // namespace brinebell::core
