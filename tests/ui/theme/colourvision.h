// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <QColor>

/// How a colour looks to a reader without one of the three kinds of cones.
namespace colourvision {

using Linear = std::array<double, 3>;
using Matrix = std::array<Linear, 3>;

inline double decoded(double value)
{
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

inline double encoded(double value)
{
    const double held = std::clamp(value, 0.0, 1.0);
    return held <= 0.0031308 ? held * 12.92 : 1.055 * std::pow(held, 1.0 / 2.4) - 0.055;
}

inline QColor seenThrough(const Matrix& matrix, const Linear& colour)
{
    Linear seen{};
    for (std::size_t row = 0; row < 3; ++row) {
        for (std::size_t column = 0; column < 3; ++column)
            seen[row] += matrix[row][column] * colour[column];
    }
    return QColor::fromRgbF(static_cast<float>(encoded(seen[0])), static_cast<float>(encoded(seen[1])),
        static_cast<float>(encoded(seen[2])));
}

inline Linear linear(const QColor& colour)
{
    return {decoded(colour.redF()), decoded(colour.greenF()), decoded(colour.blueF())};
}

// Viénot, Brettel and Mollon 1999, "Digital video colourmaps for checking the legibility of displays by
// dichromats", Color Research and Application 24; worked out for linear sRGB.
inline QColor protanopia(const QColor& colour)
{
    return seenThrough(
        {{{0.11238, 0.88762, 0.0}, {0.11238, 0.88762, 0.0}, {0.00401, -0.00401, 1.0}}}, linear(colour));
}

inline QColor deuteranopia(const QColor& colour)
{
    return seenThrough(
        {{{0.29275, 0.70725, 0.0}, {0.29275, 0.70725, 0.0}, {-0.02234, 0.02234, 1.0}}}, linear(colour));
}

// Brettel, Viénot and Mollon 1997, "Computerized simulation of color appearance for dichromats", Journal of
// the Optical Society of America A 14; two half planes, worked out for linear sRGB.
inline QColor tritanopia(const QColor& colour)
{
    const Linear rgb = linear(colour);
    const double side = 0.03901 * rgb[0] - 0.02788 * rgb[1] - 0.01113 * rgb[2];
    const Matrix one{
        {{1.01277, 0.13548, -0.14826}, {-0.01243, 0.86812, 0.14431}, {0.07589, 0.80500, 0.11911}}};
    const Matrix other{
        {{0.93678, 0.18979, -0.12657}, {0.06154, 0.81526, 0.12320}, {-0.37562, 1.12767, 0.24796}}};
    return seenThrough(side >= 0 ? one : other, rgb);
}

}
