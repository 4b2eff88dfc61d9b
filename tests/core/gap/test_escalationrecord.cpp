// SPDX-License-Identifier: MIT
#include "core/gap/escalationrecord.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

EscalationSet aSet()
{
    return {.at = fromMs(1'780'000'000'000),
        .levels = {{.to = EscalationTo::Owner, .percent = 40}, {.to = EscalationTo::District, .percent = 400}}};
}

bool isUnreadable(const Json& body)
{
    const auto read = escalationFromBody(body);
    return !read && read.error().code == ErrorCode::BadDocument;
}

Json withLevel(Json level)
{
    return Json::Object{{"at", 5}, {"levels", Json::Array{std::move(level)}}};
}

}

TEST_CASE("levels are written and read again as they were, none of them too")
{
    EscalationSet none = aSet();
    none.levels.clear();
    for (const EscalationSet& set : {aSet(), none}) {
        CHECK(checkEscalation(set).has_value());
        CHECK(escalationFromBody(toBody(set)).value() == set);
    }
}

TEST_CASE("levels rise in who and in time")
{
    EscalationSet set = aSet();
    set.levels[1].percent = 40;
    CHECK_FALSE(checkEscalation(set).has_value());
    set = aSet();
    set.levels[1].to = EscalationTo::Owner;
    CHECK_FALSE(checkEscalation(set).has_value());
    for (const int percent : {0, -5, 1001}) {
        set = aSet();
        set.levels = {{.to = EscalationTo::Owner, .percent = percent}};
        CHECK_FALSE(checkEscalation(set).has_value());
    }
    set.levels[0].percent = 1000;
    CHECK(checkEscalation(set).has_value());
}

TEST_CASE("a body that says more, less or something else is refused")
{
    CHECK(isUnreadable(Json::Object{}));
    CHECK(isUnreadable(Json::Object{{"at", 5}}));
    CHECK(isUnreadable(Json::Object{{"at", 5}, {"levels", Json::Array{}}, {"more", 1}}));
    CHECK(isUnreadable(withLevel(Json::Object{{"to", "owner"}})));
    CHECK(isUnreadable(withLevel(Json::Object{{"percent", 50}, {"to", "neighbour"}})));
    CHECK(isUnreadable(withLevel(Json::Object{{"percent", 0}, {"to", "owner"}})));
    CHECK(isUnreadable(withLevel(Json::Object{{"percent", 50}, {"to", "owner"}, {"x", 1}})));
    CHECK_FALSE(isUnreadable(withLevel(Json::Object{{"percent", 50}, {"to", "owner"}})));
}

TEST_CASE("codes of who hears read back")
{
    for (const EscalationTo to :
        {EscalationTo::Owner, EscalationTo::InCharge, EscalationTo::QualityOfficer, EscalationTo::District})
        CHECK(escalationToFromCode(codeName(to)) == to);
    CHECK_FALSE(escalationToFromCode("nobody").has_value());
}
