// SPDX-License-Identifier: MIT
#include "ui/text/districttext.h"

namespace cradlepost {

QString DistrictText::unit(std::size_t unit) const { return qs(m_review.units[unit].name); }

QString DistrictText::units(const std::vector<std::size_t>& units) const
{
    QStringList names;
    for (const std::size_t one : units)
        names.append(unit(one));
    return m_figures.list(names);
}

QString DistrictText::items(const std::vector<std::string>& ids) const
{
    QStringList names;
    for (const std::string& id : ids)
        names.append(m_names.item(id));
    return m_figures.list(names);
}

QString DistrictText::names(const std::vector<std::string>& names) const
{
    QStringList all;
    for (const std::string& name : names)
        all.append(m_names.shelf(name));
    return m_figures.list(all);
}

QString DistrictText::percentOf(const Share& share) const
{
    return m_figures.percent(share.value().value_or(0.0));
}

QString DistrictText::answer() const
{
    const DistrictFinding& first = m_review.findings.front();
    if (first.code == DistrictFindingCode::SeeFirst)
        return tr("See %1 first").arg(unit(first.units.front()));
    return first.code == DistrictFindingCode::NobodyFirst ? tr("No unit needs you more than the others")
                                                          : tr("No rounds");
}

QString DistrictText::company() const
{
    if (!m_review.visits.empty() && m_review.findings.front().code == DistrictFindingCode::SeeFirst)
        return reasons(m_review.visits.front());
    return tr(
        "%1 rounds without a critical gap in %n unit(s)", nullptr, static_cast<int>(m_review.units.size()))
        .arg(m_figures.of(m_review.funnel.whole.tally));
}

QString DistrictText::sentence(const DistrictFinding& finding) const
{
    using Code = DistrictFindingCode;
    switch (finding.code) {
    case Code::SeeFirst:
        return tr("See %1 first; most of it is for %2.")
            .arg(unit(finding.units.front()), help(m_review.visits.front().help));
    case Code::NobodyFirst:
        return tr("Nothing found calls for a visit before the others.");
    case Code::NothingDone:
        return tr("No round was done in %n shift(s) due: there is nothing to compare.", nullptr,
            static_cast<int>(finding.count));
    case Code::Fell:
        return tr("%1 fell more than chance explains: %2 of shifts without a critical gap, before it %3.")
            .arg(unit(finding.units.front()), percentOf(finding.share), percentOf(finding.before));
    case Code::Rose:
        return tr("%1 rose more than chance explains: %2 of shifts without a critical gap, before it %3.")
            .arg(unit(finding.units.front()), percentOf(finding.share), percentOf(finding.before));
    case Code::OftenMissing:
        return tr("%1 is often missing in %2: %3 rounds of all units.")
            .arg(items(finding.items), units(finding.units), m_figures.of(finding.share.tally));
    case Code::CouldMove:
        return tr("Stock that others can spare would help %1: %n item(s).", nullptr,
            static_cast<int>(finding.count))
            .arg(units(finding.units));
    case Code::NotReached:
        return tr("%1: the last visit found too little met to reach the standard.").arg(units(finding.units));
    case Code::Lower:
    case Code::Higher:
    case Code::NotToldApart:
    case Code::TooFew:
        return standing(finding);
    default:
        return reporting(finding);
    }
}

QString DistrictText::standing(const DistrictFinding& finding) const
{
    switch (finding.code) {
    case DistrictFindingCode::Lower:
        return tr("%1: below what chance allows around the district's %2.")
            .arg(units(finding.units), percentOf(finding.share));
    case DistrictFindingCode::Higher:
        return tr("%1: above what chance allows around the district's %2.")
            .arg(units(finding.units), percentOf(finding.share));
    case DistrictFindingCode::TooFew:
        return tr("%1: too few rounds to say how ready (%2).")
            .arg(units(finding.units), m_figures.of(finding.share.tally));
    default:
        return tr("%n unit(s) cannot be told apart from the district's %1.", nullptr,
            static_cast<int>(finding.count))
            .arg(percentOf(finding.share));
    }
}

QString DistrictText::reporting(const DistrictFinding& finding) const
{
    const QString who = units(finding.units);
    switch (finding.code) {
    case DistrictFindingCode::Silent:
        return tr("%1: no round for up to %n day(s) in a row.", nullptr, static_cast<int>(finding.count))
            .arg(who);
    case DistrictFindingCode::Incomplete:
        return tr("%1: rounds missing, %2 done at the first.").arg(who, m_figures.of(finding.share.tally));
    case DistrictFindingCode::Late:
        return tr("%1: rounds recorded late, %2 at the first: ask what stands in the way.")
            .arg(who, m_figures.of(finding.share.tally));
    default:
        return tr("%1: the entries raise questions. Ask how rounds are walked.").arg(who);
    }
}

QString DistrictText::reason(const VisitReason& reason) const
{
    switch (reason.code) {
    case VisitReasonCode::CriticalOpen:
        return tr("%n critical gap(s) open, the oldest for %1: %2", nullptr, static_cast<int>(reason.count))
            .arg(m_figures.hours(reason.hours), items(reason.items));
    case VisitReasonCode::OftenMissing:
        return tr("%1 missing in %2 rounds").arg(items(reason.items), m_figures.of(reason.share.tally));
    case VisitReasonCode::Below:
        return tr("below what chance allows: %1 rounds without a critical gap")
            .arg(m_figures.of(reason.share.tally));
    case VisitReasonCode::Fell:
        return tr("fell from %1 to %2").arg(percentOf(reason.before), percentOf(reason.share));
    case VisitReasonCode::Silent:
        return tr("no round for %n day(s) in a row", nullptr, reason.days);
    case VisitReasonCode::RunsOut:
        return tr("%n stock item(s) out or about to run out: %1", nullptr, static_cast<int>(reason.count))
            .arg(names(reason.names));
    case VisitReasonCode::Questions:
        break;
    }
    return tr("%n question(s) about the entries", nullptr, static_cast<int>(reason.count));
}

QString DistrictText::reasons(const VisitNeed& need) const
{
    QStringList all;
    for (const VisitReason& one : need.reasons)
        all.append(reason(one));
    return all.join(tr("; ", "between reasons"));
}

QString DistrictText::help(VisitHelp help)
{
    switch (help) {
    case VisitHelp::Supplies:
        return tr("supplies");
    case VisitHelp::Engineer:
        return tr("the engineer");
    case VisitHelp::Supervisor:
        break;
    }
    return tr("you");
}

QString DistrictText::decision(VisitDecision decision)
{
    switch (decision) {
    case VisitDecision::Reached:
        return tr("reaches the standard");
    case VisitDecision::NotReached:
        return tr("does not reach the standard");
    case VisitDecision::Undecided:
        break;
    }
    return tr("not decided, too few looked at");
}

QString DistrictText::visit(const VisitResult& visit, const QString& day) const
{
    //: %1 the day of a visit, %2 "13 of 18", %3 what it decided
    return tr("%1: %2 met, %3")
        .arg(day, m_figures.of({.x = visit.met(), .n = visit.looked}), decision(visit.decision()));
}

QString DistrictText::transfer(const Transfer& move) const
{
    //: %1 a stock item, %2 the unit that gives, %3 the one that takes
    return tr("%1: %n piece(s) from %2 to %3", nullptr, static_cast<int>(move.pieces))
        .arg(m_names.shelf(move.name), unit(move.from), unit(move.to));
}

QString DistrictText::distance(const Transfer& move) const
{
    constexpr double metresAKilometre = 1000;
    return move.metres == 0
        ? tr("distance not known")
        : tr("%1 km").arg(m_figures.number(static_cast<double>(move.metres) / metresAKilometre, 1));
}

QString DistrictText::sample(const VisitSample& sample) const
{
    const stats::LqasRule& rule = sample.rule;
    return tr("On each visit look at %1 of %2 items, picked by lot: with %3 or more met the room passes. A "
              "room with %4 met fails in %5 of visits, one with %6 passes in %7.")
        .arg(m_figures.count(rule.n), m_figures.count(sample.lot), m_figures.count(rule.d),
            m_figures.percent(sample.good), m_figures.percent(rule.risks.goodFailed),
            m_figures.percent(sample.poor), m_figures.percent(rule.risks.poorPassed));
}

QString DistrictText::limits() const
{
    const DispersionChoice& choice = m_review.funnel.dispersion;
    const QString adjusted
        = tr("Told apart: p adjusted for the number of units (Benjamini-Hochberg) at most %1.")
              .arg(m_figures.number(m_review.options.level, 2));
    if (choice.model == stats::DispersionModel::None) {
        const QString plain = choice.p > m_review.options.overdispersionLevel
            ? tr("Limits 95% and 99.8%, exact binomial: units spread no more than chance (p %1).")
                  .arg(m_figures.number(choice.p, 2))
            : tr("Limits 95% and 99.8%, exact binomial: but for the outermost, units spread no more than "
                 "chance (factor %1).")
                  .arg(m_figures.number(choice.phi, 2));
        return plain + QLatin1Char(' ') + adjusted;
    }
    const QString wider = choice.model == stats::DispersionModel::Additive
        ? tr("Limits 95% and 99.8%, widened by random effects between units (standard deviation %1 points).")
              .arg(m_figures.number(100.0 * choice.tau, 1))
        : tr("Limits 95% and 99.8%, widened by the factor of spread %1, from winsorised z.")
              .arg(m_figures.number(choice.phi, 2));
    return wider + QLatin1Char(' ')
        + tr("Units spread more than chance; the likelier of the two ways of widening was taken.")
        + QLatin1Char(' ') + adjusted;
}

QString DistrictText::band(UnitBand band)
{
    switch (band) {
    case UnitBand::Lower:
        return tr("Clearly lower");
    case UnitBand::Higher:
        return tr("Clearly higher");
    case UnitBand::NotToldApart:
        break;
    }
    return tr("Not to be told apart");
}

}
