// SPDX-License-Identifier: MIT
#include "app/compute/options.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace cradlepost::compute {

namespace {

std::string shortText(double value)
{
    char text[32];
    return {text, std::to_chars(text, text + sizeof text, value).ptr};
}

std::vector<std::string> split(const std::string& text)
{
    std::vector<std::string> parts;
    std::size_t from = 0;
    while (from <= text.size()) {
        const auto to = std::min(text.find(',', from), text.size());
        parts.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    return parts;
}

tl::unexpected<Error> refuse(const OptionSpec& spec, const std::string& text, const std::string& wanted)
{
    return fail(ErrorCode::InvalidArgument, "--" + spec.name + " takes " + wanted + ", not '" + text + "'");
}

std::string rangeOf(const OptionSpec& spec)
{
    const std::string kind = spec.kind == OptionKind::Whole ? "a whole number " : "a number ";
    return kind + (spec.open ? "strictly between " : "from ") + shortText(spec.low)
        + (spec.open ? " and " : " to ") + shortText(spec.high);
}

bool isRisingRows(const std::string& text)
{
    std::int64_t before = 0;
    for (const auto& part : split(text)) {
        const auto row = readWhole(part);
        if (!row || *row <= before || *row > 1'000'000'000)
            return false;
        before = *row;
    }
    return true;
}

}

std::optional<double> readNumber(const std::string& text)
{
    double value = 0;
    const char* const end = text.data() + text.size();
    const char* const begin = text.data() + (text.size() > 1 && text[0] == '+' && text[1] != '-' ? 1 : 0);
    const auto [stop, error] = std::from_chars(begin, end, value);
    if (error != std::errc() || stop != end || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::optional<std::int64_t> readWhole(const std::string& text)
{
    std::int64_t value = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, value);
    if (error != std::errc() || stop != end)
        return std::nullopt;
    return value;
}

Result<Options> Options::read(const std::vector<OptionSpec>& specs, const GivenOptions& given)
{
    Options options;
    for (const auto& [name, text] : given) {
        const auto spec
            = std::find_if(specs.begin(), specs.end(), [&](const OptionSpec& s) { return s.name == name; });
        if (spec == specs.end())
            return fail(ErrorCode::InvalidArgument, "there is no option --" + name + " for this method");
        if (auto done = options.set(*spec, text); !done)
            return tl::unexpected(done.error());
    }
    for (const auto& spec : specs) {
        if (spec.fallback.empty() || options.has(spec.name))
            continue;
        if (auto done = options.set(spec, spec.fallback); !done)
            return tl::unexpected(done.error());
    }
    return options;
}

Result<void> Options::set(const OptionSpec& spec, const std::string& text)
{
    if (spec.kind == OptionKind::Number || spec.kind == OptionKind::Whole) {
        const auto value = readNumber(text);
        const bool sound = value
            && (spec.open ? *value > spec.low && *value < spec.high
                          : *value >= spec.low && *value <= spec.high);
        if (!sound || (spec.kind == OptionKind::Whole && std::floor(*value) < *value))
            return refuse(spec, text, rangeOf(spec));
        m_numbers[spec.name] = *value;
    } else if (spec.kind == OptionKind::Choice) {
        std::string all;
        for (const auto& choice : spec.choices)
            all += (all.empty() ? "" : ", ") + choice;
        if (std::find(spec.choices.begin(), spec.choices.end(), text) == spec.choices.end())
            return refuse(spec, text, "one of " + all);
    } else if (spec.kind == OptionKind::Rows && !isRisingRows(text)) {
        return refuse(spec, text, "rising row numbers parted by commas, such as 13,25");
    } else if (spec.kind == OptionKind::Words) {
        const auto parts = split(text);
        if (std::find(parts.begin(), parts.end(), "") != parts.end())
            return refuse(spec, text, "words parted by commas");
    }
    m_texts[spec.name] = text;
    return {};
}

std::optional<double> Options::maybe(const std::string& name) const
{
    const auto at = m_numbers.find(name);
    return at == m_numbers.end() ? std::nullopt : std::optional(at->second);
}

std::int64_t Options::whole(const std::string& name) const
{
    return static_cast<std::int64_t>(m_numbers.at(name));
}

std::vector<std::string> Options::words(const std::string& name) const
{
    return has(name) ? split(word(name)) : std::vector<std::string>{};
}

std::vector<std::size_t> Options::rows(const std::string& name) const
{
    std::vector<std::size_t> rows;
    for (const auto& part : words(name))
        rows.push_back(static_cast<std::size_t>(*readWhole(part)));
    return rows;
}

}
