// SPDX-License-Identifier: MIT
#include "core/store/boardview.h"

#include "core/store/failure.h"

#include <algorithm>
#include <tuple>

namespace cradlepost {

namespace {

std::chrono::minutes warmUpOf(const Checklist& checklist)
{
    for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
        if (const auto* since = std::get_if<SinceRule>(&checklist.item(at).rule))
            return since->minutes;
    }
    return usualWarmUp;
}

std::optional<std::int64_t> kitsLeft(const ShiftView& shift, const std::vector<BirthSpan>& births)
{
    if (!shift.standing)
        return std::nullopt;
    const Checklist& checklist = shift.adopted.checklist;
    for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
        const auto* rule = std::get_if<KitRule>(&checklist.item(at).rule);
        const auto* counted = std::get_if<KitCounted>(&shift.standing->answers[at]);
        if (rule == nullptr || counted == nullptr)
            continue;
        const Instant seen = shift.standing->seenAt[at];
        const auto used = std::count_if(births.begin(), births.end(),
            [&](const BirthSpan& span) { return span.end == BirthChange::Done && *span.until > seen; });
        return std::max<std::int64_t>(wholeKits(*rule, *counted).kits - used, 0);
    }
    return std::nullopt;
}

std::vector<WarmerRow> warmersOf(const BoardView& view, const std::vector<WarmerRun>& runs, Instant now)
{
    std::vector<WarmerRow> warmers;
    for (const auto& [id, standing] : view.devices.devices) {
        const EquipmentState state = standing.state();
        if (standing.device.kind == EquipmentKind::Warmer
            && (state == EquipmentState::InUse || state == EquipmentState::Spare))
            warmers.push_back({.device = standing.device,
                .state = state,
                .standing = warmerAt(runs, id, now, view.warmUp)});
    }
    std::sort(warmers.begin(), warmers.end(), [](const WarmerRow& a, const WarmerRow& b) {
        return std::tie(a.state, a.device.label, a.device.id)
            < std::tie(b.state, b.device.label, b.device.id);
    });
    return warmers;
}

std::vector<WarmerStanding> standingsOf(const BoardView& board)
{
    std::vector<WarmerStanding> out;
    for (const WarmerRow& row : board.warmers)
        out.push_back(row.standing);
    return out;
}

}

Result<BoardView> boardView(const Store& store, const ShiftView& shift, Instant now)
{
    return attempt([&] {
        const std::string& unit = shift.unit.id;
        const auto runs = need(store.warmerRuns(unit));
        const auto births = need(store.birthBoard(unit));
        BoardView view;
        view.devices = need(store.equipmentRegister(unit));
        view.warmUp = warmUpOf(shift.adopted.checklist);
        view.warmers = warmersOf(view, runs, now);
        view.offTooSoon = offTooSoon(runs, births, now);
        view.kits = kitsLeft(shift, births);
        const auto expected = expectedAt(births, now);
        view.births = coverBirths(expected, standingsOf(view),
            view.kits.value_or(static_cast<std::int64_t>(expected.size())), now, {.warmUp = view.warmUp});
        return view;
    });
}

Result<std::vector<Notice>> noticesOf(
    const Store& store, const ShiftView& shift, const BoardView& board, Instant now)
{
    return attempt([&] {
        const TimeZone& zone = shift.calendar.zone();
        NoticeInput input{.now = now};
        input.births = board.births;
        input.warmers = standingsOf(board);
        input.offTooSoon = board.offTooSoon;
        for (const Gap& gap : shift.gaps)
            input.gaps.push_back({.item = gap.item, .nth = gap.nth, .due = gap.due});
        if (!shift.standing)
            input.round = RoundWanted{.shift = shift.shift.code,
                .slot = shift.shift.slot(),
                .from = shift.shift.begins,
                .until = shift.shift.begins + roundOnTime};
        const auto readings = need(store.fridgeReadings(shift.unit.id, now - std::chrono::hours(48)));
        for (const auto& [id, standing] : board.devices.devices) {
            if (standing.device.kind != EquipmentKind::Fridge || standing.state() != EquipmentState::InUse)
                continue;
            if (const auto due = readingDue(readings, id, zone, now))
                input.fridges.emplace(id, *due);
        }
        input.upkeep = upkeepOf(board.devices, zone, zone.toLocal(now).date);
        return noticesAt(input, zone);
    });
}

}
