// SPDX-License-Identifier: MIT
#include "core/review/share.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a share of nothing has neither value nor interval")
{
    const Share none = shareOf({});
    CHECK_FALSE(none.value());
    CHECK_FALSE(none.interval);
}

TEST_CASE("a share comes with its Wilson interval")
{
    // 81 of 263: 0.2553 to 0.3662 (Newcombe RG (1998) Statistics in Medicine 17:857-872, Table I, method 3).
    const Share share = shareOf({.x = 81, .n = 263});
    CHECK(*share.value() == doctest::Approx(81.0 / 263));
    CHECK(share.interval->low == doctest::Approx(0.2553).epsilon(0.0002));
    CHECK(share.interval->high == doctest::Approx(0.3662).epsilon(0.0002));
}
