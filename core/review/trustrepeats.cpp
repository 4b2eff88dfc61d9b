// SPDX-License-Identifier: MIT
#include "core/review/trustrepeats.h"

#include <algorithm>
#include <map>
#include <set>

namespace cradlepost {

namespace {

/** What a round says of each item of its checklist: the reading, or else the letter. */
std::vector<std::string> wordsOf(const RoundFact& fact)
{
    std::vector<std::string> words;
    words.reserve(fact.outcomes.size());
    for (const char letter : fact.outcomes)
        words.emplace_back(1, letter);
    for (const ReadingFact& reading : fact.readings) {
        if (reading.position < words.size())
            words[reading.position] = std::to_string(reading.value.thousandths);
    }
    return words;
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
    std::vector<std::map<std::string, double>> said;
    double n = 0;
    for (const ChosenRound& round : rounds) {
        if (!counts(*round.fact, list))
            continue;
        const auto words = wordsOf(*round.fact);
        said.resize(words.size());
        for (std::size_t i = 0; i < words.size(); ++i)
            ++said[i][words[i]];
        ++n;
    }
    std::vector<std::vector<double>> chances;
    for (const auto& item : said) {
        chances.emplace_back();
        for (const auto& [word, times] : item)
            chances.back().push_back(times / n);
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
