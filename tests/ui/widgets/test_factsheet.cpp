// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/factsheet.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {
Fact warmer()
{
    return {.title = QStringLiteral("Warmer"),
        .value = QStringLiteral("ready at 19:54"),
        .aside = QStringLiteral("in 12 min"),
        .progress = 0.6,
        .lines = {QStringLiteral("on 18 min of 30"), QStringLiteral("next birth about 20:30")}};
}
}

TEST_CASE("the aside stands behind the value where there is room, and below it where there is not")
{
    FactSheet sheet;
    sheet.setFact(warmer());
    const int wide = sheet.heightForWidth(500);
    const int narrow = sheet.heightForWidth(220);
    CHECK(narrow >= wide + 15);
}

TEST_CASE("what is warming is amber up to its share and mirrored with the window")
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const Scenery scenery(1.0, direction);
        FactSheet sheet;
        sheet.setFact(warmer());
        sheet.resize(332, sheet.heightForWidth(332));
        const QImage image = sheet.grab().toImage();
        const QRect leading = direction == Qt::LeftToRight ? QRect(16, 0, 150, image.height())
                                                           : QRect(332 - 166, 0, 150, image.height());
        const int amber = countOf(image, lightRoles().amber);
        CHECK(amber > 0.5 * 300 * 8);
        CHECK(amber < 0.65 * 300 * 10);
        CHECK(countOf(image.copy(leading), lightRoles().amber) > 0.7 * amber);
    }
}

TEST_CASE("a fact without progress has no bar")
{
    FactSheet sheet;
    Fact fact = warmer();
    fact.progress.reset();
    sheet.setFact(fact);
    sheet.resize(300, sheet.heightForWidth(300));
    CHECK(countOf(sheet.grab().toImage(), lightRoles().amber) == 0);
    CHECK(countOf(sheet.grab().toImage(), lightRoles().track) == 0);
}

TEST_CASE("a screen reader hears the fact with its company")
{
    FactSheet sheet;
    sheet.setFact(warmer());
    CHECK(sheet.accessibleName() == QStringLiteral("Warmer"));
    CHECK(sheet.accessibleDescription()
        == QStringLiteral("ready at 19:54, in 12 min, on 18 min of 30, next birth about 20:30"));
}
