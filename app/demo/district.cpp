// SPDX-License-Identifier: MIT
#include "app/demo/district.h"

#include "app/demo/random.h"

namespace cradlepost::demo {

namespace {

const char* const zone = "Asia/Kolkata"; // one without clock changes

/** Invented initials; who they would be is nobody. */
std::vector<Person> staff(const std::vector<std::string>& initials)
{
    std::vector<Person> people;
    for (const std::string& one : initials) {
        const char* role = people.empty() ? "in charge" : people.size() % 3 == 2 ? "nurse" : "midwife";
        people.push_back({.initials = one, .role = role});
    }
    return people;
}

ChosenLimits whoRoom() { return {{"room-temperature", "who-25-28"}}; }

UnitPlan unitPlan(const char* id, const char* name, const char* level, std::vector<std::string> initials,
    const char* cylinder, Habits habits)
{
    return {.unit = {.id = id, .name = name, .zone = zone, .level = level},
        .pattern = ShiftPattern::threeByEight(),
        .people = staff(initials),
        .limits = {},
        .cylinder = cylinder,
        .without = {},
        .habits = habits};
}

UnitPlan smallUnit()
{
    UnitPlan plan = unitPlan(ashLock, "Ash Lock", "primary", {"UM", "KT", "BE", "SO"}, "in-b",
        {.birthsPerDay = 0.2,
            .roundsDone = 0.4,
            .checksDone = 0.8,
            .actsOnGaps = 0.2,
            .gapLoad = 1.1,
            .leftOut = 0.006});
    plan.pattern = ShiftPattern::twoByTwelve();
    plan.limits = whoRoom();
    plan.without
        = {"skin-probe", "oximeter", "preterm-wrap", "bcg", "hepb-birth-dose", "opv", "vaccine-vials"};
    return plan;
}

UnitPlan ownShifts()
{
    UnitPlan plan = unitPlan(marlGate, "Marl Gate", "community", {"ZK", "PA", "OT", "LN", "VI", "EH"}, "us-m",
        {.birthsPerDay = 0.8,
            .roundsDone = 0.93,
            .checksDone = 0.5,
            .actsOnGaps = 0.1,
            .gapLoad = 0.8,
            .halfDegrees = 0.6});
    using std::chrono::hours;
    plan.pattern = {.starts = {{"morning", hours(8)}, {"afternoon", hours(14)}, {"night", hours(20)}}};
    plan.without = {"eye-ointment"};
    return plan;
}

}

std::vector<UnitPlan> larkmere()
{
    std::vector<UnitPlan> plans{
        unitPlan(sorrelHill, "Sorrel Hill", "district",
            {"NV", "AQ", "TR", "JE", "MB", "HU", "SY", "DK", "PL"}, "in-d",
            {.birthsPerDay = 2.0,
                .roundsDone = 0.96,
                .checksDone = 0.75,
                .actsOnGaps = 0.25,
                .gapLoad = 0.8}),
        unitPlan(tarnFerry, "Tarn Ferry", "community", {"GO", "IW", "RA", "FE", "KU", "YB"}, "in-b",
            {.birthsPerDay = 1.0, .roundsDone = 0.94, .checksDone = 0.6, .gapLoad = 1.1, .pace = 0.9}),
        unitPlan(quillmere, "Quillmere", "community", {"CH", "OV", "TE", "LI", "MZ", "AN"}, "us-m",
            {.birthsPerDay = 0.8, .roundsDone = 0.94, .actsOnGaps = 0.2}),
        unitPlan(ostrey, "Ostrey", "community", {"BR", "SK", "EL", "DA", "VO"}, "in-d",
            {.birthsPerDay = 0.7, .roundsDone = 0.93, .checksDone = 0.6, .gapLoad = 1.2}),
        unitPlan(pennyWeir, "Penny Weir", "district", {"QA", "WI", "HM", "NO", "TU", "JA", "RE", "SB"},
            "in-d", {.birthsPerDay = 1.6, .roundsDone = 0.95, .gapLoad = 1.15, .pace = 1.1}),
        smallUnit(),
        unitPlan(hallowDown, "Hallow Down", "primary", {"EK", "PU", "AR", "ID", "GL"}, "in-b",
            {.birthsPerDay = 0.4, .roundsDone = 0.95, .actsOnGaps = 0.2, .pace = 1.15}),
        ownShifts(),
    };
    plans[1].without = {"preterm-wrap"};
    plans[3].without = {"opv", "eye-ointment"};
    plans[3].limits = whoRoom();
    plans[6].without = {"skin-probe", "bcg"};
    return plans;
}

StationKey stationOf(const UnitPlan& plan)
{
    Random random = Random::named("station of " + plan.unit.id);
    std::array<unsigned char, 32> seed{};
    for (unsigned char& byte : seed)
        byte = static_cast<unsigned char>(random.next() & 0xFFU);
    return StationKey::fromSeed(seed);
}

}
