// SPDX-License-Identifier: MIT
#include "core/exchange/trust.h"

#include "core/store/failure.h"

#include <algorithm>

namespace cradlepost {

namespace {

std::string joined(const auto& texts)
{
    std::string all;
    for (const std::string& text : texts)
        all += (all.empty() ? "" : ", ") + text;
    return all;
}

/** Stations other than `station` that have written `unit`, when it has not itself. */
std::vector<std::string> othersIn(const Store& store, const std::string& station, const std::string& unit)
{
    auto writers = need(store.writersOf(unit));
    std::erase(writers, station);
    if (!writers.empty() && need(store.hasWritten(station, unit)))
        writers.clear();
    return writers;
}

std::string textOf(const TrustQuestion& question)
{
    std::string text = question.known
        ? "station " + question.station + " is trusted, but begins to write for another one"
        : "station " + question.station + " is not trusted yet";
    text += "; it writes " + joined(question.units) + "; fingerprint " + question.fingerprint;
    for (const auto& [unit, stations] : question.others)
        text += "\n  CAUTION: the records of " + unit + " come from station " + joined(stations)
            + " so far. A restored database has a new key; if nobody restored one, somebody else writes for "
            + unit;
    return text;
}

}

std::string fingerprint(const PublicKey& key)
{
    const Hash hash = sha256({reinterpret_cast<const char*>(key.data()), key.size()});
    std::string text;
    for (std::size_t i = 0; i < hash.size(); i += 4) {
        std::uint32_t value = 0;
        for (std::size_t k = i; k < i + 4; ++k)
            value = value << 8U | hash[k];
        const std::string digits = std::to_string(value % 100'000);
        text += (text.empty() ? "" : " ") + std::string(5 - digits.size(), '0') + digits;
    }
    return text;
}

Result<std::vector<TrustQuestion>> trustQuestions(
    const Store& store, const NewWriters& writers, const std::map<std::string, PublicKey>& keys)
{
    return attempt([&] {
        const std::string own = need(store.ownKey()).id();
        const auto trusted = need(store.trustedStations());
        std::vector<TrustQuestion> questions;
        for (const auto& [station, units] : writers) {
            if (station == own)
                continue;
            const auto word = std::ranges::find(trusted, station, &TrustedStation::station);
            TrustQuestion question{.station = station,
                .fingerprint = fingerprint(keys.at(station)),
                .known = word != trusted.end(),
                .units = units,
                .others = {}};
            for (const std::string& unit : units)
                if (!question.known || std::ranges::find(word->units, unit) == word->units.end())
                    if (auto others = othersIn(store, station, unit); !others.empty())
                        question.others.emplace(unit, std::move(others));
            if (!question.known || !question.others.empty())
                questions.push_back(std::move(question));
        }
        return questions;
    });
}

Error untrusted(const std::vector<TrustQuestion>& questions)
{
    std::string message;
    std::string options;
    for (const TrustQuestion& question : questions) {
        message += (message.empty() ? "" : "\n") + textOf(question);
        options += " --trust " + question.station;
    }
    return {.code = ErrorCode::InvalidArgument,
        .message = message,
        .hint
        = "Ask the people of that station for the fingerprint that 'trust list' shows them. If it is the "
          "same to the last digit, import with"
            + options + ". Nothing was taken in."};
}

}
