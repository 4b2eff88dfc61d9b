// SPDX-License-Identifier: MIT
#include "core/review/visitresult.h"

#include "core/ledger/canonical.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

VisitResult visit(std::int64_t looked, std::int64_t notMet)
{
    return {.at = fromMs(9), .sample = 18, .pass = 16, .looked = looked, .notMet = notMet};
}

}

TEST_CASE("a whole sample is decided by the rule of the plan")
{
    CHECK(visit(18, 2).decision() == VisitDecision::Reached);
    CHECK(visit(18, 3).decision() == VisitDecision::NotReached);
    CHECK(visit(18, 0).decision() == VisitDecision::Reached);
}

TEST_CASE("a sample that was broken off is decided only where the rest could not change it")
{
    CHECK(visit(10, 3).decision() == VisitDecision::NotReached);
    CHECK(visit(10, 2).decision() == VisitDecision::Undecided);
    CHECK(visit(16, 0).decision() == VisitDecision::Reached);
    CHECK(visit(15, 0).decision() == VisitDecision::Undecided);
    // By hand, all ways to go on: decided exactly when every way ends alike.
    for (std::int64_t looked = 1; looked <= 18; ++looked) {
        for (std::int64_t notMet = 0; notMet <= looked; ++notMet) {
            const bool best = visit(18, notMet).decision() == VisitDecision::Reached;
            const bool worst = visit(18, notMet + 18 - looked).decision() == VisitDecision::Reached;
            const auto decision = visit(looked, notMet).decision();
            CHECK((decision == VisitDecision::Undecided) == (best != worst));
            if (best == worst)
                CHECK((decision == VisitDecision::Reached) == best);
        }
    }
}

TEST_CASE("counts that cannot be are refused")
{
    CHECK(checkVisit(visit(18, 2)).has_value());
    CHECK_FALSE(checkVisit(visit(19, 2)).has_value());
    CHECK_FALSE(checkVisit(visit(0, 0)).has_value());
    CHECK_FALSE(checkVisit(visit(5, 6)).has_value());
    CHECK_FALSE(checkVisit({.sample = 5, .pass = 6, .looked = 5}).has_value());
    VisitResult named = visit(18, 1);
    named.items = {"bag-mask", "oxytocin"};
    CHECK_FALSE(checkVisit(named).has_value());
    named.notMet = 2;
    CHECK(checkVisit(named).has_value());
    named.items = {"oxytocin", "bag-mask"};
    CHECK_FALSE(checkVisit(named).has_value());
}

TEST_CASE("a body reads back as it was, and a broken one is refused")
{
    VisitResult one = visit(18, 2);
    CHECK(visitResultFromBody(toBody(one)).value() == one);
    one.items = {"bag-mask", "oxytocin"};
    CHECK(visitResultFromBody(toBody(one)).value() == one);
    CHECK(canonicalText(toBody(one))
        == R"({"at":9,"items":["bag-mask","oxytocin"],"looked":18,"notMet":2,"pass":16,"sample":18})");
    for (const char* body : {R"({"at":9,"looked":19,"notMet":2,"pass":16,"sample":18})",
             R"({"at":9,"looked":18,"notMet":2,"sample":18})",
             R"({"at":9,"looked":18,"notMet":2,"pass":16,"sample":18,"who":"AB"})"})
        CHECK_FALSE(visitResultFromBody(*parseJson(body)).has_value());
}
