// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

namespace cradlepost::test {

namespace {

void addRounds(UnitTallies& tallies, int clear, int n)
{
    for (int i = 0; i < n; ++i) {
        const bool isClear = (i + 1) * clear / n > i * clear / n;
        tallies.add(isClear ? Readiness::Ready : Readiness::NotReady);
    }
    tallies.due = n;
    tallies.done = n;
}

}

DistrictHistory handMadeDistrict(const std::vector<HandMadeUnit>& units)
{
    using namespace std::chrono;
    const ReviewSpan october = ReviewSpan::ofMonth(year(2026) / 10);
    DistrictHistory history{.span = october,
        .before = spanBefore(october),
        .now = sys_days(october.to),
        .months = seriesOf(october),
        .items = {{.id = "oxytocin", .severity = Severity::Critical, .kind = ItemKind::Count},
            {.id = "suction", .severity = Severity::Critical, .kind = ItemKind::Measure},
            {.id = "light", .severity = Severity::Minor, .kind = ItemKind::Confirm}}};
    for (const HandMadeUnit& unit : units) {
        DistrictUnit one{.id = unit.name, .name = unit.name, .level = unit.level};
        addRounds(one.span, unit.clear, unit.n);
        one.months.resize(history.months.size());
        one.shifts = {{.shift = "day", .noCriticalGap = {.x = unit.clear, .n = unit.n}}};
        one.gaps.resize(history.items.size());
        history.units.push_back(std::move(one));
    }
    return history;
}

}
