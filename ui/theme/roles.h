// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <span>

namespace cradlepost {

/// What a colour is for. Widgets ask for a role, never for a colour.
struct Roles
{
    QColor paper; ///< behind everything
    QColor sheet; ///< what belongs together lies on it
    QColor rail; ///< the strip of places at the side
    QColor ink; ///< text
    QColor inkSoft; ///< titles of sheets, second lines
    QColor inkHint; ///< keys, small print, marks of what was not checked
    QColor inkFaint; ///< disabled text only (exempt from contrast, WCAG 2.2 1.4.3)
    QColor line; ///< borders of sheets, lines between rows: decoration
    QColor edge; ///< borders that show where a control is
    QColor accent; ///< the working colour: met, primary, focus
    QColor onAccent; ///< text on accent
    QColor accentWash; ///< the row one is at
    QColor warning; ///< gaps
    QColor amber; ///< only what is warming or late
    QColor track; ///< the part of a bar that is still to come
    QColor chosen; ///< fill of the chosen answer
    QColor onChosen; ///< text on chosen
    QColor onChosenSoft; ///< key hint on chosen
    QColor barQuiet; ///< bars of a chart that are not the finding
};

Roles lightRoles();
Roles darkRoles(); ///< for the night shift

/// Two roles that meet on screen and the ratio they must reach.
struct ContrastPair
{
    const char* use;
    QColor Roles::*front;
    QColor Roles::*back;
    double least; ///< 4.5 for text (WCAG 2.2, 1.4.3), 3 for marks and edges of controls (1.4.11)
};

/// Every pair in use; a pair that is not listed here must not be painted.
std::span<const ContrastPair> contrastPairs();

/// Relative luminance, 0 to 1. Source: WCAG 2.2, definition of "relative luminance" (W3C, 2023).
double relativeLuminance(const QColor& colour);

/// Contrast ratio, 1 to 21, whichever is the lighter. Source: WCAG 2.2, definition of "contrast ratio".
double contrastRatio(const QColor& one, const QColor& other);

}
