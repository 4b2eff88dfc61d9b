// SPDX-License-Identifier: MIT
#include "core/store/failure.h"
#include "core/store/packedmonth.h"

#include <doctest/doctest.h>
#include <random>

using namespace cradlepost;

namespace {

/** Any month: odd times, far readings, amended and paper rounds. */
PackedMonth anyMonth(std::mt19937& random)
{
    const auto oneOf = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    PackedMonth month;
    Slot slot = slotOf(std::chrono::year(2026) / 10 / 1, 0);
    const int rounds = oneOf(100);
    for (int i = 0; i < rounds; ++i) {
        PackedRound round{.slot = slot += 1 + oneOf(3)};
        round.station = month.nameOf("station-" + std::to_string(oneOf(3)));
        round.seq = static_cast<std::int64_t>(random()) + (oneOf(9) == 0 ? 1LL << 52 : 0);
        round.checklist = month.nameOf(oneOf(2) == 0 ? "shift-readiness" : "");
        round.version = 1 + oneOf(300);
        for (int at = oneOf(90); at >= 0; --at)
            round.outcomes += "mmmmmmgnu"[oneOf(9)];
        round.state = static_cast<Readiness>(oneOf(3));
        round.met = oneOf(90);
        round.applicable = oneOf(90);
        round.index = oneOf(10'001);
        round.started = fromMs(static_cast<std::int64_t>(random()) * 1000);
        round.finished = round.started + std::chrono::milliseconds(oneOf(900'000) - 1000);
        round.recorded = round.finished + std::chrono::hours(oneOf(2) * oneOf(9000));
        round.fromPaper = oneOf(5) == 0;
        round.amended = oneOf(4) == 0 ? 1 + oneOf(9) : 0;
        if (round.amended > 0)
            round.amendedAt = fromMs(static_cast<std::int64_t>(random()));
        round.actor = month.nameOf("A. " + std::to_string(oneOf(5)));
        for (int n = oneOf(4); n > 0; --n)
            round.readings.push_back({.position = static_cast<std::size_t>(oneOf(static_cast<int>(round.outcomes.size()))),
                .value = {static_cast<std::int64_t>(random()) - (1LL << 31)}});
        month.rounds.push_back(std::move(round));
    }
    return month;
}

}

TEST_CASE("a month that was packed is unpacked as it was")
{
    std::mt19937 random(20261128);
    for (int i = 0; i < 300; ++i) {
        CAPTURE(i);
        const PackedMonth month = anyMonth(random);
        CHECK(unpackMonth(packMonth(month)) == month);
    }
}

TEST_CASE("the same rounds are packed to the same bytes, whatever names came before")
{
    std::mt19937 random(1);
    const PackedMonth month = anyMonth(random);
    REQUIRE(month.rounds.size() > 5);
    PackedMonth other = month;
    other.names = {"nobody", "left out"};
    for (PackedRound& round : other.rounds)
        for (std::size_t* name : {&round.actor, &round.checklist, &round.station})
            *name = other.nameOf(month.names[*name]);
    REQUIRE(other.names != month.names);
    CHECK(packMonth(other) == packMonth(month));
}

TEST_CASE("a month with an ordinary round a shift takes some forty bytes a round")
{
    PackedMonth month;
    for (int i = 0; i < 62; ++i)
        month.rounds.push_back({.slot = slotOf(addDays(std::chrono::year(2026) / 10 / 1, i / 2), i % 2),
            .station = month.nameOf("abcdefghijklmnop"),
            .seq = 7000 + 3 * i,
            .checklist = month.nameOf("shift-readiness"),
            .version = 3,
            .outcomes = std::string(30, 'm') + "g" + std::string(27, 'm'),
            .state = Readiness::ReadyWithGaps,
            .met = 57,
            .applicable = 58,
            .index = 9815,
            .started = fromMs(1'790'000'000'000 + 43'200'000LL * i),
            .finished = fromMs(1'790'000'700'000 + 43'200'000LL * i),
            .recorded = fromMs(1'790'000'702'000 + 43'200'000LL * i),
            .actor = month.nameOf("AB"),
            .readings = {{.position = 0, .value = {26'400}}, {.position = 20, .value = {80'000}}}});
    CHECK(packMonth(month).size() < 62 * 50);
}

TEST_CASE("older rounds are read without outcomes and readings where nobody asks for them")
{
    std::mt19937 random(2);
    const PackedMonth month = anyMonth(random);
    REQUIRE(month.rounds.size() > 5);
    const Slot wholeFrom = month.rounds[month.rounds.size() / 2].slot;
    PackedMonth expected = unpackMonth(packMonth(month));
    int left = 0;
    for (PackedRound& round : expected.rounds)
        if (round.slot < wholeFrom) {
            round.outcomes.clear();
            round.readings.clear();
            ++left;
        }
    CHECK(left > 0);
    CHECK(unpackMonth(packMonth(month), wholeFrom) == expected);
}

TEST_CASE("bytes that were changed or cut are refused as damaged, or still read as a month")
{
    std::mt19937 random(3);
    const std::vector<unsigned char> sound = packMonth(anyMonth(random));
    int refused = 0;
    const auto read = [&](const std::vector<unsigned char>& bytes) {
        const auto month = attempt([&] { return unpackMonth(bytes); });
        if (month)
            return true;
        CHECK(month.error().code == ErrorCode::Damaged);
        ++refused;
        return false;
    };
    for (std::size_t size = 0; size < sound.size(); ++size)
        REQUIRE_FALSE(read({sound.begin(), sound.begin() + static_cast<std::ptrdiff_t>(size)}));
    for (std::size_t at = 0; at < sound.size(); ++at)
        for (const int other : {0x00, 0x7F, 0x80, 0xFF}) {
            auto bytes = sound;
            bytes[at] = static_cast<unsigned char>(other);
            read(bytes);
        }
    auto longer = sound;
    longer.push_back(0);
    CHECK_FALSE(read(longer));
    CHECK(refused > static_cast<int>(sound.size()));
}
