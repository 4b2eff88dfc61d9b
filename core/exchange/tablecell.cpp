// SPDX-License-Identifier: MIT
#include "core/exchange/tablecell.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdio>

namespace cradlepost {

namespace {
struct CellText
{
    std::string operator()(std::monostate) const { return {}; }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(double number) const { return numberText(number); }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(Date day) const { return toIso(day); }
    std::string operator()(Instant moment) const { return toIso(moment); }
};
}

std::string numberText(double number)
{
    if (!std::isfinite(number))
        return {};
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number == 0.0 ? 0.0 : number).ptr;
    return {text.data(), end};
}

std::string toIso(Instant moment)
{
    const auto day = std::chrono::floor<std::chrono::days>(moment);
    const std::chrono::hh_mm_ss clock(moment - day);
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d", static_cast<int>(clock.hours().count()),
        static_cast<int>(clock.minutes().count()), static_cast<int>(clock.seconds().count()));
    std::string iso = toIso(Date(day)) + text.data();
    if (const auto rest = clock.subseconds().count(); rest != 0) {
        std::snprintf(text.data(), text.size(), ".%03d", static_cast<int>(rest));
        iso += text.data();
    }
    return iso + 'Z';
}

std::string cellText(const Cell& cell) { return std::visit(CellText(), cell); }

const char* kindName(ColumnKind kind)
{
    switch (kind) {
    case ColumnKind::Text:
        return "text";
    case ColumnKind::Code:
        return "code";
    case ColumnKind::Count:
        return "count";
    case ColumnKind::Number:
        return "number";
    case ColumnKind::Share:
        return "share";
    case ColumnKind::Day:
        return "day";
    case ColumnKind::Time:
        return "time";
    case ColumnKind::Flag:
        return "flag";
    }
    return "text";
}

}
