// SPDX-License-Identifier: MIT
#include "core/round/answercodec.h"

#include <limits>

namespace cradlepost {

namespace {

tl::unexpected<Error> unreadable(const std::string& what)
{
    return fail(ErrorCode::BadDocument, "answer: " + what);
}

struct Writer
{
    Json operator()(const NotChecked&) const { return {}; }
    Json operator()(const DoesNotApply&) const { return "-"; }
    Json operator()(const Confirmed&) const { return "y"; }
    Json operator()(const GapFound& a) const { return codeName(a.reason); }
    Json operator()(const Measured& a) const { return Json::Object {{"v", a.value.toString()}}; }
    Json operator()(const RunningSince& a) const { return Json::Object {{"s", toMs(a.since)}}; }
    Json operator()(const StepsDone& a) const
    {
        Json::Object out;
        if (!a.device.empty())
            out.push_back({"d", a.device});
        out.push_back({"t", a.marks});
        return out;
    }
    Json operator()(const Counted& a) const
    {
        Json::Array lots;
        for (const Lot& lot : a.lots) {
            Json::Array one {Json(lot.quantity)};
            if (lot.expiry || !lot.number.empty())
                one.push_back(lot.expiry ? Json(toIso(*lot.expiry)) : Json());
            if (!lot.number.empty())
                one.push_back(lot.number);
            lots.emplace_back(std::move(one));
        }
        return Json::Object {{"n", std::move(lots)}};
    }
    Json operator()(const KitCounted& a) const
    {
        Json::Array parts;
        for (const int n : a.parts)
            parts.emplace_back(n);
        return Json::Object {{"k", std::move(parts)}};
    }
    Json operator()(const CylinderRead& a) const
    {
        return Json::Object {{"f", a.flow.toString()}, {"g", a.gauge.toString()}, {"z", a.size}};
    }
};

Result<int> smallNumber(const Json& json)
{
    const auto* n = json.asInteger();
    if (n == nullptr || *n < 0 || *n > std::numeric_limits<int>::max())
        return unreadable("a count is not a whole number");
    return static_cast<int>(*n);
}

Result<Lot> lotFromJson(const Json& json)
{
    const auto* parts = json.asArray();
    if (parts == nullptr || parts->empty() || parts->size() > 3)
        return unreadable("a lot is not [quantity, expiry, number]");
    Lot lot;
    const auto quantity = smallNumber((*parts)[0]);
    if (!quantity)
        return tl::unexpected(quantity.error());
    lot.quantity = *quantity;
    if (parts->size() > 1 && !(*parts)[1].isNull()) {
        const auto* text = (*parts)[1].asString();
        const auto day = text != nullptr ? dateFromIso(*text) : Result<Date>(unreadable("an expiry is not a day"));
        if (!day)
            return tl::unexpected(day.error());
        lot.expiry = *day;
    }
    if (parts->size() > 2) {
        const auto* number = (*parts)[2].asString();
        if (number == nullptr || number->empty())
            return unreadable("a lot number is not a text");
        lot.number = *number;
    }
    return lot;
}

Result<Answer> countedFromJson(const Json& lots)
{
    if (lots.asArray() == nullptr)
        return unreadable("lots are not a list");
    Counted counted;
    for (const Json& one : *lots.asArray()) {
        auto lot = lotFromJson(one);
        if (!lot)
            return tl::unexpected(lot.error());
        counted.lots.push_back(std::move(*lot));
    }
    return counted;
}

Result<Answer> kitFromJson(const Json& parts)
{
    if (parts.asArray() == nullptr)
        return unreadable("kit parts are not a list");
    KitCounted kit;
    for (const Json& one : *parts.asArray()) {
        const auto n = smallNumber(one);
        if (!n)
            return tl::unexpected(n.error());
        kit.parts.push_back(*n);
    }
    return kit;
}

Result<Decimal> decimalMember(const Json& json, std::string_view name)
{
    const auto* text = json.findString(name);
    if (text == nullptr)
        return unreadable("'" + std::string(name) + "' is not a number in a text");
    return Decimal::parse(*text);
}

Result<Answer> cylinderFromJson(const Json& json)
{
    const auto gauge = decimalMember(json, "g");
    const auto flow = decimalMember(json, "f");
    const auto* size = json.findString("z");
    if (!gauge || !flow || size == nullptr)
        return unreadable("a cylinder needs gauge, flow and size");
    return CylinderRead {.gauge = *gauge, .size = *size, .flow = *flow};
}

Result<Answer> answerFromWord(const std::string& word)
{
    if (word == "-")
        return DoesNotApply {};
    if (word == "y")
        return Confirmed {};
    if (const auto reason = gapReasonFromCode(word))
        return GapFound {*reason};
    return unreadable("'" + word + "' is not a known word");
}

}

Json toJson(const Answer& answer) { return std::visit(Writer {}, answer); }

Result<Answer> answerFromJson(const Json& json)
{
    if (json.isNull())
        return NotChecked {};
    if (const auto* word = json.asString())
        return answerFromWord(*word);
    if (json.find("v") != nullptr) {
        const auto value = decimalMember(json, "v");
        return value ? Result<Answer>(Measured {*value}) : tl::unexpected(value.error());
    }
    if (const Json* since = json.find("s")) {
        if (since->asInteger() == nullptr)
            return unreadable("'s' is not a moment");
        return RunningSince {fromMs(*since->asInteger())};
    }
    if (const auto* marks = json.findString("t")) {
        const auto* device = json.findString("d");
        return StepsDone {.marks = *marks, .device = device != nullptr ? *device : std::string()};
    }
    if (const Json* lots = json.find("n"))
        return countedFromJson(*lots);
    if (const Json* parts = json.find("k"))
        return kitFromJson(*parts);
    if (json.find("z") != nullptr)
        return cylinderFromJson(json);
    return unreadable("no known kind");
}

}
