// SPDX-License-Identifier: MIT
#include "core/supply/birthboard.h"
#include "core/supply/equipment.h"
#include "core/supply/fridgereading.h"
#include "core/supply/handover.h"
#include "core/supply/warmerclock.h"

#include "shelf.h"
#include "tests/core/stats/random.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

using Reading = std::optional<std::string> (*)(const Json&);

/** The canonical text of what a reader makes of a body, or nothing when it refuses it. */
template <class T, Result<T> (*Read)(const Json&)> std::optional<std::string> through(const Json& body)
{
    const auto read = Read(body);
    return read ? std::optional(canonicalText(toBody(*read))) : std::nullopt;
}

struct Kind
{
    const char* body;
    Reading read;
};

const std::vector<Kind>& kinds()
{
    static const std::vector<Kind> all{
        {R"({"at":5,"emergency":1,"expires":true,"fridge":"f","frost":true,"item":"i","kind":"item","minimum":2,)"
         R"("name":"N","pack":10,"par":3,"perBirth":"1.5","retired":true,"serves":["a","b"]})",
            &through<StockItem, stockItemFromBody>},
        {R"({"at":5,"expiry":"2027-03-31","item":"i","kind":"count-correction","lot":"L","quantity":4,)"
         R"("reason":"lost","scope":"lot"})",
            &through<StockMovement, stockMovementFromBody>},
        {R"({"at":5,"device":"d","did":"added","state":"spare","what":{"calibrationDays":9,"kind":"scale",)"
         R"("label":"S","number":"7","serves":["a"],"serviceDays":30,"spareFor":"e"}})",
            &through<EquipmentEvent, equipmentEventFromBody>},
        {R"({"at":5,"babies":2,"birth":"b","change":"expected","expected":9,"preterm":true})",
            &through<BirthEvent, birthEventFromBody>},
        {R"({"at":5,"device":"d","switched":"off"})", &through<WarmerSwitch, warmerSwitchFromBody>},
        {R"({"at":5,"celsius":"5","fridge":"f","highest":"8.5","lowest":"2"})",
            &through<FridgeReading, fridgeReadingFromBody>},
        {R"({"at":5,"by":"AB","given":{"seq":1,"station":"s"}})",
            &through<HandoverTaken, handoverTakenFromBody>},
        {R"({"applicable":3,"at":5,"births":[{"babies":1,"birth":"b","expected":9}],"by":"AB","date":"2026-11-24",)"
         R"("gaps":[{"due":9,"item":"i","nth":1,"owner":"CD","reason":"absent","severity":"minor"}],"met":2,)"
         R"("requests":[{"ask":"restock","by":9,"subject":"i"}],"shift":"day"})",
            &through<HandoverGiven, handoverGivenFromBody>}};
    return all;
}

std::string broken(std::string text, stats::Dice& dice)
{
    static const std::string letters = "\"{}[],:0123456789abcdetrufalse-. ";
    for (std::int64_t n = dice.whole(1, 3); n > 0; --n) {
        const auto place
            = static_cast<std::size_t>(dice.whole(0, static_cast<std::int64_t>(text.size()) - 1));
        const char letter
            = letters[static_cast<std::size_t>(dice.whole(0, static_cast<std::int64_t>(letters.size()) - 1))];
        if (dice.chance(0.3))
            text.erase(place, 1);
        else if (dice.chance(0.5))
            text.insert(place, 1, letter);
        else
            text[place] = letter;
        if (text.empty())
            return "{}";
    }
    return text;
}

}

TEST_CASE("each record of the supplies is read and written as the same text")
{
    for (const Kind& kind : kinds()) {
        CAPTURE(kind.body);
        CHECK(kind.read(parseJson(kind.body).value()) == kind.body);
    }
}

TEST_CASE("a record of the supplies with a part missing is refused or says less, never something else")
{
    for (const Kind& kind : kinds()) {
        const Json::Object whole = *parseJson(kind.body).value().asObject();
        for (std::size_t i = 0; i < whole.size(); ++i) {
            Json::Object less = whole;
            less.erase(less.begin() + static_cast<std::ptrdiff_t>(i));
            CAPTURE(whole[i].name);
            CHECK(kind.read(less).value_or(canonicalText(less)) == canonicalText(less));
        }
    }
}

TEST_CASE("a broken record of the supplies is refused, or it is another sound one")
{
    stats::Dice dice(4711);
    int parsed = 0;
    for (int run = 0; run < 8000; ++run) {
        const Kind& kind = kinds()[static_cast<std::size_t>(dice.whole(0, 7))];
        const std::string text = broken(kind.body, dice);
        const auto body = parseJson(text);
        if (!body)
            continue;
        ++parsed;
        CAPTURE(text);
        REQUIRE(kind.read(*body).value_or(canonicalText(*body)) == canonicalText(*body));
    }
    CHECK(parsed > 800);
}

TEST_CASE("no reader of the supplies takes another kind of value for a record")
{
    for (const Kind& kind : kinds()) {
        for (const char* text : {"null", "[]", "{}", "7", "\"x\""})
            CHECK_FALSE(kind.read(parseJson(text).value()).has_value());
    }
}
