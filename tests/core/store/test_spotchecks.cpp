// SPDX-License-Identifier: MIT
#include "core/store/shiftview.h"
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

RoundRecord spotCheck(const RoundBuilder& round)
{
    RoundRecord record = round.done();
    record.kind = RoundKind::SpotCheck;
    return record;
}

}

TEST_CASE("a spot check touches no gap, no standing, no verdict, no reading and no other draft")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-1").measuring("item-3", "27.1"));
    must(ward.store->saveDraft(ward.round(1).draft()));
    const auto before = must(shiftView(*ward.store, ward.unit, ward.clock.now()));
    const auto tallies = must(ward.store->itemTallies(ward.unit, ward.slot(0), ward.slot(1)));
    ward.clock.advance(std::chrono::minutes(20));
    const RecordId id = must(ward.store->saveRound(ward.unit,
        spotCheck(ward.round(0).withGap("item-5").without("item-6").measuring("item-3", "25.0")), "QO"));

    const auto after = must(shiftView(*ward.store, ward.unit, ward.clock.now()));
    CHECK(after.saved.size() == before.saved.size());
    CHECK(after.standing->verdict == before.standing->verdict);
    CHECK(after.gaps == before.gaps);
    CHECK(after.drafts == before.drafts);
    CHECK(must(ward.store->readings(ward.unit, "item-3", ward.slot(0), ward.slot(1))).size() == 1);
    CHECK(must(ward.store->itemTallies(ward.unit, ward.slot(0), ward.slot(1)))[5].gaps == tallies[5].gaps);
    CHECK(ward.fault() == "");

    const auto checks = must(ward.store->spotChecks(ward.unit, ward.slot(0), ward.slot(1)));
    REQUIRE(checks.size() == 1);
    CHECK(checks[0].id == id);
    CHECK(checks[0].actor == "QO");
    CHECK(checks[0].round.outcomes[5] == 'g');
    CHECK(checks[0].round.outcomes[6] == 'u');
    CHECK(must(ward.store->spotChecks(ward.unit, ward.slot(1), ward.slot(9))).empty());
    const auto rows = must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(1)));
    REQUIRE(rows.size() == 2);
    CHECK(rows[1].kind == RoundKind::SpotCheck);
}

TEST_CASE("a shift takes a round after a spot check, and more than one spot check")
{
    Ward ward;
    must(ward.store->saveRound(ward.unit, spotCheck(ward.round(0).withGap("item-0")), "QO"));
    must(ward.store->saveRound(ward.unit, spotCheck(ward.round(0)), "QO"));
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    ward.save(ward.round(0));
    CHECK(must(ward.store->spotChecks(ward.unit, ward.slot(0), ward.slot(1))).size() == 2);
    CHECK(ward.fault() == "");
}

TEST_CASE("a spot check walks the checklist of the shift and drops its own draft only")
{
    Ward ward;
    CHECK(must(ward.store->checklistFor(ward.unit, RoundKind::SpotCheck, firstDay)).checklist
        == ward.checklist);
    must(ward.store->saveDraft(ward.round(0).draft()));
    Draft draft = ward.round(0).draft();
    draft.kind = RoundKind::SpotCheck;
    must(ward.store->saveDraft(draft));
    CHECK(must(ward.store->drafts(ward.unit)).size() == 2);
    must(ward.store->saveRound(ward.unit, spotCheck(ward.round(0)), "QO"));
    REQUIRE(must(ward.store->drafts(ward.unit)).size() == 1);
    CHECK(must(ward.store->drafts(ward.unit))[0].kind == RoundKind::Shift);
}

TEST_CASE("a spot check is not amended")
{
    Ward ward;
    const RecordId id = must(ward.store->saveRound(ward.unit, spotCheck(ward.round(0)), "QO"));
    const auto refused
        = ward.store->amendRound(id, spotCheck(ward.round(0).withGap("item-1")), "second thoughts", "QO");
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().message.find("spot check") != std::string::npos);
}
