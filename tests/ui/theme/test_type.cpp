// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "ui/theme/type.h"

#include <doctest/doctest.h>
#include <QFontInfo>

using namespace cradlepost;

TEST_CASE("the type scale is 13, 15, 17, 24, 40 and 54 pixels and doubles")
{
    const std::pair<TextRole, int> scale[] = {{TextRole::Small, 13}, {TextRole::Body, 15},
        {TextRole::Lead, 17}, {TextRole::Title, 24}, {TextRole::Finding, 40}, {TextRole::Verdict, 54}};
    for (const auto& [role, pixels] : scale) {
        CHECK(textPixels(role, 1.0) == pixels);
        CHECK(textPixels(role, 2.0) == 2 * pixels);
    }
    CHECK(textPixels(TextRole::Body, 1.5) == 23);
}

TEST_CASE("the text size is held between once and twice")
{
    CHECK(textPixels(TextRole::Body, 0.5) == 15);
    CHECK(textPixels(TextRole::Body, 3.0) == 30);
}

TEST_CASE("a house font is found by its role and weight")
{
    const HouseFonts fonts = houseFonts(1.5);
    for (const auto role : {TextRole::Small, TextRole::Lead, TextRole::Verdict}) {
        for (const auto weight : {TextWeight::Regular, TextWeight::SemiBold})
            CHECK(fontOf(fonts, role, weight) == textFont(role, weight, 1.5));
    }
    CHECK(textFont(TextRole::Body, TextWeight::SemiBold, 1.0).weight() == QFont::DemiBold);
}

TEST_CASE("fonts for Devanagari and Arabic stand behind the Latin one")
{
    const QStringList families = textFont(TextRole::Body, TextWeight::Regular, 1.0).families();
    CHECK(families.front() == QStringLiteral("Inter"));
    CHECK(families.contains(QStringLiteral("Noto Sans Devanagari")));
    CHECK(families.contains(QStringLiteral("Noto Sans Arabic")));
}

TEST_CASE("the desktop's font decides how large text begins")
{
    QFont font;
    font.setPixelSize(13);
    CHECK(systemTextScale(font, 96) == doctest::Approx(1.0));
    font.setPixelSize(20);
    CHECK(systemTextScale(font, 96) == doctest::Approx(1.55));
    font.setPixelSize(60);
    CHECK(systemTextScale(font, 96) == doctest::Approx(2.0));
    font.setPointSizeF(9); // 12 px at 96 dots an inch
    CHECK(systemTextScale(font, 96) == doctest::Approx(1.0));
    CHECK(systemTextScale(font, 144) == doctest::Approx(1.4)); // 18 px
}
