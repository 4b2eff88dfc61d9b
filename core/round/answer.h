// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/decimal.h"
#include "core/checklist/checklist.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace cradlepost {

/** Why an item is not met, as the person on the round sees it. */
enum class GapReason { Absent, NotWorking, NotClean, Expired, OutOfLimits, NotKnown };

/** Nobody has looked yet. */
struct NotChecked
{
    bool operator==(const NotChecked&) const = default;
};

struct DoesNotApply
{
    bool operator==(const DoesNotApply&) const = default;
};

/** A plain yes to a `confirm`. */
struct Confirmed
{
    bool operator==(const Confirmed&) const = default;
};

/** A plain no, to an item of any kind: for example no thermometer to read. */
struct GapFound
{
    GapReason reason = GapReason::NotKnown;
    bool operator==(const GapFound&) const = default;
};

struct Measured
{
    Decimal value;
    bool operator==(const Measured&) const = default;
};

struct RunningSince
{
    Instant since;
    bool operator==(const RunningSince&) const = default;
};

/** One mark a step in the order of the rule: 'p' passed, 'f' failed, '-' not done yet. */
struct StepsDone
{
    std::string marks;
    std::string device; ///< the device's number; may be empty
    bool operator==(const StepsDone&) const = default;
};

struct Lot
{
    int quantity = 0;
    std::optional<Date> expiry; ///< last day of use
    std::string number; ///< may be empty
    bool operator==(const Lot&) const = default;
};

struct Counted
{
    std::vector<Lot> lots;
    bool operator==(const Counted&) const = default;
};

/** Pieces of each part, in the order of the rule. */
struct KitCounted
{
    std::vector<int> parts;
    bool operator==(const KitCounted&) const = default;
};

struct CylinderRead
{
    Decimal gauge; ///< in the unit of the size
    std::string size; ///< id of a size of the rule
    Decimal flow; ///< L/min, above 0
    bool operator==(const CylinderRead&) const = default;
};

using Answer = std::variant<NotChecked, DoesNotApply, Confirmed, GapFound, Measured, RunningSince, StepsDone, Counted,
    KitCounted, CylinderRead>;

inline bool isChecked(const Answer& answer) { return !std::holds_alternative<NotChecked>(answer); }

/**
 * Whether `answer` may be given to `item`: right kind, right number of steps or parts, no negative counts, a
 * reading inside the plausible band, a gauge not above the full cylinder by more than a tenth, and "does not
 * apply" only where the checklist allows it. The error says what to do.
 */
Result<void> checkAnswer(const Item& item, const Answer& answer);

const char* codeName(GapReason reason);
std::optional<GapReason> gapReasonFromCode(std::string_view code);

}
