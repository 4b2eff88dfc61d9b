// SPDX-License-Identifier: MIT
#include "ui/report/district/visitdocument.h"

#include "core/review/tablerow.h"
#include "ui/report/reportabout.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct VisitDocument
{
    Q_DECLARE_TR_FUNCTIONS(VisitDocument)
public:
    static QString title() { return tr("Sheet for a visit"); }
    static QString place(const DistrictUnit& unit)
    {
        return unit.level.empty() ? qs(unit.name)
                                  : QStringLiteral("%1 · %2").arg(qs(unit.name), qs(unit.level));
    }
    static QString answer(const QString& unit) { return tr("Visit to %1").arg(unit); }
    static QString noReason() { return tr("Nothing found calls for this visit before others."); }
    static QString gapsTitle() { return tr("Critical gaps open"); }
    static QString noGaps() { return tr("No critical gap was open at the end of the span."); }
    static QStringList gapHeaders() { return {tr("Item"), tr("Open for"), tr("Mended, seen by me")}; }
    static QString stockTitle() { return tr("Stock to take along or fetch"); }
    static QStringList stockHeaders() { return {tr("Pieces, from and to"), tr("Way"), tr("Taken along")}; }
    static QString sampleTitle() { return tr("Items to look at, picked by lot"); }
    static QStringList sampleHeaders()
    {
        return {tr("No."), tr("Item"), tr("Met"), tr("Not met"), tr("Remark")};
    }
    static QString box() { return QStringLiteral("[    ]"); }
    static QString noSample() { return tr("There is no checklist to pick a sample from."); }
    static QString resultTitle() { return tr("What was found"); }
    static QString toFill()
    {
        return tr("Day: ____________   By: ____________   Looked at: ______   Met: ______   Not met: ______");
    }
    static QString rule(const stats::LqasRule& rule, const FigureText& figures)
    {
        return tr(
            "**With %1 or more of %2 met the room reaches the standard.** With %3 or more not met it does "
            "not: the rest need not be looked at to know.")
            .arg(figures.count(rule.d), figures.count(rule.n), figures.count(rule.n - rule.d + 1));
    }
    static QString before(const QString& visits) { return tr("Visits before: %1").arg(visits); }
    static QString enter() { return tr("Enter the result on Units when you are back."); }
};

ReportSection gapSection(const PlannedVisit& visit)
{
    ReportSection section{.title = VisitDocument::gapsTitle(), .parts = {}};
    ChartTable table{.headers = VisitDocument::gapHeaders(), .rows = {}, .numbers = {}};
    const ItemNames& names = visit.scene.names();
    for (const StandingGap& gap : visit.history.units[visit.unit].open) {
        if (gap.severity == Severity::Critical)
            table.rows.push_back(
                {names.item(gap.item), visit.scene.figures().hours(gap.hours), VisitDocument::box()});
    }
    if (table.rows.empty())
        section.parts.emplace_back(ReportParagraph{VisitDocument::noGaps()});
    else
        section.parts.emplace_back(ReportTable{.title = {}, .table = std::move(table)});
    return section;
}

/** What could be brought here or fetched from here; no section when nothing could. */
std::optional<ReportSection> stockSection(const PlannedVisit& visit)
{
    const auto& plan = visit.scene.review().transfers;
    if (!plan)
        return std::nullopt;
    ChartTable table{.headers = VisitDocument::stockHeaders(), .rows = {}, .numbers = {}};
    for (const Transfer& move : plan->moves) {
        if (move.from == visit.unit || move.to == visit.unit)
            table.rows.push_back({visit.scene.text().transfer(move), visit.scene.text().distance(move),
                VisitDocument::box()});
    }
    if (table.rows.empty())
        return std::nullopt;
    ReportSection section{.title = VisitDocument::stockTitle(), .parts = {}};
    section.parts.emplace_back(ReportTable{.title = {}, .table = std::move(table)});
    return section;
}

ReportSection sampleSection(const PlannedVisit& visit)
{
    ReportSection section{.title = VisitDocument::sampleTitle(), .parts = {}};
    const auto& sample = visit.scene.review().sample;
    if (!sample) {
        section.parts.emplace_back(ReportParagraph{VisitDocument::noSample()});
        return section;
    }
    ChartTable table{
        .headers = VisitDocument::sampleHeaders(), .rows = {}, .numbers = {true, false, false, false, false}};
    const Checklist& list = *visit.history.lists.back().checklist;
    for (const std::size_t at : sampledItems(visit))
        table.rows.push_back({visit.scene.figures().count(static_cast<std::int64_t>(table.rows.size()) + 1),
            visit.scene.names().item(list.item(at).id), VisitDocument::box(), VisitDocument::box(),
            QString(44, QLatin1Char('_'))});
    section.parts.emplace_back(ReportTable{.title = {}, .table = std::move(table)});
    return section;
}

ReportSection resultSection(const PlannedVisit& visit)
{
    ReportSection section{.title = VisitDocument::resultTitle(), .parts = {}};
    QStringList rules;
    if (const auto& sample = visit.scene.review().sample)
        rules << VisitDocument::rule(sample->rule, visit.scene.figures());
    rules << VisitDocument::enter();
    section.parts.emplace_back(
        ReportParagraph{rules.join(QLatin1Char(' ')) + QLatin1Char('\n') + VisitDocument::toFill()});
    QStringList before;
    for (const VisitResult& one : visit.history.units[visit.unit].visits)
        before.append(visit.scene.text().visit(
            one, visit.scene.times().day(visit.scene.times().zone().toLocal(one.at).date)));
    if (!before.isEmpty())
        section.parts.emplace_back(ReportParagraph{VisitDocument::before(before.join(QStringLiteral("; ")))});
    return section;
}

QString reasonsOf(const PlannedVisit& visit)
{
    const auto& visits = visit.scene.review().visits;
    const auto need = std::find_if(
        visits.begin(), visits.end(), [&](const VisitNeed& one) { return one.unit == visit.unit; });
    if (need == visits.end())
        return VisitDocument::noReason();
    QStringList lines;
    for (const VisitReason& one : need->reasons)
        lines << visit.scene.text().reason(one);
    return lines.join(QLatin1Char('\n'));
}

DataTable sampleTable(const PlannedVisit& visit)
{
    DataTable table{.id = "visit-sample", .columns = {countColumn("place"), codeColumn("item")}};
    for (const std::size_t at : sampledItems(visit))
        table.rows.push_back(
            {cell(table.rows.size() + 1), cell(visit.history.lists.back().checklist->item(at).id)});
    return table;
}

}

std::vector<std::size_t> sampledItems(const PlannedVisit& visit)
{
    const auto& sample = visit.scene.review().sample;
    if (!sample)
        return {};
    return drawSample(static_cast<std::size_t>(sample->lot), static_cast<std::size_t>(sample->rule.n),
        visit.history.units[visit.unit].id + ' ' + toIso(visit.day));
}

ReportDocument visitDocument(const PlannedVisit& visit, const ReportSeal& seal)
{
    const DistrictUnit& unit = visit.history.units[visit.unit];
    ReportDocument document{.title = VisitDocument::title(),
        .place = VisitDocument::place(unit),
        .span = visit.scene.span(),
        .answer = VisitDocument::answer(qs(unit.name)),
        .company = reasonsOf(visit)};
    document.closer = true; // one sheet to carry, where that can be
    document.sections.push_back(gapSection(visit));
    if (auto stock = stockSection(visit))
        document.sections.push_back(std::move(*stock));
    document.sections.push_back(sampleSection(visit));
    document.sections.push_back(resultSection(visit));
    if (const auto& sample = visit.scene.review().sample)
        document.method = {visit.scene.text().sample(*sample)};
    signDocument(document, seal, visit.scene.language());
    return document;
}

Result<void> writeVisitSheet(const Store& store, const PlannedVisit& visit, const QString& path)
{
    const DistrictReview& review = visit.scene.review();
    const DistrictUnit& unit = visit.history.units[visit.unit];
    const auto seal = reportSeal(store, visit.scene.times(), review.now);
    if (!seal)
        return tl::unexpected(seal.error());
    return writeReport(visitDocument(visit, *seal),
        reportTables({.unit = unit.id,
                         .place = unit.name,
                         .firstDay = review.span.from,
                         .lastDay = addDays(review.span.to, -1),
                         .madeAt = review.now,
                         .zone = visit.scene.times().zone()},
            {sampleTable(visit)}, *seal, visit.scene.tableText(), visit.scene.language()),
        path);
}

}
