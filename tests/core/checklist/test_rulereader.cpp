// SPDX-License-Identifier: MIT
#include "core/checklist/reader.h"

#include "sampledocument.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

template <class Rule> Rule sampleRule(std::string_view itemId)
{
    const Checklist sample = readChecklist(sampleDocument()).value();
    return std::get<Rule>(sample.item(sample.position(itemId).value()).rule);
}

}

TEST_CASE("each of the seven rules is read with all its members")
{
    const auto measure = sampleRule<MeasureRule>("room-temperature");
    CHECK(measure.unit == "°C");
    CHECK(measure.decimals == 1);
    CHECK(measure.plausibleLow == Decimal{500});
    CHECK(measure.plausibleHigh == Decimal{50'000});
    REQUIRE(measure.limits.size() == 2);
    CHECK(measure.limits[0].id == "narrow");
    CHECK(measure.limits[0].low == Decimal{26'000});
    CHECK(measure.limits[0].high == Decimal{28'500});
    CHECK_FALSE(measure.limits[1].high.has_value());
    CHECK(measure.limits[1].source == "B");

    CHECK(sampleRule<SinceRule>("warmer") == SinceRule{std::chrono::minutes{30}, "D"});
    CHECK(sampleRule<StepsRule>("bag").steps.at(1).label.in("hi") == "भरना");
    CHECK(sampleRule<CountRule>("oxytocin") == CountRule{.par = 10, .expires = true});
    CHECK_NOTHROW(sampleRule<ConfirmRule>("draught"));

    const auto kit = sampleRule<KitRule>("kits");
    CHECK(kit.par == 4);
    CHECK(kit.parts.at(0).id == "ties");
    CHECK(kit.parts.at(0).perKit == 2);

    const auto cylinder = sampleRule<CylinderRule>("oxygen");
    CHECK(cylinder.minutes == std::chrono::minutes{120});
    CHECK(cylinder.flow == Decimal{2'500});
    CHECK(cylinder.source == "E");
    CHECK(cylinder.sizes.at(0).unit == "psi");
    CHECK(cylinder.sizes.at(0).litresPerUnit == Decimal{280});
    CHECK(cylinder.sizes.at(0).residual == Decimal{200'000});
    CHECK(cylinder.sizes.at(0).fullPressure == Decimal{2'015'000});
}

TEST_CASE("a rule is an object of a known kind")
{
    const std::string place = "line 31, section 'room', item 'draught': ";
    for (const Breakage& breakage : std::vector<Breakage>{
             {"{\"kind\": \"confirm\"}", "{\"kind\": \"yes\"}",
                 {place + "rule: 'kind' must be confirm, measure"}},
             {"{\"kind\": \"confirm\"}", "{}", {place + "rule: 'kind' must be confirm, measure"}},
             {"{\"kind\": \"confirm\"}", "true", {place + "rule: 'kind' must be confirm, measure"}},
             {"{\"kind\": \"confirm\"}", "{\"kind\": \"confirm\", \"par\": 1}",
                 {place + "confirm: 'par' is not a known member"}},
         })
        checkRefused(breakage);
}

TEST_CASE("a fault of a measure is named with the rule")
{
    const std::string place = ", section 'room', item 'room-temperature': measure: ";
    for (const Breakage& breakage : std::vector<Breakage>{
             {"\"low\": 26", "\"low\": 29", {"line 21" + place + "low 29 is above high 28.5"}},
             {"\"unit\": \"°C\",", "", {"line 18" + place + "'unit' is missing"}},
             {"\"°C\"", "\"\"", {"line 18" + place + "'unit' must not be empty"}},
             {"\"decimals\": 1", "\"decimals\": 4", {"line 18" + place + "'decimals' is 4, must be 0 to 3"}},
             {"\"decimals\": 1", "\"decimals\": 0",
                 {"line 21" + place + "limits: 'high' 28.5 has more decimals than the instrument shows"}},
             {"{\"low\": \"0.5\", \"high\": 50}", "[0, 50]",
                 {"line 19" + place + "plausible: must be an object"}},
             {"\"low\": \"0.5\"", "\"low\": 50",
                 {"line 19" + place + "'plausible' low 50 is not below high 50"}},
             {"\"low\": \"0.5\"", "\"low\": 0.5",
                 {"line 19" + place + "plausible: 'low' must be a whole number or a decimal text"}},
             {"\"low\": \"0.5\"", "\"low\": \"0,5\"",
                 {"line 19" + place + "plausible: 'low' must be a whole"}},
             {"\"low\": \"0.5\"", "\"low\": \"cold\"",
                 {"line 19" + place + "plausible: 'low' must be a whole"}},
             {"\"low\": \"0.5\"", "\"low\": -1000000000000", {"plausible: 'low' must be a whole"}},
             {"\"low\": 26", "\"low\": 0",
                 {"line 21" + place + "limits: 'low' 0 is outside the plausible band 0.5 to 50"}},
             {"\"high\": \"28.5\"", "\"high\": 51", {"line 21" + place + "limits: 'high' 51 is outside"}},
             {"\"low\": 25, ", "", {"line 22" + place + "limits: needs 'low' or 'high'"}},
             {"\"id\": \"open\"", "\"id\": \"narrow\"",
                 {"line 22" + place + "limits: 'id' 'narrow' stands twice in one rule"}},
             {", \"source\": \"A\"", "", {"line 21" + place + "limits: 'source' is missing"}},
             {"\"source\": \"B\"", "\"source\": \"\"",
                 {"line 22" + place + "limits: 'source' must not be empty"}},
         })
        checkRefused(breakage);
}

TEST_CASE("a limit set may be a single value")
{
    CHECK(readChecklist(broken(sampleDocument(), {"\"low\": 26", "\"low\": \"28.5\"", {}})).has_value());
}

TEST_CASE("a measure needs a limit set")
{
    std::string text = sampleDocument();
    const auto from = text.find("\"limits\": [") + 11;
    text.erase(from, text.find("]}", from) - from);
    const auto read = readChecklist(text);
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().message
        == "line 20, section 'room', item 'room-temperature': measure: 'limits' must not be empty");
}

TEST_CASE("faults of since, steps and count are named with the rule")
{
    const std::string corner = ", section 'corner', item ";
    for (const Breakage& breakage : std::vector<Breakage>{
             {"\"minutes\": 30", "\"minutes\": 0",
                 {"line 39" + corner + "'warmer': since: 'minutes' is 0, must be 1"}},
             {"\"minutes\": 30", "\"minutes\": \"30\"",
                 {"line 39" + corner + "'warmer': since: 'minutes' must be a"}},
             {", \"source\": \"D\"", "", {"line 39" + corner + "'warmer': since: 'source' is missing"}},
             {",\n{\"id\": \"refill\", \"label\": {\"en\": \"Refill\", \"hi\": \"भरना\"}}", "",
                 {"line 42" + corner + "'bag': steps: 'steps' has 1, must have 2 to 30"}},
             {"\"id\": \"refill\"", "\"id\": \"seal\"",
                 {"line 44" + corner + "'bag': steps: steps: 'id' 'seal' stands twice"}},
             {"{\"en\": \"Seal\", \"hi\": \"सील\"}", "{\"en\": \"Seal\"}",
                 {"line 43" + corner + "'bag': steps: steps: 'label' has no wording in language 'hi'"}},
             {"\"par\": 10", "\"par\": 0", {"line 48" + corner + "'oxytocin': count: 'par' is 0, must be 1"}},
             {"\"par\": 10", "\"par\": -1", {"line 48" + corner + "'oxytocin': count: 'par' is -1"}},
             {", \"expires\": true", "", {"line 48" + corner + "'oxytocin': count: 'expires' is missing"}},
         })
        checkRefused(breakage);
}

TEST_CASE("faults of kit and cylinder are named with the rule")
{
    const std::string kit = ", section 'corner', item 'kits': kit: ";
    const std::string cylinder = ", section 'corner', item 'oxygen': cylinder: ";
    for (const Breakage& breakage :
        std::vector<Breakage>{
            {"\"par\": 4", "\"par\": 0", {"line 51" + kit + "'par' is 0, must be 1"}},
            {"\"perKit\": 2", "\"perKit\": 0", {"line 52" + kit + "parts: 'perKit' is 0, must be 1"}},
            {",\n{\"id\": \"blade\", \"label\": {\"en\": \"Blade\", \"hi\": \"ब्लेड\"}, \"perKit\": 1}", "",
                {"line 51" + kit + "'parts' has 1, must have 2 to 30"}},
            {"\"id\": \"blade\"", "\"id\": \"ties\"", {"line 53" + kit + "parts: 'id' 'ties' stands twice"}},
            {"\"minutes\": 120", "\"minutes\": 20000", {"line 57" + cylinder + "'minutes' is 20000"}},
            {"\"flow\": \"2.5\"", "\"flow\": 0", {"line 57" + cylinder + "'flow' must be above 0"}},
            {"\"source\": \"E\", ", "", {"line 57" + cylinder + "'source' is missing"}},
            {"\"unit\": \"psi\"", "\"unit\": \"kPa\"",
                {"line 58" + cylinder + "sizes: 'unit' must be 'psi' or 'bar'"}},
            {"\"0.28\"", "0", {"line 59" + cylinder + "sizes: 'litresPerUnit' must be above 0"}},
            {"\"0.28\"", "\"1000.001\"",
                {"line 59" + cylinder + "sizes: 'litresPerUnit' must not be above 1000"}},
            {"\"fullPressure\": 2015", "\"fullPressure\": 100001",
                {"line 59" + cylinder + "sizes: 'fullPressure' must not be above 100000"}},
            {"\"0.28\"", "0.28", {"line 59" + cylinder + "sizes: 'litresPerUnit' must be a whole number or"}},
            {"\"0.28\"", "\"0.2812\"",
                {"line 59" + cylinder + "sizes: 'litresPerUnit' must be a whole number or"}},
            {"\"residual\": 200", "\"residual\": -1",
                {"line 59" + cylinder + "sizes: 'residual' must not be below 0"}},
            {"\"fullPressure\": 2015", "\"fullPressure\": 200",
                {"line 59" + cylinder + "sizes: 'fullPressure' 200 is not above residual 200"}},
            {"\"source\": \"F\"", "\"source\": \"\"",
                {"line 59" + cylinder + "sizes: 'source' must not be empty"}},
        })
        checkRefused(breakage);
}

TEST_CASE("a cylinder size stands once in a rule")
{
    std::string text = sampleDocument();
    const auto from = text.find("{\"id\": \"us-e\"");
    const std::string size = text.substr(from, text.find("}\n]}}", from) + 1 - from);
    text.insert(from, size + ",\n");
    const auto read = readChecklist(text);
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().message
        == "line 60, section 'corner', item 'oxygen': cylinder: sizes: 'id' 'us-e' stands twice in one rule");
}
