// SPDX-License-Identifier: MIT
#pragma once

#include <doctest/doctest.h>
#include <QString>

namespace doctest {

/// So that a failed check shows the text instead of {?}.
template <> struct StringMaker<QString>
{
    static String convert(const QString& text) { return text.toUtf8().constData(); }
};

}
