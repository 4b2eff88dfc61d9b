// SPDX-License-Identifier: MIT
#include "core/review/visitweights.h"

#include "core/base/decimal.h"

#include <cmath>
#include <variant>

namespace cradlepost {

namespace {

struct Weight
{
    const char* code;
    std::variant<double VisitWeights::*, int VisitWeights::*> member;
};

const Weight weightMembers[] = {{"critical-gap", &VisitWeights::criticalGap},
    {"most-critical-gaps", &VisitWeights::mostCriticalGaps}, {"critical-week", &VisitWeights::criticalWeek},
    {"most-weeks", &VisitWeights::mostWeeks}, {"often-missing", &VisitWeights::oftenMissing},
    {"most-often-missing", &VisitWeights::mostOftenMissing}, {"below", &VisitWeights::below},
    {"fell", &VisitWeights::fell}, {"silent-week", &VisitWeights::silentWeek},
    {"most-silent-weeks", &VisitWeights::mostSilentWeeks}, {"question", &VisitWeights::question},
    {"most-questions", &VisitWeights::mostQuestions}, {"runs-out", &VisitWeights::runsOut},
    {"most-running-out", &VisitWeights::mostRunningOut}};

double valueOf(const VisitWeights& weights, const Weight& weight)
{
    return std::visit([&](auto member) { return static_cast<double>(weights.*member); }, weight.member);
}

}

std::vector<WeightValue> weightsOf(const VisitWeights& weights)
{
    std::vector<WeightValue> values;
    for (const Weight& one : weightMembers)
        values.push_back(
            {.code = one.code, .value = valueOf(weights, one), .isWhole = one.member.index() == 1});
    return values;
}

bool setWeight(VisitWeights& weights, std::string_view code, double value)
{
    for (const Weight& one : weightMembers) {
        if (code != one.code)
            continue;
        const bool isWhole = one.member.index() == 1;
        if (!(value >= 0 && value <= mostWeight) || (isWhole && std::floor(value) != value))
            return false;
        if (isWhole)
            weights.*std::get<1>(one.member) = static_cast<int>(value);
        else
            weights.*std::get<0>(one.member) = value;
        return true;
    }
    return false;
}

std::string weightsText(const VisitWeights& weights)
{
    const auto plain = weightsOf({});
    std::string text;
    const auto values = weightsOf(weights);
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (values[i].value == plain[i].value)
            continue;
        const Decimal value{static_cast<std::int64_t>(std::lround(values[i].value * 1000))};
        text += (text.empty() ? "" : " ") + std::string(values[i].code) + '=' + value.toString();
    }
    return text;
}

std::optional<VisitWeights> weightsFromText(std::string_view text)
{
    VisitWeights weights;
    while (!text.empty()) {
        const auto end = text.find(' ');
        const std::string_view one = text.substr(0, end);
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        const auto equals = one.find('=');
        if (equals == std::string_view::npos)
            return std::nullopt;
        const auto value = Decimal::parse(one.substr(equals + 1));
        if (!value || !setWeight(weights, one.substr(0, equals), value->toDouble()))
            return std::nullopt;
    }
    return weights;
}

}
