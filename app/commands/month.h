// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/span.h"

#include <optional>

namespace cradlepost {

/** "2026-10" as typed. */
std::optional<std::chrono::year_month> monthFrom(const std::string& text);
/** Whole months from the first to the last one; `to` empty: the first alone. */
std::optional<ReviewSpan> monthsFrom(const std::string& from, const std::string& to);
/** What to say when monthsFrom finds none. */
Error noSpan(const std::string& from, const std::string& to);

}
