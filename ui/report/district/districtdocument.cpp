// SPDX-License-Identifier: MIT
#include "ui/report/district/districtdocument.h"

#include "ui/report/district/districtsheets.h"
#include "ui/report/reportabout.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct DistrictDocument
{
    Q_DECLARE_TR_FUNCTIONS(DistrictDocument)
public:
    static QString title() { return tr("Labour wards of a district"); }
    /** "8 units", "3 units · community" when they are those of one level. */
    static QString place(const DistrictScene& scene)
    {
        const QString units = tr("%n unit(s)", nullptr, static_cast<int>(scene.review().units.size()));
        return scene.level().empty() ? units : QStringLiteral("%1 · %2").arg(units, qs(scene.level()));
    }
    static QString figuresTitle() { return tr("The figures"); }

    static std::vector<QString> method(const DistrictScene& scene)
    {
        return {tr("A round that was not done is no data, never 0%. A shift counts as without a critical gap "
                   "when "
                   "its round found none and left nothing critical unchecked."),
            tr("Funnel: D. J. Spiegelhalter (2005). %1").arg(scene.text().limits()),
            tr("Against units of the same level and against the span before: Newcombe's hybrid score limits, "
               "widened for rounds that are alike from shift to shift. By shift of the day: indirect "
               "standardisation; a ratio compares a unit with the district, not with another unit."),
            tr("Visits: points as shown; they order visits and rank nobody. Questions about the entries are "
               "reasons to ask, never a proof."),
            tr("Stock that could move: as the units' books stand now; as many pieces as can be given, over "
               "the "
               "least distance. A giver keeps its par, and what it uses in %1 days or until its delivery.")
                .arg(scene.figures().number(scene.review().options.transfers.coverDays))};
    }
};

bool isPrinted(const DataTable& table)
{
    static constexpr std::string_view printed[] = {"visit-reasons", "transfers", "unit-visits",
        "visit-weights", "units", "unit-levels", "unit-shift-mix", "unit-changes", "unit-reporting"};
    return !table.rows.empty()
        && std::find(std::begin(printed), std::end(printed), table.id) != std::end(printed);
}

void addSections(ReportDocument& document, const DistrictScene& scene)
{
    std::vector<DistrictSheet> sheets = districtSheets(scene);
    const auto& findings = scene.review().findings;
    for (std::size_t i = 0; i < std::min(findings.size(), mostDistrictFindings); ++i) {
        const auto at = std::find_if(sheets.begin(), sheets.end(),
            [&](const DistrictSheet& sheet) { return sheet.part == findings[i].part; });
        document.sentences.push_back({.text = scene.text().sentence(findings[i]),
            .section = at == sheets.end() ? -1 : static_cast<int>(at - sheets.begin())});
    }
    for (DistrictSheet& sheet : sheets)
        document.sections.push_back(
            {.title = {}, .parts = {ReportChart{.content = std::move(sheet.content)}}});
    ReportSection section{.title = DistrictDocument::figuresTitle(), .parts = {}};
    for (const DataTable& table : scene.tables()) {
        if (isPrinted(table))
            section.parts.emplace_back(
                ReportTable{.title = TableText::title(table.id), .table = scene.table(table.id)});
    }
    document.sections.push_back(std::move(section));
}

}

ReportDocument districtDocument(const DistrictScene& scene, const ReportSeal& seal)
{
    ReportDocument document{.title = DistrictDocument::title(),
        .place = DistrictDocument::place(scene),
        .span = scene.span(),
        .answer = scene.text().answer(),
        .company = scene.text().company()};
    addSections(document, scene);
    document.method = DistrictDocument::method(scene);
    signDocument(document, seal, scene.language());
    return document;
}

ReportTables districtReportTables(const DistrictScene& scene, const ReportSeal& seal)
{
    const DistrictReview& review = scene.review();
    return reportTables({.unit = "district",
                            .place = DistrictDocument::place(scene).toStdString(),
                            .firstDay = review.span.from,
                            .lastDay = addDays(review.span.to, -1),
                            .madeAt = review.now,
                            .zone = scene.times().zone()},
        scene.tables(), seal, scene.tableText(), scene.language());
}

Result<void> writeDistrictReport(const Store& store, const DistrictScene& scene, const QString& path)
{
    const auto seal = reportSeal(store, scene.times(), scene.review().now);
    if (!seal)
        return tl::unexpected(seal.error());
    return writeReport(districtDocument(scene, *seal), districtReportTables(scene, *seal), path);
}

}
