// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

namespace cradlepost::test {

/** What an independent reader finds in a work book: "sheet!A1" to "type|number format|value", and more. */
std::map<std::string, std::string> cellsOfWorkBook(const std::string& path);

/** The bytes of a file. */
std::string bytesOf(const std::string& path);

}
