// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace cradlepost {

/// The one style sheet of a report; `light` and `dark` are variables that its drawings use besides.
QString htmlStyle(const QString& light, const QString& dark);

}
