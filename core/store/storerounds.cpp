// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/base/refusal.h"
#include "core/store/parts.h"

#include <algorithm>
#include <map>

namespace cradlepost {

namespace {

/** What roundFromBody would not read again. */
bool fitsItself(const RoundRecord& round)
{
    const auto gaps = std::count(round.outcomes.begin(), round.outcomes.end(), 'g');
    const bool letters = round.outcomes.find_first_not_of("mgnu") == std::string::npos;
    const bool counts = 0 <= round.met && round.met <= round.applicable
        && round.applicable <= static_cast<int>(round.outcomes.size()) && 0 <= round.index
        && round.index <= 10'000;
    return letters && counts && static_cast<std::size_t>(gaps) == round.gaps.size()
        && (round.kind == RoundKind::Recheck) == round.over.has_value();
}

std::string nameOf(const Shift& shift) { return toIso(shift.date) + '/' + std::to_string(shift.index); }

void checkAgainst(const Checklist& checklist, const RoundRecord& round)
{
    const std::size_t items = checklist.itemCount();
    if (round.outcomes.size() != items || round.answers.size() != items || round.seconds.size() != items)
        refuse(ErrorCode::InvalidArgument,
            "round of " + nameOf(round.shift) + ": " + std::to_string(round.outcomes.size()) + " outcomes, "
                + std::to_string(round.answers.size()) + " answers and "
                + std::to_string(round.seconds.size()) + " times for the " + std::to_string(items)
                + " items of " + checklist.id + " version " + std::to_string(checklist.version));
    if (!fitsItself(round))
        refuse(ErrorCode::InvalidArgument,
            "round of " + nameOf(round.shift) + ": outcomes, reasons, counts and kind do not fit each other");
    if (checklistUse(round.kind) != checklist.use)
        refuse(ErrorCode::InvalidArgument,
            "round of " + nameOf(round.shift) + ": checklist " + checklist.id + " is for '"
                + codeName(checklist.use) + "', not for '" + codeName(round.kind) + "'");
}

}

void Store::Parts::mayBeSaved(const std::string& unit, const RoundRecord& round)
{
    checkAgainst(*knownChecklist(round.checklist, round.version), round);
    const Slot slot = round.shift.slot();
    if (round.kind == RoundKind::Shift && rounds.hasShiftRound(unit, slot))
        refuse(refused(refusal::shiftDone, {}, "unit '" + unit + "' has a round of " + nameOf(round.shift) + " already",
            "Re-check what was mended instead.", ErrorCode::AlreadyExists));
    if (round.over && !rounds.has(unit, slot, *round.over, RoundKind::Shift))
        refuse(
            ErrorCode::NotFound, "the round of " + nameOf(round.shift) + " that is re-checked is not there");
}

void Store::Parts::mayStandFor(const RoundRecord& corrected)
{
    checkAgainst(*knownChecklist(corrected.checklist, corrected.version), corrected);
}

Result<void> Store::saveDraft(const Draft& draft)
{
    return attempt([&] {
        auto& shelter = m_parts->draftShelter();
        try {
            m_parts->knownUnit(draft.unit);
            m_parts->drafts.put(draft, m_parts->clock.now());
        } catch (Failure& failure) {
            if (!failure.isAway || !shelter)
                throw;
            shelter->keep(draft, m_parts->clock.now());
            failure.error.hint = "What was entered is kept on this computer. " + failure.error.hint;
            throw;
        }
        if (shelter)
            shelter->drop(draft.unit, draft.kind);
    });
}

Result<std::vector<Draft>> Store::drafts(const std::string& unit) const
{
    return attempt([&] {
        if (auto& shelter = m_parts->draftShelter(); shelter && m_parts->database->canWrite())
            shelter->bringBack(*m_parts->database);
        return m_parts->drafts.of(unit);
    });
}

Result<std::vector<UnreadableDraft>> Store::unreadableDrafts(const std::string& unit) const
{
    return attempt([&] { return m_parts->drafts.unreadable(unit); });
}

Result<void> Store::dropDraft(const std::string& unit, RoundKind kind)
{
    return attempt([&] {
        if (auto& shelter = m_parts->draftShelter())
            shelter->drop(unit, kind);
        m_parts->drafts.drop(unit, kind);
    });
}

Result<RecordId> Store::saveRound(const std::string& unit, const RoundRecord& round, const std::string& actor)
{
    auto saved = m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        m_parts->mayBeSaved(unit, round);
        RecordId id = m_parts->append(unit, round, actor);
        m_parts->drafts.drop(unit, round.kind);
        return id;
    });
    if (auto& shelter = m_parts->draftShelter(); saved && shelter)
        (void)attempt([&] { shelter->drop(unit, round.kind); }); // the round stands, whatever becomes of its draft
    return saved;
}

Result<std::vector<RecordId>> Store::saveRounds(
    const std::string& unit, const std::vector<WalkedRound>& rounds)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        std::vector<RecordId> ids;
        m_parts->projector.gatherLate();
        for (const WalkedRound& walked : rounds) {
            m_parts->mayBeSaved(unit, walked.round);
            ids.push_back(m_parts->append(unit, walked.round, walked.actor));
        }
        m_parts->projector.carryLate();
        return ids;
    });
}

Result<std::vector<RoundRow>> Store::rounds(const std::string& unit, Slot from, Slot to) const
{
    return attempt([&] { return m_parts->rounds.range(unit, from, to); });
}

Result<std::vector<SavedRound>> Store::roundsOfShift(const std::string& unit, Slot slot) const
{
    return attempt([&] {
        std::vector<SavedRound> saved;
        for (const RecordId& id : m_parts->rounds.ofShift(unit, slot))
            saved.push_back(m_parts->savedRound(id));
        return saved;
    });
}

Result<SavedRound> Store::round(const RecordId& id) const
{
    return attempt([&] { return m_parts->savedRound(id); });
}

Result<std::vector<Reading>> Store::readings(
    const std::string& unit, const std::string& item, Slot from, Slot to) const
{
    return attempt([&] {
        std::vector<Reading> readings;
        for (const auto& round : m_parts->rounds.measurements(unit, from, to)) {
            const auto checklist = m_parts->projector.checklists().find(round.checklist, round.version);
            const auto position = checklist ? checklist->position(item) : std::nullopt;
            for (const ReadingFact& reading : round.readings)
                if (position == reading.position)
                    readings.push_back({.slot = round.slot,
                        .id = round.id,
                        .item = item,
                        .thousandths = reading.value.thousandths});
        }
        return readings;
    });
}

Result<std::vector<Store::ItemTally>> Store::itemTallies(const std::string& unit, Slot from, Slot to) const
{
    return attempt([&] {
        auto versions = m_parts->rounds.tallies(unit, from, to);
        std::sort(versions.begin(), versions.end(),
            [](const auto& a, const auto& b) { return a.latest > b.latest; });
        std::vector<ItemTally> tallies;
        std::map<std::string, std::size_t> places;
        for (const auto& version : versions) {
            const auto checklist = m_parts->knownChecklist(version.checklist, version.version);
            const std::size_t items = std::min(version.byPosition.size(), checklist->itemCount());
            for (std::size_t i = 0; i < items; ++i) {
                const std::string& item = checklist->item(i).id;
                const auto [place, isNew] = places.emplace(item, tallies.size());
                if (isNew)
                    tallies.push_back({.item = item});
                ItemTally& tally = tallies[place->second];
                const auto& letters = version.byPosition[i];
                tally.met += letters[0];
                tally.gaps += letters[1];
                tally.doesNotApply += letters[2];
                tally.notChecked += letters[3];
            }
        }
        return tallies;
    });
}

}
