// SPDX-License-Identifier: MIT
#include "core/exchange/papertemplate.h"

#include "core/base/csv.h"
#include "core/checklist/reader.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("the template names every item once, and the guide explains every column of it")
{
    const Checklist checklist = builtInChecklist(RoundKind::Shift).value();
    const auto sheet = readCsvLines(paperTemplate(checklist)).value();
    const auto guide = readCsv(paperGuide(checklist, "hi")).value();
    REQUIRE(sheet.size() == 1);
    CHECK(sheet[0].size() == 4 + checklist.itemCount());
    REQUIRE(guide.rows.size() == sheet[0].size());
    for (std::size_t i = 0; i < guide.rows.size(); ++i) {
        CHECK(guide.rows[i][0].text == sheet[0][i].text);
        CHECK_FALSE(guide.rows[i].back().text.empty());
    }
}
