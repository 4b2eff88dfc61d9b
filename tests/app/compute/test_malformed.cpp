// SPDX-License-Identifier: MIT
#include "app/compute/compute.h"

#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <limits>
#include <random>

using namespace cradlepost;
using namespace cradlepost::compute;

namespace {

const std::string scraps[]
    = {"", "-1", "nan", "inf", "1e308", "-1e308", "1e-320", "9007199254740992", "9223372036854775807", "0",
        "0.5", "x", "\"", "\"\"", ",", "\n", "\r", "need", "yes", "1e999", "\xC3", "\xF0\x9F\x98\x80", " ",
        ";", "0x1F", "1.5", "999999999999999999999", "-0", "1,2", std::string(1, '\0'), "36.70", "1"};

/** Breaks an example in a few places: bytes, cells, lines. */
std::string broken(std::string text, std::mt19937_64& random)
{
    const auto pick = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
    for (auto cuts = 1 + pick(4); cuts > 0 && !text.empty(); --cuts) {
        const auto at = pick(text.size());
        switch (pick(6)) {
        case 0:
            text.erase(at, 1 + pick(5));
            break;
        case 1:
            text.insert(at, scraps[pick(std::size(scraps))]);
            break;
        case 2:
            text[at] = static_cast<char>(random() & 0xFF);
            break;
        case 3:
            text.resize(at);
            break;
        default: { // one cell below the header
            const auto line = text.find('\n', at);
            const auto from = text.find_first_of(",\n", line == std::string::npos ? at : line);
            if (from == std::string::npos)
                break;
            const auto to = std::min(text.find_first_of(",\n", from + 1), text.size());
            text.replace(from + 1, to - from - 1, scraps[pick(std::size(scraps))]);
        }
        }
    }
    return text;
}

GivenOptions anyOptions(const Method& method, std::mt19937_64& random)
{
    GivenOptions given;
    for (const auto& option : method.options) {
        if (random() % 8 == 0)
            given[option.name] = scraps[random() % std::size(scraps)];
    }
    return given;
}

}

TEST_CASE("ten thousand malformed tables are refused with a message or answered with sound numbers")
{
    std::mt19937_64 random(10'000);
    int refused = 0;
    int answered = 0;
    while (refused < 10'000) {
        const auto& method = methods()[random() % methods().size()];
        const auto text = broken(method.example, random);
        const auto report = compute::compute(method.name, text, anyOptions(method, random));
        if (report) {
            ++answered;
            const auto json = toJsonLine(*report);
            REQUIRE(parseJson(json));
            continue;
        }
        ++refused;
        CAPTURE(method.name);
        CAPTURE(text);
        CAPTURE(report.error().message);
        CHECK(report.error().message.size() > 5);
        if (report.error().code == ErrorCode::BadDocument)
            CHECK(report.error().message.find("line ") == 0);
        else
            CHECK((report.error().code == ErrorCode::InvalidArgument
                || report.error().code == ErrorCode::NotFound
                || report.error().code == ErrorCode::Undefined));
    }
    CHECK(answered > 500);
}

TEST_CASE("no answer to a sound or an odd table holds a number that is none")
{
    // Whole answers are walked: whatever the numbers in the table, no infinity and no NaN comes out.
    std::mt19937_64 random(754);
    const std::string numbers[] = {"0", "1", "2", "5", "17", "1000000", "9007199254740992", "0.5", "1e-300",
        "1e150", "1e308", "0.999999999999", "3.5", "100"};
    int answers = 0;
    for (int i = 0; i < 6000; ++i) {
        const auto& method = methods()[random() % methods().size()];
        std::vector<std::string> names;
        for (const auto& column : method.columns) {
            if (!column.optional || random() % 2 == 0)
                names.push_back(column.name);
        }
        std::string text;
        appendCsvLine(text, names);
        for (auto rows = 1 + random() % 12; rows > 0; --rows) {
            for (auto& name : names)
                name = numbers[random() % std::size(numbers)];
            appendCsvLine(text, names);
        }
        const auto report = compute::compute(method.name, text);
        if (!report)
            continue;
        ++answers;
        const auto finite = [&](const Json& json, const auto& self) -> bool {
            if (const auto* number = std::get_if<double>(&json.value))
                return std::abs(*number) <= std::numeric_limits<double>::max();
            if (const auto* array = json.asArray())
                return std::all_of(
                    array->begin(), array->end(), [&](const Json& e) { return self(e, self); });
            if (const auto* object = json.asObject())
                return std::all_of(
                    object->begin(), object->end(), [&](const JsonMember& m) { return self(m.value, self); });
            return true;
        };
        CAPTURE(method.name);
        CAPTURE(text);
        CHECK(finite(Json(report->body), finite));
    }
    CHECK(answers > 300);
}
