// SPDX-License-Identifier: MIT
#include "core/review/trust.h"

namespace cradlepost {

TrustReview trustReview(const Selection& selection, const DoneCalendar& calendar)
{
    TrustReview trust{.complete = calendar.done,
        .inTime = calendar.inTime,
        .amended = calendar.amended,
        .paper = calendar.paper};
    stats::Tally looked;
    for (const ChosenRound& round : selection.rounds()) {
        for (const char letter : round.letters) {
            if (letter == 'm' || letter == 'g' || letter == 'n' || letter == 'u')
                looked += {.x = letter == 'u' ? 0 : 1, .n = 1};
        }
        const RoundFact& fact = *round.fact;
        trust.amendedLate += fact.amendedAt && *fact.amendedAt > round.shift->ends ? 1 : 0;
        trust.recordedLate += !fact.fromPaper && fact.recorded > round.shift->ends ? 1 : 0;
    }
    trust.itemsLookedAt = shareOf(looked);
    trust.pace = trustPace(selection);
    trust.repeats = trustRepeats(selection);
    trust.readings = trustReadings(selection);
    trust.agreement = trustAgreement(selection);
    return trust;
}

}
