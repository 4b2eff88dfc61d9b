// SPDX-License-Identifier: MIT
#include "core/supply/shelfplan.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr std::size_t longestName = 60; // characters

/** Cut between two characters, never within one. */
std::string shortened(std::string name)
{
    std::size_t characters = 0;
    for (std::size_t at = 0; at < name.size(); ++at) {
        const bool begins = (static_cast<unsigned char>(name[at]) & 0xC0U) != 0x80U;
        if (begins && ++characters > longestName) {
            name.resize(at);
            break;
        }
    }
    return name;
}

}

std::vector<StockItem> shelvesOf(const Checklist& checklist, const std::string& language, Instant at)
{
    std::vector<StockItem> shelves;
    const auto add
        = [&](const std::string& id, const Wording& name, int par, bool expires, const std::string& serves) {
              const auto same = [&](const StockItem& item) { return item.id == id; };
              if (std::any_of(shelves.begin(), shelves.end(), same))
                  return; // two kits may share a part
              shelves.push_back({.id = id,
                  .name = shortened(name.in(language)),
                  .at = at,
                  .levels = {.par = 2 * par, .minimum = par, .emergency = par / 2},
                  .expires = expires,
                  .serves = {serves}});
          };
    for (std::size_t position = 0; position < checklist.itemCount(); ++position) {
        const Item& item = checklist.item(position);
        if (const auto* count = std::get_if<CountRule>(&item.rule))
            add(item.id, item.label, count->par, count->expires, item.id);
        if (const auto* kit = std::get_if<KitRule>(&item.rule))
            for (const KitPart& part : kit->parts)
                add(part.id, part.label, kit->par * part.perKit, false, item.id);
    }
    return shelves;
}

}
