// SPDX-License-Identifier: MIT
#include "ui/text/monthtext.h"

#include <cmath>

namespace cradlepost {

namespace {

double valueOf(stats::Tally tally) { return static_cast<double>(tally.x) / static_cast<double>(tally.n); }

}

QString MonthText::shifts(const std::string& code)
{
    if (code.empty())
        return tr("All shifts");
    if (code == "day")
        return tr("Days", "the day shifts");
    if (code == "night")
        return tr("Nights", "the night shifts");
    if (code == "morning")
        return tr("Mornings", "the morning shifts");
    if (code == "evening")
        return tr("Evenings", "the evening shifts");
    return qs(code);
}

QString MonthText::weekdays(int weekday)
{
    const QString names[] = {tr("Mondays"), tr("Tuesdays"), tr("Wednesdays"), tr("Thursdays"), tr("Fridays"),
        tr("Saturdays"), tr("Sundays")};
    return names[weekday - 1];
}

QString MonthText::items(const std::vector<std::string>& ids) const
{
    QStringList names;
    for (const std::string& id : ids)
        names.append(m_names.item(id));
    return m_figures.list(names);
}

QString MonthText::answer() const
{
    const ReadinessReview& ready = m_review.readiness;
    if (m_review.calendar.done.tally.x == 0)
        return tr("No rounds");
    if (ready.why || !ready.noCriticalGap.value())
        return tr("Too little to say");
    return tr("%1 of shifts ready").arg(m_figures.percent(*ready.noCriticalGap.value()));
}

QString MonthText::company() const
{
    const DoneCalendar& calendar = m_review.calendar;
    const ReadinessReview& ready = m_review.readiness;
    QStringList parts;
    if (calendar.done.tally.x > 0) {
        //: %1 "63 of 88"
        parts.append(tr("%1 rounds without a critical gap").arg(m_figures.of(ready.noCriticalGap.tally)));
        if (ready.noCriticalGap.interval)
            parts.append(m_figures.percents(*ready.noCriticalGap.interval));
    }
    if (calendar.missing > 0)
        parts.append(tr("%n shift(s) without a round", nullptr, static_cast<int>(calendar.missing)));
    return parts.join(QStringLiteral(" · "));
}

QString MonthText::sentence(const MonthFinding& finding) const
{
    using Code = MonthFindingCode;
    switch (finding.code) {
    case Code::NothingDone:
        return tr("No round was done in %n shift(s): there is nothing to say about readiness.", nullptr,
            static_cast<int>(finding.done.tally.n));
    case Code::TooLittle:
        return tr("%1 rounds were done: too little to say how ready the room was.")
            .arg(m_figures.of(finding.done.tally));
    case Code::HowReady:
        return howReady(finding);
    case Code::Fell:
    case Code::Rose:
    case Code::NoChange:
        return change(finding);
    case Code::Incomplete:
        return tr("Rounds were done in %1 shifts due; of the others nothing is known.")
            .arg(m_figures.of(finding.done.tally));
    case Code::LostMost:
        return lostMost(finding);
    case Code::ShiftDiffers:
    case Code::WeekdayDiffers:
        return differs(finding);
    case Code::ReadingsOutside:
        //: %2 "19 of 89", %3 a percentage
        return tr("%1 was outside its limits in %2 readings (%3).")
            .arg(items(finding.items), m_figures.of(finding.share.tally), percentOf(finding.share.tally));
    case Code::EquipmentDown:
        return equipment(finding);
    case Code::TimeToRestore:
        return restore(finding);
    case Code::CriticalOpen:
        return tr(
            "%n critical gap(s) still open, the oldest for %1: %2.", nullptr, static_cast<int>(finding.count))
            .arg(m_figures.hours(finding.hours.value_or(0.0)), items(finding.items));
    case Code::ChangeBetter:
    case Code::ChangeWorse:
    case Code::ChangeOpen:
        return idea(finding);
    default:
        return question(finding);
    }
}

QString MonthText::percentOf(stats::Tally tally) const
{
    return m_figures.percent(tally.n == 0 ? 0.0 : valueOf(tally));
}

QString MonthText::howReady(const MonthFinding& finding) const
{
    const Share& share = finding.noCriticalGap;
    const QString rounds = m_figures.count(share.tally.n);
    const QString limits = share.interval ? m_figures.percents(*share.interval) : QString();
    //: %1 a percentage, %2 a count, %3 "61 to 80%", %4 a percentage
    return tr("Nothing critical was missing in %1 of %2 rounds (%3), nothing at all in %4.")
        .arg(m_figures.percent(share.value().value_or(0.0)), rounds, limits,
            m_figures.percent(finding.ready.value().value_or(0.0)));
}

QString MonthText::change(const MonthFinding& finding) const
{
    const QString who = shifts(finding.group);
    if (finding.code == MonthFindingCode::NoChange)
        return tr(
            "Items met from week to week moved no more than chance explains, against the %n week(s) before.",
            nullptr, static_cast<int>(finding.count));
    const QString since = finding.day ? m_times.day(*finding.day) : QString();
    const QString before = m_figures.percent(valueOf(finding.before), 1);
    const QString after = m_figures.percent(valueOf(finding.after), 1);
    if (finding.code == MonthFindingCode::Fell)
        //: %1 "Nights", %2 a day, %3 and %4 percentages
        return tr("%1: fewer items met since the week of %2, more than chance explains: %3 before, %4 since.")
            .arg(who, since, before, after);
    return tr("%1: more items met since the week of %2, more than chance explains: %3 before, %4 since.")
        .arg(who, since, before, after);
}

QString MonthText::lostMost(const MonthFinding& finding) const
{
    const QString share = m_figures.percent(finding.value.value_or(0.0));
    if (finding.items.size() == 1)
        return tr("One item makes up %1 of what was lost: %2, missing in %3 rounds.")
            .arg(share, items(finding.items), m_figures.of(finding.share.tally));
    return tr("%n items make up %1 of what was lost: %2.", nullptr, static_cast<int>(finding.items.size()))
        .arg(share, items(finding.items));
}

QString MonthText::differs(const MonthFinding& finding) const
{
    const QString who
        = finding.code == MonthFindingCode::ShiftDiffers ? shifts(finding.group) : weekdays(finding.weekday);
    return tr("%1 stand out, more than chance explains: %2 of items met, %3 in the others.")
        .arg(
            who, m_figures.percent(valueOf(finding.after), 1), m_figures.percent(valueOf(finding.before), 1));
}

QString MonthText::equipment(const MonthFinding& finding) const
{
    return tr("%1 was out of use for %2, %n time(s).", nullptr, static_cast<int>(finding.count))
        .arg(items(finding.items), m_figures.hours(finding.hours.value_or(0.0)));
}

QString MonthText::restore(const MonthFinding& finding) const
{
    if (!finding.hours)
        return tr("Fewer than half of the gaps were mended in this time: %1.")
            .arg(m_figures.of(finding.share.tally));
    const QString within = m_figures.hours(*finding.hours);
    if (finding.hoursLow && finding.hoursHigh)
        return tr("Half of the gaps are mended within %1 (%2 to %3).")
            .arg(within, m_figures.hours(*finding.hoursLow), m_figures.hours(*finding.hoursHigh));
    return tr("Half of the gaps are mended within %1.").arg(within);
}

QString MonthText::idea(const MonthFinding& finding) const
{
    const QString name = finding.change && *finding.change < m_review.changes.size()
        ? qs(m_review.changes[*finding.change].title)
        : QString();
    const QString before = m_figures.percent(valueOf(finding.before), 1);
    const QString after = m_figures.percent(valueOf(finding.after), 1);
    if (finding.code == MonthFindingCode::ChangeBetter)
        return tr("Since “%1” began, more items are met: %2, before it %3. That alone does not show that it "
                  "was the cause.")
            .arg(name, after, before);
    if (finding.code == MonthFindingCode::ChangeWorse)
        return tr("Since “%1” began, fewer items are met: %2, before it %3.").arg(name, after, before);
    return tr("“%1”: too early to say whether it changes anything (%2 of items met, before it %3).")
        .arg(name, after, before);
}

QString MonthText::question(const MonthFinding& finding) const
{
    using Code = MonthFindingCode;
    switch (finding.code) {
    case Code::AskRepeats:
        return tr("%1 rounds (%2) say word for word what an earlier one says: ask how rounds are walked.")
            .arg(m_figures.of(finding.share.tally), percentOf(finding.share.tally));
    case Code::AskPace:
        return tr("%1 rounds (%2) were entered faster than a ward can be walked: ask how they are done.")
            .arg(m_figures.of(finding.share.tally), percentOf(finding.share.tally));
    case Code::AskRounding:
        return tr("%1: %2 readings (%3) lie on every fifth step of the instrument, as .0 and .5 do; by "
                  "chance one in five would. "
                  "Ask how it is read.")
            .arg(items(finding.items), m_figures.of(finding.share.tally), percentOf(finding.share.tally));
    case Code::AskSameReading:
        return tr("%1: %n reading(s), all the same. Ask whether the instrument works.", nullptr,
            static_cast<int>(finding.count))
            .arg(items(finding.items));
    case Code::AskLate:
        return tr("%1 rounds (%2) were finished late in their shift or after it: ask what stands in the way.")
            .arg(m_figures.of(finding.share.tally), percentOf(finding.share.tally));
    case Code::AskAgreement:
        return tr("Independent spot checks agreed in %1 answers (%2); they differ most on %3. Look at these "
                  "together.")
            .arg(m_figures.of(finding.before), percentOf(finding.before), items(finding.items));
    default:
        return {};
    }
}

}
