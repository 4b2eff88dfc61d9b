// SPDX-License-Identifier: MIT
#include "ui/pages/gaps/gaptext.h"

#include "ui/text/wardtext.h"

#include <algorithm>

namespace cradlepost {

namespace {
const Item* pointer(const std::optional<Item>& item) { return item ? &*item : nullptr; }
}

GapText::GapText(const Ward& ward)
    : m_ward(ward)
    , m_reasons(ward.language())
    , m_times(ward.times())
    , m_now(ward.now())
{
}

std::optional<Item> GapText::itemOf(const Gap& gap) const
{
    return m_ward.view() ? itemNamed(m_ward.store(), *m_ward.view(), gap.item) : std::nullopt;
}

QString GapText::title(const Gap& gap) const
{
    const auto item = itemOf(gap);
    return m_reasons.title(gap.reason, pointer(item));
}

ActionRow GapText::open(const Gap& gap) const
{
    const auto found = itemOf(gap);
    const Item* item = pointer(found);
    QString subtitle = tr("%1; open %2").arg(m_reasons.why(gap.reason, item), TimeText::span(m_now - gap.openedAt));
    if (!gap.remark.empty())
        subtitle += QStringLiteral(" · “%1”").arg(qs(gap.remark));
    ActionRow row {.mark = gap.severity == Severity::Critical ? Mark::GapCritical : Mark::Gap,
        .title = m_reasons.title(gap.reason, item),
        .subtitle = subtitle,
        .what = item != nullptr ? m_ward.language().wording(item->whenNotMet) : QString(),
        .who = gap.owner.empty() ? tr("nobody yet") : qs(gap.owner),
        .by = m_times.moment(gap.due, m_now),
        .byAside = gap.due >= m_now ? TimeText::span(gap.due - m_now) : tr("late")};
    return row;
}

ActionRow GapText::mended(const Gap& gap) const
{
    const Instant closed = gap.closedAt.value_or(m_now);
    const auto item = itemOf(gap);
    return {.mark = gap.closedAsNotApplicable ? Mark::DoesNotApply : Mark::Met,
        .title = m_reasons.title(gap.reason, pointer(item)),
        .subtitle = m_reasons.why(gap.reason, pointer(item)),
        .what = tr("open %1, found %n time(s)", nullptr, gap.found).arg(TimeText::span(closed - gap.openedAt)),
        .who = qs(gap.owner),
        .by = m_times.moment(closed, m_now),
        .byAside = gap.closedAsNotApplicable ? tr("no longer applies") : QString()};
}

QString GapText::life(const Gap& gap) const
{
    QStringList parts;
    parts << tr("Open since %1, found in %n round(s) and checks.", nullptr, gap.found)
                 .arg(m_times.moment(gap.openedAt, m_now));
    parts << (gap.nth > 1 ? tr("It was open %n time(s) before.", nullptr, gap.nth - 1) : tr("It was never open before."));
    return parts.join(QLatin1Char(' '));
}

QString GapText::answer(std::size_t open)
{
    return open == 0 ? tr("No open gap") : tr("%n open gap(s)", nullptr, static_cast<int>(open));
}

QString GapText::sentence(const std::vector<Gap>& gaps) const
{
    const auto count = [&](auto&& which) { return static_cast<int>(std::count_if(gaps.begin(), gaps.end(), which)); };
    const int critical = count([](const Gap& g) { return g.severity == Severity::Critical; });
    const int late = count([&](const Gap& g) { return g.due < m_now; });
    const int nobody = count([](const Gap& g) { return g.owner.empty(); });
    if (gaps.empty())
        return tr("Every item that was looked at is met.");
    QStringList parts;
    parts << (critical > 0 ? tr("%n critical: mend before the next birth.", nullptr, critical) : tr("None is critical."));
    if (late > 0)
        parts << tr("%n late.", nullptr, late);
    if (nobody > 0)
        parts << tr("%n without anyone who mends it.", nullptr, nobody);
    return parts.join(QLatin1Char(' '));
}

}
