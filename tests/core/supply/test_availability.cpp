// SPDX-License-Identifier: MIT
#include "core/supply/availability.h"

#include "shelf.h"
#include "tests/core/stats/near.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using std::chrono::hours;
using State = EquipmentState;

namespace {

EquipmentStanding standing(std::vector<StateSpan> spans)
{
    return {.device = {.id = "w"}, .spans = std::move(spans)};
}

StateSpan span(State state, std::string_view from, MoveReason reason = MoveReason::NotKnown)
{
    return {.state = state, .reason = reason, .from = at(from)};
}

const Instant monthBegins = at("2026-11-01 00:00");
const Instant monthEnds = at("2026-12-01 00:00");

/** Two failures in November: one day and three days out. */
EquipmentStanding troubled()
{
    return standing({span(State::InUse, "2026-10-01 00:00"),
        span(State::OutForRepair, "2026-11-10 00:00", MoveReason::Broken),
        span(State::InUse, "2026-11-11 00:00", MoveReason::Repaired),
        span(State::OutForRepair, "2026-11-20 00:00", MoveReason::FailedTest),
        span(State::Spare, "2026-11-23 00:00", MoveReason::Repaired)});
}

}

TEST_CASE("availability and times between failures come from the states of the record")
{
    // Computed by hand: 30 days, 4 of them out; 26 days up over two failures; 4 days of repair over two
    // repairs.
    const DeviceAvailability out = availabilityOf(troubled(), monthBegins, monthEnds);
    CHECK(out.up == hours(26 * 24));
    CHECK(out.down == hours(4 * 24));
    CHECK(out.failures == 2);
    CHECK(out.share().value() == stats::near(26.0 / 30));
    CHECK(out.meanTimeBetweenFailures() == hours(13 * 24));
    CHECK(out.meanTimeToRepair() == hours(2 * 24));
    // Terms as IEC 60050-192 (from memory): mean up time over mean up and down time is the same share.
    const double between = static_cast<double>(out.meanTimeBetweenFailures()->count());
    const double repair = static_cast<double>(out.meanTimeToRepair()->count());
    CHECK(between / (between + repair) == stats::near(out.share().value()));
}

TEST_CASE("a device that never failed has no time between failures")
{
    const auto out
        = availabilityOf(standing({span(State::InUse, "2026-11-16 00:00")}), monthBegins, monthEnds);
    CHECK(out.up == hours(15 * 24));
    CHECK(out.share() == 1.0);
    CHECK_FALSE(out.meanTimeBetweenFailures().has_value());
    CHECK_FALSE(out.meanTimeToRepair().has_value());
}

TEST_CASE("planned service is time out, but no failure")
{
    const auto out = availabilityOf(standing({span(State::InUse, "2026-10-01 00:00"),
                                        span(State::OutForRepair, "2026-11-10 00:00", MoveReason::Service),
                                        span(State::InUse, "2026-11-13 00:00", MoveReason::Repaired)}),
        monthBegins, monthEnds);
    CHECK(out.down == hours(72));
    CHECK(out.failures == 0);
    CHECK(out.repairs == 0);
}

TEST_CASE("time before a device came and after it was retired counts on neither side")
{
    const auto out = availabilityOf(
        standing({span(State::InUse, "2026-11-10 00:00"), span(State::Retired, "2026-11-20 00:00")}),
        monthBegins, monthEnds);
    CHECK(out.up == hours(240));
    CHECK(out.down == hours(0));
    const auto never
        = availabilityOf(standing({span(State::InUse, "2026-12-10 00:00")}), monthBegins, monthEnds);
    CHECK_FALSE(never.share().has_value());
}

TEST_CASE("a failure still out counts, its repair does not yet")
{
    const auto out = availabilityOf(standing({span(State::InUse, "2026-11-01 00:00"),
                                        span(State::OutForRepair, "2026-11-30 00:00", MoveReason::Broken)}),
        monthBegins, monthEnds);
    CHECK(out.failures == 1);
    CHECK(out.repairs == 0);
    CHECK(out.down == hours(24));
}

TEST_CASE("parts of a stretch add up to the whole")
{
    DeviceAvailability sum = availabilityOf(troubled(), monthBegins, at("2026-11-21 00:00"));
    sum += availabilityOf(troubled(), at("2026-11-21 00:00"), monthEnds);
    CHECK(sum == availabilityOf(troubled(), monthBegins, monthEnds));
}
