// SPDX-License-Identifier: MIT
#include "core/exchange/tablesxlsx.h"
#include "core/exchange/ziptest.h"
#include "tests/support/builders.h"
#include "tests/support/sampletables.h"
#include "xlsxcells.h"

#include <doctest/doctest.h>
#include <fstream>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("A work book that is cut anywhere has no whole parts")
{
    const TempDir folder;
    REQUIRE(writeXlsx(aTableBook(), {}, folder.file("a.xlsx")));
    CHECK(hasWholeParts(folder.file("a.xlsx")));
    const std::string whole = bytesOf(folder.file("a.xlsx"));
    for (const std::size_t length : {whole.size() / 2, whole.size() - 30, std::size_t(4), std::size_t(0)}) {
        std::ofstream(folder.file("b.xlsx"), std::ios::binary) << whole.substr(0, length);
        CHECK(!hasWholeParts(folder.file("b.xlsx")));
    }
}
