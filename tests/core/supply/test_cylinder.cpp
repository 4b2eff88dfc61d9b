// SPDX-License-Identifier: MIT
#include "core/supply/cylinder.h"

#include "core/round/judge.h"
#include "shelf.h"
#include "tests/core/stats/random.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using std::chrono::minutes;

namespace {

CylinderSize sized(const char* litresPerUnit, const char* residual)
{
    return {.id = "size",
        .unit = "psi",
        .litresPerUnit = num(litresPerUnit),
        .residual = num(residual),
        .fullPressure = num("2200")};
}

Decimal lowest(const char* litresPerUnit, int wanted, const char* division = "0")
{
    return upToMark(
        lowestGauge(sized(litresPerUnit, "200"), minutes(wanted), num("10")).value(), num(division));
}

}

TEST_CASE("the lowest gauge for a time agrees with the published ones")
{
    // Cylinder guidance after 12VAC5-31-860, Virginia, 2010: 10 L/min and 200 psi left; D 1150 and E 750 for
    // 15 min, H 300 for 30 min, printed to the next mark. Exact ones computed.
    CHECK(lowest("0.16", 15) == num("1137.5"));
    CHECK(lowest("0.28", 15) == num("735.715"));
    CHECK(lowest("0.16", 15, "50") == num("1150"));
    CHECK(lowest("0.28", 15, "50") == num("750"));
    CHECK(lowest("3.14", 30) == num("295.542"));
    CHECK(lowest("3.14", 30, "50") == num("300"));
    // The source prints 392 for M and 30 min, which is one minute short: up, never to the nearest.
    CHECK(lowest("1.56", 30) == num("392.308"));
    CHECK(lowest("1.56", 30, "1") == num("393"));
}

TEST_CASE("the lowest gauge gives the wanted minutes on a round, and a hair less does not")
{
    stats::Dice dice(8);
    for (int run = 0; run < 2000; ++run) {
        CylinderSize size = sized("1", "0");
        size.litresPerUnit = {dice.whole(1, 20000)};
        size.residual = {dice.whole(0, 300000)};
        const Decimal flow{dice.whole(1, 15000)};
        const std::int64_t wanted = dice.whole(1, 600);
        const Decimal gauge = lowestGauge(size, minutes(wanted), flow).value();
        REQUIRE(cylinderMinutes(size, gauge, flow) >= wanted);
        REQUIRE(cylinderMinutes(size, {gauge.thousandths - 1}, flow) < wanted);
    }
}

TEST_CASE("no time needs no more than the residual, and nonsense is refused")
{
    CHECK(lowestGauge(sized("0.28", "200"), minutes(0), num("10")).value() == num("200"));
    CHECK_FALSE(lowestGauge(sized("0.28", "200"), minutes(-1), num("10")).has_value());
    CHECK_FALSE(lowestGauge(sized("0.28", "200"), minutes(10), num("0")).has_value());
    CHECK_FALSE(lowestGauge(sized("0.28", "200"), minutes(10), num("1001")).has_value());
    CHECK_FALSE(lowestGauge(sized("0", "200"), minutes(10), num("10")).has_value());
    CHECK_FALSE(lowestGauge(sized("0.28", "200"), std::chrono::hours(24 * 400), num("10")).has_value());
    CHECK(upToMark(num("-3"), num("50")) == num("-3"));
    CHECK(upToMark(num("100"), num("50")) == num("100"));
    CHECK(upToMark(num("100.001"), num("50")) == num("150"));
}

TEST_CASE("pressures convert by the exact definitions of their units")
{
    // Computed from 1 lb = 0.45359237 kg, 1 in = 0.0254 m and 9.80665 m/s2: 1 bar = 14.5038 psi, 1 kgf/cm2 =
    // 0.980665 bar.
    using enum PressureUnit;
    CHECK(convertPressure(num("1"), Bar, Psi) == num("14.504"));
    CHECK(convertPressure(num("1000"), Bar, Psi) == num("14503.774"));
    CHECK(convertPressure(num("200"), Psi, Bar) == num("13.79"));
    CHECK(convertPressure(num("150"), KilogramForce, Bar) == num("147.1"));
    CHECK(convertPressure(num("1"), Megapascal, Bar) == num("10"));
    CHECK(convertPressure(num("137"), Bar, Kilopascal) == num("13700"));
    CHECK(convertPressure(num("12.345"), Psi, Psi) == num("12.345"));
    CHECK(convertPressure(num("-1"), Bar, Kilopascal) == num("-100"));
}

TEST_CASE("a pressure converted there and back is the same to a tenth")
{
    stats::Dice dice(12);
    for (int run = 0; run < 1000; ++run) {
        const Decimal psi{dice.whole(0, 3'000'000)};
        const Decimal bar = convertPressure(psi, PressureUnit::Psi, PressureUnit::Bar);
        const Decimal back = convertPressure(bar, PressureUnit::Bar, PressureUnit::Psi);
        REQUIRE(std::abs(back.thousandths - psi.thousandths) <= 8); // half a thousandth of a bar
    }
}

TEST_CASE("codes of the units read back")
{
    for (int i = 0; i < 5; ++i)
        CHECK(pressureUnitFromCode(codeName(static_cast<PressureUnit>(i))) == static_cast<PressureUnit>(i));
    CHECK_FALSE(pressureUnitFromCode("atm").has_value());
}
