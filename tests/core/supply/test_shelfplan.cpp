// SPDX-License-Identifier: MIT
#include "core/supply/shelfplan.h"

#include "core/checklist/reader.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a stock book begins with what the checklist counts, each count and each part of a kit once")
{
    const auto read = builtInChecklist(RoundKind::Shift);
    REQUIRE(read.has_value());
    const Checklist& list = *read;
    const Instant at = std::chrono::sys_days(std::chrono::year(2026) / 11 / 24);
    const auto shelves = shelvesOf(list, "en", at);
    std::size_t counts = 0;
    for (std::size_t i = 0; i < list.itemCount(); ++i)
        counts += std::holds_alternative<CountRule>(list.item(i).rule) ? 1 : 0;
    CHECK(shelves.size() > counts); // and the parts of kits
    for (const StockItem& item : shelves) {
        CAPTURE(item.id);
        CHECK(checkItem(item).has_value());
        const auto same = [&](const StockItem& other) { return other.id == item.id; };
        CHECK(std::count_if(shelves.begin(), shelves.end(), same) == 1);
    }
    for (const StockItem& item : shelvesOf(list, "hi", at))
        CHECK(checkItem(item).has_value());
}

TEST_CASE("a new shelf has the same id wherever it is called the same, in any script")
{
    CHECK(shelfIdFor("Cotton wool, rolls") == "cotton-wool-rolls");
    CHECK(shelfIdFor(" 5% glucose ") == "5-glucose");
    CHECK(shelfIdFor("!") == "shelf");
    const std::string hindi = shelfIdFor("रुई");
    CHECK(hindi == shelfIdFor("रुई"));
    CHECK(hindi != shelfIdFor("रूई"));
    for (const std::string& id : {hindi, shelfIdFor(std::string(60, 'x')), shelfIdFor("Ünit")}) {
        CAPTURE(id);
        CHECK(checkItem({.id = id, .name = "x"}).has_value());
    }
}

TEST_CASE("a shelf is called as the checklist words it, until the ward gives it a name of its own")
{
    const Checklist list = builtInChecklist(RoundKind::Shift).value();
    const std::string hindi = shelfName("Oxytocin ampoules, in date", list, "hi").value();
    CHECK(hindi == list.item(*list.position("oxytocin")).label.in("hi"));
    CHECK(shelfName(hindi, list, "en") == "Oxytocin ampoules, in date");
    CHECK(shelfName("Sterile cord ties", list, "hi").value() != "Sterile cord ties"); // a part of a kit
    CHECK(shelfName("Oxytocin, red box", list, "hi") == std::nullopt);
    CHECK(shelfName("Oxytocin", list, "hi") == std::nullopt); // not by its beginning
    CHECK(shelfName("Cotton wool", list, "hi") == std::nullopt);
    // Not the label of an item that is no shelf.
    CHECK(shelfName("No draught", list, "hi") == std::nullopt);
}
