// SPDX-License-Identifier: MIT
#include "busymonth.h"

namespace cradlepost::test {

using namespace std::chrono;

BusyMonth::BusyMonth(const std::string& file)
    : clock(sys_days(first))
    , store(aStore(file, clock))
    , checklist(must(store->checklistFor(unit, RoundKind::Shift, first)).checklist)
{
    must(store->adopt(unit, anAdoption(RoundKind::PreBirth), "AB"));
    addStock();
    addRounds();
    addChecks();
}

RecordId BusyMonth::save(const RoundRecord& round, const std::string& actor)
{
    clock.set(std::max(clock.now(), round.finished));
    return must(store->saveRound(unit, round, actor));
}

/** Each round has a plain gap in another item; now and then a reading lies outside or an item does not apply.
 */
void BusyMonth::addRounds()
{
    std::size_t nth = 0;
    for (Date day = first; day <= last; day = addDays(day, 1)) {
        for (const int shift : {0, 1}) {
            ++nth;
            if (nth % 6 == 0)
                continue;
            RoundBuilder round = aRound(checklist).on(day, shift);
            const Item& item = checklist.item(nth * 3 % checklist.itemCount());
            round.withGap(item.id, static_cast<GapReason>(nth % 6));
            if (nth % 4 == 1)
                round.measuring("room-temperature", nth % 8 == 1 ? "22.5" : "29.5");
            for (std::size_t at = nth % 5; at < checklist.itemCount(); at += 17) {
                if (checklist.item(at).mayNotApply)
                    round.notApplicable(checklist.item(at).id);
            }
            const RecordId id = save(round);
            if (nth == 3)
                amended = id;
        }
    }
}

void BusyMonth::addChecks()
{
    const Checklist before = must(store->checklistFor(unit, RoundKind::PreBirth, first)).checklist;
    save(aRound(before).on(last, 1).finishedAfter(hours(2)).withGap(before.item(0).id));
    const auto shifts = must(store->roundsOfShift(unit, slotOf(last, 0)));
    save(aRound(checklist).on(last, 0).finishedAfter(hours(3)).rechecking(
        shifts.front().id, {checklist.item(0).id, checklist.item(5).id}));
    RoundRecord spotCheck
        = aRound(checklist).on(last, 0).finishedAfter(hours(4)).without(checklist.item(7).id).done();
    spotCheck.kind = RoundKind::SpotCheck;
    save(spotCheck, "QO");
    const SavedRound wrong = must(store->round(amended));
    auto answers = wrong.round.answers;
    answers[2] = GapFound{GapReason::NotClean};
    const RoundRecord right
        = must(withAnswers(checklist, aCalendar().zone(), wrong.round, std::move(answers)));
    must(store->amendRound(amended, right, "copied from the wrong line", "QO"));
}

void BusyMonth::addStock()
{
    const Instant now = clock.now();
    must(store->describeStockItem(unit,
        {.id = "oxytocin",
            .name = "=Oxytocin, \"ampoules\"", // as a spreadsheet would run it
            .at = now,
            .levels = {.par = 80, .minimum = 30, .emergency = 10},
            .expires = true,
            .packSize = 10,
            .perBirth = Decimal{1500},
            .deliveryDays = 14,
            .service = Decimal{980},
            .serves = {"gloves", "oxytocin"}},
        "AB"));
    must(store->moveStock(unit,
        {{.item = "oxytocin", .at = now, .quantity = 40, .lot = "A1", .expiry = addDays(first, 90)},
            {.item = "oxytocin", .kind = MovementKind::Issue, .at = now, .quantity = 6},
            {.item = "oxytocin",
                .kind = MovementKind::Wastage,
                .at = now,
                .quantity = 1,
                .reason = MovementReason::Damaged},
            {.item = "oxytocin",
                .kind = MovementKind::CountCorrection,
                .at = now,
                .quantity = 30,
                .reason = MovementReason::CountedWrong},
            {.item = "oxytocin",
                .kind = MovementKind::TransferOut,
                .at = now,
                .quantity = 5,
                .counterpart = "tarn-ferry"}},
        "AB"));
}

}
