// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/roundrecord.h"

namespace cradlepost {

/** A round that is being walked; kept after every answer so that it can be taken up again. */
struct Draft
{
    std::string unit;
    RoundKind kind = RoundKind::Shift;
    std::string checklist;
    int version = 1;
    std::string actor;
    Shift shift;
    Instant started;
    ChosenLimits limits;
    std::vector<Answer> answers; ///< one an item
    std::vector<std::optional<Instant>> answeredAt;
    std::vector<std::size_t> asked; ///< positions that are asked; all of them but in a re-check
    std::optional<RecordId> over; ///< of a re-check: the shift's round
    std::vector<Answer> before; ///< of a re-check: the answers it is laid over; else empty
    bool operator==(const Draft&) const = default;
};

Json toJson(const Draft& draft);
Result<Draft> draftFromJson(const Json& json);

/** The last local day of a shift: its end is exclusive, so one that ends at midnight ends on the day before. */
Date lastDayOf(const Shift& shift, const TimeZone& zone);

/** Whether a draft is one of that checklist, as Walk::of wants it. */
Result<void> checkFits(const Checklist& checklist, const Draft& draft);

/** Drives one draft: takes answers, knows what is still to do, forms the verdict, ends in a record. */
class Walk
{
public:
    /**
     * Takes a draft up. `zone` is the unit's, for the day on which the shift ends. Fails with BadDocument
     * when the draft is not one of that checklist: of another version, or with more or fewer items.
     */
    static Result<Walk> of(Checklist checklist, TimeZone zone, Draft draft);

    /** A fresh draft over all items. */
    static Draft begin(const Checklist& checklist, RoundKind kind, std::string unit, std::string actor,
        const Shift& shift, ChosenLimits limits, Instant now);
    /** A draft over those items of `round` (with later re-checks already laid over `answers`) that are not met. */
    static Draft beginRecheck(const Checklist& checklist, std::string unit, std::string actor, const Shift& shift,
        ChosenLimits limits, RecordId round, std::vector<Answer> answers, std::vector<std::size_t> asked, Instant now);

    /** A recorded shift round opened once more, to put its answers right, see withAnswers. `actor`: who walked it. */
    static Draft again(std::string unit, std::string actor, const RoundRecord& round);

    [[nodiscard]] const Checklist& checklist() const { return m_checklist; }
    [[nodiscard]] const Draft& draft() const { return m_draft; }
    [[nodiscard]] const Answer& answer(std::size_t position) const { return m_draft.answers[position]; }
    [[nodiscard]] bool isAsked(std::size_t position) const;
    /** One item's answer; refused as checkAnswer says. NotChecked takes an answer back. */
    Result<void> give(std::size_t position, Answer answer, Instant now);
    [[nodiscard]] Judgement judged(std::size_t position, Instant reference) const;
    /** As it stands: what is not answered yet counts as not checked. */
    [[nodiscard]] Verdict verdict(Instant reference) const;
    /** Asked items without an answer, or with a function test begun and not ended. */
    [[nodiscard]] std::vector<std::size_t> open() const;
    /** The record; what is still open goes in as not checked. */
    [[nodiscard]] RoundRecord finish(Instant now) const;
    [[nodiscard]] JudgeContext context(Instant reference) const;

private:
    Walk(Checklist checklist, TimeZone zone, Draft draft);
    [[nodiscard]] std::vector<Answer> laidOver() const;

    Checklist m_checklist;
    TimeZone m_zone;
    Draft m_draft;
};

}
