// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/gap/escalation.h"
#include "core/gap/gapaction.h"
#include "core/ledger/record.h"
#include "core/review/visitresult.h"
#include "core/round/changeidea.h"
#include "core/round/standing.h"
#include "core/round/walk.h"
#include "core/store/chain.h"
#include "core/store/unit.h"
#include "core/supply/birthboard.h"
#include "core/supply/distance.h"
#include "core/supply/equipmentregister.h"
#include "core/supply/fridgereading.h"
#include "core/supply/handover.h"
#include "core/supply/stockbook.h"
#include "core/supply/warmerclock.h"

#include <functional>
#include <memory>

namespace cradlepost {

/** One row of the round projection: enough for strips, calendars and scans. */
struct RoundRow
{
    Slot slot = 0;
    RecordId id;
    RoundKind kind = RoundKind::Shift;
    std::string checklist;
    int version = 1;
    std::string outcomes;
    Readiness state = Readiness::NotReady;
    int met = 0;
    int applicable = 0;
    int index = 0;
    Instant started;
    Instant finished;
    std::string actor;
    Instant recorded; ///< when its record was made, by a clock that never goes back
    bool fromPaper = false;
    int amendments = 0; ///< what the row says is what the last one says
    std::optional<Instant> amendedAt;
};

/** A round and who walked it. */
struct WalkedRound
{
    RoundRecord round;
    std::string actor;
};

/** One measured value, in thousandths. */
struct Reading
{
    Slot slot = 0;
    RecordId id;
    std::string item;
    std::int64_t thousandths = 0;
};

/** The handover given last, and who took it. */
struct LastHandover
{
    FactId id;
    HandoverGiven given;
    std::optional<HandoverTaken> taken;
};

class Arrivals;

/** The first fault that verify met. */
struct Fault
{
    std::string where; ///< "record hq3k…/17", "round sorrel-hill 2026-11-24/1", "file"
    std::string what;
};

struct Verified
{
    std::int64_t records = 0;
    std::int64_t stations = 0;
    std::optional<Fault> fault;
    /** Records made while the clock stood behind what their chain had seen before: odd, but no forgery. */
    std::int64_t clockSetBack = 0;
    std::string firstSetBack; ///< "record hq3k…/17"; empty when there is none
};

/** A draft that was saved and can no longer be taken up. The next one of its kind replaces it. */
struct UnreadableDraft
{
    RoundKind kind = RoundKind::Shift;
    Error why;
};

enum class OpenMode {
    ReadWrite, ///< makes the file when there is none, migrates it when it is older
    ReadOnly, ///< neither; migrations that are due are an error
};

/**
 * The station's database: the ledger and its projections. Every write is one transaction. One object a
 * thread. The signing key lies beside the file (FILE.key) and is made at the first write.
 */
class Store
{
public:
    static Result<std::unique_ptr<Store>> open(
        const std::string& path, const Clock& clock, OpenMode mode = OpenMode::ReadWrite);
    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    /** How long a write waits for another program's before it fails with Locked; 5 s unless set. */
    void setBusyTimeout(std::chrono::milliseconds timeout);

    /** Signs with this key instead of the one beside the file (the demo's stations, tests). */
    void signWith(StationKey key);

    // Set-up
    Result<std::vector<Unit>> units() const;
    Result<void> describeUnit(const Unit& unit, const std::string& actor);
    Result<void> setPattern(const std::string& unit, const PatternFrom& pattern, const std::string& actor);
    /** The calendar in force on `day`; fails when the unit is not known or has no pattern yet. */
    Result<ShiftCalendar> calendar(const std::string& unit, Date day) const;
    Result<void> setPeople(
        const std::string& unit, const std::vector<Person>& people, const std::string& actor);
    Result<std::vector<Person>> people(const std::string& unit) const;
    /** Refuses a broken document, and another document under an id and version already taken. */
    Result<void> adopt(const std::string& unit, const Adoption& adoption, const std::string& actor);
    /** What the unit uses for `use` on `day`: the adoption with the latest `from` not after it. */
    Result<AdoptedChecklist> checklistFor(const std::string& unit, RoundKind use, Date day) const;
    Result<Checklist> checklist(const std::string& id, int version) const;

    // Rounds
    /** Durable when it returns. One draft a unit and kind; a second one replaces the first. */
    Result<void> saveDraft(const Draft& draft);
    Result<std::vector<Draft>> drafts(const std::string& unit) const;
    /** What drafts() leaves out. */
    Result<std::vector<UnreadableDraft>> unreadableDrafts(const std::string& unit) const;
    Result<void> dropDraft(const std::string& unit, RoundKind kind);
    /**
     * Appends the record, its projections and drops the draft of that kind, all in one transaction. A second
     * shift round for the same shift is refused with AlreadyExists. A spot check becomes an `observation`.
     */
    Result<RecordId> saveRound(const std::string& unit, const RoundRecord& round, const std::string& actor);
    /** All of them or none, and far quicker than one by one when they are of the past. Drafts stay. */
    Result<std::vector<RecordId>> saveRounds(const std::string& unit, const std::vector<WalkedRound>& rounds);
    /**
     * From now on `corrected` counts for the round; the record of it stays. Refused as checkAmendment says, and
     * when `id` names no round. Amendments of other stations may come later: the last one made counts.
     */
    Result<RecordId> amendRound(const RecordId& id, const RoundRecord& corrected, const std::string& reason,
        const std::string& actor);
    /** Rows with from <= slot < to, by slot and finish. */
    Result<std::vector<RoundRow>> rounds(const std::string& unit, Slot from, Slot to) const;
    /** The shift's round, re-checks and checks, but no spot checks, whole, in the order they were finished. */
    Result<std::vector<SavedRound>> roundsOfShift(const std::string& unit, Slot slot) const;
    /** A round, check or spot check as it counts. */
    Result<SavedRound> round(const RecordId& id) const;
    /** The same as it was first recorded, before anybody amended it. */
    Result<SavedRound> firstRecorded(const RecordId& id) const;
    /** Whole, with from <= slot < to, in the order they were finished. */
    Result<std::vector<SavedRound>> spotChecks(const std::string& unit, Slot from, Slot to) const;
    Result<std::vector<Reading>> readings(
        const std::string& unit, const std::string& item, Slot from, Slot to) const;
    /**
     * Counts of m, g, n, u by item for the shift rounds with from <= slot < to, in the order of the checklist
     * version used last; items of earlier versions only come after it.
     */
    struct ItemTally
    {
        std::string item;
        int met = 0;
        int gaps = 0;
        int doesNotApply = 0;
        int notChecked = 0;
    };
    Result<std::vector<ItemTally>> itemTallies(const std::string& unit, Slot from, Slot to) const;

    // Gaps
    /** Critical first, then by due time. */
    Result<std::vector<Gap>> openGaps(const std::string& unit) const;
    /** Closed at or after `since`, latest first. */
    Result<std::vector<Gap>> closedGaps(const std::string& unit, Instant since) const;
    /** All gaps an item ever had in the unit, in order. */
    Result<std::vector<Gap>> gapsOf(const std::string& unit, const std::string& item) const;
    /** Refused as checkAction and checkActionOn say; what is mended or verified without a time is so now. */
    Result<void> actOnGap(const std::string& unit, const GapAction& action, const std::string& actor);
    /** Who hears when of a gap that lasts, from now on. Refused as checkEscalation says. */
    Result<void> setEscalation(
        const std::string& unit, const std::vector<EscalationLevel>& levels, const std::string& actor);
    /** As the unit set it last; the usual levels before that. */
    Result<std::vector<EscalationLevel>> escalation(const std::string& unit) const;

    // What is tried
    /**
     * A new idea when its id is empty, else the one of that id put right or ended; gives the id. Refused as
     * checkChangeIdea says.
     */
    Result<std::string> noteChange(
        const std::string& unit, const ChangeIdea& idea, const std::string& actor);
    /** By first day. */
    Result<std::vector<ChangeIdea>> changeIdeas(const std::string& unit) const;

    // Supplies and devices. What lies more than five minutes ahead of now is refused as a slip.
    /** Sets up an item of the shelf or changes it. */
    Result<void> describeStockItem(const std::string& unit, const StockItem& item, const std::string& actor);
    /** All of them or none, in the order given. Each is refused as checkEntry says; NotFound: no such item. */
    Result<void> moveStock(
        const std::string& unit, const std::vector<StockMovement>& movements, const std::string& actor);
    /** All of them or none. NotFound: a device that nobody added; AlreadyExists: added twice. */
    Result<void> noteEquipment(
        const std::string& unit, const std::vector<EquipmentEvent>& events, const std::string& actor);
    /** NotFound when the device is no warmer of the register. */
    Result<void> switchWarmer(const std::string& unit, const WarmerSwitch& event, const std::string& actor);
    /** Refused for a birth that is done or cancelled, and for one to be ended that nobody expected. */
    Result<void> noteBirth(const std::string& unit, const BirthEvent& event, const std::string& actor);
    /** NotFound when the device is no fridge of the register. */
    Result<void> noteFridge(const std::string& unit, const FridgeReading& reading, const std::string& actor);
    Result<RecordId> giveHandover(
        const std::string& unit, const HandoverGiven& given, const std::string& actor);
    /** NotFound: it names no handover of the unit; AlreadyExists: it was taken; refused for who gave it. */
    Result<void> takeHandover(const std::string& unit, const HandoverTaken& taken, const std::string& actor);

    /** As last described, by id. */
    Result<std::vector<StockItem>> stockItems(const std::string& unit) const;
    /** Of one item, or of all when it is empty; in the order in which they happened within an item. */
    Result<std::vector<Recorded<StockMovement>>> stockMovements(
        const std::string& unit, const std::string& item = {}) const;
    Result<StockBook> stockBook(const std::string& unit) const;
    Result<EquipmentRegister> equipmentRegister(const std::string& unit) const;
    Result<std::vector<WarmerRun>> warmerRuns(const std::string& unit) const;
    Result<std::vector<BirthSpan>> birthBoard(const std::string& unit) const;
    /** Of all fridges, at or after `since`, in order of time within a fridge. */
    Result<std::vector<FridgeReading>> fridgeReadings(const std::string& unit, Instant since) const;
    Result<std::optional<LastHandover>> lastHandover(const std::string& unit) const;

    // The district
    /** All of them or none, each a record of `from`; the last one entered of a way counts. NotFound: no such unit. */
    Result<void> setDistances(const std::vector<Distance>& distances, const std::string& actor);
    Result<DistanceTable> distances() const;
    /** What a visit's sample found. Refused as checkVisit says, and when it lies ahead of now. */
    Result<RecordId> noteVisit(
        const std::string& unit, const VisitResult& visit, const std::string& actor);
    /** At or after `since`, in order of time. */
    Result<std::vector<VisitResult>> visits(const std::string& unit, Instant since) const;

    // Exchange with other stations
    /** The station's own key, made when there is none yet. */
    Result<StationKey> ownKey() const;
    /** Of every station that has records here, by station. */
    Result<std::vector<Chain>> chains() const;
    /** How a record is sealed here; nothing when it is not here. */
    Result<std::optional<RecordSeal>> sealOf(const std::string& station, std::int64_t seq) const;
    /** The first record of a chain that was made at or after `since`. */
    Result<std::optional<std::int64_t>> firstSince(const std::string& station, Instant since) const;
    /** The records of a chain with from <= seq <= to, in order. A body that cannot be unpacked is empty. */
    Result<void> records(const std::string& station, std::int64_t from, std::int64_t to,
        const std::function<Result<void>(const Record&)>& visit) const;
    /** Stations whose rounds, actions or set-up of this unit are here, by station. */
    Result<std::vector<std::string>> writersOf(const std::string& unit) const;
    Result<bool> hasWritten(const std::string& station, const std::string& unit) const;
    /** By name. The own station is not among them, and needs no word. */
    Result<std::vector<TrustedStation>> trustedStations() const;
    /** Replaces what was said of this station before. */
    Result<void> trust(const TrustedStation& trusted);
    /** Its records stay. Fails with NotFound when it was not trusted. */
    Result<void> distrust(const std::string& station);
    /** What `bring` takes in comes in as one transaction: all of it or nothing. */
    Result<void> takeIn(const std::function<Result<void>(Arrivals&)>& bring);

    // Upkeep
    /** File, chain of every station, seals, order of time, projections against a replay. */
    Result<Verified> verify() const;
    /** Drops and replays all projections in one transaction. */
    Result<void> rebuild();
    /** A sound copy in one file, also while others write. Refuses to overwrite. */
    Result<void> backup(const std::string& to) const;
    /**
     * Puts a verified backup in the place of `path`. The file that was there is kept beside it, and the
     * station starts a new chain with a new key, since its old one may have gone on after the backup. Nothing
     * is changed when the backup does not verify; a cut in the middle leaves the old or the new file, never
     * neither.
     */
    static Result<void> restore(const std::string& backup, const std::string& path, const Clock& clock);

    [[nodiscard]] const std::string& path() const;
    /** Runs many writes as one transaction (the demo, a backlog): all of them or none. */
    Result<void> together(const std::function<Result<void>()>& writes);

private:
    friend class HistoryReader; // reads what a review needs in one go
    friend class DistrictReader; // the same for all units
    struct Parts;
    class Intake;
    explicit Store(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> m_parts;
};

}
