// SPDX-License-Identifier: MIT
#pragma once

#include "tests/ui/charts/samplecharts.h"

class QWidget;

namespace cradlepost {

inline constexpr int chartPageCount = 3;

/// Some of the sample charts as they lie on a page, `page` from 0.
QWidget* chartPage(int page, test::Wording wording);

}
