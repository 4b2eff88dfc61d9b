// SPDX-License-Identifier: MIT
#include "ui/text/itemnames.h"

#include "core/checklist/reader.h"
#include "core/review/tablerow.h"
#include "tests/support/qstringprint.h"
#include "ui/text/tabletext.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

/** A history that has the built-in checklist of a shift. */
UnitHistory history()
{
    UnitHistory all;
    all.lists.push_back(
        {.checklist = std::make_shared<const Checklist>(builtInChecklist(RoundKind::Shift).value())});
    return all;
}

}

TEST_CASE("stock that is named as the checklist words it is read in the reader's language, other stock as it "
          "is called")
{
    const UnitHistory all = history();
    const Language hindi(QStringLiteral("hi"));
    const ItemNames names(all, hindi);
    const Checklist& list = *all.lists.front().checklist;
    const QString oxytocin = qs(list.item(*list.position("oxytocin")).label.in("hi"));
    CHECK(names.shelf("Oxytocin ampoules, in date") == oxytocin);
    CHECK(names.shelf("Cotton wool") == QStringLiteral("Cotton wool"));
    const TimeText times(hindi, TimeZone::named("Asia/Kolkata").value());
    const TableText text(hindi, times, names);
    CHECK(text.cell(textColumn("stockItem"), cell("Oxytocin ampoules, in date")) == oxytocin);
    CHECK(text.cell(textColumn("names"), cell("Oxytocin ampoules, in date; Cotton wool"))
        == oxytocin + QStringLiteral("; Cotton wool"));
    CHECK(text.cell(textColumn("unit"), cell("Oxytocin ampoules, in date"))
        == QStringLiteral("Oxytocin ampoules, in date"));
}
