// SPDX-License-Identifier: MIT
#include "core/exchange/papercell.h"

#include "core/base/csv.h"
#include "core/checklist/reader.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

namespace {

const Checklist& shiftRound()
{
    static const Checklist checklist = builtInChecklist(RoundKind::Shift).value();
    return checklist;
}

const Item& anItem(ItemKind kind)
{
    for (std::size_t at = 0; at < shiftRound().itemCount(); ++at)
        if (shiftRound().item(at).kind() == kind)
            return shiftRound().item(at);
    FAIL("no item of that kind");
    return shiftRound().item(0);
}

const Instant finished = sys_days(year(2026) / 3 / 14) + hours(8);

Result<Answer> read(ItemKind kind, std::string_view text)
{
    return readPaperCell(anItem(kind), text, finished, TimeZone::utc());
}

Answer taken(ItemKind kind, std::string_view text)
{
    const auto answer = read(kind, text);
    REQUIRE_MESSAGE(answer.has_value(), answer.error().message);
    return *answer;
}

}

TEST_CASE("a cell of each kind reads as the answer of a walk")
{
    CHECK(taken(ItemKind::Confirm, "m") == Answer(Confirmed{}));
    CHECK(taken(ItemKind::Measure, "26,4") == taken(ItemKind::Measure, "26.4"));
    CHECK(taken(ItemKind::Since, "07:15") == Answer(RunningSince{finished - minutes(45)}));
    CHECK(taken(ItemKind::Since, "23:00") == Answer(RunningSince{finished - hours(9)}));
    const auto& steps = std::get<StepsRule>(anItem(ItemKind::Steps).rule).steps;
    CHECK(taken(ItemKind::Steps, "pass")
        == Answer(StepsDone{.marks = std::string(steps.size(), 'p'), .device = {}}));
    std::string marks(steps.size(), '-');
    marks[0] = 'p';
    marks[1] = 'f';
    CHECK(taken(ItemKind::Steps, steps[1].id) == Answer(StepsDone{.marks = marks, .device = {}}));
    const auto counted = read(ItemKind::Count, "12@2027-03-31;5@2026-12");
    REQUIRE(counted.has_value());
    CHECK(std::get<Counted>(*counted).lots.size() == 2);
    CHECK(std::get<Counted>(*counted).lots[1].expiry == year(2026) / 12 / 31);
    const auto& cylinder = std::get<CylinderRule>(anItem(ItemKind::Cylinder).rule);
    CHECK(taken(ItemKind::Cylinder, "100")
        == Answer(CylinderRead{
            .gauge = Decimal{100'000}, .size = cylinder.sizes.front().id, .flow = cylinder.flow}));
    CHECK(taken(ItemKind::Cylinder, "100/2/" + cylinder.sizes.back().id)
        == Answer(CylinderRead{
            .gauge = Decimal{100'000}, .size = cylinder.sizes.back().id, .flow = Decimal{2'000}}));
}

TEST_CASE("a kit cell gives the pieces of each part")
{
    const auto parts = std::get<KitRule>(anItem(ItemKind::Kit).rule).parts.size();
    std::string text;
    for (std::size_t i = 0; i < parts; ++i)
        text += (i == 0 ? "" : "/") + std::to_string(i + 3);
    const auto kit = read(ItemKind::Kit, text);
    REQUIRE(kit.has_value());
    CHECK(std::get<KitCounted>(*kit).parts.front() == 3);
    CHECK_FALSE(read(ItemKind::Kit, text + "/1").has_value());
}

TEST_CASE("every kind takes nothing and a gap with or without its reason, and refuses what is neither")
{
    for (std::size_t at = 0; at < shiftRound().itemCount(); ++at) {
        const Item& item = shiftRound().item(at);
        CAPTURE(item.id);
        const auto cell
            = [&](std::string_view text) { return readPaperCell(item, text, finished, TimeZone::utc()); };
        CHECK(cell("").value() == Answer(NotChecked{}));
        CHECK(cell("g").value() == Answer(GapFound{}));
        CHECK(cell("g:expired").value() == Answer(GapFound{GapReason::Expired}));
        CHECK(cell("n").has_value() == item.mayNotApply);
        for (const char* bad : {"x", "g:rusty", "g:", "yes", "-", "m m", "1;;2", "/", "1e5", "--1"})
            CHECK_FALSE(cell(bad).has_value());
    }
}
