// Harness.h — what a hostile file is handed to: one function for each kind of input, each in a file of its own.
//
// The same function is linked twice: with libFuzzer, which makes up inputs (tests/fuzz/run), and with Replay.cpp, which
// feeds it the files of the corpus in every test run.
#pragma once

#include <string_view>

namespace brinebell::fuzz {

/// Reads `bytes` as one kind of input, and goes on with what was read as the program would. Any bytes may come; what is
/// wrong with them must come back as an error. A broken promise of the reader ends the process (`mustHold`).
void tryInput(std::string_view bytes);

/// Ends the process, saying `promise`, when it was not kept.
void mustHold(bool kept, const char* promise);

}  // namespace brinebell::fuzz
