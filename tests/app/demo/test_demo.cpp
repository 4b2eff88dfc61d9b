// SPDX-License-Identifier: MIT
#include "larkmere.h"

#include "core/store/shiftview.h"

#include <doctest/doctest.h>
#include <fstream>
#include <map>
#include <sqlite3.h>

using namespace cradlepost;
using namespace cradlepost::demo;

namespace {

/** The hash of the last record of each station: it seals all before it. */
std::map<std::string, std::string> lastHashes(const std::string& file)
{
    sqlite3* database = nullptr;
    REQUIRE(sqlite3_open_v2(file.c_str(), &database, SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK);
    sqlite3_stmt* rows = nullptr;
    REQUIRE(sqlite3_prepare_v2(database, "SELECT station, max(seq), hex(hash) FROM record GROUP BY station",
                -1, &rows, nullptr)
        == SQLITE_OK);
    std::map<std::string, std::string> hashes;
    while (sqlite3_step(rows) == SQLITE_ROW)
        hashes.emplace(reinterpret_cast<const char*>(sqlite3_column_text(rows, 0)),
            reinterpret_cast<const char*>(sqlite3_column_text(rows, 2)));
    sqlite3_finalize(rows);
    sqlite3_close(database);
    return hashes;
}

const Reason* reasonOf(const Standing& standing, const std::string& item)
{
    const auto& reasons = standing.verdict.reasons;
    const auto at = std::find_if(
        reasons.begin(), reasons.end(), [&](const Reason& reason) { return reason.item == item; });
    return at == reasons.end() ? nullptr : &*at;
}

}

TEST_CASE("the district has eight units and more than 15000 rounds of five kinds")
{
    const Larkmere& all = Larkmere::whole();
    CHECK(all.written().units == 8);
    CHECK(all.written().rounds > 15000);
    int rounds = 0;
    std::map<RoundKind, int> kinds;
    for (const std::string& unit : Larkmere::units()) {
        for (const RoundRow& row : all.rounds(unit, all.always())) {
            ++kinds[row.kind];
            ++rounds;
            CHECK(row.finished <= writtenAt);
        }
    }
    CHECK(rounds == all.written().rounds);
    CHECK(kinds[RoundKind::Shift] > 10000);
    CHECK(kinds[RoundKind::Recheck] > 1000);
    CHECK(kinds[RoundKind::PreBirth] > 2000);
    CHECK(kinds[RoundKind::AfterUse] > 2000);
}

TEST_CASE(
    "one round in a hundred is put right, Ash Lock has a fortnight on paper, two units are looked at again")
{
    const Larkmere& all = Larkmere::whole();
    int rounds = 0;
    int amended = 0;
    for (const std::string& unit : Larkmere::units()) {
        CAPTURE(unit);
        int paper = 0;
        for (const RoundRow& row : all.rounds(unit, all.always())) {
            ++rounds;
            amended += row.amendments > 0 ? 1 : 0;
            paper += row.fromPaper ? 1 : 0;
            if (row.amendedAt)
                CHECK(*row.amendedAt >= row.recorded);
            if (row.fromPaper)
                CHECK(all.stories().onPaper.contains(dateOfSlot(row.slot)));
        }
        const auto checks = all.store().spotChecks(
            unit, slotOf(all.always().from, 0), slotOf(addDays(all.always().to, 1), 0));
        CHECK((checks->size() > 20) == (unit == sorrelHill || unit == tarnFerry));
        CHECK((paper > 5) == (unit == ashLock));
        const bool tries = unit == quillmere || unit == pennyWeir;
        CHECK(all.store().changeIdeas(unit)->size() == (tries ? 1U : 0U));
    }
    CHECK(static_cast<double>(amended) / rounds > 0.004);
    CHECK(static_cast<double>(amended) / rounds < 0.012);
}

TEST_CASE("spot checks agree with the rounds, but not where rounds are copied")
{
    const Larkmere& all = Larkmere::whole();
    const auto differing = [&](const char* unit, const Span& days) {
        int seen = 0;
        int differ = 0;
        const auto checks = all.store().spotChecks(unit, slotOf(days.from, 0), slotOf(days.to, 0)).value();
        for (const SavedRound& check : checks) {
            const auto rounds = all.store().roundsOfShift(unit, check.round.shift.slot()).value();
            for (const SavedRound& round : rounds) {
                if (round.round.kind != RoundKind::Shift)
                    continue;
                for (std::size_t at = 0; at < check.round.outcomes.size(); ++at) {
                    const bool bothSeen = check.round.outcomes[at] != 'u' && round.round.outcomes[at] != 'u';
                    seen += bothSeen ? 1 : 0;
                    differ += bothSeen && check.round.outcomes[at] != round.round.outcomes[at] ? 1 : 0;
                }
            }
        }
        REQUIRE(seen > 50);
        return static_cast<double>(differ) / seen;
    };
    const double honest = differing(sorrelHill, all.always());
    const double copied = differing(tarnFerry, all.stories().copied);
    MESSAGE("differing: ", honest, " at Sorrel Hill, ", copied, " where rounds are copied");
    CHECK(honest < 0.06);
    CHECK(copied > 2 * honest);
}

TEST_CASE("each unit has people, shifts of its own and all three checklists")
{
    const Store& store = Larkmere::whole().store();
    std::map<std::size_t, int> patterns;
    for (const std::string& unit : Larkmere::units()) {
        CAPTURE(unit);
        CHECK(store.people(unit).value().size() >= 4);
        ++patterns[store.calendar(unit, Larkmere::whole().stories().first).value().pattern().starts.size()];
        for (const RoundKind use : {RoundKind::Shift, RoundKind::PreBirth, RoundKind::AfterUse})
            CHECK(store.checklistFor(unit, use, Larkmere::whole().stories().first));
    }
    CHECK(patterns == std::map<std::size_t, int>{{2, 1}, {3, 7}});
}

TEST_CASE("most units miss few rounds and have a gap at a few items of a hundred")
{
    const Larkmere& all = Larkmere::whole();
    for (const char* unit : {sorrelHill, tarnFerry, pennyWeir, hallowDown, marlGate}) {
        CAPTURE(unit);
        const double due = 3.0 * daysBetween(all.always().from, all.always().to);
        const double done = static_cast<double>(all.shiftRounds(unit, all.always()).size()) / due;
        CHECK(done > 0.91);
        CHECK(done < 0.98);
        CHECK(all.gapShare(unit, "") > 0.03);
        CHECK(all.gapShare(unit, "") < 0.09);
    }
}

TEST_CASE("a gap lasts until it is mended: what was a gap is one again far more often than by chance")
{
    const auto rounds = Larkmere::whole().shiftRounds(sorrelHill, Larkmere::whole().always());
    int gaps = 0;
    int again = 0;
    for (std::size_t i = 1; i < rounds.size(); ++i) {
        for (std::size_t at = 0; at < rounds[i].outcomes.size(); ++at) {
            if (rounds[i - 1].outcomes[at] != 'g')
                continue;
            ++gaps;
            again += rounds[i].outcomes[at] == 'g' ? 1 : 0;
        }
    }
    REQUIRE(gaps > 1000);
    CHECK(static_cast<double>(again) / gaps > 0.5);
    CHECK(static_cast<double>(again) / gaps < 0.95);
}

TEST_CASE("Sorrel Hill is not ready now: warmer warming, kits short of ties, size 0 mask does not fit")
{
    const auto view = shiftView(Larkmere::whole().store(), sorrelHill, writtenAt);
    REQUIRE(view);
    REQUIRE(view->standing);
    CHECK(view->standing->verdict.state == Readiness::NotReady);
    CHECK(writtenAt - view->standing->round.finished <= std::chrono::minutes(3));

    const Reason* warmer = reasonOf(*view->standing, "warmer-on-since");
    REQUIRE(warmer != nullptr);
    CHECK(warmer->code == ReasonCode::Warming);
    CHECK(warmer->value == "18");
    CHECK(warmer->readyAt == writtenAt + std::chrono::minutes(12));

    const Reason* kits = reasonOf(*view->standing, "delivery-kits");
    REQUIRE(kits != nullptr);
    CHECK(kits->code == ReasonCode::KitsIncomplete);
    CHECK(kits->part == "ties");
    CHECK(kits->value == "3");

    const Reason* mask = reasonOf(*view->standing, "mask-size-0");
    REQUIRE(mask != nullptr);
    CHECK(mask->code == ReasonCode::StepFailed);
    CHECK(mask->part == "fit");
}

TEST_CASE("Sorrel Hill's kits and mask have owners, the warmer that was just found has none yet")
{
    const auto gaps = Larkmere::whole().store().openGaps(sorrelHill);
    REQUIRE(gaps);
    CHECK(shareOf(*gaps, [](const Gap& gap) { return !gap.owner.empty(); }) > 0.4);
    for (const Gap& gap : *gaps) {
        CAPTURE(gap.item);
        if (gap.item == "delivery-kits" || gap.item == "mask-size-0")
            CHECK_FALSE(gap.owner.empty());
        if (gap.item == "warmer-on-since")
            CHECK(gap.owner.empty());
    }
}

TEST_CASE("some other units have done the round of this shift and some have not")
{
    int done = 0;
    for (const std::string& unit : Larkmere::units()) {
        const auto view = shiftView(Larkmere::whole().store(), unit, writtenAt);
        REQUIRE(view);
        done += unit != sorrelHill && view->standing ? 1 : 0;
    }
    CHECK(done >= 2);
    CHECK(done <= 6);
}

TEST_CASE("the same moment gives the same records, and every one of them verifies")
{
    const cradlepost::test::TempDir folder;
    const auto first = writeDemo(folder.file("first.sqlite"), writtenAt, 1);
    const auto second = writeDemo(folder.file("second.sqlite"), writtenAt, 1);
    REQUIRE(first);
    REQUIRE(second);
    CHECK(first->rounds == second->rounds);
    const auto hashes = lastHashes(folder.file("first.sqlite"));
    CHECK(hashes.size() == 8);
    CHECK(hashes == lastHashes(folder.file("second.sqlite")));

    const FixedClock clock(writtenAt);
    const auto store = Store::open(folder.file("first.sqlite"), clock, OpenMode::ReadOnly);
    REQUIRE(store);
    const auto verified = (*store)->verify();
    REQUIRE(verified);
    CHECK_MESSAGE(
        !verified->fault, (verified->fault ? verified->fault->where + ": " + verified->fault->what : ""));
    CHECK(verified->stations == 8);
    CHECK(verified->records > first->rounds);
    CHECK(verified->clockSetBack == 0);
}

TEST_CASE("Sorrel Hill is the same right after a shift has begun")
{
    const cradlepost::test::TempDir folder;
    const Instant justBegun = writtenAt - std::chrono::hours(4) - std::chrono::minutes(39); // 15:03 there
    REQUIRE(writeDemo(folder.file("early.sqlite"), justBegun, 1));
    const FixedClock clock(justBegun);
    const auto store = Store::open(folder.file("early.sqlite"), clock, OpenMode::ReadOnly);
    REQUIRE(store);
    const auto view = shiftView(**store, sorrelHill, justBegun);
    REQUIRE(view);
    REQUIRE(view->standing);
    CHECK(view->shift.code == "evening");
    REQUIRE(reasonOf(*view->standing, "warmer-on-since") != nullptr);
    CHECK(reasonOf(*view->standing, "warmer-on-since")->value == "18");
    CHECK(reasonOf(*view->standing, "delivery-kits") != nullptr);
}

TEST_CASE("a file that is there is left alone")
{
    const cradlepost::test::TempDir folder;
    const std::string file = folder.file("mine.sqlite");
    std::ofstream(file) << "mine";
    const auto written = writeDemo(file, writtenAt, 1);
    REQUIRE_FALSE(written);
    CHECK(written.error().code == ErrorCode::AlreadyExists);
    std::string kept;
    std::ifstream(file) >> kept;
    CHECK(kept == "mine");
}

TEST_CASE("a folder that is not there is an error, and no file is left")
{
    const cradlepost::test::TempDir folder;
    CHECK_FALSE(writeDemo(folder.file("none/demo.sqlite"), writtenAt, 1));
    CHECK_FALSE(std::filesystem::exists(folder.file("none")));
}
