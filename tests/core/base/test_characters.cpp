// SPDX-License-Identifier: MIT
#include "core/base/characters.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("characters are counted, not bytes")
{
    CHECK(countCharacters("") == 0);
    CHECK(countCharacters("kits") == 4);
    CHECK(countCharacters("काम") == 3);
    CHECK(countCharacters("\xF0\x9F\x99\x82") == 1);
}

TEST_CASE("one line has no control character and no blank at its ends")
{
    CHECK(isOneLine(""));
    CHECK(isOneLine("two words"));
    CHECK(isOneLine("दो शब्द"));
    for (const char* text : {" a", "a ", "a\nb", "a\tb", "a\x7F", "\r"})
        CHECK_FALSE(isOneLine(text));
}
