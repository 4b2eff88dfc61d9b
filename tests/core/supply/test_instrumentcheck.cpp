// SPDX-License-Identifier: MIT
#include "core/supply/instrumentcheck.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a scale is good within one division of a known weight")
{
    // Daily check with a known weight, difference at most 10 g: common practice, no source.
    const auto verdict = [](int read) { return judgeScale({.known = 2000, .read = read}).verdict; };
    CHECK(verdict(2000) == InstrumentVerdict::Good);
    CHECK(verdict(2010) == InstrumentVerdict::Good);
    CHECK(verdict(1990) == InstrumentVerdict::Good);
    CHECK(verdict(2011) == InstrumentVerdict::Off);
    CHECK(verdict(1989) == InstrumentVerdict::Off);
    CHECK(judgeScale({.known = 2000, .read = 1989}).difference == num("-11"));
    CHECK(judgeScale({.known = 2000, .read = 2006}, 5).verdict == InstrumentVerdict::Off);
}

TEST_CASE("a thermometer is good within its limit of a reference")
{
    const ThermometerChecked check{.reference = num("25.0"), .read = num("26.0")};
    CHECK(judgeThermometer(check).verdict == InstrumentVerdict::Good);
    CHECK(judgeThermometer({.reference = num("25.0"), .read = num("26.001")}).verdict
        == InstrumentVerdict::Off);
    CHECK(
        judgeThermometer({.reference = num("25.0"), .read = num("23.9")}).verdict == InstrumentVerdict::Off);
    CHECK(judgeThermometer(check).difference == num("1"));
    // Electronic body thermometer, 0.1 degrees C: EN 12470-3:2000 (from memory).
    CHECK(judgeThermometer({.reference = num("37.0"), .read = num("37.1")}, bodyThermometerLimit).verdict
        == InstrumentVerdict::Good);
    CHECK(judgeThermometer({.reference = num("37.0"), .read = num("37.2")}, bodyThermometerLimit).verdict
        == InstrumentVerdict::Off);
}
