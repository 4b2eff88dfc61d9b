// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <string>

namespace cradlepost {

/** Stable codes of tables in the reader's language. */
class CodeText
{
public:
    /** The code itself when it has no word. */
    [[nodiscard]] static QString word(const std::string& code);
};

}
