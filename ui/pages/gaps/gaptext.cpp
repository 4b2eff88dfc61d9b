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
    if (gap.nth > 1)
        subtitle += tr("; open %n time(s) before", nullptr, gap.nth - 1);
    if (!gap.measure.empty())
        subtitle += tr(" · until then: %1").arg(qs(gap.measure));
    if (const QString done = mending(gap); !done.isEmpty())
        subtitle += QStringLiteral(" · ") + done;
    else if (escalationOf(gap, m_now, m_ward.escalation()).now > EscalationTo::Owner) // how far it is, else, stands beside the chosen one
        subtitle += QStringLiteral(" · ") + escalation(gap);
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
        .subtitle = gap.wantsVerifying() ? mending(gap) : m_reasons.why(gap.reason, pointer(item)),
        .what = tr("open %1, found %n time(s)", nullptr, gap.found).arg(TimeText::span(closed - gap.openedAt)),
        .who = qs(gap.mendedBy.empty() ? gap.owner : gap.mendedBy),
        .by = m_times.moment(closed, m_now),
        .byAside = gap.closedAsNotApplicable ? tr("no longer applies") : QString()};
}

QString GapText::life(const Gap& gap) const
{
    QStringList parts;
    parts << tr("Open since %1, found in %n round(s) and checks.", nullptr, gap.found)
                 .arg(m_times.moment(gap.openedAt, m_now));
    parts << (gap.nth > 1 ? tr("It was open %n time(s) before.", nullptr, gap.nth - 1) : tr("It was never open before."));
    if (gap.reopened > 0)
        parts << tr("It was said to be mended and was not, %n time(s).", nullptr, gap.reopened);
    if (const QString done = mending(gap); !done.isEmpty())
        parts << tr("%1.").arg(done);
    if (const QString up = escalation(gap); !up.isEmpty())
        parts << tr("%1.").arg(up);
    return parts.join(QLatin1Char(' '));
}

QString GapText::mending(const Gap& gap) const
{
    if (gap.mendedBy.empty())
        return {};
    const QString mended = tr("Mended by %1, %2").arg(qs(gap.mendedBy), m_times.moment(gap.mendedAt.value_or(m_now), m_now));
    if (!gap.verifiedBy.empty())
        return tr("%1; looked at by %2").arg(mended, qs(gap.verifiedBy));
    if (gap.wantsVerifying())
        return tr("%1; a second person has to look").arg(mended);
    return gap.isOpen() ? tr("%1; a re-check closes it").arg(mended) : mended;
}

QString GapText::person(EscalationTo to)
{
    switch (to) {
    case EscalationTo::Owner:
        return tr("who mends it");
    case EscalationTo::InCharge:
        return tr("the in-charge");
    case EscalationTo::QualityOfficer:
        return tr("the quality officer");
    case EscalationTo::District:
        break;
    }
    return tr("the district");
}

QString GapText::escalation(const Gap& gap) const
{
    const Escalation up = escalationOf(gap, m_now, m_ward.escalation());
    QStringList parts;
    if (up.now)
        parts << tr("Now for %1").arg(person(*up.now));
    if (up.next)
        parts << tr("for %1 from %2").arg(person(*up.next), m_times.moment(*up.nextAt, m_now));
    return parts.join(tr(", "));
}

QString GapText::returning(const std::vector<Gap>& gaps) const
{
    const auto most = std::max_element(
        gaps.begin(), gaps.end(), [](const Gap& a, const Gap& b) { return a.nth < b.nth; });
    if (most == gaps.end() || most->nth < 3) // twice is not yet a habit
        return {};
    const auto item = itemOf(*most);
    const QString name = item ? m_ward.language().wording(item->label) : qs(most->item);
    return tr("**%1 comes back most: open %n time(s) before.**", nullptr, most->nth - 1).arg(name);
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
    if (const QString back = returning(gaps); !back.isEmpty())
        parts << back;
    parts << (critical > 0 ? tr("%n critical: mend before the next birth.", nullptr, critical) : tr("None is critical."));
    if (late > 0)
        parts << tr("%n late.", nullptr, late);
    if (nobody > 0)
        parts << tr("%n without anyone who mends it.", nullptr, nobody);
    return parts.join(QLatin1Char(' '));
}

}
