// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/history.h"
#include "core/review/options.h"
#include "core/review/share.h"
#include "core/review/span.h"

#include <span>

namespace cradlepost {

/** An item that a review looks at. The same id in another checklist version is the same item. */
struct ReviewItem
{
    std::string id;
    std::string section;
    Severity severity = Severity::Minor; ///< as in the latest checklist
    ItemKind kind = ItemKind::Confirm;
};

/** A round, cut to the chosen items. */
struct ChosenRound
{
    const RoundFact* fact = nullptr;
    const Shift* shift = nullptr;
    Readiness state = Readiness::NotReady; ///< over the chosen items
    stats::Tally items; ///< met of applicable, a kind of n; items not checked are applicable and not met
    /** 0 to 1: mean over sections of the share met; without a filter of items as recorded, to 0.0001. */
    double index = 0;
    bool hasIndex = false; ///< false when nothing was applicable
    /** One letter for each item of Selection::items; blank: not in the checklist of this round. */
    std::string letters;
    [[nodiscard]] Date day() const { return shift->date; }
};

/**
 * The history as one review sees it: the rounds of the look-back and of the span that the filter takes, cut
 * to the chosen items. It points into the history, which must outlive it.
 */
struct Selection
{
    const UnitHistory* history = nullptr;
    ReviewSpan span;
    ReviewFilter filter;
    ReviewOptions options;
    std::vector<ReviewItem> items; ///< in the order of the latest checklist, older ones after them
    std::vector<const Shift*> due; ///< of the look-back and the span
    std::vector<ChosenRound> all; ///< rounds, in order of time
    std::size_t firstInSpan = 0; ///< in `all`
    std::vector<std::string> shifts; ///< codes due in the span, in the order of the day

    /** Rounds of the span. */
    [[nodiscard]] std::span<const ChosenRound> rounds() const { return std::span(all).subspan(firstInSpan); }
    [[nodiscard]] std::span<const ChosenRound> before() const { return std::span(all).first(firstInSpan); }
    [[nodiscard]] std::optional<std::size_t> itemAt(std::string_view id) const;
    /** Begin of the first shift of the span; midnight when none was due. */
    [[nodiscard]] Instant begin() const;
    /** End of the last shift of the span that has begun, or now if that comes first. */
    [[nodiscard]] Instant end() const;
    /**
     * Gaps that were open at any time between begin() and end(): of chosen items, and without a filter of
     * sections and items those of the other checks too.
     */
    [[nodiscard]] std::vector<const Gap*> gaps() const;
};

/** Fails when the span is empty or the history does not cover it with its look-back. */
Result<Selection> select(const UnitHistory& history, const ReviewSpan& span, const ReviewFilter& filter = {},
    const ReviewOptions& options = {});

/** The state of letters by severity, as in verdictOf: critical g or u: not ready. Blank and n count nothing.
 */
Readiness stateOf(std::string_view letters, std::span<const ReviewItem> items);

}
