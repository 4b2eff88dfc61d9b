// SPDX-License-Identifier: MIT
#include "core/store/bodies.h"

#include "core/base/refusal.h"
#include "core/ledger/canonical.h"
#include "core/round/draftcodec.h"

#include <algorithm>
#include <set>

namespace cradlepost {

namespace {

constexpr std::size_t maxTextBytes = 200;

tl::unexpected<Error> unreadable(const std::string& what)
{
    return fail(ErrorCode::BadDocument, "set-up record: " + what);
}

bool isPlainText(const std::string& text)
{
    return text.size() <= maxTextBytes && isUtf8(text) && std::none_of(text.begin(), text.end(), [](char c) {
        return static_cast<unsigned char>(c) < 0x20;
    });
}

Result<Date> dayMember(const Json& body, std::string_view name)
{
    const auto* text = body.findString(name);
    if (text == nullptr)
        return unreadable("'" + std::string(name) + "' is missing");
    return dateFromIso(*text);
}

}

Json toBody(const Unit& unit)
{
    return Json::Object{{"level", unit.level}, {"name", unit.name}, {"zone", unit.zone}};
}

Result<Unit> unitFromBody(const std::string& id, const Json& body)
{
    const auto* name = body.findString("name");
    const auto* zone = body.findString("zone");
    const auto* level = body.findString("level");
    if (name == nullptr || zone == nullptr || level == nullptr)
        return unreadable("a unit needs name, zone and level");
    return Unit{.id = id, .name = *name, .zone = *zone, .level = *level};
}

Json toBody(const PatternFrom& pattern)
{
    Json::Array starts;
    for (const ShiftStart& start : pattern.pattern.starts)
        starts.emplace_back(
            Json::Object{{"code", start.code}, {"minutes", static_cast<std::int64_t>(start.at.count())}});
    return Json::Object{{"from", toIso(pattern.from)}, {"starts", std::move(starts)}};
}

Result<PatternFrom> patternFromBody(const Json& body)
{
    const auto from = dayMember(body, "from");
    if (!from)
        return tl::unexpected(from.error());
    const Json* starts = body.find("starts");
    if (starts == nullptr || starts->asArray() == nullptr)
        return unreadable("a shift pattern needs its starts");
    PatternFrom out{.from = *from, .pattern = {}};
    for (const Json& one : *starts->asArray()) {
        const auto* code = one.findString("code");
        const auto* minutes = one.findInteger("minutes");
        if (code == nullptr || minutes == nullptr)
            return unreadable("a shift needs code and minutes");
        out.pattern.starts.push_back({.code = *code, .at = std::chrono::minutes(*minutes)});
    }
    if (auto sound = out.pattern.check(); !sound)
        return tl::unexpected(sound.error());
    return out;
}

Json toBody(const std::vector<Person>& people)
{
    Json::Array list;
    for (const Person& person : people)
        list.emplace_back(Json::Object{{"initials", person.initials}, {"role", person.role}});
    return Json::Object{{"people", std::move(list)}};
}

Result<std::vector<Person>> peopleFromBody(const Json& body)
{
    const Json* list = body.find("people");
    if (list == nullptr || list->asArray() == nullptr)
        return unreadable("the list of people is missing");
    std::vector<Person> people;
    for (const Json& one : *list->asArray()) {
        const auto* initials = one.findString("initials");
        const auto* role = one.findString("role");
        if (initials == nullptr || role == nullptr)
            return unreadable("a person needs initials and role");
        people.push_back({.initials = *initials, .role = *role});
    }
    return people;
}

Json toBody(const Adoption& adoption)
{
    return Json::Object{{"document", adoption.document}, {"from", toIso(adoption.from)},
        {"limits", limitsToJson(adoption.limits)}};
}

Result<Adoption> adoptionFromBody(const Json& body)
{
    const auto from = dayMember(body, "from");
    auto limits = limitsFromJson(body.find("limits"));
    const Json* document = body.find("document");
    if (!from)
        return tl::unexpected(from.error());
    if (!limits)
        return tl::unexpected(limits.error());
    if (document == nullptr)
        return unreadable("the checklist document is missing");
    return Adoption{.from = *from, .document = *document, .limits = std::move(*limits)};
}

Result<void> checkUnit(const Unit& unit)
{
    const bool named = !unit.id.empty() && unit.id.size() <= 24
        && unit.id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
    if (!named)
        return fail(ErrorCode::InvalidArgument, "unit id '" + unit.id + "' is not 1 to 24 of a-z, 0-9 and -",
            "Use small letters, digits and hyphens.");
    if (unit.name.empty() || !isPlainText(unit.name) || !isPlainText(unit.level))
        return tl::unexpected(refused(refusal::unitName, {},
            "unit " + unit.id + ": the name is empty, or a text is too long", "Give a name of one line."));
    if (const auto zone = TimeZone::named(unit.zone); !zone)
        return tl::unexpected(zone.error());
    return {};
}

Result<void> checkPeople(const std::vector<Person>& people)
{
    std::set<std::string> seen;
    for (const Person& person : people) {
        const auto letters = std::count_if(person.initials.begin(), person.initials.end(),
            [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; });
        if (letters < 1 || letters > 12 || !isPlainText(person.initials) || !isPlainText(person.role))
            return tl::unexpected(refused(refusal::initials, {person.initials},
                "'" + person.initials + "' are not initials of 1 to 12 characters",
                "Use initials, no full names."));
        if (!seen.insert(person.initials).second)
            return tl::unexpected(refused(refusal::initialsTwice, {person.initials},
                "the initials '" + person.initials + "' stand twice in the list",
                "Add a letter to one of them."));
    }
    return {};
}

Result<void> checkLimits(const Checklist& checklist, const ChosenLimits& limits)
{
    for (const auto& [itemId, setId] : limits) {
        const auto position = checklist.position(itemId);
        const auto* rule = position ? std::get_if<MeasureRule>(&checklist.item(*position).rule) : nullptr;
        const bool known = rule != nullptr
            && std::any_of(
                rule->limits.begin(), rule->limits.end(), [&](const LimitSet& s) { return s.id == setId; });
        if (!known)
            return fail(ErrorCode::InvalidArgument,
                "checklist " + checklist.id + ": item '" + itemId + "' has no limits '" + setId + "'",
                "Pick one of the limit sets that the checklist offers.");
    }
    return {};
}

}
