// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

namespace cradlepost {

/**
 * What SQLite's result code (extended codes too) and the system's errno say, with what to do about it. `path`
 * is the database's file, `text` SQLite's own words.
 */
Error sqliteError(int resultCode, int systemErrno, const std::string& path, const std::string& text);

/** The same for a call to the system: `doing` says what was tried, for example "copy /a to /b". */
Error systemError(int systemErrno, const std::string& doing);

}
