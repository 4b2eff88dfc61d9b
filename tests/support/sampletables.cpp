// SPDX-License-Identifier: MIT
#include "tests/support/sampletables.h"

namespace cradlepost::test {

namespace {
constexpr Date firstDay{std::chrono::year(2026), std::chrono::October, std::chrono::day(1)};
/// 12 October 2026, 02:30 UTC: 08:00 in Kolkata.
const Instant reading = Instant(std::chrono::sys_days(addDays(firstDay, 11))) + std::chrono::minutes(150);
}

std::string hostileText()
{
    return "=cmd|'/c calc'!A1 <script>alert(\"x\")</script> & <b>, \"quoted\"; ]]>\nsecond "
           "line\t\xE0\xA4\x95";
}

TableBook aTableBook()
{
    const DataTable items{.id = "lost-readiness",
        .columns = {{"item", ColumnKind::Code}, {"remark", ColumnKind::Text}, {"gaps", ColumnKind::Count},
            {"share", ColumnKind::Share, "", 1}, {"hours", ColumnKind::Number, "h", 2},
            {"day", ColumnKind::Day}, {"opened", ColumnKind::Time}, {"open", ColumnKind::Flag}},
        .rows = {{std::string("kits-whole"), std::string("cord ties ran out"), std::int64_t(27), 27.0 / 88.0,
                     12.3456789, addDays(firstDay, 11), reading, std::int64_t(1)},
            {std::string("warmer"), hostileText(), std::int64_t(0), 0.0, 1e-7, firstDay, reading,
                std::int64_t(0)},
            {std::string("suction"), {}, {}, {}, {}, {}, {}, {}}}};
    const DataTable empty{.id = "open-gaps", .columns = {{"item", ColumnKind::Code}}};
    return {.about = {.unit = "sorrel-hill",
                .place = "Sorrel Hill",
                .firstDay = firstDay,
                .lastDay = addDays(firstDay, 30),
                .madeAt = reading,
                .zone = *TimeZone::named("Asia/Kolkata"),
                .station = "st-5f2c",
                .ledgerHead = "9f3ac2d17b",
                .program = "Cradlepost 0.1.0",
                .cautions = {"Never delay care to fill in a form.", "Limits are defaults."}},
        .tables = {items, empty}};
}

DataTable aLongTable(int rows)
{
    DataTable table{.id = "done",
        .columns
        = {{"name", ColumnKind::Text}, {"count", ColumnKind::Count}, {"share", ColumnKind::Share, "", 1}}};
    for (int i = 1; i <= rows; ++i)
        table.rows.push_back({"row " + std::to_string(i), std::int64_t(i),
            static_cast<double>(i) / static_cast<double>(rows)});
    return table;
}

}
