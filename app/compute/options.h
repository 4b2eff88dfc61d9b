// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace cradlepost::compute {

enum class OptionKind {
    Number, ///< between low and high
    Whole,
    Choice, ///< one of a few words
    Rows, ///< rising row numbers, parted by commas
    Words, ///< words parted by commas
};

/** One option of a method, as `compute METHOD --help` shows it. */
struct OptionSpec
{
    std::string name;
    OptionKind kind = OptionKind::Number;
    std::string meaning;
    std::string fallback; ///< as text; empty: the option may be left out
    double low = 0; ///< of Number and Whole, inclusive unless `open`
    double high = 0;
    bool open = false; ///< the ends themselves are refused
    std::vector<std::string> choices;
};

using GivenOptions = std::map<std::string, std::string>;

/** Options read and checked against their specification. */
class Options
{
public:
    /** Refuses (InvalidArgument) an unknown name and a value outside of what its specification allows. */
    static Result<Options> read(const std::vector<OptionSpec>& specs, const GivenOptions& given);

    [[nodiscard]] bool has(const std::string& name) const { return m_texts.count(name) > 0; }
    /** The named option must be there: given, or with a fallback. */
    [[nodiscard]] double number(const std::string& name) const { return m_numbers.at(name); }
    [[nodiscard]] std::optional<double> maybe(const std::string& name) const;
    [[nodiscard]] std::int64_t whole(const std::string& name) const;
    [[nodiscard]] const std::string& word(const std::string& name) const { return m_texts.at(name); }
    /** Empty when not given. */
    [[nodiscard]] std::vector<std::string> words(const std::string& name) const;
    /** Row numbers counted from 1; empty when not given. */
    [[nodiscard]] std::vector<std::size_t> rows(const std::string& name) const;

private:
    Result<void> set(const OptionSpec& spec, const std::string& text);
    std::map<std::string, std::string> m_texts;
    std::map<std::string, double> m_numbers;
};

/** A finite number written with a point, the whole text; nothing else. */
std::optional<double> readNumber(const std::string& text);
std::optional<std::int64_t> readWhole(const std::string& text);

}
