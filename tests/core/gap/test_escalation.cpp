// SPDX-License-Identifier: MIT
#include "core/gap/escalation.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using std::chrono::hours;

namespace {

const Instant found = std::chrono::sys_days(std::chrono::year(2026) / 11 / 24);

Gap due(hours after)
{
    Gap gap{.unit = "u", .item = "i"};
    gap.openedAt = found;
    gap.due = found + after;
    return gap;
}

std::string toAt(const Gap& gap, hours after)
{
    const Escalation standing = escalationOf(gap, found + after);
    return standing.now ? codeName(*standing.now) : "";
}

}

TEST_CASE("a gap goes up at half of its time, when it is due, half as late again, and twice as late")
{
    const Gap gap = due(hours(24));
    CHECK(toAt(gap, hours(11)).empty());
    CHECK(toAt(gap, hours(12)) == "owner");
    CHECK(toAt(gap, hours(23)) == "owner");
    CHECK(toAt(gap, hours(24)) == "in-charge");
    CHECK(toAt(gap, hours(36)) == "quality-officer");
    CHECK(toAt(gap, hours(48)) == "district");
    CHECK(toAt(gap, hours(4800)) == "district");
}

TEST_CASE("the next level and its moment are told, until there is none")
{
    const Gap gap = due(hours(24));
    const Escalation early = escalationOf(gap, found);
    CHECK(early.next == EscalationTo::Owner);
    CHECK(early.nextAt == found + hours(12));
    CHECK(escalationOf(gap, found + hours(24)).nextAt == found + hours(36));
    CHECK_FALSE(escalationOf(gap, found + hours(48)).next.has_value());
}

TEST_CASE("a gap that is closed or said to be mended goes nowhere")
{
    Gap gap = due(hours(24));
    gap.mendedBy = "AB";
    CHECK(escalationOf(gap, found + hours(48)) == Escalation{});
    gap.mendedBy.clear();
    gap.closedAt = found + hours(2);
    CHECK(escalationOf(gap, found + hours(48)) == Escalation{});
}

TEST_CASE("a time that is shorter than an hour counts as one, so that nobody is told at once")
{
    const Gap gap = due(hours(0));
    CHECK(toAt(gap, hours(0)).empty());
    CHECK(toAt(gap, hours(1)) == "in-charge");
    CHECK(toAt(gap, hours(2)) == "district");
}

TEST_CASE("a site gives its own levels")
{
    const std::vector levels{EscalationLevel{EscalationTo::District, 300}};
    const Gap gap = due(hours(24));
    CHECK_FALSE(escalationOf(gap, found + hours(71), levels).now.has_value());
    CHECK(escalationOf(gap, found + hours(72), levels).now == EscalationTo::District);
}
