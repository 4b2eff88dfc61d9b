// SPDX-License-Identifier: MIT
#include "app/demo/lists.h"
#include "app/demo/thing.h"
#include "core/round/judge.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::demo;
using std::chrono::hours;

namespace {

const Date first = std::chrono::year(2026) / 3 / 2;
constexpr int shifts = 150;

/** How often each of `shifts` shifts a thing of the item is seen as a gap. */
int gapsSeen(const Item& item, const UnitPlan& plan, bool faulty)
{
    Random random = Random::named(item.id);
    const auto thing = makeThing(item, plan, random, first);
    int gaps = 0;
    for (int i = 0; i < shifts; ++i) {
        const Instant begin = std::chrono::sys_days(first) + hours(8) * i;
        const Look look{.at = begin, .day = addDays(first, i / 3)};
        if (faulty)
            thing->fail(random, look.day);
        thing->pass(random, look, 0);
        if (i % 2 == 0)
            thing->use(random, look.day);
        const Answer answer = thing->seen({.at = begin + hours(1), .day = look.day}, random);
        REQUIRE(checkAnswer(item, answer));
        const JudgeContext context{
            .reference = begin + hours(1), .lastDay = addDays(look.day, 1), .limits = plan.limits};
        gaps += judge(item, answer, context).outcome == Outcome::Gap ? 1 : 0;
        if (faulty)
            thing->mend(random, look.day);
    }
    return gaps;
}

}

TEST_CASE("a thing in order is met and a faulty one is a gap, but for the odd reading")
{
    const Checklist checklist = Lists::builtIn().value().shift.checklist;
    const auto plans = larkmere();
    for (const UnitPlan& plan : {plans.front(), plans[5]}) {
        for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
            const Item& item = checklist.item(at);
            const bool reads = item.kind() == ItemKind::Measure;
            CAPTURE(plan.unit.id);
            CAPTURE(item.id);
            CHECK(gapsSeen(item, plan, false) <= (reads ? shifts / 12 : 0));
            CHECK(gapsSeen(item, plan, true) >= (reads ? shifts * 8 / 10 : shifts));
        }
    }
}

TEST_CASE("a stock runs down and is renewed in lots of their own numbers and dates")
{
    const Checklist checklist = Lists::builtIn().value().shift.checklist;
    const Item& item = checklist.item(*checklist.position("oxytocin"));
    const UnitPlan plan = larkmere().front();
    Random random = Random::named("oxytocin");
    const auto shelf = makeThing(item, plan, random, first);
    int renewed = 0;
    int before = 0;
    std::size_t mostLots = 0;
    for (int i = 0; i < 3 * shifts; ++i) {
        const Date day = addDays(first, i / 3);
        shelf->pass(random, {.at = {}, .day = day}, 0);
        shelf->use(random, day);
        const Answer answer = shelf->seen({.at = {}, .day = day}, random);
        const auto& lots = std::get<Counted>(answer).lots;
        const int now = usablePieces({lots}, day);
        renewed += now > before ? 1 : 0;
        before = now;
        mostLots = std::max(mostLots, lots.size());
        for (const Lot& lot : lots) {
            CHECK(lot.expiry);
            CHECK(lot.number.starts_with("O"));
        }
    }
    CHECK(renewed > 3);
    CHECK(renewed < shifts / 2);
    CHECK(mostLots > 1);
}
