// SPDX-License-Identifier: MIT
#include "ui/report/month/monthdocument.h"

#include "ui/report/month/monthsheets.h"
#include "ui/report/reportabout.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct MonthDocument
{
    Q_DECLARE_TR_FUNCTIONS(MonthDocument)
public:
    static QString title() { return tr("Month of a labour ward"); }
    static QString place(const Unit& unit)
    {
        const QString level = qs(unit.level);
        return level.isEmpty() ? qs(unit.name) : QStringLiteral("%1 · %2").arg(qs(unit.name), level);
    }
    static QString figuresTitle() { return tr("The figures"); }

    static std::vector<QString> method(const MonthScene& scene)
    {
        const ReviewOptions& options = scene.review().options;
        return {tr("A round that was not done is no data, never 0%. A shift is ready when its round found no "
                   "critical gap and "
                   "left nothing critical unchecked; severity decides, not arithmetic."),
            tr("Shares have 95% limits by Wilson's score method (E. B. Wilson, 1927). Weekly charts are p′ "
               "charts (D. B. Laney, "
               "2002) with limits at %1 sigma from the weeks before the span; only a point beyond them or a "
               "run of %2 on one "
               "side counts as a change, since gaps last and neighbouring weeks are alike.")
                .arg(scene.figures().number(options.courseRules.width),
                    scene.figures().number(options.courseRules.runLength)),
            tr("Time to mend: Kaplan-Meier with log-log limits; gaps still open count for as long as they "
               "are known. Two spans or "
               "two sides of a change: Newcombe's hybrid score limits, widened for how rounds spread. Spot "
               "checks: kappa and AC1 "
               "(K. L. Gwet, 2008)."),
            tr("Questions about the entries are reasons to ask, never a proof; nobody is named or ranked.")};
    }
};

/** Tables long enough to be of use only to a machine stay out of the printed report. */
bool isPrinted(const DataTable& table)
{
    static constexpr std::string_view left[]
        = {"course", "item-weeks", "readings", "restore", "done", "findings", "reading-histogram",
            "course-limits", "course-signals", "course-changes", "pattern-tests"};
    return !table.rows.empty() && std::find(std::begin(left), std::end(left), table.id) == std::end(left);
}

void addCharts(ReportDocument& document, const MonthScene& scene)
{
    for (MonthSheet& sheet : monthSheets(scene)) {
        const bool wide = sheet.part == MonthPart::ItemWeeks || sheet.part == MonthPart::Course
            || sheet.part == MonthPart::Readiness || sheet.part == MonthPart::Restore;
        const bool isReading = sheet.part == MonthPart::Readings
            && std::holds_alternative<ControlFigure>(sheet.content.figure);
        document.sections.push_back({.title = {},
            .parts = {ReportChart{.content = std::move(sheet.content), .half = !wide && !isReading}}});
    }
}

void addSentences(ReportDocument& document, const MonthScene& scene)
{
    const std::vector<MonthSheet> sheets = monthSheets(scene);
    const auto& findings = scene.review().findings;
    for (std::size_t i = 0; i < std::min(findings.size(), mostFindings); ++i) {
        const auto at = std::find_if(sheets.begin(), sheets.end(),
            [&](const MonthSheet& sheet) { return sheet.part == findings[i].part; });
        document.sentences.push_back({.text = scene.text().sentence(findings[i]),
            .section = at == sheets.end() ? -1 : static_cast<int>(at - sheets.begin())});
    }
}

void addTables(ReportDocument& document, const MonthScene& scene)
{
    ReportSection section{.title = MonthDocument::figuresTitle(), .parts = {}};
    for (const DataTable& table : scene.tables()) {
        if (isPrinted(table))
            section.parts.emplace_back(
                ReportTable{.title = TableText::title(table.id), .table = scene.table(table.id)});
    }
    document.sections.push_back(std::move(section));
}

}

ReportDocument monthDocument(const MonthScene& scene, const Unit& unit, const ReportSeal& seal)
{
    ReportDocument document{.title = MonthDocument::title(),
        .place = MonthDocument::place(unit),
        .span = scene.span(scene.review().span),
        .answer = scene.text().answer(),
        .company = scene.text().company()};
    addSentences(document, scene);
    addCharts(document, scene);
    addTables(document, scene);
    document.method = MonthDocument::method(scene);
    signDocument(document, seal, scene.language());
    return document;
}

ReportTables monthReportTables(const MonthScene& scene, const Unit& unit, const ReportSeal& seal)
{
    const MonthReview& review = scene.review();
    return reportTables({.unit = unit.id,
                            .place = unit.name,
                            .firstDay = review.span.from,
                            .lastDay = addDays(review.span.to, -1),
                            .madeAt = review.now,
                            .zone = scene.times().zone()},
        scene.tables(), seal, scene.tableText(), scene.language());
}

Result<void> writeMonthReport(const Store& store, const MonthScene& scene, const QString& path)
{
    const auto units = store.units();
    if (!units)
        return tl::unexpected(units.error());
    const auto unit = std::find_if(
        units->begin(), units->end(), [&](const Unit& one) { return one.id == scene.review().unit; });
    if (unit == units->end())
        return fail(ErrorCode::NotFound, "unit '" + scene.review().unit + "' is not known");
    const auto seal = reportSeal(store, scene.times(), scene.review().now, scene.review().unit);
    if (!seal)
        return tl::unexpected(seal.error());
    return writeReport(monthDocument(scene, *unit, *seal), monthReportTables(scene, *unit, *seal), path);
}

}
