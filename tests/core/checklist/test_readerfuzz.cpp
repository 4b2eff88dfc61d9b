// SPDX-License-Identifier: MIT
#include "core/checklist/reader.h"

#include "sampledocument.h"

#include <algorithm>
#include <array>
#include <doctest/doctest.h>
#include <random>

using namespace cradlepost;

namespace {

/** Breaks a text in one of the ways that damaged disks, editors and people do. */
class Mutator
{
public:
    explicit Mutator(unsigned seed)
        : m_random(seed)
    {
    }

    std::string mutate(std::string text)
    {
        static constexpr std::array ways{&Mutator::flipByte, &Mutator::truncate, &Mutator::swapLines,
            &Mutator::repeatLine, &Mutator::dropLine, &Mutator::spliceValue, &Mutator::splicePiece,
            &Mutator::changeDigit, &Mutator::swapValues, &Mutator::swapNames};
        for (std::size_t times = 1 + below(2); times > 0 && !text.empty(); --times)
            (this->*ways.at(below(ways.size())))(text);
        return text;
    }

private:
    std::size_t below(std::size_t end)
    {
        return std::uniform_int_distribution<std::size_t>(0, end - 1)(m_random);
    }

    void flipByte(std::string& text)
    {
        char& byte = text[below(text.size())];
        byte = static_cast<char>(static_cast<unsigned char>(byte) ^ (1U << below(8)));
    }

    void truncate(std::string& text) { text.resize(below(text.size() + 1)); }

    /** Start and length of a line with its end. */
    std::pair<std::size_t, std::size_t> line(const std::string& text)
    {
        const std::size_t at = below(text.size());
        const std::size_t before = at == 0 ? std::string::npos : text.rfind('\n', at - 1);
        const std::size_t start = before == std::string::npos ? 0 : before + 1;
        const std::size_t end = text.find('\n', start);
        return {start, (end == std::string::npos ? text.size() : end + 1) - start};
    }
    void repeatLine(std::string& text)
    {
        const auto [start, length] = line(text);
        text.insert(start, text.substr(start, length));
    }
    void dropLine(std::string& text)
    {
        const auto [start, length] = line(text);
        text.erase(start, length);
    }
    void swapLines(std::string& text)
    {
        const auto [start, length] = line(text);
        const std::string moved = text.substr(start, length);
        text.erase(start, length);
        if (text.empty())
            text = moved;
        else
            text.insert(line(text).first, moved);
    }

    /** Puts another value after a colon, up to the next comma or end of the line. */
    void spliceValue(std::string& text)
    {
        static const std::vector<std::string> values{"null", "true", "0", "-1", "1", "99999999999999999999",
            "1e308", "0.1", "\"\"", "\" \"", "\"26.5\"", "\"\\u0000\"", "[]", "{}", "[[[[]]]]",
            "{\"en\":\"a\"}", "\"measure\"", "\"kit\"", "\"cylinder\"", "9223372036854775807",
            "-9223372036854775808"};
        const auto [start, length] = value(text);
        text.replace(start, length, values.at(below(values.size())));
    }
    /** Start and length of a value after a colon, up to what ends it; nothing at the end when there is none.
     */
    std::pair<std::size_t, std::size_t> value(const std::string& text)
    {
        const std::size_t colon = text.find(": ", below(text.size()));
        if (colon == std::string::npos)
            return {text.size(), 0};
        const std::size_t end = std::min(text.find_first_of(",\n}]", colon), text.size());
        return {colon + 2, end - colon - 2};
    }
    void swapValues(std::string& text)
    {
        const auto [start, length] = value(text);
        const std::string taken = text.substr(start, length);
        const auto [otherStart, otherLength] = value(text);
        const std::string other = text.substr(otherStart, otherLength);
        if (start + length > otherStart && otherStart + otherLength > start)
            return; // the same one, or one inside the other
        const bool isBefore = start < otherStart;
        text.replace(std::max(start, otherStart), isBefore ? otherLength : length, isBefore ? taken : other);
        text.replace(std::min(start, otherStart), isBefore ? length : otherLength, isBefore ? other : taken);
    }
    void swapNames(std::string& text)
    {
        static const std::vector<std::string> names{
            "id", "label", "help", "source", "low", "high", "par", "kind"};
        const std::string from = "\"" + names.at(below(names.size())) + "\":";
        const std::size_t at = text.find(from, below(text.size()));
        if (at != std::string::npos)
            text.replace(at, from.size(), "\"" + names.at(below(names.size())) + "\":");
    }
    void changeDigit(std::string& text)
    {
        const std::size_t at = text.find_first_of("0123456789", below(text.size()));
        if (at != std::string::npos)
            text[at] = static_cast<char>('0' + below(10));
    }

    void splicePiece(std::string& text)
    {
        const std::size_t from = below(text.size());
        const std::string piece = text.substr(from, 1 + below(200));
        text.insert(below(text.size()), piece);
    }

    std::mt19937 m_random;
};

/** A checklist that was read keeps the promises that others build on. */
void checkPromises(const Checklist& checklist)
{
    REQUIRE(checklist.itemCount() >= 1);
    REQUIRE(checklist.itemCount() <= 120);
    REQUIRE(checklist.version >= 1);
    for (std::size_t i = 0; i < checklist.itemCount(); ++i) {
        const Item& item = checklist.item(i);
        REQUIRE(checklist.position(item.id) == i);
        REQUIRE_FALSE(item.label.in("en").empty());
        REQUIRE_FALSE(item.source.empty());
        if (const auto* rule = std::get_if<MeasureRule>(&item.rule)) {
            REQUIRE_FALSE(rule->limits.empty());
            for (const LimitSet& limits : rule->limits) {
                REQUIRE((limits.low || limits.high));
                REQUIRE(limits.low.value_or(rule->plausibleLow) >= rule->plausibleLow);
                REQUIRE(limits.high.value_or(rule->plausibleHigh) <= rule->plausibleHigh);
            }
        }
        if (const auto* rule = std::get_if<CylinderRule>(&item.rule))
            REQUIRE(rule->flow > Decimal{});
    }
}

struct Tally
{
    int valid = 0;
    int refusedAsJson = 0;
    int refusedByRule = 0;
};

void readMutated(const std::string& text, int times, unsigned seed, Tally& tally)
{
    Mutator mutator(seed);
    for (int i = 0; i < times; ++i) {
        const std::string mutated = mutator.mutate(text);
        const auto read = readChecklist(mutated);
        if (read) {
            ++tally.valid;
            checkPromises(*read);
            continue;
        }
        const std::string& message = read.error().message;
        const bool asJson = message.find(", column ") != std::string::npos;
        ++(asJson ? tally.refusedAsJson : tally.refusedByRule);
        if (!message.starts_with("line ") || message.size() <= 10)
            FAIL("a message without a line: ", message);
    }
}

}

TEST_CASE("a damaged document is read whole or refused with its line, never worse")
{
    Tally tally;
    readMutated(sampleDocument(), 20'000, 20261125, tally);
    readMutated(builtInChecklistText(RoundKind::PreBirth), 400, 7, tally);
    readMutated(builtInChecklistText(RoundKind::Shift), 100, 11, tally);
    MESSAGE(
        "valid ", tally.valid, ", no JSON ", tally.refusedAsJson, ", a rule broken ", tally.refusedByRule);
    // The mutations must reach behind the JSON reader, or they would test nothing of this one.
    CHECK(tally.refusedByRule > 3'500);
    CHECK(tally.valid > 1'500);
}
