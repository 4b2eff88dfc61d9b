// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/gap.h"
#include "ui/text/timetext.h"

namespace cradlepost {

/** Why an item is not met, and limits and readings, in words. */
class ReasonText
{
    Q_DECLARE_TR_FUNCTIONS(ReasonText)
public:
    explicit ReasonText(const Language& language)
        : m_language(language)
    {
    }

    /** "on for 18 of 30 minutes", "2 whole of 4; cord ties limit", "absent". `item` may be null for a gap whose
        item is no longer in the checklist. */
    [[nodiscard]] QString why(const Reason& reason, const Item* item) const;
    /** What is missing, as a title: "Delivery kits: 2 whole of 4". */
    [[nodiscard]] QString title(const Reason& reason, const Item* item) const;
    /** "26 to 28 °C", "at least 30 min", "at least 4" */
    [[nodiscard]] QString limits(const Item& item, const ChosenLimits& chosen) const;
    /** An answer read back: "26.4 °C", "on since 19:24", "3 of 4 steps passed". Empty when there is nothing to say
        beyond its outcome. */
    [[nodiscard]] QString answer(const Item& item, const Answer& answer, const TimeText& times) const;

private:
    [[nodiscard]] QString part(const Reason& reason, const Item* item) const;

    const Language& m_language;
};

}
