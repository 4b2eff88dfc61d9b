// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/supply/recorded.h"

#include <map>

namespace cradlepost {

enum class BirthChange {
    Expected, ///< put up, or its time, babies or flag changed
    Done,
    Cancelled, ///< no longer expected
    Moved, ///< to be born elsewhere
};

/** A birth on the board: when and how many, nothing on who. The body of a `birth-expected` record. */
struct BirthEvent
{
    std::string birth; ///< made by the station, says nothing of a person: [a-z0-9-]{1,40}
    Instant at; ///< when it was said
    BirthChange change = BirthChange::Expected;
    Instant expected; ///< for Expected
    int babies = 1; ///< for Expected, 1..4
    bool preterm = false; ///< for Expected
    bool operator==(const BirthEvent&) const = default;
};

Result<void> checkBirth(const BirthEvent& event);
Json toBody(const BirthEvent& event);
Result<BirthEvent> birthEventFromBody(const Json& body);

struct ExpectedBirth
{
    std::string birth;
    Instant expected;
    int babies = 1;
    bool preterm = false;
    auto operator<=>(const ExpectedBirth&) const = default;
};

/** A birth as it was known over a stretch of time: who reads the past sees what was expected then. */
struct BirthSpan
{
    ExpectedBirth what;
    Instant from;
    std::optional<Instant> until; ///< changed or off the board; none: still on it
    std::optional<BirthChange> end = {}; ///< what happened at `until`; Expected: it was changed
    bool operator==(const BirthSpan&) const = default;
};

/** All that ever stood on the board, in order of `from`. What is off the board does not come back. */
std::vector<BirthSpan> foldBirths(std::vector<Recorded<BirthEvent>> events);
/** On the board at `t`, the first expected first; an overdue one stays until it is done or cancelled. */
std::vector<ExpectedBirth> expectedAt(const std::vector<BirthSpan>& board, Instant t);

const char* codeName(BirthChange change);
std::optional<BirthChange> birthChangeFromCode(std::string_view code);

}
