// SPDX-License-Identifier: MIT
#pragma once

#include "ui/report/strip.h"
#include "ui/theme/theme.h"

#include <QString>

namespace cradlepost {

class Paper;

/// How a text is set. The paper must outlive the strips.
struct TextClothes
{
    TextRole role = TextRole::Body;
    TextWeight weight = TextWeight::Regular;
    QColor Roles::*colour = &Roles::ink;
    int gap = 0;
    bool keepsNext = false;
    bool wide = false; ///< over the whole page: where it has to fit on one
};

/// A paragraph: one strip, or several when it is longer than a page. None when the text is empty.
void appendText(
    std::vector<Strip>& strips, const Paper& paper, const QString& text, const TextClothes& clothes);

}
