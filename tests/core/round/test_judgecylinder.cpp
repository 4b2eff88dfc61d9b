// SPDX-License-Identifier: MIT
#include "core/round/judge.h"

#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

// The factors are litres for one psi as the factor tables for US sizes print them: D 0.16, E 0.28, M 1.56,
// H 3.14 (article with factor table and size D example; cylinder guidance after 12VAC5-31-860, Virginia,
// 2010).
CylinderSize sized(const char* litresPerUnit, const char* residual)
{
    return {.id = "size",
        .name = {},
        .unit = "psi",
        .litresPerUnit = num(litresPerUnit),
        .residual = num(residual),
        .fullPressure = num("2500"),
        .source = {}};
}

struct Example
{
    const char* litresPerUnit;
    const char* residual;
    const char* gauge;
    const char* flow;
    std::int64_t minutes;
    const char* source;
};

void check(const std::vector<Example>& examples)
{
    for (const Example& e : examples) {
        CAPTURE(e.source);
        CAPTURE(e.gauge);
        CHECK(cylinderMinutes(sized(e.litresPerUnit, e.residual), num(e.gauge), num(e.flow)) == e.minutes);
    }
}

}

TEST_CASE("cylinder minutes agree with the worked examples of the books")
{
    check({{"0.16", "200", "2000", "0.5", 576, "article with factor table and size D example"},
        {"0.28", "0", "1900", "4", 133, "respiratory-care exam review, size E"},
        {"3.14", "0", "600", "4", 471,
            "Laboratory Exercises for Competency in Respiratory Care, 3rd ed., ch. 9: size H, 7 h 50 min"},
        {"0.28", "0", "2200", "2", 308, "how-to article with size E and H examples"},
        {"3", "0", "1100", "5", 660, "how-to article with size E and H examples, rounded factor 3"},
        // By contents: 660 L at 1900 psi are 0.347 L a psi; the book rounds 28.9 down.
        {"0.347", "0", "500", "6", 28, "after Nagelhout and Zaglaniczy, Nurse Anesthesia, 2nd ed. 2001"},
        // 280 L left, 5 L/min with a safety multiplier of 0.8 is 6.25 L/min: 44.8, printed as 45.
        {"0.28", "0", "1000", "6.25", 44, "anaesthesia teaching page on cylinders, size E"},
        {"0.28", "0", "1000", "1", 280, "anaesthesia teaching page on cylinders, size E, litres left"}});
}

TEST_CASE("cylinder minutes agree with values computed by hand")
{
    check({{"10", "10", "100", "5", 180, "computed: 10 L of water volume, 90 bar above the residual, 900 L"},
        {"2.41", "200", "2000", "5", 867, "computed: size G, 867.6"},
        {"3.14", "200", "2200", "10", 628, "computed: size H"}});
}

TEST_CASE("the lowest gauge for a time is enough, and a hair below it is not")
{
    // Cylinder guidance after 12VAC5-31-860, Virginia, 2010, prints the gauges rounded up for 10 L/min and
    // 200 psi left in the cylinder: D 1150 and E 750 for 15 min, H 300 for 30 min. The exact ones are
    // computed.
    check({{"0.16", "200", "1150", "10", 15, "published, D"}, {"0.16", "200", "1137.5", "10", 15, "exact, D"},
        {"0.16", "200", "1137.499", "10", 14, "below, D"}, {"0.28", "200", "750", "10", 15, "published, E"},
        {"0.28", "200", "735.715", "10", 15, "exact 735.7143 rounded up, E"},
        {"0.28", "200", "735.714", "10", 14, "exact rounded down, E"},
        {"3.14", "200", "300", "10", 31, "published, H"},
        {"3.14", "200", "295.542", "10", 30, "exact 295.5414 rounded up, H"},
        {"3.14", "200", "295.541", "10", 29, "exact rounded down, H"}});
    // The same source prints 392 for M and 30 min, which is rounded to the nearest: 29.95 min, and so one
    // short.
    check(
        {{"1.56", "200", "392", "10", 29, "published, M"}, {"1.56", "200", "393", "10", 30, "rounded up, M"},
            {"1.56", "200", "392.308", "10", 30, "exact 392.3077 rounded up, M"},
            {"1.56", "200", "392.307", "10", 29, "exact rounded down, M"}});
}

TEST_CASE("minutes are rounded down without a rounding error on the way")
{
    // 0.1 x 3 / 0.3 is 1 and not 0.99; binary fractions get such cases wrong.
    check({{"0.1", "0", "3", "0.3", 1, "exact"}, {"0.1", "0", "2.999", "0.3", 0, "just below"},
        {"0.7", "0", "0.1", "0.07", 1, "exact"}, {"1.1", "0", "1.1", "1.21", 1, "exact"},
        {"0.28", "200", "200", "5", 0, "at the residual"},
        {"0.28", "200", "199.999", "5", 0, "below the residual"}, {"0.28", "200", "0", "5", 0, "empty"},
        {"0.28", "200", "-1", "5", 0, "below zero"}, {"0.28", "0", "2000", "0", 0, "no flow is no answer"}});
}

TEST_CASE("minutes agree with a search for the largest time the gas lasts")
{
    Dice dice(4711);
    for (int i = 0; i < 2000; ++i) {
        CylinderSize size = sized("1", "0");
        size.litresPerUnit = {1 + dice.upTo(20000)};
        size.residual = {dice.upTo(300000)};
        const Decimal gauge{dice.upTo(2500000)};
        const Decimal flow{1000 + dice.upTo(59000)};
        const std::int64_t minutes = cylinderMinutes(size, gauge, flow);
        const std::int64_t gas = // in millionths of a litre
            std::max<std::int64_t>(gauge.thousandths - size.residual.thousandths, 0)
            * size.litresPerUnit.thousandths;
        REQUIRE(minutes * flow.thousandths * 1000 <= gas);
        REQUIRE((minutes + 1) * flow.thousandths * 1000 > gas);
    }
}

TEST_CASE("the largest cylinder that a document may name does not overflow the minutes")
{
    // The reader takes up to 1000 L for one unit and 100 000 units when full; a gauge may stand a tenth above.
    CHECK(cylinderMinutes(sized("1000", "0"), num("110000"), num("0.001")) == 110'000'000'000);
}

TEST_CASE("a cylinder is met at its minutes and says how many are left below them")
{
    const JudgeContext context{.reference = at(24, 8), .lastDay = date("2026-11-24"), .limits = {}};
    const auto judged = [&](const char* gauge) {
        return judge(sampleItem("oxygen"), CylinderRead{num(gauge), "ten-litre", num("5")}, context);
    };
    // 10 L/bar, 10 bar left in it, 5 L/min: 120 min need 70 bar.
    CHECK(judged("70").outcome == Outcome::Met);
    CHECK(judged("70.001").outcome == Outcome::Met);
    const Judgement low = judged("69.999");
    CHECK(low.outcome == Outcome::Gap);
    REQUIRE(low.reason.has_value());
    CHECK(low.reason->code == ReasonCode::CylinderLow);
    CHECK(low.reason->value == "119");
    CHECK(low.reason->limit == "120");
    CHECK(judged("5").reason->value == "0");
}
