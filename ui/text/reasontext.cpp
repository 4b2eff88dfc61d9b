// SPDX-License-Identifier: MIT
#include "ui/text/reasontext.h"

#include "core/round/entry.h"

#include <algorithm>

namespace cradlepost {

namespace {

QString unitOf(const Item* item)
{
    const auto* rule = item != nullptr ? std::get_if<MeasureRule>(&item->rule) : nullptr;
    return rule != nullptr ? QLatin1Char(' ') + qs(rule->unit) : QString();
}

int number(const std::string& text) { return qs(text).toInt(); }

}

QString ReasonText::part(const Reason& reason, const Item* item) const
{
    if (item != nullptr) {
        if (const auto* steps = std::get_if<StepsRule>(&item->rule)) {
            for (const Step& step : steps->steps) {
                if (step.id == reason.part)
                    return m_language.wording(step.label);
            }
        }
        if (const auto* kit = std::get_if<KitRule>(&item->rule)) {
            for (const KitPart& one : kit->parts) {
                if (one.id == reason.part)
                    return m_language.wording(one.label);
            }
        }
    }
    return qs(reason.part);
}

QString ReasonText::why(const Reason& reason, const Item* item) const
{
    const QString value = qs(reason.value);
    const QString limit = qs(reason.limit);
    switch (reason.code) {
    case ReasonCode::Absent:
        return tr("absent");
    case ReasonCode::NotWorking:
        return tr("not working");
    case ReasonCode::NotClean:
        return tr("not clean");
    case ReasonCode::Expired:
        return tr("expired");
    case ReasonCode::OutOfLimits:
        return tr("out of limits");
    case ReasonCode::NotKnown:
        return tr("not met, reason not known");
    case ReasonCode::TooLow:
        return tr("%1, below %2").arg(value + unitOf(item), limit);
    case ReasonCode::TooHigh:
        return tr("%1, above %2").arg(value + unitOf(item), limit);
    case ReasonCode::Warming:
        return tr("on for %1 of %n minute(s)", nullptr, number(reason.limit)).arg(value);
    case ReasonCode::StepFailed:
        return tr("failed step %1 of %2: %3").arg(value, limit, part(reason, item));
    case ReasonCode::TooFew:
        return tr("%1 of %2 there").arg(value, limit);
    case ReasonCode::TooFewUsable:
        return tr("%1 of %2 in date").arg(value, limit);
    case ReasonCode::KitsIncomplete:
        return tr("%1 whole of %2; short of: %3").arg(value, limit, part(reason, item));
    case ReasonCode::CylinderLow:
        return tr("%1 min left, at least %n minute(s) wanted", nullptr, number(reason.limit)).arg(value);
    case ReasonCode::NotChecked:
        return tr("not checked");
    case ReasonCode::StepsUnfinished:
        return tr("function test not finished");
    case ReasonCode::UsedSince:
        break;
    }
    return tr("used, not seen again since");
}

QString ReasonText::title(const Reason& reason, const Item* item) const
{
    return item != nullptr ? m_language.wording(item->label) : qs(reason.item);
}

QString ReasonText::limits(const Item& item, const ChosenLimits& chosen) const
{
    if (const auto* rule = std::get_if<MeasureRule>(&item.rule)) {
        const LimitSet& set = limitsFor(item, *rule, chosen);
        const QString unit = qs(rule->unit);
        if (set.low && set.high)
            return tr("%1 to %2 %3").arg(qs(set.low->toString()), qs(set.high->toString()), unit);
        return set.low ? tr("at least %1 %2").arg(qs(set.low->toString()), unit)
                       : tr("at most %1 %2").arg(qs(set.high->toString()), unit);
    }
    if (const auto* since = std::get_if<SinceRule>(&item.rule))
        return tr("at least %n minute(s)", nullptr, static_cast<int>(since->minutes.count()));
    if (const auto* count = std::get_if<CountRule>(&item.rule))
        return tr("at least %1").arg(count->par);
    if (const auto* kit = std::get_if<KitRule>(&item.rule))
        return tr("at least %n whole kit(s)", nullptr, kit->par);
    if (const auto* cylinder = std::get_if<CylinderRule>(&item.rule))
        return tr("at least %n minute(s)", nullptr, static_cast<int>(cylinder->minutes.count()));
    return {};
}

QString ReasonText::answer(const Item& item, const Answer& answer, const TimeText& times) const
{
    if (const auto* measured = std::get_if<Measured>(&answer))
        return qs(measured->value.toString()) + unitOf(&item);
    if (const auto* since = std::get_if<RunningSince>(&answer))
        return tr("on since %1").arg(times.clock(since->since));
    if (const auto* steps = std::get_if<StepsDone>(&answer))
        return tr("%1 of %n step(s) passed", nullptr, static_cast<int>(steps->marks.size()))
            .arg(std::count(steps->marks.begin(), steps->marks.end(), 'p'));
    if (const auto* pieces = std::get_if<Counted>(&answer))
        return qs(counted(*pieces));
    if (const auto* kit = std::get_if<KitCounted>(&answer)) {
        const auto* rule = std::get_if<KitRule>(&item.rule);
        return rule == nullptr ? QString() : tr("%n whole kit(s)", nullptr, wholeKits(*rule, *kit).kits);
    }
    if (const auto* cylinder = std::get_if<CylinderRead>(&answer)) {
        const auto* rule = std::get_if<CylinderRule>(&item.rule);
        if (rule == nullptr)
            return {};
        for (const CylinderSize& size : rule->sizes) {
            if (size.id == cylinder->size)
                return tr("%n minute(s) left", nullptr,
                    static_cast<int>(cylinderMinutes(size, cylinder->gauge, cylinder->flow)));
        }
    }
    return {};
}

}
