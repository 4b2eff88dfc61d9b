// SPDX-License-Identifier: MIT
#include "app/demo/supply.h"
#include "app/demo/thing.h"

#include <algorithm>
#include <utility>

namespace cradlepost::demo {

namespace {

/** Upper-case letters of an item's id: "sterile-gloves" is "SG". */
std::string mark(const std::string& item)
{
    std::string letters;
    for (std::size_t at = 0; at < item.size(); ++at) {
        if (at == 0 || item[at - 1] == '-')
            letters += static_cast<char>(item[at] - 'a' + 'A');
    }
    return letters;
}

/** Delivers once a week, on the same day. */
class Deliveries
{
public:
    explicit Deliveries(const UnitPlan& plan)
        : m_day(deliveryDay(plan))
    {
    }
    /** Whether it comes on that day and has not been there yet. */
    bool comes(Date day)
    {
        if (std::chrono::weekday(std::chrono::sys_days(day)) != m_day || day == m_came)
            return false;
        m_came = day;
        return true;
    }

private:
    std::chrono::weekday m_day;
    Date m_came{};
};

/** A shelf: lots run down, the first to expire first, and are filled up once a week while the store has any. */
class Shelf final : public Thing
{
public:
    Shelf(const Item& item, const CountRule& rule, const UnitPlan& plan, Date today)
        : m_random(Random::named("shelf " + item.id + " of " + plan.unit.id))
        , m_mark(mark(item.id))
        , m_par(rule.par)
        , m_fill(supplyOf(item.id, rule.par, plan).fill)
        , m_expires(rule.expires)
        , m_eachBirth(usedAtBirth(item.id))
        , m_store(plan)
    {
        refill(today);
    }

    void pass(Random&, const Look& begin, double) override
    {
        if (!isFaulty()) {
            dropExpired(begin.day);
            take(begin.day, 0);
            if (m_store.comes(begin.day))
                refill(begin.day);
        }
        if (m_random.chance(usedNowAndThen(m_par)))
            take(begin.day, m_random.between(1, mostAtATime(m_par)));
    }
    void use(Random&, Date today) override
    {
        if (m_eachBirth > 0)
            take(today, m_eachBirth);
    }
    void hear(const StoreNews& news) override
    {
        m_none = news.none;
        if (news.gives && std::exchange(m_given, news.gives->number) != news.gives->number)
            put(*news.gives);
    }
    Answer seen(const Look&, Random&) const override
    {
        Counted counted{.lots = m_lots};
        if (counted.lots.empty())
            counted.lots.push_back({.quantity = 0, .expiry = std::nullopt, .number = {}});
        return counted;
    }

protected:
    void failed(Random&, Date today, std::optional<int>) override
    {
        if (m_expires && m_random.chance(0.2)) { // nobody has looked at the dates
            for (Lot& lot : m_lots)
                lot.expiry = addDays(today, -m_random.between(2, 40));
            return;
        }
        const int left = m_par > 1 ? m_random.between(0, m_par - 1) : 0;
        remove(total() - left);
    }
    void mended(Random&, Date today) override
    {
        dropExpired(today);
        refill(today);
    }

private:
    [[nodiscard]] int total() const
    {
        int pieces = 0;
        for (const Lot& lot : m_lots)
            pieces += lot.quantity;
        return pieces;
    }
    void remove(int pieces)
    {
        while (pieces > 0 && !m_lots.empty()) {
            const int now = std::min(pieces, m_lots.front().quantity);
            m_lots.front().quantity -= now;
            pieces -= now;
            if (m_lots.front().quantity == 0)
                m_lots.erase(m_lots.begin());
        }
    }
    void take(Date today, int pieces)
    {
        remove(pieces);
        if (!isFaulty() && total() < m_par) // somebody goes and fetches some
            refill(today);
    }
    /** Lots about to expire are taken off in good time. */
    void dropExpired(Date today)
    {
        if (m_expires)
            std::erase_if(
                m_lots, [&](const Lot& lot) { return lot.expiry && *lot.expiry <= addDays(today, 2); });
    }
    void refill(Date today)
    {
        const int missing = m_fill - total();
        if (m_none || missing <= 0)
            return;
        if (m_expires && (!m_batch.expiry || m_random.chance(0.3)))
            openBatch(today);
        m_batch.quantity = missing;
        put(m_batch);
    }
    /** What the store hands out from now on. */
    void openBatch(Date today)
    {
        using namespace std::chrono;
        const year_month month = today.year() / today.month() + months(m_random.between(8, 26));
        m_batch = {.quantity = 0,
            .expiry = Date(month / last),
            .number = m_mark + std::to_string(m_random.between(1000, 9999))};
    }
    void put(const Lot& lot)
    {
        const auto same = std::find_if(m_lots.begin(), m_lots.end(),
            [&](const Lot& there) { return there.number == lot.number && there.expiry == lot.expiry; });
        if (same != m_lots.end()) {
            same->quantity += lot.quantity;
            return;
        }
        m_lots.push_back(lot);
        std::stable_sort(
            m_lots.begin(), m_lots.end(), [](const Lot& a, const Lot& b) { return a.expiry < b.expiry; });
    }

    Random m_random; ///< of its own: what happens to a shelf leaves all else as it is
    std::string m_mark;
    int m_par;
    int m_fill;
    bool m_expires;
    int m_eachBirth;
    Deliveries m_store;
    bool m_none = false;
    std::string m_given; ///< lot that the store gave unasked
    Lot m_batch{};
    std::vector<Lot> m_lots;
};

/** Parts of a kit, filled up once a week; each is topped up, but for the one that is missing. */
class Kits final : public Thing
{
public:
    Kits(const Item& item, const KitRule& rule, const UnitPlan& plan)
        : m_random(Random::named("kits " + item.id + " of " + plan.unit.id))
        , m_rule(rule)
        , m_store(plan)
        , m_parts(rule.parts.size())
    {
        for (const KitPart& part : rule.parts)
            m_fill.push_back(supplyOf(part, rule.par, plan).fill);
        topUp(true);
    }
    void pass(Random&, const Look& begin, double) override
    {
        if (m_store.comes(begin.day))
            topUp(true);
    }
    void use(Random&, Date) override
    {
        for (std::size_t at = 0; at < m_parts.size(); ++at)
            m_parts[at]
                = std::max(isFaulty() && at == m_short ? m_least : 0, m_parts[at] - m_rule.parts[at].perKit);
        topUp(false);
    }
    Answer seen(const Look&, Random&) const override { return KitCounted{.parts = m_parts}; }

protected:
    void failed(Random&, Date, std::optional<int> which) override
    {
        m_short = static_cast<std::size_t>(
            which.value_or(m_random.between(0, static_cast<int>(m_parts.size()) - 1)));
        const int each = m_rule.parts[m_short].perKit;
        const int whole = which ? m_rule.par - 1 : m_random.between(0, m_rule.par - 1);
        m_parts[m_short] = whole * each + each - 1;
        m_least = which ? m_parts[m_short] : 0; // a story stays as it is told
    }
    void mended(Random&, Date) override { topUp(true); }

private:
    /** All that the store fills up, or only what a round would miss. */
    void topUp(bool all)
    {
        for (std::size_t at = 0; at < m_parts.size(); ++at) {
            const bool enough = m_parts[at] >= m_rule.par * m_rule.parts[at].perKit;
            if (!(isFaulty() && at == m_short) && (all || !enough))
                m_parts[at] = std::max(m_parts[at], m_fill[at]);
        }
    }

    Random m_random;
    KitRule m_rule;
    Deliveries m_store;
    std::vector<int> m_parts;
    std::vector<int> m_fill;
    std::size_t m_short = 0;
    int m_least = 0;
};

}

std::unique_ptr<Thing> makeShelf(
    const Item& item, const CountRule& rule, const UnitPlan& plan, Date today)
{
    return std::make_unique<Shelf>(item, rule, plan, today);
}

std::unique_ptr<Thing> makeKits(const Item& item, const KitRule& rule, const UnitPlan& plan)
{
    return std::make_unique<Kits>(item, rule, plan);
}

}
