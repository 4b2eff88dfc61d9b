// SPDX-License-Identifier: MIT
#include "core/store/postgreserror.h"

namespace cradlepost {

namespace {

/** The server is not there, stops, starts, or has no room for one more. */
bool isAway(std::string_view state)
{
    return state.empty() || state.starts_with("08") || state == "57P01" || state == "57P02"
        || state == "57P03" || state == "53300";
}

ErrorCode codeOf(std::string_view state)
{
    if (isAway(state))
        return ErrorCode::ServerAway;
    if (state.starts_with("28"))
        return ErrorCode::NotAdmitted;
    if (state == "3D000")
        return ErrorCode::NotFound;
    if (state == "42501" || state == "25006")
        return ErrorCode::ReadOnly;
    if (state == "40001" || state == "40P01" || state == "55P03" || state == "57014")
        return ErrorCode::Locked;
    if (state == "53100")
        return ErrorCode::DiskFull;
    if (state == "XX001" || state == "XX002")
        return ErrorCode::Damaged;
    if (state == "22021" || state == "22P05")
        return ErrorCode::InvalidArgument;
    return ErrorCode::Io;
}

struct Wording
{
    const char* what;
    const char* hint;
};

Wording wordingOf(ErrorCode code)
{
    switch (code) {
    case ErrorCode::ServerAway:
        return {"the server does not answer", "Check the network and the server, then try again."};
    case ErrorCode::NotAdmitted:
        return {"the server does not let this user in",
            "Check the user in the address and the password in ~/.pgpass or in the service file."};
    case ErrorCode::NotFound:
        return {"the server has no such database", "Check the name of the database."};
    case ErrorCode::ReadOnly:
        return {"this user may not do that", "Ask whoever keeps the server for the right to it."};
    case ErrorCode::Locked:
        return {"another station holds it", "Try again in a moment."};
    case ErrorCode::DiskFull:
        return {"there is no room left on the server", "Tell whoever keeps the server; nothing was lost."};
    case ErrorCode::Damaged:
        return {"the database is damaged", "Tell whoever keeps the server; restore the last backup."};
    default:
        return {"the server refused", "Tell whoever keeps the server."};
    }
}

}

Failure postgresFailure(std::string_view state, const std::string& shown, const std::string& text)
{
    const ErrorCode code = codeOf(state);
    const Wording wording = wordingOf(code);
    std::string message = "database " + shown + ": " + wording.what + " (" + text;
    if (!state.empty())
        message += ", SQLSTATE " + std::string(state);
    return {.error = {.code = code, .message = message + ')', .hint = wording.hint},
        .isPassing = state == "40001" || state == "40P01",
        .isAway = isAway(state)};
}

}
