// SPDX-License-Identifier: MIT
#include "app/demo/storeroom.h"

#include <algorithm>

namespace cradlepost::demo {

namespace {

constexpr int daysKept = 70;
constexpr int daysBetweenLooks = 14;
constexpr char forgottenItem[] = "magnesium-sulphate"; // Sorrel Hill has a box at the back of the cupboard
const LotKey forgotten(const Stories& stories)
{
    return {.expiry = addDays(stories.today, -12), .number = "MS2207"};
}

/** "Oxytocin ampoules, in date" is kept as "Oxytocin ampoules". */
std::string shelfName(const Wording& label)
{
    std::string name = label.in("en");
    for (const char* cut : {": ", ", in date"})
        name = name.substr(0, name.find(cut));
    return name.substr(0, 60);
}

StockItem itemOf(const std::string& id, const Wording& label, int par, bool expires)
{
    StockItem item{.id = id, .name = shelfName(label), .expires = expires};
    item.levels = {.par = par * 2, .minimum = par, .emergency = par / 2};
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
        m_kept.push_back({.item = itemOf(item.id, item.label, count->par, count->expires), .seenAs = &item});
        m_kept.back().item.serves = {item.id};
    } else if (const auto* kit = std::get_if<KitRule>(&item.rule)) {
        for (std::size_t part = 0; part < kit->parts.size(); ++part) {
            const KitPart& one = kit->parts[part];
            m_kept.push_back({.item = itemOf(one.id, one.label, kit->par * one.perKit, false),
                .seenAs = &item,
                .part = part});
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

Result<void> Storeroom::pass(const Shift& shift, Ward& ward)
{
    if (shift.date < m_from || (m_isOpen && daysBetween(m_looked, shift.date) < daysBetweenLooks))
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
    m_looked = day;
    for (const Kept& kept : m_kept) {
        const Answer answer = ward.seen(*kept.seenAs, {.at = at, .day = day});
        if (const auto* counted = std::get_if<Counted>(&answer))
            level(kept, counted->lots, at, day);
        else if (const auto* kit = std::get_if<KitCounted>(&answer))
            level(kept, {{.quantity = kit->parts[kept.part], .expiry = {}, .number = {}}}, at, day);
    }
}

/** What came and went since the last look follows from what is there. */
void Storeroom::level(const Kept& kept, const std::vector<Lot>& there, Instant at, Date day)
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
    for (const auto& [lot, pieces] : change) {
        if (pieces == 0)
            continue;
        const bool old = lot.expiry && *lot.expiry <= addDays(day, daysBetweenLooks);
        note({.item = kept.item.id,
            .kind = pieces > 0 ? MovementKind::Receipt
                : old          ? MovementKind::ExpiredRemoved
                               : MovementKind::Issue,
            .at = at,
            .quantity = std::abs(pieces),
            .lot = lot.number,
            .expiry = lot.expiry});
    }
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
