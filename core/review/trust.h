// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/donecalendar.h"
#include "core/review/trustagreement.h"
#include "core/review/trustpace.h"
#include "core/review/trustreadings.h"
#include "core/review/trustrepeats.h"

namespace cradlepost {

/** Can the entries be trusted? Each finding is a question to ask, not an accusation. No person is named. */
struct TrustReview
{
    Share complete; ///< rounds done of those due
    Share inTime; ///< of rounds by screen
    Share itemsLookedAt; ///< answers given of those asked; "does not apply" is an answer
    std::int64_t amended = 0;
    std::int64_t amendedLate = 0; ///< after the shift had ended
    std::int64_t recordedLate = 0; ///< by screen, recorded after the shift had ended
    std::int64_t paper = 0;
    TrustPace pace;
    TrustRepeats repeats;
    std::vector<TrustReading> readings;
    TrustAgreement agreement;
};

TrustReview trustReview(const Selection& selection, const DoneCalendar& calendar);

}
