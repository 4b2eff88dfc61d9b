// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/verdictbanner.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("the verdict is as large as it can be read from two metres")
{
    VerdictBanner banner;
    banner.setVerdict(VerdictState::NotReady, QStringLiteral("One **critical** gap."));
    banner.resize(700, banner.heightForWidth(700));
    CHECK(themeOf(banner).font(TextRole::Verdict).pixelSize() == 54);
    CHECK(banner.height() > 54 + 17);
    CHECK(banner.accessibleName() == QStringLiteral("Not ready"));
    CHECK(banner.accessibleDescription() == QStringLiteral("One critical gap."));
}

TEST_CASE("each state has its word and its colour")
{
    const Roles roles = lightRoles();
    const std::tuple<VerdictState, QString, QColor> states[]
        = {{VerdictState::NotReady, QStringLiteral("Not ready"), roles.warning},
            {VerdictState::ReadyWithGaps, QStringLiteral("Ready with gaps"), roles.ink},
            {VerdictState::Ready, QStringLiteral("Ready"), roles.accent},
            {VerdictState::NoRound, QStringLiteral("No round yet"), roles.inkSoft}};
    for (const auto& [state, word, colour] : states) {
        VerdictBanner banner;
        banner.setVerdict(state, {});
        banner.resize(700, banner.heightForWidth(700));
        CHECK(VerdictBanner::word(state) == word);
        CHECK(countOf(banner.grab().toImage(), colour) > 300);
    }
}

TEST_CASE("a long sentence and twice the text size wrap instead of being cut")
{
    const Scenery twice(2.0);
    VerdictBanner banner;
    banner.setVerdict(VerdictState::ReadyWithGaps,
        QStringLiteral(
            "One critical gap: **the warmer has been on for 18 of 30 minutes**. Two lesser gaps."));
    const int narrow = banner.minimumSizeHint().width();
    CHECK(narrow < 700);
    CHECK(banner.heightForWidth(narrow) > banner.heightForWidth(1100) + 54);
}
