// SPDX-License-Identifier: MIT
#include "app/demo/supply.h"

#include "app/demo/random.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::demo {

namespace {

constexpr double shiftsPerDay = 3;
constexpr double daysHeld = 12; // a week until the next delivery, and some more

int heldOf(double perDay, int wanted) { return 2 * wanted + static_cast<int>(std::ceil(daysHeld * perDay)); }

}

int usedAtBirth(const std::string& item)
{
    for (const auto& [id, pieces] :
        {std::pair("towels", 2), std::pair("newborn-linen", 2), std::pair("sterile-gloves", 2),
            std::pair("oxytocin", 1), std::pair("vitamin-k", 1), std::pair("caps-socks", 1),
            std::pair("mother-pads", 2), std::pair("sterile-packs", 1), std::pair("exam-gloves", 3),
            std::pair("eye-ointment", 1), std::pair("partograph-sheets", 1), std::pair("name-tags", 1),
            std::pair("sterile-gauze", 2)}) {
        if (item == id)
            return pieces;
    }
    return 0;
}

double usedNowAndThen(int par) { return par > 1 ? 0.3 : 0.06; }
int mostAtATime(int par) { return std::max(1, par / 8); }

Supply supplyOf(const std::string& item, int par, const UnitPlan& plan)
{
    const double besides = shiftsPerDay * usedNowAndThen(par) * (1 + mostAtATime(par)) / 2;
    const double perDay = usedAtBirth(item) * plan.habits.birthsPerDay + besides;
    return {.perDay = perDay, .fill = heldOf(perDay, par)};
}

Supply supplyOf(const KitPart& part, int par, const UnitPlan& plan)
{
    const double births = plan.habits.birthsPerDay;
    return {.perDay = births * part.perKit, .fill = heldOf(births, par) * part.perKit};
}

std::chrono::weekday deliveryDay(const UnitPlan& plan)
{
    return std::chrono::weekday(
        static_cast<unsigned>(Random::named("deliveries to " + plan.unit.id).between(1, 6)));
}

}
