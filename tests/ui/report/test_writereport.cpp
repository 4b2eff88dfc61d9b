// SPDX-License-Identifier: MIT
#include "core/base/csv.h"
#include "core/base/json.h"
#include "core/exchange/tablecell.h"
#include "core/exchange/tablescsv.h"
#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "tests/support/readonlyplace.h"
#include "tests/support/sampletables.h"
#include "tests/ui/report/samplereport.h"
#include "ui/report/printedtable.h"

#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <fstream>
#include <QFile>
#include <QRegularExpression>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

QString contentOf(const QString& path)
{
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
}

/// A report whose one table is `figures`, as page and as figures.
struct SameFigures
{
    DataTable figures = aLongTable(30);
    ReportDocument document = aReport();
    ReportTables tables = itsTables();

    SameFigures()
    {
        document.sections = {{QStringLiteral("Figures"),
            {ReportTable{{}, printedTable(figures, {.words = {}, .locale = QLocale(QLocale::English)})}}}};
        tables.book.tables = {figures};
    }
};

std::string shareOf(int row) { return numberText(static_cast<double>(row) / 30.0); }

QString printedShare(int row)
{
    return QLocale(QLocale::English).toString(row / 30.0 * 100.0, 'f', 1) + u'%';
}

}

TEST_CASE("All five forms hold the same figures")
{
    const TempDir folder;
    const SameFigures same;
    const auto pathOf = [&](const QString& ending) -> QString { return qs(folder.file("report.")) + ending; };
    for (const QString& ending : reportEndings())
        must(writeReport(same.document, same.tables, pathOf(ending)));

    QString pdf;
    for (int page = 1; page <= pagesOf(pathOf(QStringLiteral("pdf"))); ++page)
        pdf += pageText(pathOf(QStringLiteral("pdf")), page).simplified() + u' ';
    const QString html = contentOf(pathOf(QStringLiteral("html")));
    const CsvTable csv = must(readCsv(contentOf(pathOf(QStringLiteral("csv"))).toStdString()));
    const Json json = must(parseJson(contentOf(pathOf(QStringLiteral("json"))).toStdString()));
    const auto& rows = *(*json.find("tables")->asArray())[0].find("rows")->asArray();
    const QString sheet = outputOf(QStringLiteral("/usr/bin/python3"),
        {QStringLiteral(CRADLEPOST_SOURCE_DIR "/tests/core/exchange/readxlsx.py"),
            pathOf(QStringLiteral("xlsx"))});
    REQUIRE(rows.size() == 30);
    for (int row = 1; row <= 30; ++row) {
        CHECK(pdf.contains(QStringLiteral("row %1 %1 %2").arg(row).arg(printedShare(row))));
        CHECK(html.contains(QStringLiteral(">%1</td>").arg(printedShare(row))));
        const auto inCsv = std::any_of(csv.rows.begin(), csv.rows.end(), [&](const auto& line) {
            return line[0].text == "done" && line[1].text == std::to_string(row) && line[2].text == "share"
                && line[3].text == shareOf(row);
        });
        CHECK(inCsv);
        CHECK(cellText(Cell(static_cast<double>(row) / 30.0)) == shareOf(row));
        const Json& share = (*rows[static_cast<std::size_t>(row - 1)].asArray())[2];
        const auto* number = std::get_if<double>(&share.value);
        CHECK((number != nullptr ? *number : static_cast<double>(*share.asInteger())) == row / 30.0);
        static const QRegularExpression cell(
            QStringLiteral("^done!C(\\d+)\\|n\\|0\\.0%\\|(.*)$"), QRegularExpression::MultilineOption);
        bool inSheet = false;
        for (auto it = cell.globalMatch(sheet); it.hasNext();) {
            const auto match = it.next();
            inSheet = inSheet
                || (match.captured(1).toInt() == row + 1
                    && std::abs(match.captured(2).toDouble() - row / 30.0) < 1e-15);
        }
        CHECK(inSheet);
    }
}

TEST_CASE("The figures lie inside the PDF as the same CSV that is written beside it")
{
    const TempDir folder;
    const QString pdf = qs(folder.file("report.pdf"));
    must(writeReport(aReport(), itsTables(), pdf));
    const QString inside = qs(folder.file("inside.csv"));
    outputOf(QStringLiteral("pdfdetach"),
        {QStringLiteral("-save"), QStringLiteral("1"), QStringLiteral("-o"), inside, pdf});
    CHECK(contentOf(inside).toStdString() == csvOfTables(itsTables().book));
    CHECK(outputOf(QStringLiteral("pdfdetach"), {QStringLiteral("-list"), pdf})
              .contains(QStringLiteral("figures.csv")));
}

TEST_CASE("The ending decides in any case of letters; another one is refused and writes nothing")
{
    const TempDir folder;
    must(writeReport(aReport(), itsTables(), qs(folder.file("A.JSON"))));
    for (const char* name : {"report.doc", "report", "report.pdf.exe"}) {
        const auto written = writeReport(aReport(), itsTables(), qs(folder.file(name)));
        REQUIRE(!written);
        CHECK(written.error().code == ErrorCode::InvalidArgument);
        CHECK(!std::filesystem::exists(folder.file(name)));
    }
}

TEST_CASE("On a full disk every form is an error, the old file stays, and no draft is left")
{
    for (const QString& ending : reportEndings()) {
        const TempDir folder;
        const SmallDisk disk(folder.path().string(), 8);
        if (!disk.isThere())
            return;
        const std::string path = folder.file("report.") + ending.toStdString();
        std::ofstream(path) << "old";
        ReportTables tables = itsTables();
        tables.book.tables.push_back(aLongTable(4000));
        const auto written = writeReport(aReport(), tables, qs(path));
        REQUIRE_MESSAGE(!written, path);
        CHECK(written.error().code == ErrorCode::DiskFull);
        CHECK(contentOf(qs(path)) == QStringLiteral("old"));
        CHECK(std::distance(std::filesystem::directory_iterator(folder.path()), {}) == 1);
    }
}

TEST_CASE("In a folder closed to writing every form is an error and leaves nothing")
{
    const TempDir folder;
    const ClosedFolder closed(folder.path().string());
    if (!closed.isClosed())
        return;
    for (const QString& ending : reportEndings()) {
        const auto written = writeReport(aReport(), itsTables(), qs(folder.file("report.")) + ending);
        REQUIRE(!written);
        CHECK(written.error().code == ErrorCode::ReadOnly);
    }
    CHECK(std::filesystem::is_empty(folder.path()));
}
