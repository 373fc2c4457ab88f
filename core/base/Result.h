// Result.h — a value, or an Error that says what is wrong, where, and which kind of wrong it is.
//
// Messages start lower-case, have no full stop, and name the value and the limit. What the outside world may
// send wrongly is an Error; what only a fault of our own can cause is an assert.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace brinebell {

enum class ErrorCode {
    InvalidInput,   ///< the text or file cannot be read as what it should be
    OutOfRange,     ///< readable, but outside the stated limits
    NotFound,       ///< no such thing
    NoTestedValue,  ///< no published, tested figure answers the question
    Refused,        ///< the command does not fit the present state
    Io,             ///< disk, rights, device
    Conflict,       ///< somebody else holds it
    Corrupt,        ///< stored data that we wrote ourselves cannot be trusted
};

/// A place in a file a person wrote. Line and column count from 1; 0 means "the file as a whole".
struct Place {
    std::string file;
    int line = 0;
    int column = 0;
    bool operator==(const Place&) const = default;
};

struct [[nodiscard]] Error {
    ErrorCode code = ErrorCode::InvalidInput;
    std::string message;
    Place where;
    bool operator==(const Error&) const = default;
};

template <class T>
using Result = tl::expected<T, Error>;

/// For readers of whole files: the value, or every fault that was found, in file order.
template <class T>
using FileResult = tl::expected<T, std::vector<Error>>;

/// The failing half of a Result.
inline tl::unexpected<Error> fail(ErrorCode code, std::string message, Place where = {}) {
    return tl::unexpected<Error>(Error{code, std::move(message), std::move(where)});
}

/// "file:line:column: message", leaving out what is not known.
std::string describe(const Error& error);

}  // namespace brinebell
