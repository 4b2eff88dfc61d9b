// SPDX-License-Identifier: MIT
#include "core/review/trustpace.h"

#include "core/stats/orderstats.h"
#include "core/stats/pace.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** Seconds of the rounds by screen, and how many answers each holds. */
struct Timed
{
    std::vector<std::size_t> rounds;
    std::vector<double> seconds;
    std::vector<double> answers;
};

Timed timedOf(const Selection& selection)
{
    Timed timed;
    const auto rounds = selection.rounds();
    for (std::size_t i = 0; i < rounds.size(); ++i) {
        const RoundFact& fact = *rounds[i].fact;
        const auto left = std::count(fact.outcomes.begin(), fact.outcomes.end(), 'u');
        const auto answers = static_cast<double>(fact.outcomes.size()) - static_cast<double>(left);
        if (fact.fromPaper || answers <= 0)
            continue;
        timed.rounds.push_back(i);
        timed.seconds.push_back(
            std::max(0.0, std::chrono::duration<double>(fact.finished - fact.started).count()));
        timed.answers.push_back(answers);
    }
    return timed;
}

}

TrustPace trustPace(const Selection& selection)
{
    const Timed timed = timedOf(selection);
    TrustPace trust{.timed = static_cast<std::int64_t>(timed.rounds.size())};
    if (trust.timed < selection.options.fewestRounds)
        trust.why = trust.timed == 0 ? CannotSay::NoData : CannotSay::TooFew;
    const auto pace = stats::pace(timed.seconds);
    if (!pace)
        return trust;
    std::vector<double> perItem;
    for (std::size_t i = 0; i < timed.rounds.size(); ++i) {
        perItem.push_back(timed.seconds[i] / timed.answers[i]);
        const bool below = perItem.back() < selection.options.leastSecondsPerItem;
        // The unit's own pace can only be told from enough rounds.
        const bool far = !trust.why && pace->points[i].tooFast;
        trust.belowFloor += below ? 1 : 0;
        if (below || far)
            trust.rounds.push_back(timed.rounds[i]);
    }
    trust.tooFast = static_cast<std::int64_t>(trust.rounds.size());
    trust.medianSeconds = *stats::median(timed.seconds);
    trust.medianPerItem = *stats::median(perItem);
    return trust;
}

}
