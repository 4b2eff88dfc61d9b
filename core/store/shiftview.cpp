// SPDX-License-Identifier: MIT
#include "core/store/shiftview.h"

#include <algorithm>
#include <map>

namespace cradlepost {

namespace {

/** What the checks of the shift and an open check after use say of the items of the shift round. */
Result<std::vector<Sighting>> sightings(const Store& store, const ShiftView& view)
{
    std::vector<Sighting> all;
    const auto add = [&](std::vector<Sighting> seen) { all.insert(all.end(), seen.begin(), seen.end()); };
    for (const SavedRound& saved : view.saved) {
        if (saved.round.kind != RoundKind::PreBirth && saved.round.kind != RoundKind::AfterUse)
            continue;
        const auto checklist = store.checklist(saved.round.checklist, saved.round.version);
        if (!checklist)
            return tl::unexpected(checklist.error());
        add(sightingsOf(*checklist, saved.round));
    }
    for (const Draft& draft : view.drafts) {
        if (draft.kind != RoundKind::AfterUse)
            continue;
        const auto checklist = store.checklist(draft.checklist, draft.version);
        if (!checklist)
            return tl::unexpected(checklist.error());
        add(sightingsOf(*checklist, draft));
    }
    return all;
}

Result<void> canBeTakenUp(const Store& store, const Draft& draft)
{
    const auto checklist = store.checklist(draft.checklist, draft.version);
    return checklist ? checkFits(*checklist, draft) : tl::unexpected(checklist.error());
}

/** A draft that does not fit its checklist is left out of `drafts` like one that cannot be read. */
void leaveOutMisfits(const Store& store, ShiftView& view)
{
    std::vector<Draft> kept;
    for (Draft& draft : view.drafts) {
        if (const auto fits = canBeTakenUp(store, draft); fits)
            kept.push_back(std::move(draft));
        else
            view.unreadable.push_back({.kind = draft.kind, .why = fits.error()});
    }
    view.drafts = std::move(kept);
}

/** The checklist that the shift's round was walked with, which may be older than the one in force. */
Result<Checklist> walkedChecklist(const Store& store, const ShiftView& view)
{
    for (const SavedRound& saved : view.saved) {
        if (saved.round.kind == RoundKind::Shift)
            return store.checklist(saved.round.checklist, saved.round.version);
    }
    return view.adopted.checklist;
}

/** States of an older version in the order of today's sections; a section it did not have does not apply. */
std::vector<SectionState> arranged(const Checklist& today, const Checklist& walked, std::vector<SectionState> states)
{
    if (today.version == walked.version && today.id == walked.id)
        return states;
    std::vector<SectionState> out;
    for (const Section& section : today.sections) {
        const auto at = std::find_if(walked.sections.begin(), walked.sections.end(),
            [&](const Section& s) { return s.id == section.id; });
        out.push_back(at == walked.sections.end()
                ? SectionState::DoesNotApply
                : states[static_cast<std::size_t>(at - walked.sections.begin())]);
    }
    return out;
}

}

Result<ShiftView> shiftView(const Store& store, const std::string& unit, Instant now)
{
    const auto units = store.units();
    if (!units)
        return tl::unexpected(units.error());
    const auto found = std::find_if(units->begin(), units->end(), [&](const Unit& u) { return u.id == unit; });
    if (found == units->end())
        return fail(ErrorCode::NotFound, "there is no unit '" + unit + "' in this database", "see its units in Set-up");
    const auto zone = TimeZone::named(found->zone);
    if (!zone)
        return tl::unexpected(zone.error());
    const Date today = zone->toLocal(now).date;
    auto calendar = store.calendar(unit, today);
    if (!calendar)
        return tl::unexpected(calendar.error());
    const Shift shift = calendar->shiftAt(now);
    auto adopted = store.checklistFor(unit, RoundKind::Shift, shift.date);
    auto saved = store.roundsOfShift(unit, shift.slot());
    auto gaps = store.openGaps(unit);
    auto drafts = store.drafts(unit);
    auto unreadable = store.unreadableDrafts(unit);
    for (const Error* error : {adopted ? nullptr : &adopted.error(), saved ? nullptr : &saved.error(),
             gaps ? nullptr : &gaps.error(), drafts ? nullptr : &drafts.error(),
             unreadable ? nullptr : &unreadable.error()}) {
        if (error != nullptr)
            return tl::unexpected(*error);
    }
    ShiftView view{.unit = *found,
        .calendar = std::move(*calendar),
        .shift = shift,
        .adopted = std::move(*adopted),
        .saved = std::move(*saved),
        .standing = std::nullopt,
        .gaps = std::move(*gaps),
        .drafts = std::move(*drafts),
        .unreadable = std::move(*unreadable)};
    leaveOutMisfits(store, view);
    const auto walked = walkedChecklist(store, view);
    const auto seen = sightings(store, view);
    if (!walked || !seen)
        return tl::unexpected(walked ? seen.error() : walked.error());
    view.standing = standingAt(*walked, view.saved, *zone, now, *seen);
    if (view.standing)
        view.adopted = {.checklist = *walked, .limits = view.standing->round.limits};
    return view;
}

std::optional<Item> itemNamed(const Store& store, const ShiftView& view, const std::string& id)
{
    if (const auto at = view.adopted.checklist.position(id))
        return view.adopted.checklist.item(*at);
    for (const RoundKind use : {RoundKind::PreBirth, RoundKind::AfterUse}) {
        const auto adopted = store.checklistFor(view.unit.id, use, view.shift.date);
        if (!adopted)
            continue;
        if (const auto at = adopted->checklist.position(id))
            return adopted->checklist.item(*at);
    }
    return std::nullopt;
}

Result<std::vector<StripColumn>> strip(const Store& store, const ShiftView& view, int days)
{
    Shift shift = view.calendar.shift(addDays(view.shift.date, 1 - days), 0);
    const auto rows = store.rounds(view.unit.id, shift.slot(), view.shift.slot() + 1);
    if (!rows)
        return tl::unexpected(rows.error());
    std::map<Slot, const RoundRow*> bySlot;
    for (const RoundRow& row : *rows) {
        if (row.kind == RoundKind::Shift)
            bySlot.emplace(row.slot, &row);
    }
    std::map<std::pair<std::string, int>, Checklist> known;
    std::vector<StripColumn> columns;
    for (; shift.slot() <= view.shift.slot(); shift = view.calendar.next(shift)) {
        StripColumn column {.shift = shift, .sections = {}};
        if (const auto row = bySlot.find(shift.slot()); row != bySlot.end()) {
            const auto version = std::pair(row->second->checklist, row->second->version);
            auto walked = known.find(version);
            if (walked == known.end()) {
                auto read = store.checklist(version.first, version.second);
                if (!read)
                    return tl::unexpected(read.error());
                walked = known.emplace(version, std::move(*read)).first;
            }
            column.sections = arranged(view.adopted.checklist, walked->second,
                sectionStates(walked->second, row->second->outcomes));
        }
        columns.push_back(std::move(column));
    }
    return columns;
}

}
