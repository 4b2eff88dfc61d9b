// SPDX-License-Identifier: MIT
#include "core/review/visitresult.h"

#include "core/base/refusal.h"
#include "core/supply/bodyreader.h"

#include <algorithm>

namespace cradlepost {

const char* codeName(VisitDecision decision)
{
    switch (decision) {
    case VisitDecision::Reached:
        return "reached";
    case VisitDecision::NotReached:
        return "not-reached";
    case VisitDecision::Undecided:
        break;
    }
    return "undecided";
}

VisitDecision VisitResult::decision() const
{
    if (met() >= pass)
        return VisitDecision::Reached;
    return notMet > sample - pass ? VisitDecision::NotReached : VisitDecision::Undecided;
}

Result<void> checkVisit(const VisitResult& visit)
{
    const auto wrong
        = [](const char* what, const char* hint) { return fail(ErrorCode::InvalidArgument, what, hint); };
    if (visit.sample < 1 || visit.sample > mostSample || visit.pass < 1 || visit.pass > visit.sample)
        return wrong("a visit: no sound sample", "Take sample and rule from the visit's sheet.");
    if (visit.looked < 1 || visit.looked > visit.sample)
        return tl::unexpected(refused(refusal::visitLooked, {std::to_string(visit.sample)},
            "a visit: the items looked at are none, or more than the sample",
            "Count the items of the sample that were looked at."));
    if (visit.notMet < 0 || visit.notMet > visit.looked)
        return tl::unexpected(refused(refusal::visitNotMet, {std::to_string(visit.looked)},
            "a visit: more items not met than were looked at", "Count both again."));
    if (static_cast<std::int64_t>(visit.items.size()) > visit.notMet)
        return wrong("a visit: more items are named than were not met", "Count both again.");
    const auto& items = visit.items;
    if (std::adjacent_find(items.begin(), items.end(), std::greater_equal<>()) != items.end())
        return wrong("a visit: items are named twice or out of order", "Name each once.");
    return {};
}

Json toBody(const VisitResult& visit)
{
    Json::Object body{{"at", toMs(visit.at)}};
    if (!visit.items.empty()) {
        Json::Array items;
        for (const std::string& item : visit.items)
            items.emplace_back(item);
        body.push_back({"items", std::move(items)});
    }
    body.push_back({"looked", visit.looked});
    body.push_back({"notMet", visit.notMet});
    body.push_back({"pass", visit.pass});
    body.push_back({"sample", visit.sample});
    return body;
}

Result<VisitResult> visitResultFromBody(const Json& body)
{
    BodyReader read(body, "visit record");
    VisitResult visit{.at = read.moment("at"),
        .sample = read.integer("sample", 1, mostSample),
        .pass = read.integer("pass", 1, mostSample),
        .looked = read.integer("looked", 1, mostSample),
        .notMet = read.integer("notMet", 0, mostSample),
        .items = read.ids("items", static_cast<std::size_t>(mostSample))};
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    if (auto sound = checkVisit(visit); !sound)
        return fail(ErrorCode::BadDocument, sound.error().message);
    return visit;
}

}
