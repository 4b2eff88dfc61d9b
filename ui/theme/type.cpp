// SPDX-License-Identifier: MIT
#include "ui/theme/type.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {
constexpr double usualSystemPixels = 13.0;

double held(double scale) { return std::clamp(scale, leastTextScale, mostTextScale); }

int designPixels(TextRole role)
{
    switch (role) {
    case TextRole::Small:
        return 13;
    case TextRole::Body:
        return 15;
    case TextRole::Lead:
        return 17;
    case TextRole::Title:
        return 24;
    case TextRole::Finding:
        return 40;
    case TextRole::Verdict:
        return 54;
    }
    return 15;
}

QFont::Weight fontWeight(TextWeight weight)
{
    return weight == TextWeight::SemiBold ? QFont::DemiBold : QFont::Normal;
}
}

QStringList fontFamilies()
{
    return {QStringLiteral("Inter"), QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Devanagari"),
        QStringLiteral("Noto Sans Arabic")};
}

int textPixels(TextRole role, double scale)
{
    return static_cast<int>(std::lround(designPixels(role) * held(scale)));
}

QFont textFont(TextRole role, TextWeight weight, double scale)
{
    QFont font;
    font.setFamilies(fontFamilies());
    font.setPixelSize(textPixels(role, scale));
    font.setWeight(fontWeight(weight));
    // Kerning moves letters of these sizes by less than a pixel, and shaping is half the price of a page's text.
    // Scripts that need shaping are shaped all the same.
    if (designPixels(role) < designPixels(TextRole::Title))
        font.setStyleStrategy(QFont::PreferNoShaping);
    return font;
}

HouseFonts houseFonts(double scale)
{
    HouseFonts fonts;
    std::size_t at = 0;
    for (const auto role : {TextRole::Small, TextRole::Body, TextRole::Lead, TextRole::Title,
             TextRole::Finding, TextRole::Verdict}) {
        for (const auto weight : {TextWeight::Regular, TextWeight::SemiBold})
            fonts[at++] = textFont(role, weight, scale);
    }
    return fonts;
}

const QFont& fontOf(const HouseFonts& fonts, TextRole role, TextWeight weight)
{
    return fonts[static_cast<std::size_t>(role) * 2 + static_cast<std::size_t>(weight)];
}

double systemTextScale(const QFont& systemFont, double dpi)
{
    const double pixels
        = systemFont.pixelSize() > 0 ? systemFont.pixelSize() : systemFont.pointSizeF() * dpi / 72.0;
    return held(std::round(pixels / usualSystemPixels * 20.0) / 20.0);
}

}
