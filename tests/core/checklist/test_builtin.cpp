// SPDX-License-Identifier: MIT
#include "core/checklist/reader.h"

#include <array>
#include <doctest/doctest.h>
#include <fstream>
#include <functional>
#include <iterator>
#include <set>

using namespace cradlepost;

namespace {

constexpr std::array uses{RoundKind::Shift, RoundKind::PreBirth, RoundKind::AfterUse};

Checklist builtIn(RoundKind use)
{
    auto read = builtInChecklist(use);
    REQUIRE_MESSAGE(read.has_value(), read.error().message);
    return *std::move(read);
}

const Item& itemOf(const Checklist& checklist, std::string_view id)
{
    const auto position = checklist.position(id);
    REQUIRE_MESSAGE(position.has_value(), "there is no item ", std::string(id));
    return checklist.item(*position);
}

template <class Rule> const Rule& ruleOf(const Checklist& checklist, std::string_view id)
{
    const Rule* rule = std::get_if<Rule>(&itemOf(checklist, id).rule);
    REQUIRE_MESSAGE(rule != nullptr, std::string(id), " is of another kind");
    return *rule;
}

void eachItem(const Checklist& checklist, const std::function<void(const Item&)>& look)
{
    for (std::size_t i = 0; i < checklist.itemCount(); ++i)
        look(checklist.item(i));
}

/** Characters as the eye counts them at most: vowel signs stand over others, so this errs to the long side.
 */
std::size_t codePoints(const std::string& text)
{
    std::size_t count = 0;
    for (const char c : text)
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1U : 0U;
    return count;
}

bool hasDevanagari(const std::string& text)
{
    return text.find("\xE0\xA4") != std::string::npos || text.find("\xE0\xA5") != std::string::npos;
}

/** Every wording that has to fit one line of the window. */
std::vector<Wording> shortWordings(const Checklist& checklist)
{
    std::vector<Wording> wordings{checklist.title};
    for (const Section& section : checklist.sections)
        wordings.push_back(section.title);
    eachItem(checklist, [&](const Item& item) {
        wordings.push_back(item.label);
        if (const auto* rule = std::get_if<MeasureRule>(&item.rule))
            for (const LimitSet& limits : rule->limits)
                wordings.push_back(limits.name);
        if (const auto* rule = std::get_if<StepsRule>(&item.rule))
            for (const Step& step : rule->steps)
                wordings.push_back(step.label);
        if (const auto* rule = std::get_if<KitRule>(&item.rule))
            for (const KitPart& part : rule->parts)
                wordings.push_back(part.label);
        if (const auto* rule = std::get_if<CylinderRule>(&item.rule))
            for (const CylinderSize& size : rule->sizes)
                wordings.push_back(size.name);
    });
    return wordings;
}

}

TEST_CASE("the documents in the program are those in the resources folder")
{
    const std::array names{"shift-readiness", "pre-birth", "after-use"};
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const std::string path
            = std::string(CRADLEPOST_SOURCE_DIR) + "/resources/checklists/" + names.at(i) + ".json";
        std::ifstream file(path, std::ios::binary);
        REQUIRE_MESSAGE(file.good(), path);
        const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
        CHECK_FALSE(text.empty());
        CHECK(text == builtInChecklistText(uses.at(i)));
        const Checklist checklist = builtIn(uses.at(i));
        CHECK(checklist.id == names.at(i));
        CHECK(checklist.use == uses.at(i));
        CHECK(checklist.version == 1);
    }
}

TEST_CASE("a recheck walks with the shift checklist")
{
    CHECK(builtIn(RoundKind::Recheck) == builtIn(RoundKind::Shift));
}

TEST_CASE("the shift round has eight sections and 56 to 64 items of weighed severity")
{
    const Checklist shift = builtIn(RoundKind::Shift);
    const std::array ids{"room", "warmer-corner", "resuscitation", "kits-linen", "hands-gloves", "medicines",
        "scale-thermometer", "papers-people"};
    REQUIRE(shift.sections.size() == ids.size());
    for (std::size_t i = 0; i < ids.size(); ++i)
        CHECK(shift.sections[i].id == ids.at(i));
    CHECK(shift.itemCount() >= 56);
    CHECK(shift.itemCount() <= 64);
    std::map<Severity, int> severities;
    eachItem(shift, [&](const Item& item) { ++severities[item.severity]; });
    CHECK(severities[Severity::Critical] >= 12);
    CHECK(severities[Severity::Critical] <= 16);
    CHECK(severities[Severity::Major] >= 23);
    CHECK(severities[Severity::Major] <= 28);
}

TEST_CASE("the shift round uses every kind of item")
{
    std::set<ItemKind> kinds;
    eachItem(builtIn(RoundKind::Shift), [&](const Item& item) { kinds.insert(item.kind()); });
    CHECK(kinds.size() == std::variant_size_v<ItemRule>);
}

TEST_CASE("the check before a birth stays short")
{
    CHECK(builtIn(RoundKind::PreBirth).itemCount() <= 12);
    eachItem(builtIn(RoundKind::PreBirth), [](const Item& item) {
        CAPTURE(item.id);
        CHECK(item.kind() != ItemKind::Kit); // counting parts and lots takes longer than there is time
        const auto* count = std::get_if<CountRule>(&item.rule);
        CHECK((count == nullptr || !count->expires));
    });
}

TEST_CASE("every wording is there in English and in Hindi")
{
    for (const RoundKind use : uses) {
        const Checklist checklist = builtIn(use);
        std::vector<Wording> wordings = shortWordings(checklist);
        eachItem(checklist, [&](const Item& item) {
            wordings.push_back(item.help);
            wordings.push_back(item.whenNotMet);
        });
        for (const Wording& wording : wordings) {
            CAPTURE(wording.in("en"));
            CHECK(wording.texts().size() == 2);
            CHECK(wording.has("en"));
            CHECK(wording.has("hi"));
            CHECK(hasDevanagari(wording.in("hi")));
            CHECK_FALSE(hasDevanagari(wording.in("en")));
        }
    }
}

TEST_CASE("labels fit one line")
{
    for (const RoundKind use : uses) {
        for (const Wording& wording : shortWordings(builtIn(use))) {
            for (const auto& [language, text] : wording.texts()) {
                CAPTURE(text);
                CHECK(codePoints(text) <= 45);
            }
        }
    }
}

TEST_CASE("an id that stands in two documents means the same item")
{
    std::map<std::string, Item> known;
    std::map<std::string, int> seen;
    for (const RoundKind use : uses) {
        eachItem(builtIn(use), [&](const Item& item) {
            CAPTURE(item.id);
            const auto [at, added] = known.emplace(item.id, item);
            ++seen[item.id];
            CHECK(at->second == item);
        });
    }
    for (const char* everywhere : {"bag-function-test", "mask-size-1", "suction-pressure", "towels"})
        CHECK(seen[everywhere] == 3);
    for (const char* twice :
        {"room-temperature", "draught", "warmer-on-since", "helper-named", "delivery-kits"})
        CHECK(seen[twice] == 2);
}

TEST_CASE("the items that gaps, stock and the window rely on are of their kinds")
{
    const Checklist shift = builtIn(RoundKind::Shift);
    CHECK(ruleOf<MeasureRule>(shift, "room-temperature").limits.size() >= 3);
    ruleOf<ConfirmRule>(shift, "draught");
    ruleOf<ConfirmRule>(shift, "helper-named");
    CHECK(ruleOf<SinceRule>(shift, "warmer-on-since").minutes == std::chrono::minutes{30});
    CHECK(ruleOf<CountRule>(shift, "towels") == CountRule{.par = 2, .expires = false});
    CHECK(ruleOf<StepsRule>(shift, "bag-function-test").steps.size() >= 4);
    ruleOf<StepsRule>(shift, "mask-size-1");
    ruleOf<StepsRule>(shift, "mask-size-0");
    ruleOf<CylinderRule>(shift, "oxygen-cylinder");
    CHECK(ruleOf<KitRule>(shift, "delivery-kits").par == 4);
    CHECK(ruleOf<CountRule>(shift, "oxytocin").expires);
    CHECK(ruleOf<CountRule>(shift, "vitamin-k").expires);
    ruleOf<MeasureRule>(shift, "scale-check");
}

TEST_CASE("limits stand as their sources give them")
{
    const Checklist shift = builtIn(RoundKind::Shift);
    // National newborn programmes 26 to 28; WHO 1997 25 to 28 (from memory).
    const auto& room = ruleOf<MeasureRule>(shift, "room-temperature");
    CHECK(room.limits.at(0).id == "practice-26-28");
    CHECK(room.limits.at(0).low == Decimal{26'000});
    CHECK(room.limits.at(0).high == Decimal{28'000});
    CHECK(room.limits.at(1).id == "who-25-28");
    CHECK(room.limits.at(1).low == Decimal{25'000});
    // AAP/AHA equipment list: 80 to 100 mmHg.
    const auto& suction = ruleOf<MeasureRule>(shift, "suction-pressure");
    CHECK(suction.unit == "mmHg");
    CHECK(suction.limits.at(0).low == Decimal{80'000});
    CHECK(suction.limits.at(0).high == Decimal{100'000});
    // WHO, Immunization in Practice, module 2: 2 to 8.
    const auto& fridge = ruleOf<MeasureRule>(shift, "fridge-temperature");
    CHECK(fridge.limits.at(0).low == Decimal{2'000});
    CHECK(fridge.limits.at(0).high == Decimal{8'000});
}

TEST_CASE("gauge sizes agree with the published contents of full cylinders")
{
    const Checklist shift = builtIn(RoundKind::Shift);
    for (const CylinderSize& size : ruleOf<CylinderRule>(shift, "oxygen-cylinder").sizes) {
        CAPTURE(size.id);
        const double full = size.litresPerUnit.toDouble() * size.fullPressure.toDouble();
        // Nominal litres: India B 1500 and D 7000; US D 300-350, E 622-682, M 3000-3450, H about 6900;
        // UK E 680, F 1360 (trade tables). Factor tables differ from them by a tenth at most.
        const std::map<std::string, double> nominal{{"in-b", 1500}, {"in-b-psi", 1500}, {"in-d", 7000},
            {"us-d", 325}, {"us-e", 622}, {"us-m", 3225}, {"us-h", 6900}, {"uk-e", 680}, {"uk-f", 1360}};
        CHECK(full == doctest::Approx(nominal.at(size.id)).epsilon(0.1));
    }
}

TEST_CASE("every limit and every item names a source")
{
    for (const RoundKind use : uses) {
        eachItem(builtIn(use), [](const Item& item) {
            CAPTURE(item.id);
            CAPTURE(item.source);
            const bool dated = item.source.find_first_of("0123456789") != std::string::npos;
            const bool practice = item.source.find("common practice, no source") != std::string::npos;
            const bool memory = item.source.find("from memory") != std::string::npos;
            const bool named = item.source.find("list") != std::string::npos
                || item.source.find("FAQ") != std::string::npos
                || item.source.find("handbook") != std::string::npos;
            CHECK((dated || practice || memory || named));
        });
    }
}
