// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/support/sampletables.h"
#include "ui/report/printedtable.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("Figures are printed with their decimals, in percent, in the unit's time; a dash where unknown")
{
    const TableWords words{.code = [](const std::string&, const Column&, const std::string& code) {
        return code == "kits-whole" ? "Delivery kits whole" : code;
    }};
    const TableBook book = aTableBook();
    const ChartTable table = printedTable(book.tables[0],
        {.words = words,
            .locale = QLocale(QLocale::English, QLocale::UnitedKingdom),
            .zone = book.about.zone});
    REQUIRE(table.rows.size() == 3);
    CHECK(table.headers.at(4) == QStringLiteral("hours (h)"));
    CHECK(table.rows[0]
        == QStringList{QStringLiteral("Delivery kits whole"), QStringLiteral("cord ties ran out"),
            QStringLiteral("27"), QStringLiteral("30.7%"), QStringLiteral("12.35"),
            QStringLiteral("12 Oct 2026"), QStringLiteral("12 Oct 2026 08:00"), QStringLiteral("yes")});
    CHECK(table.rows[2].at(3) == QStringLiteral("–"));
    CHECK(table.numbers == std::vector<bool>{false, false, true, true, true, false, false, false});
}
