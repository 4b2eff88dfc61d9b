// SPDX-License-Identifier: MIT
#include "core/exchange/fhirmeasure.h"

#include "core/exchange/tablecell.h"

#include <algorithm>
#include <map>

namespace cradlepost::fhir {

namespace {

constexpr char sharesId[] = "month-shares";
constexpr char valuesId[] = "month-values";
constexpr char measureVersion[] = "1";

/** A group of `month-shares`: what is counted, and of what. */
struct ShareGroup
{
    const char* code;
    const char* numerator;
    const char* denominator;
};
constexpr ShareGroup shareGroups[] = {{"done", "shifts-with-a-round", "shifts-due"},
    {"in-time", "rounds-in-time", "rounds-by-screen"}, {"ready", "rounds-ready", "rounds-done"},
    {"ready-with-gaps", "rounds-ready-with-gaps", "rounds-done"},
    {"no-critical-gap", "rounds-without-a-critical-gap", "rounds-done"},
    {"items-met", "items-met", "items-applicable"}, {"items-seen-met", "items-seen-met", "items-seen"}};

struct ValueGroup
{
    const char* code;
    const char* population;
    const char* unit; ///< of its score
};
constexpr ValueGroup valueGroups[]
    = {{"mean-index", "rounds-done", "1"}, {"median-hours-to-restore", "gaps-opened", "h"}};

/** A code of the specification with its own words (from memory). */
struct StandardCode
{
    const char* code;
    const char* display;
};
constexpr StandardCode populationCodes[]
    = {{"initial-population", "Initial Population"}, {"denominator", "Denominator"},
        {"numerator", "Numerator"}, {"measure-population", "Measure Population"}};
constexpr StandardCode proportion{"proportion", "Proportion"};
constexpr StandardCode continuousVariable{"continuous-variable", "Continuous Variable"};

Json population(const char* code)
{
    const auto known = std::find_if(std::begin(populationCodes), std::end(populationCodes),
        [&](const StandardCode& one) { return std::string_view(one.code) == code; });
    return codeable(coding(populations, code, known->display));
}

/** A population of a Measure needs an expression of a bound language: ours is a name in CQL, quoted. */
Json defined(const char* code, const char* counted)
{
    return Json::Object{{"code", population(code)},
        {"criteria",
            Json::Object{{"language", "text/cql"}, {"expression", '"' + std::string(counted) + '"'}}}};
}

Resource measure(const char* id, const char* name, const StandardCode& scoring, Json::Array groups)
{
    return {.type = "Measure",
        .id = id,
        .members = {{"url", urlOf("Measure", id)}, {"version", measureVersion}, {"name", name},
            {"status", "active"}, {"subjectCodeableConcept", codeable(coding(resourceTypes, "Location", "Location"))},
            {"scoring", codeable(coding(scorings, scoring.code, scoring.display))}, {"group", std::move(groups)}}};
}

Json increase()
{
    return codeable(coding(improvements, "increase", "Increased score indicates improvement"));
}

/** As the latest checklist that has it says it. */
std::string labelOf(const UnitHistory& history, const std::string& item)
{
    for (auto list = history.lists.rbegin(); list != history.lists.rend(); ++list)
        if (const auto at = list->checklist->position(item))
            return list->checklist->item(*at).label.in("en");
    return {};
}

Json counted(const char* code, std::int64_t count)
{
    return Json::Object{{"code", population(code)}, {"count", count}};
}

/** Populations of x of n, and the score unless n is 0. */
void addTally(Json::Object& out, stats::Tally tally)
{
    out.push_back({"population",
        Json::Array{counted("initial-population", tally.n), counted("denominator", tally.n),
            counted("numerator", tally.x)}});
    if (tally.n > 0)
        out.push_back(
            {"measureScore", quantity(static_cast<double>(tally.x) / static_cast<double>(tally.n), "1")});
}

/** Met of seen by item of the review: rounds in which nobody looked, or where it does not apply, count
 * nothing. */
std::vector<stats::Tally> seenMet(const UnitHistory& history, const MonthReview& review)
{
    std::map<std::string, std::size_t> place;
    for (std::size_t i = 0; i < review.items.size(); ++i)
        place.emplace(review.items[i].id, i);
    std::vector<stats::Tally> seen(review.items.size());
    for (const RoundFact& round : history.rounds) {
        if (!review.span.contains(dateOfSlot(round.slot)))
            continue;
        const Checklist& list = *history.lists[round.list].checklist;
        for (std::size_t at = 0; at < std::min(round.outcomes.size(), list.itemCount()); ++at) {
            const char letter = round.outcomes[at];
            const auto item = place.find(list.item(at).id);
            if (item != place.end() && (letter == 'm' || letter == 'g'))
                seen[item->second] += {.x = letter == 'm' ? 1 : 0, .n = 1};
        }
    }
    return seen;
}

Json itemStrata(
    const UnitHistory& history, const MonthReview& review, const std::vector<stats::Tally>& seen)
{
    Json::Array strata;
    for (std::size_t i = 0; i < seen.size(); ++i) {
        if (seen[i].n == 0)
            continue;
        const std::string& item = review.items[i].id;
        Json::Object stratum{{"value", codeable(ownCoding("item", item, labelOf(history, item)))}};
        addTally(stratum, seen[i]);
        strata.emplace_back(std::move(stratum));
    }
    return Json::Array{Json::Object{
        {"code", Json::Array{codeable(ownCoding("stratifier", "item"))}}, {"stratum", std::move(strata)}}};
}

Json::Array shareReport(const UnitHistory& history, const MonthReview& review)
{
    const std::vector<stats::Tally> seen = seenMet(history, review);
    stats::Tally allSeen;
    for (const stats::Tally& one : seen)
        allSeen += one;
    const ReadinessReview& readiness = review.readiness;
    const stats::Tally tallies[]
        = {review.calendar.done.tally, review.calendar.inTime.tally, readiness.ready.tally,
            readiness.readyWithGaps.tally, readiness.noCriticalGap.tally, readiness.items, allSeen};
    Json::Array groups;
    for (std::size_t i = 0; i < std::size(shareGroups); ++i) {
        Json::Object group{{"code", codeable(ownCoding("figure", shareGroups[i].code))}};
        addTally(group, tallies[i]);
        if (i + 1 == std::size(shareGroups) && allSeen.n > 0)
            group.push_back({"stratifier", itemStrata(history, review, seen)});
        groups.emplace_back(std::move(group));
    }
    return groups;
}

Json::Array valueReport(const MonthReview& review)
{
    const RestoreGroup& gaps = review.restore.all;
    const std::pair<std::int64_t, std::optional<double>> values[]
        = {{review.readiness.indexed, review.readiness.meanIndex},
            {gaps.mended + gaps.open, gaps.curve ? gaps.curve->median : std::optional<double>()}};
    Json::Array groups;
    for (std::size_t i = 0; i < std::size(valueGroups); ++i) {
        const auto& [count, value] = values[i];
        Json::Object group{{"code", codeable(ownCoding("figure", valueGroups[i].code))},
            {"population",
                Json::Array{counted("initial-population", count), counted("measure-population", count)}}};
        if (value)
            group.push_back({"measureScore", quantity(*value, valueGroups[i].unit)});
        groups.emplace_back(std::move(group));
    }
    return groups;
}

Resource report(const MonthReview& review, const TimeZone& zone, const char* id, Json::Array groups)
{
    const Date last = std::min(addDays(review.span.to, -1), zone.toLocal(review.now).date);
    const std::string month = cradlepost::toIso(review.span.from);
    return {.type = "MeasureReport",
        .id = review.unit + '-' + id + '-' + month.substr(0, month.size() - 3),
        .members = {{"status", "complete"}, {"type", "summary"},
            {"measure", urlOf("Measure", id) + '|' + measureVersion},
            {"subject", reference("Location", review.unit)}, {"date", toIso(review.now)},
            {"reporter", reference("Location", review.unit)},
            {"period",
                Json::Object{{"start", month}, {"end", cradlepost::toIso(std::max(last, review.span.from))}}},
            {"group", std::move(groups)}}};
}

}

std::vector<Resource> measures()
{
    Json::Array shares;
    for (const ShareGroup& one : shareGroups) {
        Json::Object group{{"code", codeable(ownCoding("figure", one.code))},
            {"population",
                Json::Array{defined("initial-population", one.denominator),
                    defined("denominator", one.denominator), defined("numerator", one.numerator)}}};
        if (std::string_view(one.code) == "items-seen-met")
            group.push_back({"stratifier",
                Json::Array{Json::Object{{"code", codeable(ownCoding("stratifier", "item"))},
                    {"criteria", Json::Object{{"language", "text/cql"}, {"expression", "\"item\""}}}}}});
        shares.emplace_back(std::move(group));
    }
    Json::Array values;
    for (const ValueGroup& one : valueGroups)
        values.emplace_back(Json::Object{{"code", codeable(ownCoding("figure", one.code))},
            {"population",
                Json::Array{defined("initial-population", one.population),
                    defined("measure-population", one.population)}}});
    std::vector<Resource> all{measure(sharesId, "MonthShares", proportion, std::move(shares)),
        measure(valuesId, "MonthValues", continuousVariable, std::move(values))};
    all.front().members.push_back({"improvementNotation", increase()});
    return all;
}

std::vector<Resource> measureReports(const UnitHistory& history, const MonthReview& review)
{
    std::vector<Resource> all{report(review, history.zone, sharesId, shareReport(history, review)),
        report(review, history.zone, valuesId, valueReport(review))};
    all.front().members.push_back({"improvementNotation", increase()});
    return all;
}

}
