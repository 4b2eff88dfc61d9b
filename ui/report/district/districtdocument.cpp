// SPDX-License-Identifier: MIT
#include "ui/report/district/districtdocument.h"

#include "core/store/chain.h"
#include "ui/report/district/districtsheets.h"
#include "ui/text/wardtext.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct DistrictDocument
{
    Q_DECLARE_TR_FUNCTIONS(DistrictDocument)
public:
    static QString title() { return tr("Labour wards of a district"); }
    static QString place(const DistrictReview& review)
    {
        return tr("%n unit(s)", nullptr, static_cast<int>(review.units.size()));
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
               "reasons to ask, never a proof.")};
    }
    static std::vector<QString> cautions()
    {
        std::vector<QString> lines;
        for (const QString& line : WardText::cautions().split(QLatin1Char('\n'), Qt::SkipEmptyParts))
            lines.push_back(line);
        return lines;
    }
};

bool isPrinted(const DataTable& table)
{
    static constexpr std::string_view printed[] = {"visit-reasons", "visit-weights", "units", "unit-levels",
        "unit-shift-mix", "unit-changes", "unit-reporting"};
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

/** The head of this station's chain: what the report can be checked by. */
Result<ReportSeal> sealOf(const Store& store, const DistrictScene& scene)
{
    const auto chains = store.chains();
    if (!chains)
        return tl::unexpected(chains.error());
    const Instant now = scene.review().now;
    ReportSeal seal{.made
        = qs(toIso(scene.times().zone().toLocal(now).date)) + QLatin1Char(' ') + scene.times().clock(now),
        .station = {},
        .headHash = {}};
    if (!chains->empty()) {
        const Chain& chain = chains->back();
        seal.station = qs(chain.station);
        seal.headHash = QString::fromLatin1(QByteArray(
            reinterpret_cast<const char*>(chain.hash.data()), static_cast<qsizetype>(chain.hash.size()))
                                                .toHex());
    }
    return seal;
}

}

ReportDocument districtDocument(const DistrictScene& scene, const ReportSeal& seal)
{
    ReportDocument document{.title = DistrictDocument::title(),
        .place = DistrictDocument::place(scene.review()),
        .span = scene.span(),
        .answer = scene.text().answer(),
        .company = scene.text().company()};
    addSections(document, scene);
    document.method = DistrictDocument::method(scene);
    document.cautions = DistrictDocument::cautions();
    document.seal = seal;
    document.language = scene.language().code();
    document.direction = scene.language().isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight;
    return document;
}

ReportTables districtReportTables(const DistrictScene& scene, const ReportSeal& seal)
{
    const DistrictReview& review = scene.review();
    ReportTables tables{.book = {.about = {.unit = "district",
                                     .place = DistrictDocument::place(review).toStdString(),
                                     .firstDay = review.span.from,
                                     .lastDay = addDays(review.span.to, -1),
                                     .madeAt = review.now,
                                     .zone = scene.times().zone(),
                                     .station = seal.station.toStdString(),
                                     .ledgerHead = seal.headHash.toStdString(),
                                     .program = "Cradlepost",
                                     .cautions = {}},
                            .tables = scene.tables()},
        .words = {}};
    for (const QString& line : DistrictDocument::cautions())
        tables.book.about.cautions.push_back(line.toStdString());
    tables.words.sheet = [](const std::string& table) { return TableText::title(table).toStdString(); };
    tables.words.heading
        = [](const std::string&, const Column& column) { return TableText::heading(column).toStdString(); };
    tables.words.code = [&scene](const std::string&, const Column& column, const std::string& code) {
        return scene.tableText().word(column, code).toStdString();
    };
    tables.words.rightToLeft = scene.language().isRightToLeft();
    return tables;
}

Result<void> writeDistrictReport(const Store& store, const DistrictScene& scene, const QString& path)
{
    const auto seal = sealOf(store, scene);
    if (!seal)
        return tl::unexpected(seal.error());
    return writeReport(districtDocument(scene, *seal), districtReportTables(scene, *seal), path);
}

}
