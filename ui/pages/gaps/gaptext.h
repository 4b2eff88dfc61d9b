// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/escalation.h"
#include "ui/pages/ward.h"
#include "ui/text/reasontext.h"
#include "ui/widgets/actiontable.h"

namespace cradlepost {

/** Gaps as rows and sentences. */
class GapText
{
    Q_DECLARE_TR_FUNCTIONS(GapText)
public:
    explicit GapText(const Ward& ward);

    [[nodiscard]] QString title(const Gap& gap) const;
    [[nodiscard]] ActionRow open(const Gap& gap) const;
    [[nodiscard]] ActionRow mended(const Gap& gap) const;
    /** "Open 3 days, found in 9 rounds and checks. It was open twice before." */
    [[nodiscard]] QString life(const Gap& gap) const;
    /** "3 open gaps" */
    [[nodiscard]] static QString answer(std::size_t open);
    /** "One is critical. Two are late. Nobody has taken on 3 of them." */
    [[nodiscard]] QString sentence(const std::vector<Gap>& gaps) const;

    /** How far it has gone up and what comes next; empty when it goes nowhere. */
    [[nodiscard]] QString escalation(const Gap& gap) const;
    /** What comes back most, named; empty when nothing came back. */
    [[nodiscard]] QString returning(const std::vector<Gap>& gaps) const;

    /** "the in-charge" */
    [[nodiscard]] static QString person(EscalationTo to);

private:
    [[nodiscard]] QString mending(const Gap& gap) const;

    [[nodiscard]] std::optional<Item> itemOf(const Gap& gap) const;

    const Ward& m_ward;
    ReasonText m_reasons;
    TimeText m_times;
    Instant m_now;
};

}
