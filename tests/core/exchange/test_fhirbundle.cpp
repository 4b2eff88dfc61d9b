// SPDX-License-Identifier: MIT
#include "core/exchange/fhirbundle.h"

#include "busymonth.h"
#include "core/exchange/fhirparts.h"
#include "core/ledger/canonical.h"
#include "core/review/month.h"
#include "core/store/unithistory.h"

#include <doctest/doctest.h>
#include <map>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

struct Exported
{
    explicit Exported(bool rounds = true)
        : month(dir.file("ward.db"))
        , json(must(fhir::monthBundle(*month.store,
              {.unit = month.unit, .month = std::chrono::year(2026) / 11, .rounds = rounds},
              month.clock.now())))
    {
    }

    [[nodiscard]] std::vector<const Json*> all(std::string_view type) const
    {
        std::vector<const Json*> found;
        for (const Json& entry : *json.find("entry")->asArray()) {
            const Json* resource = entry.find("resource");
            if (*resource->findString("resourceType") == type)
                found.push_back(resource);
        }
        return found;
    }

    TempDir dir;
    BusyMonth month;
    Json json;
};

const Json& at(const Json& json, std::size_t place) { return json.asArray()->at(place); }

const std::string& codeOf(const Json& concept_)
{
    return *at(*concept_.find("coding"), 0).findString("code");
}

/** numerator and denominator of a group of a report */
stats::Tally tallyOf(const Json& group)
{
    stats::Tally tally;
    for (const Json& population : *group.find("population")->asArray()) {
        const std::string& code = codeOf(*population.find("code"));
        if (code == "numerator")
            tally.x = *population.findInteger("count");
        else if (code == "denominator")
            tally.n = *population.findInteger("count");
    }
    return tally;
}

/** The answers at `link` of a response, wherever they stand in it. */
std::vector<const Json*> answersTo(const Json& items, const std::string& link)
{
    std::vector<const Json*> found;
    for (const Json& item : *items.asArray()) {
        if (*item.findString("linkId") == link && item.find("answer") != nullptr)
            found.push_back(&at(*item.find("answer"), 0));
        if (const Json* inner = item.find("item")) {
            const auto more = answersTo(*inner, link);
            found.insert(found.end(), more.begin(), more.end());
        }
    }
    return found;
}

}

TEST_CASE("a bundle holds the room, its measures and reports, the checklists used and every round")
{
    const Exported exported;
    CHECK(exported.all("Location").size() == 1);
    CHECK(exported.all("Measure").size() == 2);
    CHECK(exported.all("MeasureReport").size() == 2);
    CHECK(exported.all("Questionnaire").size() == 2);
    const auto [from, to] = slotsOfMonth(std::chrono::year(2026) / 11);
    const auto rows = must(exported.month.store->rounds(exported.month.unit, from, to));
    CHECK(rows.size() == 20);
    CHECK(exported.all("QuestionnaireResponse").size() == rows.size());
}

TEST_CASE("the figures alone come without checklists and rounds")
{
    const Exported exported(false);
    CHECK(exported.all("MeasureReport").size() == 2);
    CHECK(exported.all("Questionnaire").empty());
    CHECK(exported.all("QuestionnaireResponse").empty());
}

TEST_CASE("the report's counts are those of the month's review")
{
    const Exported exported;
    const ReviewSpan span = ReviewSpan::ofMonth(std::chrono::year(2026) / 11);
    const auto history
        = must(unitHistory(*exported.month.store, exported.month.unit, span, exported.month.clock.now()));
    const MonthReview review = must(reviewMonth(history, span));
    const std::map<std::string, stats::Tally> wanted{{"done", review.calendar.done.tally},
        {"in-time", review.calendar.inTime.tally}, {"ready", review.readiness.ready.tally},
        {"ready-with-gaps", review.readiness.readyWithGaps.tally},
        {"no-critical-gap", review.readiness.noCriticalGap.tally}, {"items-met", review.readiness.items}};
    CHECK(review.calendar.done.tally.x == 17);
    const Json& shares = *exported.all("MeasureReport").front();
    std::size_t seen = 0;
    for (const Json& group : *shares.find("group")->asArray()) {
        const auto one = wanted.find(codeOf(*group.find("code")));
        if (one == wanted.end())
            continue;
        ++seen;
        CAPTURE(one->first);
        CHECK(tallyOf(group).x == one->second.x);
        CHECK(tallyOf(group).n == one->second.n);
    }
    CHECK(seen == wanted.size());
}

TEST_CASE("an item's stratum counts the rounds that saw it, gaps as the review's list of losses")
{
    const Exported exported;
    const ReviewSpan span = ReviewSpan::ofMonth(std::chrono::year(2026) / 11);
    const auto history
        = must(unitHistory(*exported.month.store, exported.month.unit, span, exported.month.clock.now()));
    const MonthReview review = must(reviewMonth(history, span));
    std::map<std::string, stats::Tally> strata;
    const Json& groups = *exported.all("MeasureReport").front()->find("group");
    for (const Json& stratum :
        *at(*groups.asArray()->back().find("stratifier"), 0).find("stratum")->asArray())
        strata[codeOf(*stratum.find("value"))] = tallyOf(stratum);
    CHECK(strata.size() == review.items.size());
    REQUIRE_FALSE(review.lost.items.empty());
    for (const LostItem& lost : review.lost.items) {
        const stats::Tally& stratum = strata.at(review.items[lost.item].id);
        CHECK(stratum.n == lost.gaps.tally.n);
        CHECK(stratum.n - stratum.x == lost.gaps.tally.x);
    }
}

TEST_CASE("a round put right is amended and says what counts now")
{
    const Exported exported;
    const RecordId id = exported.month.amended;
    const std::string name = id.station + '-' + std::to_string(id.seq);
    std::size_t amended = 0;
    for (const Json* response : exported.all("QuestionnaireResponse")) {
        if (*response->findString("status") != "amended")
            continue;
        ++amended;
        CHECK(*response->findString("id") == name);
        const std::string link = exported.month.checklist.item(2).id + "/reason";
        const auto reasons = answersTo(*response->find("item"), link);
        REQUIRE(reasons.size() == 1);
        CHECK(*reasons.front()->find("valueCoding")->findString("code") == "not-clean");
    }
    CHECK(amended == 1);
}

TEST_CASE("a reading goes out with its unit in UCUM and the limits it was held against")
{
    const Exported exported;
    std::size_t outside = 0;
    for (const Json* response : exported.all("QuestionnaireResponse")) {
        for (const Json* answer : answersTo(*response->find("item"), "room-temperature/value")) {
            const Json& quantity = *answer->find("valueQuantity");
            CHECK(*quantity.findString("code") == "Cel");
            CHECK(*quantity.findString("system") == "http://unitsofmeasure.org");
            const auto* value = std::get_if<double>(&quantity.find("value")->value);
            outside += value != nullptr && (*value == 22.5 || *value == 29.5) ? 1U : 0U;
        }
    }
    CHECK(outside > 0);
}

TEST_CASE("nobody who walked a round is named")
{
    const Exported exported;
    const std::string text = canonicalText(exported.json);
    for (const char* initials : {"\"AB\"", "\"CD\"", "\"QO\""})
        CHECK(text.find(initials) == std::string::npos);
    CHECK(text.find("Patient") == std::string::npos);
}

TEST_CASE("a unit that is not there has no bundle")
{
    const Exported exported(false);
    const auto bundle = fhir::monthBundle(*exported.month.store,
        {.unit = "nowhere", .month = std::chrono::year(2026) / 11}, exported.month.clock.now());
    REQUIRE_FALSE(bundle.has_value());
    CHECK(bundle.error().code == ErrorCode::NotFound);
}

TEST_CASE("a month without rounds has its counts and no score")
{
    const Exported exported(false);
    const Json empty = must(fhir::monthBundle(*exported.month.store,
        {.unit = exported.month.unit, .month = std::chrono::year(2019) / 1}, exported.month.clock.now()));
    for (const Json& entry : *empty.find("entry")->asArray()) {
        const Json& resource = *entry.find("resource");
        if (*resource.findString("resourceType") != "MeasureReport")
            continue;
        for (const Json& group : *resource.find("group")->asArray())
            CHECK(group.find("measureScore") == nullptr);
    }
}

TEST_CASE("units have their UCUM code, and one that is not known has none")
{
    CHECK(fhir::ucumCode("mmHg") == "mm[Hg]");
    CHECK(fhir::ucumCode("psi") == "[psi]");
    CHECK(fhir::ucumCode("knots") == "");
}
