// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace cradlepost {

/** What kind of thing went wrong; the reader's sentence is made from it in ui/text. */
enum class ErrorCode {
    InvalidArgument, ///< a value that no caller should pass
    Undefined, ///< a figure that these data do not define: nothing seen, all equal, none at risk
    BadDocument, ///< a checklist, pack or table that breaks its own rules
    NotFound,
    AlreadyExists, ///< e.g. a second shift round for the same shift
    ReadOnly, ///< file or folder cannot be written
    DiskFull,
    Locked, ///< another program holds the file
    Damaged, ///< the file is not a sound database
    NewerSchema, ///< written by a later version of this program
    NotADatabase,
    Forged, ///< chain, hash or signature does not hold
    ServerAway, ///< the database server does not answer
    NotAdmitted, ///< the database server does not let this user in
    Io, ///< anything else from the file system or the database
};

/** Stable lower-case name of a code, for logs and --json ("disk-full"). */
const char* codeName(ErrorCode code);

struct Error {
    ErrorCode code = ErrorCode::Io;
    std::string message; ///< what and where, in English, for log and command line
    std::string hint; ///< what to do about it; may be empty
    std::string refusal = {}; ///< which rule of entry was broken, a word of core/base/refusal.h; mostly empty
    std::vector<std::string> values = {}; ///< what that word names, in its order
};

template<class T> using Result = tl::expected<T, Error>;

inline tl::unexpected<Error> fail(ErrorCode code, std::string message, std::string hint = {})
{
    return tl::unexpected<Error>(Error{.code = code, .message = std::move(message), .hint = std::move(hint)});
}

}
