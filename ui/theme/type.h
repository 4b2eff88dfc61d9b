// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <QFont>
#include <QStringList>

namespace cradlepost {

/// The six sizes of the house, in pixels at text size 1: 13, 15, 17, 24, 40, 54.
enum class TextRole { Small, Body, Lead, Title, Finding, Verdict };

enum class TextWeight { Regular, SemiBold };

/// Text may grow to twice its size (WCAG 2.2, 1.4.4) and does not shrink below the design.
inline constexpr double leastTextScale = 1.0;
inline constexpr double mostTextScale = 2.0;

/// Families in the order in which a glyph is looked for.
QStringList fontFamilies();

/// Pixels of a role; `scale` is held between leastTextScale and mostTextScale.
int textPixels(TextRole role, double scale);

QFont textFont(TextRole role, TextWeight weight, double scale);

/// Every role in every weight, made once: a font that is copied keeps what Qt has loaded for it, a font
/// that is made anew is looked up again.
using HouseFonts = std::array<QFont, 12>;
HouseFonts houseFonts(double scale);
const QFont& fontOf(const HouseFonts& fonts, TextRole role, TextWeight weight);

/// How much larger the desktop's own font is than the usual 13 px, in steps of 0.05, held to 1..2.
/// `dpi` is the logical resolution that turns its points into pixels.
double systemTextScale(const QFont& systemFont, double dpi);

}
