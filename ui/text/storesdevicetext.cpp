// SPDX-License-Identifier: MIT
#include "ui/text/storestext.h"

#include <algorithm>

namespace cradlepost {

QString StoresText::device(EquipmentKind kind)
{
    switch (kind) {
    case EquipmentKind::Warmer:
        return tr("warmer");
    case EquipmentKind::BagMask:
        return tr("bag and mask");
    case EquipmentKind::Suction:
        return tr("suction");
    case EquipmentKind::OxygenSource:
        return tr("oxygen");
    case EquipmentKind::Oximeter:
        return tr("oximeter");
    case EquipmentKind::Scale:
        return tr("scale");
    case EquipmentKind::Thermometer:
        return tr("thermometer");
    case EquipmentKind::Fridge:
        return tr("fridge");
    case EquipmentKind::Clock:
        return tr("clock");
    case EquipmentKind::Other:
        break;
    }
    return tr("other device");
}

QString StoresText::state(EquipmentState state)
{
    switch (state) {
    case EquipmentState::InUse:
        return tr("in use");
    case EquipmentState::Spare:
        return tr("spare");
    case EquipmentState::OutForRepair:
        return tr("out for repair");
    case EquipmentState::Retired:
        break;
    }
    return tr("no longer here");
}

QString StoresText::upkeep(const DeviceRow& row) const
{
    QStringList parts;
    for (const UpkeepDue& due : row.upkeep) {
        const QString day = m_times.day(due.due);
        const bool service = due.kind == UpkeepKind::Service;
        if (due.overdue)
            parts << (service ? tr("service late since %1").arg(day)
                              : tr("calibration late since %1").arg(day));
        else
            parts << (service ? tr("service %1").arg(day) : tr("calibration %1").arg(day));
    }
    if (row.check && row.check->what.verdict == InstrumentVerdict::Off)
        parts << tr("reads wrong");
    return parts.join(QStringLiteral(", "));
}

QString StoresText::reading(const FridgeRow& row) const
{
    if (!row.last)
        return tr("not read yet");
    return tr("%1 °C, %2").arg(qs(row.last->celsius.toString()), m_times.moment(row.last->at, m_now));
}

QStringList StoresText::fridgeToDo(const FridgeRow& row) const
{
    QStringList parts;
    if (row.verdict.advice == ColdChainAdvice::HoldAndAsk)
        parts << tr("set apart what is inside, label it “do not use”, ask who is responsible.");
    else if (row.verdict.advice == ColdChainAdvice::CheckAgain)
        parts << tr("outside its limits, read it again soon.");
    if (row.due)
        parts << tr("a reading is due.");
    if (parts.isEmpty())
        parts << tr("within its limits.");
    return parts;
}

QString StoresText::fridge(const FridgeRow& row) const
{
    QStringList parts;
    for (const QString& one : fridgeToDo(row))
        parts << tr("%1: %2", "a fridge and what to do").arg(qs(row.device.label), one);
    return parts.join(QLatin1Char(' '));
}

QString StoresText::fridgeLimits() const
{
    const ColdChainRules rules;
    return tr("%1 to %2 °C").arg(qs(rules.low.toString()), qs(rules.high.toString()));
}

QString StoresText::excursion(const Excursion& excursion) const
{
    const QString worst = qs(excursion.worst.toString());
    const QString first = m_times.moment(excursion.first, m_now);
    const QString atLeast = TimeText::span(excursion.atLeast());
    if (excursion.kind == ExcursionKind::TooWarm)
        return tr("Too warm from %1, up to %2 °C, for %3 at least.").arg(first, worst, atLeast);
    return tr("Too cold from %1, down to %2 °C, for %3 at least.").arg(first, worst, atLeast);
}

QStringList StoresText::fridgeCourse(const FridgeRow& row, const StoresView& view) const
{
    QStringList lines;
    for (const Excursion& one : row.excursions) {
        QString line = excursion(one);
        if (one.alarm == AlarmState::Reached)
            line += QLatin1Char(' ') + tr("An alarm would have sounded.");
        else if (one.alarm == AlarmState::Possible)
            line += QLatin1Char(' ') + tr("It may have been long enough for an alarm.");
        lines << line;
    }
    if (row.excursions.empty())
        lines << tr("Never read outside its limits in 60 days.");
    QStringList inside;
    for (const LotInside& lot : row.inside)
        inside << tr("%1 %2 %3")
                      .arg(m_figures.count(lot.pieces), nameOf(view, lot.item), qs(lot.lot.number))
                      .trimmed();
    if (!inside.isEmpty())
        lines << tr("Inside at the last one: %1.").arg(m_figures.list(inside));
    if (std::any_of(
            row.inside.begin(), row.inside.end(), [](const LotInside& lot) { return lot.harmedByFrost; })
        && !row.excursions.empty() && row.excursions.back().kind != ExcursionKind::TooWarm)
        lines << tr("Some of it is harmed by frost.");
    if (row.kinetic)
        lines << tr("Mean kinetic temperature over 60 days: %1 °C. It excuses no excursion.")
                     .arg(m_figures.number(row.kinetic->celsius, 1));
    if (row.missed > 0)
        lines << tr("%n reading(s) left out in 60 days; two a day are due.", nullptr, row.missed);
    return lines;
}

QStringList StoresText::devicesToSee(const StoresView& view) const
{
    QStringList parts;
    for (const DeviceRow& row : view.devices) {
        const QString name = qs(row.device.label);
        if (row.state == EquipmentState::OutForRepair)
            parts << tr("%1: out for repair for %2.").arg(name, TimeText::span(m_now - row.since));
        else if (row.check && row.check->what.verdict == InstrumentVerdict::Off)
            parts << tr("%1: reads wrong.").arg(name);
    }
    const auto late = std::count_if(view.devices.begin(), view.devices.end(),
        [](const DeviceRow& row) { return !row.upkeep.empty() && row.upkeep.front().overdue; });
    if (late > 0)
        parts << tr("%n device(s) with late upkeep.", nullptr, static_cast<int>(late));
    return parts;
}

QStringList StoresText::deviceCourse(const DeviceRow& row) const
{
    QStringList lines;
    const int tests = row.tests.passed + row.tests.failed;
    if (tests > 0)
        lines << tr("In order in %1 rounds of the last 30 days.")
                     .arg(m_figures.of({.x = row.tests.passed, .n = tests}));
    if (row.tests.lastFailed)
        lines << tr("Last found not in order: %1.").arg(m_times.moment(*row.tests.lastFailed, m_now));
    if (const auto share = row.up.share())
        lines << tr("There for use %1 of the last year.").arg(m_figures.percent(*share));
    if (const auto between = row.up.meanTimeBetweenFailures())
        lines << tr("%n failure(s), one in %1.", nullptr, row.up.failures).arg(TimeText::span(*between));
    if (const auto& cylinder = row.cylinder) {
        const QString flow = qs(cylinder->flow.toString());
        lines << tr("Read %1: %2 %3, about %4 min at %5 L/min; %6 min are wanted.")
                     .arg(m_times.moment(cylinder->at, m_now), qs(cylinder->gauge.toString()),
                         qs(cylinder->pressure), m_figures.count(cylinder->minutes), flow,
                         m_figures.count(cylinder->wanted.count()));
        lines << tr("At this flow, change it at %1 %2.")
                     .arg(qs(cylinder->changeAt.toString()), qs(cylinder->pressure));
    }
    if (row.check) {
        const InstrumentCheck& check = row.check->what;
        const QString unit = row.device.kind == EquipmentKind::Scale ? tr("g", "grams") : tr("°C");
        lines << tr("Checked %1: off by %2 %4, allowed %3 %4.")
                     .arg(m_times.moment(row.check->at, m_now), qs(check.difference.toString()),
                         qs(check.limit.toString()), unit);
    }
    return lines;
}

}
