// SPDX-License-Identifier: MIT
#include "core/exchange/fhirparts.h"

#include "core/exchange/tablecell.h"

#include <algorithm>
#include <array>

namespace cradlepost::fhir {

namespace {
constexpr char ucum[] = "http://unitsofmeasure.org";

/** "does-not-apply" is "Does not apply"; a few codes are too short for that. */
std::string wordsOf(const std::string& code)
{
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 3> others{
        {{"shift", "Round of the shift"}, {"pre-birth", "Check before a birth"},
            {"after-use", "Check after use"}}};
    for (const auto& [other, words] : others) {
        if (other == code)
            return std::string(words);
    }
    std::string words = code;
    std::replace(words.begin(), words.end(), '-', ' ');
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}
}

Json coding(const std::string& system, const std::string& code, const std::string& display)
{
    Json::Object out{{"code", code}, {"system", system}};
    if (!display.empty())
        out.push_back({"display", display});
    return out;
}

Json ownCoding(const std::string& vocabulary, const std::string& code)
{
    return ownCoding(vocabulary, code, wordsOf(code));
}

Json ownCoding(const std::string& vocabulary, const std::string& code, const std::string& display)
{
    return coding(urlOf("CodeSystem", vocabulary), code, display);
}

Json codeable(Json coding) { return Json::Object{{"coding", Json::Array{std::move(coding)}}}; }

Json reference(const std::string& type, const std::string& id)
{
    return Json::Object{{"reference", type + '/' + id}};
}

Json quantity(double value, const std::string& unit)
{
    Json::Object out{{"value", value}};
    if (!unit.empty())
        out.push_back({"unit", unit});
    if (const std::string code = ucumCode(unit); !code.empty()) {
        out.push_back({"system", ucum});
        out.push_back({"code", code});
    }
    return out;
}

std::string ucumCode(const std::string& unit)
{
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 11> codes{
        {{"°C", "Cel"}, {"kPa", "kPa"}, {"mmHg", "mm[Hg]"}, {"psi", "[psi]"}, {"bar", "bar"}, {"g", "g"},
            {"kg", "kg"}, {"%", "%"}, {"L/min", "L/min"}, {"h", "h"}, {"1", "1"}}};
    for (const auto& [printed, code] : codes) {
        if (printed == unit)
            return std::string(code);
    }
    return {};
}

std::string urlOf(const std::string& type, const std::string& id)
{
    return std::string(base) + '/' + type + '/' + id;
}

std::string questionnaireId(const std::string& checklist, int version)
{
    return checklist + '-' + std::to_string(version);
}

Json bundle(const std::vector<Resource>& resources, Instant madeAt)
{
    Json::Array entries;
    for (const Resource& one : resources) {
        Json::Object resource{{"resourceType", one.type}, {"id", one.id}};
        resource.insert(resource.end(), one.members.begin(), one.members.end());
        entries.emplace_back(
            Json::Object{{"fullUrl", urlOf(one.type, one.id)}, {"resource", std::move(resource)}});
    }
    return Json::Object{{"resourceType", "Bundle"}, {"type", "collection"}, {"timestamp", toIso(madeAt)},
        {"entry", std::move(entries)}};
}

}
