// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

namespace cradlepost {

/**
 * Why something that a person entered is not taken: stable words, each with the values that it names, which
 * ui/text says in the reader's language. A word is for what can be mistyped, or is
 * missing on a ward or its computer; what only a program can get wrong needs none.
 */
namespace refusal {

// Stock
inline constexpr char pieces[] = "pieces"; ///< least, most
inline constexpr char lotNumber[] = "lot-number"; ///< most characters
inline constexpr char lastDayMissing[] = "last-day-missing";
inline constexpr char shelfRetired[] = "shelf-retired";
inline constexpr char bookHolds[] = "book-holds"; ///< pieces held, pieces wanted
inline constexpr char levelRange[] = "level-range"; ///< most pieces
inline constexpr char levelOrder[] = "level-order"; ///< emergency, minimum, par

// Devices, readings and checks
inline constexpr char name[] = "name"; ///< most characters
inline constexpr char deviceNumber[] = "device-number"; ///< most characters
inline constexpr char upkeepDays[] = "upkeep-days"; ///< most days
inline constexpr char onRegister[] = "on-register";
inline constexpr char fridgeRange[] = "fridge-range"; ///< coldest, hottest in degrees C
inline constexpr char fridgeOrder[] = "fridge-order";
inline constexpr char scaleRange[] = "scale-range"; ///< most grams
inline constexpr char thermometerRange[] = "thermometer-range"; ///< coldest, hottest in degrees C

// Board and handover
inline constexpr char offBoard[] = "off-board";
inline constexpr char handoverTaken[] = "handover-taken";
inline constexpr char giverTakes[] = "giver-takes";

// Gaps
inline constexpr char gapClosed[] = "gap-closed";
inline constexpr char notMended[] = "not-mended";
inline constexpr char menderVerifies[] = "mender-verifies";
inline constexpr char owner[] = "owner"; ///< most characters
inline constexpr char remark[] = "remark"; ///< most characters
inline constexpr char escalationOrder[] = "escalation-order";

// Between units
inline constexpr char distanceRange[] = "distance-range"; ///< most km
inline constexpr char tableHead[] = "table-head"; ///< the line it has to begin with
inline constexpr char tableCell[] = "table-cell"; ///< line, what stands there
inline constexpr char visitLooked[] = "visit-looked"; ///< sample
inline constexpr char visitNotMet[] = "visit-not-met"; ///< items looked at

// Set-up, and what is said in a line
inline constexpr char unitName[] = "unit-name";
inline constexpr char initials[] = "initials"; ///< the initials
inline constexpr char initialsTwice[] = "initials-twice"; ///< the initials
inline constexpr char timeZone[] = "time-zone"; ///< what was typed
inline constexpr char shiftText[] = "shift-text"; ///< what was typed
inline constexpr char shiftOrder[] = "shift-order";
inline constexpr char line[] = "line"; ///< least, most characters
inline constexpr char shiftsMissing[] = "shifts-missing";
inline constexpr char checklistMissing[] = "checklist-missing";

// Rounds
inline constexpr char shiftDone[] = "shift-done";
inline constexpr char nothingChanged[] = "nothing-changed";
inline constexpr char endsFirst[] = "ends-first";

// The computer
inline constexpr char packageMissing[] = "package-missing"; ///< the package
inline constexpr char partMissing[] = "part-missing"; ///< the file of the program

// Anything
inline constexpr char nobodyNamed[] = "nobody-named";
inline constexpr char aheadOfNow[] = "ahead-of-now";
inline constexpr char gone[] = "gone"; ///< not there any more, or never was

inline constexpr const char* all[] = {pieces, lotNumber, lastDayMissing, shelfRetired, bookHolds, levelRange,
    levelOrder, name, deviceNumber, upkeepDays, onRegister, fridgeRange, fridgeOrder, scaleRange,
    thermometerRange, offBoard, handoverTaken, giverTakes, gapClosed, notMended, menderVerifies, owner,
    remark, escalationOrder, distanceRange, tableHead, tableCell, visitLooked, visitNotMet, unitName, initials, initialsTwice,
    timeZone, shiftText, shiftOrder, line, shiftsMissing, checklistMissing, shiftDone, nothingChanged, endsFirst,
    packageMissing, partMissing, nobodyNamed, aheadOfNow, gone};

}

/** An error with the word for it; `message` and `hint` are for log and command line as ever. */
inline Error refused(const char* word, std::vector<std::string> values, std::string message,
    std::string hint = {}, ErrorCode code = ErrorCode::InvalidArgument)
{
    return {.code = code,
        .message = std::move(message),
        .hint = std::move(hint),
        .refusal = word,
        .values = std::move(values)};
}

}
