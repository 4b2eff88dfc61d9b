// SPDX-License-Identifier: MIT
#include "core/base/result.h"

namespace cradlepost {

const char* codeName(ErrorCode code)
{
    switch (code) {
    case ErrorCode::InvalidArgument:
        return "invalid-argument";
    case ErrorCode::Undefined:
        return "undefined";
    case ErrorCode::BadDocument:
        return "bad-document";
    case ErrorCode::NotFound:
        return "not-found";
    case ErrorCode::AlreadyExists:
        return "already-exists";
    case ErrorCode::ReadOnly:
        return "read-only";
    case ErrorCode::DiskFull:
        return "disk-full";
    case ErrorCode::Locked:
        return "locked";
    case ErrorCode::Damaged:
        return "damaged";
    case ErrorCode::NewerSchema:
        return "newer-schema";
    case ErrorCode::NotADatabase:
        return "not-a-database";
    case ErrorCode::Forged:
        return "forged";
    case ErrorCode::ServerAway:
        return "server-away";
    case ErrorCode::NotAdmitted:
        return "not-admitted";
    case ErrorCode::Io:
        return "io";
    }
    return "io";
}

}
