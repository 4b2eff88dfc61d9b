// SPDX-License-Identifier: MIT
#include "core/exchange/fhirquestionnaire.h"

#include "core/round/reason.h"
#include "core/round/verdict.h"

namespace cradlepost::fhir {

namespace {

constexpr char translation[] = "http://hl7.org/fhir/StructureDefinition/translation";
constexpr char unitOfQuestion[] = "http://hl7.org/fhir/StructureDefinition/questionnaire-unit";

/** {name, and its translations beside it as _name}. */
void addWording(Json::Object& out, const std::string& name, const Wording& wording)
{
    out.push_back({name, wording.in("en")});
    Json::Array translations;
    for (const auto& [language, text] : wording.texts()) {
        if (language != "en")
            translations.emplace_back(Json::Object{{"url", translation},
                {"extension",
                    Json::Array{Json::Object{{"url", "lang"}, {"valueCode", language}},
                        Json::Object{{"url", "content"}, {"valueString", text}}}}});
    }
    if (!translations.empty())
        out.push_back({'_' + name, Json::Object{{"extension", std::move(translations)}}});
}

Json question(const std::string& link, const char* type)
{
    return Json::Object{{"linkId", link}, {"type", type}};
}

Json group(const std::string& link, Json::Array items, bool repeats = false)
{
    Json::Object out{{"linkId", link}, {"type", "group"}, {"item", std::move(items)}};
    if (repeats)
        out.push_back({"repeats", true});
    return out;
}

Json choice(const std::string& link, const std::vector<Json>& codings)
{
    Json::Array options;
    for (const Json& coding : codings)
        options.emplace_back(Json::Object{{"valueCoding", coding}});
    return Json::Object{{"linkId", link}, {"type", "choice"}, {"answerOption", std::move(options)}};
}

Json choice(const std::string& link, const std::string& vocabulary, const std::vector<std::string>& codes)
{
    std::vector<Json> codings;
    for (const std::string& code : codes)
        codings.push_back(ownCoding(vocabulary, code));
    return choice(link, codings);
}

Json amount(const std::string& link, const std::string& unit)
{
    Json::Object out{{"linkId", link}, {"type", "quantity"}};
    if (const std::string code = ucumCode(unit); !code.empty())
        out.push_back({"extension",
            Json::Array{Json::Object{
                {"url", unitOfQuestion}, {"valueCoding", coding("http://unitsofmeasure.org", code, unit)}}}});
    return out;
}

/** What a document offers: sets of limits, sizes. */
template <class T> std::vector<Json> codingsOf(const std::string& vocabulary, const std::vector<T>& all)
{
    std::vector<Json> codings;
    for (const T& one : all)
        codings.push_back(ownCoding(vocabulary, one.id, one.name.in("en")));
    return codings;
}

Json worded(const std::string& link, const char* type, const Wording& wording)
{
    Json::Object out{{"linkId", link}, {"type", type}};
    addWording(out, "text", wording);
    return out;
}

/** What is asked besides outcome and reason. */
struct Asked
{
    const std::string& id;
    Json::Array& items;

    [[nodiscard]] std::string link(const std::string& what) const { return id + '/' + what; }

    void operator()(const ConfirmRule&) const { }
    void operator()(const MeasureRule& rule) const
    {
        items.push_back(amount(link("value"), rule.unit));
        items.push_back(choice(link("limits"), codingsOf("limit-set", rule.limits)));
    }
    void operator()(const SinceRule&) const { items.push_back(question(link("since"), "dateTime")); }
    void operator()(const StepsRule& rule) const
    {
        for (const Step& step : rule.steps)
            items.push_back(worded(link("step-" + step.id), "boolean", step.label));
        items.push_back(question(link("device"), "string"));
    }
    void operator()(const CountRule&) const
    {
        items.push_back(group(link("lot"),
            {question(link("lot-pieces"), "integer"), question(link("lot-expiry"), "date"),
                question(link("lot-number"), "string")},
            true));
    }
    void operator()(const KitRule& rule) const
    {
        for (const KitPart& part : rule.parts)
            items.push_back(worded(link("part-" + part.id), "integer", part.label));
    }
    void operator()(const CylinderRule& rule) const
    {
        const std::string unit = rule.sizes.empty() ? std::string() : rule.sizes.front().unit;
        items.push_back(amount(link("gauge"), unit));
        items.push_back(choice(link("size"), codingsOf("cylinder-size", rule.sizes)));
        items.push_back(amount(link("flow"), "L/min"));
    }
};

std::vector<std::string> reasonCodes()
{
    std::vector<std::string> codes;
    for (int i = 0; i <= static_cast<int>(ReasonCode::UsedSince); ++i)
        codes.emplace_back(codeName(static_cast<ReasonCode>(i)));
    return codes;
}

Json itemGroup(const Item& item)
{
    Json::Array asked{
        choice(item.id + "/outcome", "outcome", {"met", "gap", "does-not-apply", "not-checked"}),
        choice(item.id + "/reason", "reason", reasonCodes())};
    std::visit(Asked{item.id, asked}, item.rule);
    Json::Object out{{"linkId", item.id}, {"type", "group"},
        {"code",
            Json::Array{ownCoding("item", item.id, item.label.in("en")),
                ownCoding("severity", codeName(item.severity))}}};
    addWording(out, "text", item.label);
    out.push_back({"item", std::move(asked)});
    return out;
}

Json aboutGroup()
{
    return group("_round",
        {question("_round/date", "date"), question("_round/shift", "string"),
            choice(
                "_round/kind", "round-kind", {"shift", "recheck", "pre-birth", "after-use", "spot-check"})});
}

Json verdictGroup()
{
    return group("_verdict",
        {choice("_verdict/state", "verdict", {"not-ready", "ready-with-gaps", "ready"}),
            question("_verdict/met", "integer"), question("_verdict/applicable", "integer"),
            question("_verdict/index", "decimal")});
}

/** "shift-readiness" as a name for machines: "ShiftReadiness". */
std::string machineName(const std::string& id)
{
    std::string name;
    bool up = true;
    for (const char c : id) {
        if (c == '-')
            up = true;
        else {
            name += up && c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
            up = false;
        }
    }
    return name;
}

}

Resource questionnaire(const Checklist& checklist)
{
    Json::Array items{aboutGroup()};
    for (const Section& section : checklist.sections) {
        Json::Array asked;
        for (const Item& item : section.items)
            asked.push_back(itemGroup(item));
        Json::Object out{{"linkId", "_section/" + section.id}, {"type", "group"}};
        addWording(out, "text", section.title);
        out.push_back({"item", std::move(asked)});
        items.emplace_back(std::move(out));
    }
    items.push_back(verdictGroup());
    Json::Object members{{"url", urlOf("Questionnaire", checklist.id)},
        {"version", std::to_string(checklist.version)}, {"name", machineName(checklist.id)},
        {"language", "en"}, {"status", "active"}, {"subjectType", Json::Array{"Location"}}};
    addWording(members, "title", checklist.title);
    members.push_back({"item", std::move(items)});
    return {.type = "Questionnaire",
        .id = questionnaireId(checklist.id, checklist.version),
        .members = std::move(members)};
}

}
