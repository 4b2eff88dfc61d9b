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

/** Whether `name` is what a shelf gets of that wording in any language. */
bool isNamed(const Wording& wording, const std::string& name)
{
    return std::any_of(wording.texts().begin(), wording.texts().end(), [&](const auto& text) {
        return text.second.compare(0, name.size(), name) == 0 && shortened(text.second) == name;
    });
}

constexpr std::size_t longestId = 40;

/** FNV-1a of 64 bits (Fowler, Noll, Vo; from memory): not secret, only the same everywhere. */
std::string digestOf(const std::string& name)
{
    std::uint64_t digest = 14695981039346656037U;
    for (const char c : name)
        digest = (digest ^ static_cast<unsigned char>(c)) * 1099511628211U;
    std::string id = "shelf-";
    for (int shift = 60; shift >= 0; shift -= 4)
        id += "0123456789abcdef"[(digest >> shift) & 0xFU];
    return id;
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

std::string shelfIdFor(const std::string& name)
{
    std::string id;
    for (const char c : name) {
        const bool capital = 'A' <= c && c <= 'Z';
        if (static_cast<unsigned char>(c) >= 0x80U)
            return digestOf(name);
        if (capital || ('a' <= c && c <= 'z') || ('0' <= c && c <= '9'))
            id += static_cast<char>(capital ? c - 'A' + 'a' : c);
        else if (!id.empty() && id.back() != '-')
            id += '-';
    }
    id.resize(std::min(id.size(), longestId));
    while (!id.empty() && id.back() == '-')
        id.pop_back();
    return id.empty() ? "shelf" : id;
}

std::optional<std::string> shelfName(
    const std::string& name, const Checklist& checklist, const std::string& language)
{
    for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
        const Item& item = checklist.item(at);
        if (item.kind() == ItemKind::Count && isNamed(item.label, name))
            return item.label.in(language);
        const auto* kit = std::get_if<KitRule>(&item.rule);
        if (kit == nullptr)
            continue;
        for (const KitPart& part : kit->parts)
            if (isNamed(part.label, name))
                return part.label.in(language);
    }
    return std::nullopt;
}

}
