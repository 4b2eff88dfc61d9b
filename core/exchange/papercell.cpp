// SPDX-License-Identifier: MIT
#include "core/exchange/papercell.h"

#include "core/round/entry.h"

#include <algorithm>

namespace cradlepost {

namespace {

tl::unexpected<Error> refuse(const Item& item, std::string_view text)
{
    return fail(
        ErrorCode::InvalidArgument, "item '" + item.id + "': '" + std::string(text) + "' cannot be read");
}

std::vector<std::string_view> split(std::string_view text, char separator)
{
    std::vector<std::string_view> parts;
    while (true) {
        const auto end = text.find(separator);
        parts.push_back(text.substr(0, end));
        if (end == std::string_view::npos)
            return parts;
        text.remove_prefix(end + 1);
    }
}

template <class T> Result<Answer> asAnswer(Result<T> read)
{
    if (!read)
        return tl::unexpected(read.error());
    return Answer(std::move(*read));
}

struct ByKind
{
    const Item& item;
    std::string_view text;
    Instant finished;
    const TimeZone& zone;

    Result<Answer> operator()(const ConfirmRule&) const
    {
        if (text != "m" && text != "M")
            return refuse(item, text);
        return Answer(Confirmed{});
    }

    Result<Answer> operator()(const MeasureRule&) const { return asAnswer(readMeasured(item, text)); }

    Result<Answer> operator()(const SinceRule&) const { return asAnswer(readSince(text, finished, zone)); }

    Result<Answer> operator()(const StepsRule& rule) const
    {
        if (text == "pass")
            return Answer(StepsDone{.marks = std::string(rule.steps.size(), 'p'), .device = {}});
        std::string marks;
        for (const Step& step : rule.steps) {
            if (step.id == text) {
                marks += 'f';
                marks.resize(rule.steps.size(), '-');
                return Answer(StepsDone{.marks = std::move(marks), .device = {}});
            }
            marks += 'p';
        }
        return refuse(item, text);
    }

    Result<Answer> operator()(const CountRule&) const
    {
        if (text.find_first_of(", ") != std::string_view::npos)
            return refuse(item, text);
        std::string typed(text); // as on a round: "12 2027-03-31, 5"
        std::replace(typed.begin(), typed.end(), '@', ' ');
        std::replace(typed.begin(), typed.end(), ';', ',');
        return asAnswer(readCounted(item, typed));
    }

    Result<Answer> operator()(const KitRule&) const
    {
        KitCounted counted;
        for (const std::string_view part : split(text, '/')) {
            const auto pieces = readPieces(part);
            if (!pieces)
                return tl::unexpected(pieces.error());
            counted.parts.push_back(*pieces);
        }
        return Answer(std::move(counted));
    }

    Result<Answer> operator()(const CylinderRule& rule) const
    {
        const auto parts = split(text, '/');
        const auto gauge = Decimal::parse(parts[0]);
        const auto flow = parts.size() > 1 ? Decimal::parse(parts[1]) : Result<Decimal>(rule.flow);
        if (!gauge || !flow || parts.size() > 3)
            return refuse(item, text);
        return Answer(CylinderRead{.gauge = *gauge,
            .size = parts.size() > 2 ? std::string(parts[2]) : rule.sizes.front().id,
            .flow = *flow});
    }
};

struct FormsByKind
{
    std::string operator()(const ConfirmRule&) const { return "m"; }
    std::string operator()(const MeasureRule& rule) const { return "NUMBER (" + rule.unit + ')'; }
    std::string operator()(const SinceRule&) const { return "HH:MM"; }
    std::string operator()(const StepsRule& rule) const
    {
        std::string forms = "pass";
        for (const Step& step : rule.steps)
            forms += " | " + step.id;
        return forms;
    }
    std::string operator()(const CountRule& rule) const
    {
        return rule.expires ? "PIECES@YYYY-MM-DD;..." : "PIECES";
    }
    std::string operator()(const KitRule& rule) const
    {
        std::string forms;
        for (const KitPart& part : rule.parts)
            forms += (forms.empty() ? "" : "/") + part.id;
        return forms;
    }
    std::string operator()(const CylinderRule& rule) const
    {
        std::string forms = "GAUGE/FLOW/SIZE (";
        for (const CylinderSize& size : rule.sizes)
            forms += (&size == &rule.sizes.front() ? "" : ", ") + size.id + ": " + size.unit;
        return forms + ')';
    }
};

Result<Answer> anyKind(const Item& item, std::string_view text)
{
    if (text.empty())
        return Answer(NotChecked{});
    if (text == "n" || text == "N")
        return Answer(DoesNotApply{});
    if (text == "g" || text == "G")
        return Answer(GapFound{});
    const auto reason
        = text.starts_with("g:") || text.starts_with("G:") ? gapReasonFromCode(text.substr(2)) : std::nullopt;
    if (!reason)
        return refuse(item, text);
    return Answer(GapFound{*reason});
}

}

Result<Answer> readPaperCell(const Item& item, std::string_view text, Instant finished, const TimeZone& zone)
{
    auto answer = anyKind(item, text);
    if (!answer)
        answer = std::visit(ByKind{item, text, finished, zone}, item.rule);
    if (answer) {
        if (const auto allowed = checkAnswer(item, *answer); !allowed)
            return tl::unexpected(allowed.error());
    }
    return answer;
}

std::string paperCellForms(const Item& item)
{
    return std::visit(FormsByKind{}, item.rule) + " | g | g:REASON" + (item.mayNotApply ? " | n" : "");
}

}
