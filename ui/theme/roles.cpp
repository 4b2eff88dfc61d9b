// SPDX-License-Identifier: MIT
#include "ui/theme/roles.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace cradlepost {

Roles lightRoles()
{
    return {
        .paper = QColor(0xFA, 0xF8, 0xF4),
        .sheet = QColor(0xFF, 0xFF, 0xFF),
        .rail = QColor(0xF0, 0xEB, 0xE3),
        .ink = QColor(0x1D, 0x27, 0x33),
        .inkSoft = QColor(0x4A, 0x55, 0x63),
        .inkHint = QColor(0x5F, 0x68, 0x73),
        .inkFaint = QColor(0x98, 0x9E, 0xA6),
        .line = QColor(0xDD, 0xD8, 0xCE),
        .edge = QColor(0x80, 0x86, 0x8F),
        .accent = QColor(0x0F, 0x6B, 0x7A),
        .onAccent = QColor(0xFF, 0xFF, 0xFF),
        .accentWash = QColor(0xEB, 0xF4, 0xF4),
        .warning = QColor(0xA3, 0x30, 0x1A),
        .amber = QColor(0xB0, 0x73, 0x1A),
        .track = QColor(0xEF, 0xE6, 0xD8),
        .chosen = QColor(0x1D, 0x27, 0x33),
        .onChosen = QColor(0xFF, 0xFF, 0xFF),
        .onChosenSoft = QColor(0xC9, 0xCE, 0xD6),
        .barQuiet = QColor(0xAC, 0x88, 0x78),
    };
}

Roles darkRoles()
{
    return {
        .paper = QColor(0x15, 0x1A, 0x20),
        .sheet = QColor(0x1D, 0x24, 0x2C),
        .rail = QColor(0x0F, 0x13, 0x18),
        .ink = QColor(0xEC, 0xE8, 0xE0),
        .inkSoft = QColor(0xB7, 0xBE, 0xC7),
        .inkHint = QColor(0x9A, 0xA3, 0xAE),
        .inkFaint = QColor(0x66, 0x70, 0x7B),
        .line = QColor(0x34, 0x3D, 0x47),
        .edge = QColor(0x7A, 0x85, 0x91),
        .accent = QColor(0x5C, 0xBA, 0xC7),
        .onAccent = QColor(0x08, 0x16, 0x1A),
        .accentWash = QColor(0x1B, 0x32, 0x38),
        .warning = QColor(0xF2, 0x90, 0x7A),
        .amber = QColor(0xDD, 0xA2, 0x45),
        .track = QColor(0x3A, 0x34, 0x29),
        .chosen = QColor(0xEC, 0xE8, 0xE0),
        .onChosen = QColor(0x15, 0x1A, 0x20),
        .onChosenSoft = QColor(0x4A, 0x53, 0x60),
        .barQuiet = QColor(0xA0, 0x7D, 0x70),
    };
}

std::span<const ContrastPair> contrastPairs()
{
    using R = Roles;
    static constexpr ContrastPair pairs[] = {
        {"text on paper", &R::ink, &R::paper, 4.5},
        {"text on a sheet", &R::ink, &R::sheet, 4.5},
        {"current place on the rail", &R::ink, &R::rail, 4.5},
        {"text on the row one is at", &R::ink, &R::accentWash, 4.5},
        {"second line on paper", &R::inkSoft, &R::paper, 4.5},
        {"second line on a sheet", &R::inkSoft, &R::sheet, 4.5},
        {"place on the rail", &R::inkSoft, &R::rail, 4.5},
        {"second line on the row one is at", &R::inkSoft, &R::accentWash, 4.5},
        {"small print on paper", &R::inkHint, &R::paper, 4.5},
        {"small print on a sheet", &R::inkHint, &R::sheet, 4.5},
        {"key on the rail", &R::inkHint, &R::rail, 4.5},
        {"small print on the row one is at", &R::inkHint, &R::accentWash, 4.5},
        {"verdict and link on paper", &R::accent, &R::paper, 4.5},
        {"link on a sheet", &R::accent, &R::sheet, 4.5},
        {"gap in words on paper", &R::warning, &R::paper, 4.5},
        {"gap in words on a sheet", &R::warning, &R::sheet, 4.5},
        {"gap in words on the row one is at", &R::warning, &R::accentWash, 4.5},
        {"primary button, selected text", &R::onAccent, &R::accent, 4.5},
        {"chosen answer", &R::onChosen, &R::chosen, 4.5},
        {"key on the chosen answer", &R::onChosenSoft, &R::chosen, 4.5},
        {"focus ring on the rail", &R::accent, &R::rail, 3.0},
        {"met on the row one is at", &R::accent, &R::accentWash, 3.0},
        {"late on paper", &R::amber, &R::paper, 3.0},
        {"late on a sheet", &R::amber, &R::sheet, 3.0},
        {"late on the row one is at", &R::amber, &R::accentWash, 3.0},
        {"warming against what is to come", &R::amber, &R::track, 3.0},
        {"done against what is to come", &R::accent, &R::track, 3.0},
        {"edge of a control on paper", &R::edge, &R::paper, 3.0},
        {"edge of a control on a sheet", &R::edge, &R::sheet, 3.0},
        {"edge of a control on the row one is at", &R::edge, &R::accentWash, 3.0},
        {"quiet bar on a sheet", &R::barQuiet, &R::sheet, 3.0},
    };
    return pairs;
}

double relativeLuminance(const QColor& colour)
{
    const auto linear = [](double value) {
        return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF())
        + 0.0722 * linear(colour.blueF());
}

double contrastRatio(const QColor& one, const QColor& other)
{
    const auto [darker, lighter] = std::minmax({relativeLuminance(one), relativeLuminance(other)});
    return (lighter + 0.05) / (darker + 0.05);
}

}
