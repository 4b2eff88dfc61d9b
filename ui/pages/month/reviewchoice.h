// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/span.h"

#include <optional>
#include <QString>

namespace cradlepost {

/** What the reader of *Month* looks at: chosen in one place, kept for the next time. */
struct ReviewChoice
{
    ReviewSpan span;
    ReviewFilter filter;
    std::optional<ReviewSpan> against; ///< the span that it is compared with
    bool operator==(const ReviewChoice&) const = default;

    /** Whether the span is a whole calendar month. */
    [[nodiscard]] bool isMonth() const;
    /** The month of the span's first day, moved by `months`. */
    [[nodiscard]] ReviewSpan monthBeside(int months) const;
};

/** "2026-10-01/2026-11-01;shifts=night;sections=room,medicines;against=…", for the settings. */
QString toText(const ReviewChoice& choice);
/** Nothing when the text is not such a choice. */
std::optional<ReviewChoice> choiceFromText(const QString& text);

}
