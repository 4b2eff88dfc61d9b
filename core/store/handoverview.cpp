// SPDX-License-Identifier: MIT
#include "core/store/handoverview.h"

#include "core/store/failure.h"
#include "core/store/storesview.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr int soonDays = 2; // a day off is bridged by those who hear of it now

bool isLow(StockStatus status)
{
    return status == StockStatus::Out || status == StockStatus::BelowEmergency
        || status == StockStatus::BelowMinimum;
}

class HandoverWriter
{
public:
    HandoverWriter(const Store& store, const ShiftView& shift, const BoardView& board, Instant now)
        : m_store(store)
        , m_shift(shift)
        , m_board(board)
        , m_now(now)
    {
    }

    HandoverView read()
    {
        situation();
        background();
        gaps();
        births();
        shelves();
        devices();
        ask(HandoverAsk::DoRound, next().code, next().begins + roundOnTime);
        m_view.last = need(m_store.lastHandover(m_shift.unit.id));
        if (m_view.last)
            m_view.changes = differenceOf(m_view.last->given.what, what());
        return std::move(m_view);
    }

private:
    Handover& what() { return m_view.what; }
    [[nodiscard]] Shift next() const { return m_shift.calendar.next(m_shift.shift); }
    void ask(HandoverAsk ask, const std::string& subject, std::optional<Instant> by = std::nullopt)
    {
        what().requests.push_back({.ask = ask, .subject = subject, .by = by});
    }

    void situation()
    {
        what().shift = m_shift.shift.code;
        what().date = m_shift.shift.date;
        if (!m_shift.standing)
            return;
        what().state = codeName(m_shift.standing->verdict.state);
        what().met = m_shift.standing->verdict.met;
        what().applicable = m_shift.standing->verdict.applicable;
        what().roundFinished = m_shift.standing->round.finished;
    }

    void background()
    {
        for (const BirthCover& cover : m_board.births)
            what().births.push_back(cover.birth);
        for (const WarmerRow& warmer : m_board.warmers) {
            if (warmer.standing.readyAt)
                what().warming.push_back({.device = warmer.device.id, .readyAt = *warmer.standing.readyAt});
        }
    }

    void gaps()
    {
        for (const Gap& gap : m_shift.gaps) {
            what().gaps.push_back({.item = gap.item,
                .nth = gap.nth,
                .severity = gap.severity,
                .reason = codeName(gap.reason.code),
                .owner = gap.owner,
                .due = gap.due});
            if (gap.severity == Severity::Critical)
                ask(HandoverAsk::MendBeforeBirth, gap.item, gap.due);
        }
    }

    void births()
    {
        for (const BirthCover& cover : m_board.births) {
            for (const BabyPlace& place : cover.places) {
                if (place.switchOnBy)
                    ask(HandoverAsk::SwitchOnWarmer, place.device, *place.switchOnBy);
            }
            if (!cover.kit)
                ask(HandoverAsk::AssembleKit, cover.birth.birth, cover.birth.expected);
        }
    }

    void shelves()
    {
        const StoresView stores = need(storesView(m_store, m_shift, m_now));
        for (const ShelfRow& row : stores.shelves) {
            m_view.stockNames.emplace(row.item.id, row.item.name);
            const bool goesSoon
                = row.runDown.runsOut && *row.runDown.runsOut <= addDays(stores.today, soonDays);
            if (!isLow(row.status) && !goesSoon)
                continue;
            what().stock.push_back({.item = row.item.id,
                .status = row.status,
                .usable = row.usable,
                .runsOut = row.runDown.runsOut});
            ask(HandoverAsk::Restock, row.item.id);
        }
        for (const FridgeRow& fridge : stores.fridges) {
            if (fridge.due)
                ask(HandoverAsk::ReadFridge, fridge.device.id, fridge.due->until);
        }
    }

    void devices()
    {
        for (const auto& [id, standing] : m_board.devices.devices) {
            if (standing.state() != EquipmentState::OutForRepair)
                continue;
            what().devices.push_back({.device = id, .state = standing.state()});
            ask(HandoverAsk::ChaseRepair, id);
        }
    }

    const Store& m_store;
    const ShiftView& m_shift;
    const BoardView& m_board;
    Instant m_now;
    HandoverView m_view;
};

}

Result<HandoverView> handoverView(
    const Store& store, const ShiftView& shift, const BoardView& board, Instant now)
{
    return attempt([&] { return HandoverWriter(store, shift, board, now).read(); });
}

}
