// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/span.h"

#include <optional>
#include <QString>

namespace cradlepost {

/** What the reader of *Units* looks at, kept for the next time. */
struct UnitsChoice
{
    ReviewSpan span; ///< whole months
    std::string level; ///< of the facility; empty: all
    bool operator==(const UnitsChoice&) const = default;

    /** `months` whole months up to `last`. */
    static ReviewSpan monthsUpTo(std::chrono::year_month last, int months);
    /** More than one month. */
    [[nodiscard]] bool isLong() const;
};

/** "2026-10-01/2026-11-01;level=community", for the settings. */
QString toText(const UnitsChoice& choice);
/** Nothing when the text is no such choice, or not of whole months. */
std::optional<UnitsChoice> unitsChoiceFromText(const QString& text);

}
