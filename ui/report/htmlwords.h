// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace cradlepost {

/// Text that means itself in HTML, between tags and in quoted attributes; without control characters that
/// HTML refuses, line ends as <br>.
QString htmlText(const QString& text);
/// For a quoted attribute: line ends become blanks.
QString htmlAttribute(const QString& text);
/// htmlText with **words** in <strong>.
QString htmlMarked(const QString& marked);

}
