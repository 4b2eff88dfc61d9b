// SPDX-License-Identifier: MIT
#include "ward.h"

#include "core/ledger/canonical.h"
#include "core/store/database.h"
#include "core/store/shiftview.h"

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** Puts another text in the place of the saved draft, as a fault of the disk or an older program might. */
void overwrite(Ward& ward, const std::string& body)
{
    ward.store.reset();
    {
        Database database(ward.address, Database::Access::ReadWrite);
        database.prepare("UPDATE draft SET body = ?").bind(body).run();
    }
    ward.reopen();
}

Instant inShift(const Ward& ward) { return ward.round(0).draft().started; }

}

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

TEST_CASE("a draft that cannot be read is left out and named, and the next of its kind replaces it")
{
    Ward ward;
    const Draft draft = ward.round(0).without("item-7").draft();
    const std::string whole = canonicalText(toJson(draft));
    for (const std::string& body :
        {std::string("no JSON"), std::string("{}"), whole.substr(0, whole.size() / 2)}) {
        CAPTURE(body);
        must(ward.store->saveDraft(draft));
        overwrite(ward, body);
        CHECK(must(ward.store->drafts(ward.unit)).empty());
        const auto lost = must(ward.store->unreadableDrafts(ward.unit));
        REQUIRE(lost.size() == 1);
        CHECK(lost[0].kind == RoundKind::Shift);
        CHECK_FALSE(lost[0].why.message.empty());
        const ShiftView view = must(shiftView(*ward.store, ward.unit, inShift(ward)));
        CHECK(view.drafts.empty());
        CHECK(view.unreadable.size() == 1);
    }
    must(ward.store->saveDraft(draft));
    CHECK(must(ward.store->drafts(ward.unit)) == std::vector{draft});
    CHECK(must(ward.store->unreadableDrafts(ward.unit)).empty());
}

TEST_CASE("the shift leaves out a draft that is longer or shorter than its checklist, and says which")
{
    Ward ward;
    const Draft draft = ward.round(0).draft();
    for (const std::size_t items : {std::size_t{0}, std::size_t{11}, std::size_t{13}, std::size_t{400}}) {
        CAPTURE(items);
        Draft odd = draft;
        odd.kind = RoundKind::AfterUse; // the shift looks into its answers
        odd.answers.resize(items);
        odd.answeredAt.resize(items);
        odd.asked.clear();
        must(ward.store->saveDraft(odd));
        CHECK(
            must(ward.store->unreadableDrafts(ward.unit)).empty()); // it is a sound draft, of something else
        const ShiftView view = must(shiftView(*ward.store, ward.unit, inShift(ward)));
        CHECK(view.drafts.empty());
        REQUIRE(view.unreadable.size() == 1);
        CHECK(view.unreadable[0].kind == RoundKind::AfterUse);
        CHECK(view.unreadable[0].why.code == ErrorCode::BadDocument);
    }
    Draft unknown = draft;
    unknown.kind = RoundKind::AfterUse;
    unknown.version = 9;
    must(ward.store->saveDraft(unknown));
    CHECK(must(shiftView(*ward.store, ward.unit, inShift(ward))).unreadable.size() == 1);
}
