// SPDX-License-Identifier: MIT
#include "core/exchange/fhirbundle.h"

#include "core/exchange/fhirmeasure.h"
#include "core/exchange/fhirresponse.h"
#include "core/store/unithistory.h"

#include <algorithm>
#include <map>

namespace cradlepost::fhir {

namespace {

Resource location(const Unit& unit)
{
    Json::Object members{{"status", "active"}, {"mode", "instance"}, {"name", unit.name}};
    if (!unit.level.empty())
        members.push_back({"type", Json::Array{Json::Object{{"text", unit.level}}}});
    return {.type = "Location", .id = unit.id, .members = std::move(members)};
}

Result<Unit> unitNamed(const Store& store, const std::string& id)
{
    const auto units = store.units();
    if (!units)
        return tl::unexpected(units.error());
    const auto found
        = std::find_if(units->begin(), units->end(), [&](const Unit& unit) { return unit.id == id; });
    if (found == units->end())
        return fail(ErrorCode::NotFound, "there is no unit '" + id + "'");
    return *found;
}

/** The checklists of the month's rounds, then the rounds themselves. */
Result<void> addRounds(std::vector<Resource>& resources, const Store& store, const MonthRequest& request)
{
    const auto [from, to] = slotsOfMonth(request.month);
    const auto rows = store.rounds(request.unit, from, to);
    if (!rows)
        return tl::unexpected(rows.error());
    std::map<std::pair<std::string, int>, Checklist> lists;
    std::vector<Resource> responses;
    for (const RoundRow& row : *rows) {
        auto list = lists.find({row.checklist, row.version});
        if (list == lists.end()) {
            auto read = store.checklist(row.checklist, row.version);
            if (!read)
                return tl::unexpected(read.error());
            list = lists.emplace(std::pair(row.checklist, row.version), std::move(*read)).first;
        }
        const auto saved = store.round(row.id);
        if (!saved)
            return tl::unexpected(saved.error());
        responses.push_back(questionnaireResponse(list->second, *saved, request.unit));
    }
    for (const auto& [name, list] : lists)
        resources.push_back(questionnaire(list));
    std::move(responses.begin(), responses.end(), std::back_inserter(resources));
    return {};
}

}

Result<Json> monthBundle(const Store& store, const MonthRequest& request, Instant now)
{
    const auto unit = unitNamed(store, request.unit);
    if (!unit)
        return tl::unexpected(unit.error());
    const ReviewSpan span = ReviewSpan::ofMonth(request.month);
    const auto history = unitHistory(store, request.unit, span, now);
    if (!history)
        return tl::unexpected(history.error());
    const auto review = reviewMonth(*history, span);
    if (!review)
        return tl::unexpected(review.error());
    std::vector<Resource> resources{location(*unit)};
    for (std::vector<Resource> part : {measures(), measureReports(*history, *review)})
        std::move(part.begin(), part.end(), std::back_inserter(resources));
    if (request.rounds) {
        const auto added = addRounds(resources, store, request);
        if (!added)
            return tl::unexpected(added.error());
    }
    return bundle(resources, now);
}

}
