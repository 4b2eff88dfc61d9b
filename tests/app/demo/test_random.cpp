// SPDX-License-Identifier: MIT
#include "app/demo/random.h"

#include <cmath>
#include <doctest/doctest.h>

using cradlepost::demo::Random;

TEST_CASE("the stream is SplitMix64: the published first values of seed 1234567")
{
    Random random(1234567);
    for (const std::uint64_t expected : {6457827717110365317U, 3203168211198807973U, 9817491932198370423U,
             4593380528125082431U, 16408922859458223821U})
        CHECK(random.next() == expected);
}

TEST_CASE("streams with names differ, and each is the same again")
{
    CHECK(Random::named("a").next() == Random::named("a").next());
    CHECK(Random::named("a").next() != Random::named("b").next());
}

TEST_CASE("numbers stay inside their bounds and spread over them")
{
    Random random = Random::named("bounds");
    int ends = 0;
    double sum = 0;
    double squares = 0;
    constexpr int n = 20000;
    for (int i = 0; i < n; ++i) {
        const int whole = random.between(-2, 2);
        REQUIRE(whole >= -2);
        REQUIRE(whole <= 2);
        ends += whole == -2 || whole == 2 ? 1 : 0;
        const double bell = random.bell(3);
        REQUIRE(std::abs(bell) < 10.5);
        sum += bell;
        squares += bell * bell;
    }
    CHECK(ends == doctest::Approx(n * 0.4).epsilon(0.05));
    CHECK(std::abs(sum / n) < 0.1);
    CHECK(std::sqrt(squares / n) == doctest::Approx(3).epsilon(0.03));
}
