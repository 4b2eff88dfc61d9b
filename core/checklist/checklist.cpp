// SPDX-License-Identifier: MIT
#include "core/checklist/checklist.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstdlib>
#include <utility>

namespace cradlepost {

namespace {

constexpr std::array severityCodes{"critical", "major", "minor"};
constexpr std::array kindCodes{"confirm", "measure", "since", "steps", "count", "kit", "cylinder"};
constexpr std::array useCodes{"shift", "recheck", "pre-birth", "after-use", "spot-check"};

static_assert(kindCodes.size() == std::variant_size_v<ItemRule>);

template <class Enum, std::size_t N>
std::optional<Enum> fromCode(const std::array<const char*, N>& codes, std::string_view code)
{
    const auto at
        = std::find_if(codes.begin(), codes.end(), [&](const char* known) { return code == known; });
    if (at == codes.end())
        return std::nullopt;
    return static_cast<Enum>(at - codes.begin());
}

/** The section that holds a position, and the place of the item in it. */
std::pair<const Section*, std::size_t> locate(const Checklist& checklist, std::size_t position)
{
    for (const Section& section : checklist.sections) {
        if (position < section.items.size())
            return {&section, position};
        position -= section.items.size();
    }
    assert(false && "the position lies beyond the last item");
    std::abort();
}

}

RoundKind checklistUse(RoundKind kind)
{
    const bool ofTheShift = kind == RoundKind::Recheck || kind == RoundKind::SpotCheck;
    return ofTheShift ? RoundKind::Shift : kind;
}

const std::string& Wording::in(std::string_view language) const
{
    static const std::string nothing;
    const std::string_view base = language.substr(0, language.find_first_of("-_"));
    for (const std::string_view wanted : {language, base, std::string_view("en")}) {
        if (const auto at = m_texts.find(std::string(wanted)); at != m_texts.end())
            return at->second;
    }
    return nothing;
}

std::size_t Checklist::itemCount() const
{
    std::size_t count = 0;
    for (const Section& section : sections)
        count += section.items.size();
    return count;
}

const Item& Checklist::item(std::size_t position) const
{
    const auto [section, place] = locate(*this, position);
    return section->items[place];
}

const Section& Checklist::sectionOf(std::size_t position) const { return *locate(*this, position).first; }

std::optional<std::size_t> Checklist::position(std::string_view itemId) const
{
    std::size_t position = 0;
    for (const Section& section : sections) {
        for (const Item& item : section.items) {
            if (item.id == itemId)
                return position;
            ++position;
        }
    }
    return std::nullopt;
}

const char* codeName(Severity severity) { return severityCodes.at(static_cast<std::size_t>(severity)); }

const char* codeName(ItemKind kind) { return kindCodes.at(static_cast<std::size_t>(kind)); }

const char* codeName(RoundKind kind) { return useCodes.at(static_cast<std::size_t>(kind)); }

std::optional<Severity> severityFromCode(std::string_view code)
{
    return fromCode<Severity>(severityCodes, code);
}

std::optional<ItemKind> itemKindFromCode(std::string_view code)
{
    return fromCode<ItemKind>(kindCodes, code);
}

std::optional<RoundKind> roundKindFromCode(std::string_view code)
{
    return fromCode<RoundKind>(useCodes, code);
}

}
