// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/text/reasontext.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/factsheet.h"
#include "ui/widgets/readinessstrip.h"
#include "ui/widgets/verdictbanner.h"

namespace cradlepost {

/** Turns how the shift stands into what *This shift* shows. */
class ShiftText
{
    Q_DECLARE_TR_FUNCTIONS(ShiftText)
public:
    ShiftText(const Ward& ward, const ShiftView& view);

    [[nodiscard]] VerdictState state() const;
    [[nodiscard]] QString sentence() const;
    /** What was begun and is lost, one sentence a round; empty when nothing is. */
    [[nodiscard]] QString lost() const;
    /** What to mend first; at most `most` rows. */
    [[nodiscard]] std::vector<ActionRow> rows(std::size_t most) const;
    [[nodiscard]] std::size_t rowCount() const;
    /** The warmers and births of the board, and the room; without a board the first item of each kind in the
     * checklist, as last seen: warmer, kits, room. */
    [[nodiscard]] std::vector<Fact> facts() const;
    [[nodiscard]] StripData strip(const std::vector<StripColumn>& columns) const;

private:
    [[nodiscard]] ActionRow rowOf(const Reason& reason) const;
    [[nodiscard]] ActionRow rowOf(const Gap& gap) const;
    void setDue(ActionRow& row, Instant due) const;
    [[nodiscard]] Fact warmerFact() const;
    [[nodiscard]] Fact birthsFact() const;
    [[nodiscard]] Fact sinceFact(std::size_t at, const SinceRule& rule) const;
    [[nodiscard]] Fact kitFact(std::size_t at, const KitRule& rule) const;
    [[nodiscard]] Fact measureFact(std::size_t at, const MeasureRule& rule) const;
    [[nodiscard]] QString seen(std::size_t at) const;
    [[nodiscard]] QString unanswered(std::size_t at) const;
    [[nodiscard]] std::vector<StripDay> days(const std::vector<StripColumn>& columns) const;
    [[nodiscard]] StripCell cell(const StripColumn& column, std::size_t section) const;

    const Ward& m_ward;
    const ShiftView& m_view;
    TimeText m_times;
    ReasonText m_reasons;
    Instant m_now;
};

}
