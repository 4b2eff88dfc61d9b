// SPDX-License-Identifier: MIT
#include "tests/core/store/ward.h"

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

GapAction on(const std::string& item)
{
    return {.item = item, .nth = 1, .owner = {}, .due = {}, .remark = {}};
}

/** The first item of that severity. */
std::string itemOf(const Checklist& checklist, Severity severity)
{
    for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
        if (checklist.item(at).severity == severity)
            return checklist.item(at).id;
    }
    throw std::runtime_error("no such item");
}

Gap only(const Ward& ward) { return must(ward.store->openGaps(ward.unit)).at(0); }

}

TEST_CASE(
    "a critical gap is mended by one, verified by another, closed by a look, and a rebuild says the same")
{
    Ward ward;
    const std::string item = itemOf(ward.checklist, Severity::Critical);
    ward.save(ward.round(0).withGap(item));
    GapAction helps = on(item);
    helps.measure = "spare from theatre";
    must(ward.store->actOnGap(ward.unit, helps, "AB"));
    GapAction mended = on(item);
    mended.mended = "AB";
    must(ward.store->actOnGap(ward.unit, mended, "AB"));
    CHECK(only(ward).mendedAt == ward.clock.now());
    CHECK(only(ward).wantsVerifying());

    GapAction verified = on(item);
    verified.verified = "a.b.";
    const auto refused = ward.store->actOnGap(ward.unit, verified, "AB");
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::InvalidArgument);
    verified.verified = "CD";
    must(ward.store->actOnGap(ward.unit, verified, "CD"));
    CHECK(only(ward).verifiedBy == "CD");
    CHECK(only(ward).measure == "spare from theatre");

    ward.save(ward.round(1));
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    const auto before = must(ward.store->gapsOf(ward.unit, item));
    CHECK(ward.fault().empty());
    must(ward.store->rebuild());
    CHECK(must(ward.store->gapsOf(ward.unit, item)) == before);
    CHECK(ward.fault().empty());
}

TEST_CASE("a gap that a round closed can still be verified, and nothing else be done to it")
{
    Ward ward;
    const std::string item = itemOf(ward.checklist, Severity::Critical);
    ward.save(ward.round(0).withGap(item));
    GapAction mended = on(item);
    mended.mended = "AB";
    must(ward.store->actOnGap(ward.unit, mended, "AB"));
    ward.save(ward.round(1));
    GapAction verified = on(item);
    verified.verified = "CD";
    must(ward.store->actOnGap(ward.unit, verified, "CD"));
    CHECK(must(ward.store->gapsOf(ward.unit, item)).at(0).verifiedBy == "CD");
    CHECK_FALSE(ward.store->actOnGap(ward.unit, mended, "AB").has_value());
    CHECK(ward.fault().empty());
}

TEST_CASE(
    "mended, and found again by the next round: the gap is open, reopened once, and nobody's word stands")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2"));
    GapAction mended = on("item-2");
    mended.mended = "AB";
    ward.clock.advance(std::chrono::hours(1));
    must(ward.store->actOnGap(ward.unit, mended, "AB"));
    ward.save(ward.round(1).withGap("item-2"));
    CHECK(only(ward).reopened == 1);
    CHECK(only(ward).mendedBy.empty());
    CHECK(only(ward).nth == 1);
    CHECK(ward.fault().empty());
}
