// SPDX-License-Identifier: MIT
#include "app/demo/thing.h"
#include "core/round/judge.h"

#include <algorithm>

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

/** A shelf: lots run down, the first to expire first, and are renewed while the store delivers. */
class Shelf final : public Thing
{
public:
    Shelf(const Item& item, const CountRule& rule, Random& random, Date today)
        : m_mark(mark(item.id))
        , m_par(rule.par)
        , m_expires(rule.expires)
        , m_eachBirth(usedAtBirth(item.id))
    {
        deliver(random, today, m_par * 2 + random.between(0, m_par));
    }

    void pass(Random& random, const Look& begin, double) override
    {
        if (!isFaulty()) {
            dropExpired(begin.day);
            take(random, begin.day, 0);
        }
        if (random.chance(m_par > 1 ? 0.3 : 0.06))
            take(random, begin.day, random.between(1, std::max(1, m_par / 8)));
    }
    void use(Random& random, Date today) override
    {
        if (m_eachBirth > 0)
            take(random, today, m_eachBirth);
    }
    Answer seen(const Look&, Random&) const override
    {
        Counted counted{.lots = m_lots};
        if (counted.lots.empty())
            counted.lots.push_back({.quantity = 0, .expiry = std::nullopt, .number = {}});
        return counted;
    }

protected:
    void failed(Random& random, Date today, std::optional<int>) override
    {
        if (m_expires && random.chance(0.2)) { // nobody has looked at the dates
            for (Lot& lot : m_lots)
                lot.expiry = addDays(today, -random.between(2, 40));
            return;
        }
        const int left = m_par > 1 ? random.between(0, m_par - 1) : 0;
        remove(total() - left);
    }
    void mended(Random& random, Date today) override
    {
        dropExpired(today);
        refill(random, today);
    }

private:
    static int usedAtBirth(const std::string& item)
    {
        for (const auto& [id, pieces] : {std::pair("towels", 2), std::pair("newborn-linen", 2),
                 std::pair("sterile-gloves", 2), std::pair("oxytocin", 1), std::pair("vitamin-k", 1),
                 std::pair("caps-socks", 1), std::pair("mother-pads", 2), std::pair("sterile-packs", 1),
                 std::pair("exam-gloves", 3), std::pair("eye-ointment", 1), std::pair("partograph-sheets", 1),
                 std::pair("name-tags", 1), std::pair("sterile-gauze", 2)}) {
            if (item == id)
                return pieces;
        }
        return 0;
    }
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
    void take(Random& random, Date today, int pieces)
    {
        remove(pieces);
        if (!isFaulty() && total() < m_par)
            refill(random, today);
    }
    /** Lots about to expire are taken off in good time. */
    void dropExpired(Date today)
    {
        if (m_expires)
            std::erase_if(
                m_lots, [&](const Lot& lot) { return lot.expiry && *lot.expiry <= addDays(today, 2); });
    }
    void refill(Random& random, Date today)
    {
        if (m_expires && m_lots.size() == 3)
            m_lots.erase(m_lots.begin()); // so few left that they go to another room
        if (const int missing = m_par * 2 + random.between(0, m_par + 1) - total(); missing > 0)
            deliver(random, today, missing);
    }
    void deliver(Random& random, Date today, int pieces)
    {
        if (!m_expires) {
            if (m_lots.empty())
                m_lots.push_back({.quantity = 0, .expiry = std::nullopt, .number = {}});
            m_lots.front().quantity += pieces;
            return;
        }
        using namespace std::chrono;
        const year_month month = today.year() / today.month() + months(random.between(3, 26));
        m_lots.push_back({.quantity = pieces,
            .expiry = Date(month / last),
            .number = m_mark + std::to_string(random.between(1000, 9999))});
        std::stable_sort(
            m_lots.begin(), m_lots.end(), [](const Lot& a, const Lot& b) { return a.expiry < b.expiry; });
    }

    std::string m_mark;
    int m_par;
    bool m_expires;
    int m_eachBirth;
    std::vector<Lot> m_lots;
};

/** Parts of a kit; each is topped up, but for the one that is missing. */
class Kits final : public Thing
{
public:
    Kits(const KitRule& rule, Random& random)
        : m_rule(rule)
        , m_parts(rule.parts.size())
    {
        topUp(random);
    }
    void use(Random& random, Date) override
    {
        for (std::size_t at = 0; at < m_parts.size(); ++at)
            m_parts[at]
                = std::max(isFaulty() && at == m_short ? m_least : 0, m_parts[at] - m_rule.parts[at].perKit);
        topUp(random);
    }
    Answer seen(const Look&, Random&) const override { return KitCounted{.parts = m_parts}; }

protected:
    void failed(Random& random, Date, std::optional<int> which) override
    {
        m_short = static_cast<std::size_t>(
            which.value_or(random.between(0, static_cast<int>(m_parts.size()) - 1)));
        const int each = m_rule.parts[m_short].perKit;
        const int whole = which ? m_rule.par - 1 : random.between(0, m_rule.par - 1);
        m_parts[m_short] = whole * each + each - 1;
        m_least = which ? m_parts[m_short] : 0; // a story stays as it is told
    }
    void mended(Random& random, Date) override { topUp(random); }

private:
    void topUp(Random& random)
    {
        for (std::size_t at = 0; at < m_parts.size(); ++at) {
            const int each = m_rule.parts[at].perKit;
            if ((isFaulty() && at == m_short) || m_parts[at] >= m_rule.par * each)
                continue;
            m_parts[at] = (m_rule.par + random.between(1, 4)) * each + random.between(0, each);
        }
    }

    KitRule m_rule;
    std::vector<int> m_parts;
    std::size_t m_short = 0;
    int m_least = 0;
};

}

std::unique_ptr<Thing> makeShelf(const Item& item, const CountRule& rule, Random& random, Date today)
{
    return std::make_unique<Shelf>(item, rule, random, today);
}

std::unique_ptr<Thing> makeKits(const KitRule& rule, Random& random)
{
    return std::make_unique<Kits>(rule, random);
}

}
