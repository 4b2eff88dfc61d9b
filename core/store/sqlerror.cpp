// SPDX-License-Identifier: MIT
#include "core/store/sqlerror.h"

#include <cerrno>
#include <cstring>
#include <sqlite3.h>

namespace cradlepost {

namespace {

/** What errno says, where it says more than "input or output failed". */
ErrorCode codeOfErrno(int systemErrno)
{
    switch (systemErrno) {
    case EROFS:
    case EACCES:
    case EPERM:
        return ErrorCode::ReadOnly;
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return ErrorCode::DiskFull;
    case ENOENT:
    case ENOTDIR:
        return ErrorCode::NotFound;
    case EEXIST:
        return ErrorCode::AlreadyExists;
    default:
        return ErrorCode::Io;
    }
}

ErrorCode codeOf(int resultCode, int systemErrno)
{
    switch (resultCode & 0xFF) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return ErrorCode::Locked;
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return ErrorCode::ReadOnly;
    case SQLITE_FULL:
        return ErrorCode::DiskFull;
    case SQLITE_CORRUPT:
        return ErrorCode::Damaged;
    case SQLITE_NOTADB:
        return ErrorCode::NotADatabase;
    case SQLITE_IOERR:
        // A file that ends too early is damage, not a fault of the disk.
        if (resultCode == SQLITE_IOERR_SHORT_READ || resultCode == SQLITE_IOERR_CORRUPTFS)
            return ErrorCode::Damaged;
        // The errno may be an older one: believe it only where it explains a write that failed.
        return codeOfErrno(systemErrno) == ErrorCode::DiskFull ? ErrorCode::DiskFull
            : codeOfErrno(systemErrno) == ErrorCode::ReadOnly  ? ErrorCode::ReadOnly
                                                               : ErrorCode::Io;
    case SQLITE_CANTOPEN:
        return codeOfErrno(systemErrno);
    default:
        return ErrorCode::Io;
    }
}

struct Wording
{
    const char* what;
    const char* hint;
};

Wording wordingOf(ErrorCode code)
{
    switch (code) {
    case ErrorCode::Locked:
        return {"another program holds the file", "Close other windows of this program and try again."};
    case ErrorCode::ReadOnly:
        return {"the file or its folder cannot be written",
            "Check the rights of the file and its folder, or use a folder that can be written."};
    case ErrorCode::DiskFull:
        return {"there is no room left on the disk", "Free some room and try again; nothing was lost."};
    case ErrorCode::Damaged:
        return {"the file is damaged", "Keep the file and restore the last backup."};
    case ErrorCode::NotADatabase:
        return {"the file is not a database of this program", "Choose another file."};
    case ErrorCode::NotFound:
        return {"the file or its folder is not there", "Check the name of the file."};
    case ErrorCode::AlreadyExists:
        return {"the file is there already", "Choose another name."};
    default:
        return {"reading or writing failed", "Check the disk, then try again."};
    }
}

}

Error sqliteError(int resultCode, int systemErrno, const std::string& path, const std::string& text)
{
    const ErrorCode code = codeOf(resultCode, systemErrno);
    const Wording wording = wordingOf(code);
    return {.code = code,
        .message = "database " + path + ": " + wording.what + " (" + text + ", SQLite "
            + std::to_string(resultCode) + ")",
        .hint = wording.hint};
}

Error systemError(int systemErrno, const std::string& doing)
{
    const ErrorCode code = codeOfErrno(systemErrno);
    return {.code = code,
        .message = "cannot " + doing + ": " + std::strerror(systemErrno),
        .hint = wordingOf(code).hint};
}

}
