// SPDX-License-Identifier: MIT
#include "core/review/trustrepeats.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace cradlepost {

namespace {

/** How often the rounds say what of one item: the reading, or else the letter. */
struct Said
{
    std::array<std::int64_t, 4> letters{}; ///< m, g, n, u
    std::map<Decimal, std::int64_t> readings;
};

constexpr std::size_t placeOf(char letter) { return letter == 'm' ? 0 : letter == 'g' ? 1 : letter == 'n' ? 2 : 3; }

void count(std::vector<Said>& said, const RoundFact& fact)
{
    said.resize(std::max(said.size(), fact.outcomes.size()));
    for (std::size_t i = 0; i < fact.outcomes.size(); ++i)
        ++said[i].letters[placeOf(fact.outcomes[i])];
    for (const ReadingFact& reading : fact.readings) {
        if (reading.position >= fact.outcomes.size())
            continue;
        --said[reading.position].letters[placeOf(fact.outcomes[reading.position])];
        ++said[reading.position].readings[reading.value];
    }
}

std::string textOf(const RoundFact& fact)
{
    std::string text = fact.outcomes;
    for (const ReadingFact& reading : fact.readings)
        text += ' ' + std::to_string(reading.position) + '=' + std::to_string(reading.value.thousandths);
    return text;
}

bool counts(const RoundFact& fact, std::size_t list) { return fact.list == list && !fact.readings.empty(); }

/** Chance that two rounds say the same, from how often each item says what. */
Result<double> sameChance(std::span<const ChosenRound> rounds, std::size_t list)
{
    std::vector<Said> said;
    double n = 0;
    for (const ChosenRound& round : rounds) {
        if (!counts(*round.fact, list))
            continue;
        count(said, *round.fact);
        ++n;
    }
    std::vector<std::vector<double>> chances;
    for (const Said& item : said) {
        chances.emplace_back();
        for (const std::int64_t times : item.letters)
            chances.back().push_back(static_cast<double>(times) / n);
        for (const auto& [reading, times] : item.readings)
            chances.back().push_back(static_cast<double>(times) / n);
    }
    return stats::sameRoundChance(chances);
}

}

TrustRepeats trustRepeats(const Selection& selection)
{
    TrustRepeats trust;
    if (selection.rounds().empty()) {
        trust.why = CannotSay::NoData;
        return trust;
    }
    const std::size_t list = selection.rounds().back().fact->list;
    std::vector<std::string> texts;
    std::set<std::string> known;
    for (const ChosenRound& round : selection.rounds()) {
        if (!counts(*round.fact, list))
            continue;
        texts.push_back(textOf(*round.fact));
        trust.repeating += known.insert(texts.back()).second ? 0 : 1;
    }
    trust.compared = static_cast<std::int64_t>(texts.size());
    if (trust.compared < selection.options.fewestRounds) {
        trust.why = trust.compared == 0 ? CannotSay::NoSpread : CannotSay::TooFew;
        return trust;
    }
    const auto chance = sameChance(selection.all, list);
    const auto repeated = chance
        ? stats::repeatedRounds(trust.compared, std::clamp(*chance, 0.0, 1.0), stats::equalPairs(texts))
        : tl::unexpected(chance.error());
    if (repeated)
        trust.chance = *repeated;
    else
        trust.why = CannotSay::NoSpread;
    return trust;
}

}
