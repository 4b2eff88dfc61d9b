// SPDX-License-Identifier: MIT
#include "app/demo/storeroom.h"

#include <algorithm>
#include <utility>

namespace cradlepost::demo {

namespace {

constexpr int daysKept = 190;
constexpr int daysBetweenLooks = 7;
constexpr char forgottenItem[] = "magnesium-sulphate"; // Sorrel Hill has a box at the back of the cupboard
const LotKey forgotten(const Stories& stories)
{
    return {.expiry = addDays(stories.today, -12), .number = "MS2207"};
}

StockItem itemOf(const std::string& id, const Wording& label, int par, int fill, bool expires)
{
    StockItem item{.id = id, .name = label.in("en"), .expires = expires};
    item.levels = {.par = fill, .minimum = par, .emergency = par / 2};
    item.packSize = par >= 6 ? 10 : 1;
    for (const char* cold : {"oxytocin", "bcg", "hepb-birth-dose", "opv"})
        if (id == cold)
            item.fridge = "fridge-1";
    item.harmedByFrost = id == "hepb-birth-dose";
    return item;
}

}

Storeroom::Storeroom(Store& store, FixedClock& clock, const UnitPlan& plan, const Stories& stories,
    const Checklist& shiftRound, const TimeZone& zone)
    : m_store(store)
    , m_clock(clock)
    , m_plan(plan)
    , m_stories(stories)
    , m_zone(zone)
    , m_from(std::max(stories.first, addDays(stories.today, -daysKept)))
{
    for (std::size_t at = 0; at < shiftRound.itemCount(); ++at)
        if (const std::string& id = shiftRound.item(at).id;
            std::find(plan.without.begin(), plan.without.end(), id) == plan.without.end())
            keep(shiftRound.item(at));
}

void Storeroom::keep(const Item& item)
{
    if (const auto* count = std::get_if<CountRule>(&item.rule)) {
        const Supply supply = supplyOf(item.id, count->par, m_plan);
        m_kept.push_back({.item = itemOf(item.id, item.label, count->par, supply.fill, count->expires),
            .seenAs = &item,
            .perDay = supply.perDay});
        m_kept.back().item.serves = {item.id};
    } else if (const auto* kit = std::get_if<KitRule>(&item.rule)) {
        for (std::size_t part = 0; part < kit->parts.size(); ++part) {
            const KitPart& one = kit->parts[part];
            const Supply supply = supplyOf(one, kit->par, m_plan);
            m_kept.push_back({.item = itemOf(one.id, one.label, kit->par * one.perKit, supply.fill, false),
                .seenAs = &item,
                .part = part,
                .perDay = supply.perDay});
            m_kept.back().item.serves = {item.id};
        }
    }
}

Result<void> Storeroom::open(Instant at)
{
    m_clock.set(std::max(m_clock.now(), at));
    for (Kept& kept : m_kept) {
        kept.item.at = at;
        if (auto done = m_store.describeStockItem(m_plan.unit.id, kept.item, m_plan.people[0].initials);
            !done)
            return done;
    }
    return {};
}

/** Before and after a delivery; not where nobody writes anything down. */
bool Storeroom::isLookedAt(const Shift& shift) const
{
    return shift.date >= m_from && shift.index < 2
        && std::chrono::weekday(std::chrono::sys_days(shift.date)) == deliveryDay(m_plan)
        && !isSilent(m_plan, shift.date, m_stories) && !isOnPaper(m_plan, shift.date, m_stories);
}

Result<void> Storeroom::pass(const Shift& shift, Ward& ward)
{
    if (!isLookedAt(shift))
        return {};
    if (!m_isOpen) {
        if (auto done = open(shift.begins); !done)
            return done;
        m_isOpen = true;
        leaveExpired(shift.begins);
    }
    look(shift.begins, shift.date, ward);
    return writeUp(shift.begins);
}

Result<void> Storeroom::close(Instant at, Date day, Ward& ward)
{
    if (!m_isOpen)
        return {};
    look(at, day, ward);
    return writeUp(at);
}

void Storeroom::look(Instant at, Date day, Ward& ward)
{
    const int days = std::max(1, daysBetween(std::exchange(m_looked, day), day));
    for (const Kept& kept : m_kept) {
        const Answer answer = ward.seen(*kept.seenAs, {.at = at, .day = day});
        if (const auto* counted = std::get_if<Counted>(&answer))
            level(kept, counted->lots, at, day, days);
        else if (const auto* kit = std::get_if<KitCounted>(&answer))
            level(kept, {{.quantity = kit->parts[kept.part], .expiry = {}, .number = {}}}, at, day, days);
    }
}

/** What came and went since the last look, `days` ago, follows from what is there. */
void Storeroom::level(const Kept& kept, const std::vector<Lot>& there, Instant at, Date day, int days)
{
    std::map<LotKey, std::int64_t> change;
    for (const Lot& lot : there) {
        if (lot.expiry && *lot.expiry < day)
            redate(kept, lot, at);
        change[{.expiry = lot.expiry, .number = lot.number}] += lot.quantity;
    }
    for (const BookLot& lot : m_book[kept.item.id].lots)
        if (lot.key != forgotten(m_stories))
            change[lot.key] -= lot.pieces;
    auto usual = static_cast<std::int64_t>(2 + 3 * kept.perDay * days);
    for (const auto& [lot, pieces] : change) {
        if (pieces > 0)
            note({.item = kept.item.id,
                .kind = MovementKind::Receipt,
                .at = at,
                .quantity = pieces,
                .lot = lot.number,
                .expiry = lot.expiry});
        else if (pieces < 0)
            gone(kept, lot, -pieces, usual, at);
    }
}

void Storeroom::gone(const Kept& kept, const LotKey& lot, std::int64_t pieces, std::int64_t& usual, Instant at)
{
    StockMovement out{.item = kept.item.id, .at = at, .lot = lot.number, .expiry = lot.expiry};
    const auto write = [&](MovementKind kind, std::int64_t quantity) {
        out.kind = kind;
        out.quantity = quantity;
        if (quantity > 0)
            note(out);
    };
    if (lot.expiry && *lot.expiry <= addDays(m_looked, daysBetweenLooks))
        return write(MovementKind::ExpiredRemoved, pieces);
    const std::int64_t used = std::min(pieces, usual);
    usual -= used;
    write(MovementKind::Issue, used);
    out.counterpart = "theatre";
    write(MovementKind::TransferOut, pieces - used);
}

void Storeroom::redate(const Kept& kept, const Lot& lot, Instant at)
{
    const auto lots = m_book[kept.item.id].lots; // as it was: the counts below change it
    for (const BookLot& booked : lots) {
        if (booked.key.number != lot.number || booked.key.expiry == lot.expiry)
            continue;
        StockMovement count{.item = kept.item.id,
            .kind = MovementKind::CountCorrection,
            .at = at,
            .quantity = 0,
            .lot = lot.number,
            .expiry = booked.key.expiry,
            .reason = MovementReason::CountedWrong,
            .scope = CountScope::OneLot};
        note(count);
        count.expiry = lot.expiry;
        count.quantity = lot.quantity;
        note(count);
    }
}

void Storeroom::leaveExpired(Instant at)
{
    const LotKey lot = forgotten(m_stories);
    if (m_plan.is(sorrelHill) && m_zone.toLocal(at).date < *lot.expiry)
        note({.item = forgottenItem, .at = at, .quantity = 4, .lot = lot.number, .expiry = lot.expiry});
}

void Storeroom::note(const StockMovement& movement)
{
    apply(m_book, {.id = {}, .what = movement}, m_zone.toLocal(movement.at).date);
    m_waiting.push_back(movement);
}

Result<void> Storeroom::writeUp(Instant at)
{
    m_clock.set(std::max(m_clock.now(), at));
    const auto& people = m_plan.people;
    auto done = m_store.moveStock(m_plan.unit.id, m_waiting, people[people.size() / 2].initials);
    m_waiting.clear();
    return done;
}

}
