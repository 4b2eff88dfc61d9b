// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace cradlepost {

/** Whether it names a server ("postgresql://…") and not a file. */
bool isPostgresAddress(std::string_view address);

/** False for one that breaks the rules of such addresses. */
bool canBeRead(const std::string& address);

/**
 * The address as it may be shown: who, where and which database, never a password. Something general when it
 * cannot be read.
 */
std::string shownAddress(const std::string& address);

/** The password in the address; mostly empty, since ~/.pgpass or a service file holds it. */
std::string passwordIn(const std::string& address);

}
