// SPDX-License-Identifier: MIT
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("a draft is there again after the program is gone")
{
    Ward ward;
    const Draft draft = ward.round(0).without("item-7").draft();
    must(ward.store->saveDraft(draft));
    ward.reopen();
    CHECK(must(ward.store->drafts(ward.unit)) == std::vector{draft});
    CHECK(ward.fault() == "");
}

TEST_CASE("there is one draft a unit and kind, the later one in the place of the one before")
{
    Ward ward(anAdoption());
    must(ward.store->adopt(ward.unit, anAdoption(RoundKind::PreBirth), "AB"));
    const auto preBirth = must(ward.store->checklistFor(ward.unit, RoundKind::PreBirth, firstDay)).checklist;
    must(ward.store->saveDraft(ward.round(0).draft()));
    const Draft second = ward.round(1).draft();
    must(ward.store->saveDraft(second));
    ward.clock.advance(std::chrono::seconds(1));
    const Draft check = aRound(preBirth).on(firstDay).draft();
    must(ward.store->saveDraft(check));
    CHECK(must(ward.store->drafts(ward.unit)) == std::vector{check, second});
    CHECK(must(ward.store->drafts("nowhere")).empty());
}

TEST_CASE("saving the round drops the draft of its kind, a refused round leaves it")
{
    Ward ward;
    must(ward.store->saveDraft(ward.round(0).draft()));
    RoundRecord broken = ward.round(0);
    broken.outcomes.pop_back();
    CHECK_FALSE(ward.store->saveRound(ward.unit, broken, "AB").has_value());
    CHECK(must(ward.store->drafts(ward.unit)).size() == 1);
    const RecordId round = ward.save(ward.round(0).withGap("item-0"));
    CHECK(must(ward.store->drafts(ward.unit)).empty());
    must(ward.store->saveDraft(ward.round(1).draft()));
    ward.save(ward.round(0).rechecking(round, {"item-0"}).finishedAfter(std::chrono::hours(2)));
    CHECK(must(ward.store->drafts(ward.unit)).size() == 1);
}

TEST_CASE("a draft can be dropped, twice too")
{
    Ward ward;
    must(ward.store->saveDraft(ward.round(0).draft()));
    must(ward.store->dropDraft(ward.unit, RoundKind::Shift));
    must(ward.store->dropDraft(ward.unit, RoundKind::Shift));
    CHECK(must(ward.store->drafts(ward.unit)).empty());
}

TEST_CASE("a draft of a unit that is not known is refused")
{
    Ward ward;
    CHECK(ward.store->saveDraft(ward.round(0).draft("nowhere")).error().code == ErrorCode::NotFound);
}

TEST_CASE("a rebuild leaves drafts alone")
{
    Ward ward;
    must(ward.store->saveDraft(ward.round(0).draft()));
    must(ward.store->rebuild());
    CHECK(must(ward.store->drafts(ward.unit)).size() == 1);
}
