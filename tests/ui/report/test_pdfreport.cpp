// SPDX-License-Identifier: MIT
#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "tests/support/sampletables.h"
#include "tests/ui/report/samplereport.h"
#include "ui/report/pdfreport.h"
#include "ui/report/reportpages.h"

#include <doctest/doctest.h>
#include <QRegularExpression>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

QString written(const ReportDocument& document, const TempDir& folder)
{
    const QString path = qs(folder.file("report.pdf"));
    must(writePdf(document, {}, path));
    return path;
}

QString oneLine(const QString& text) { return text.simplified(); }

}

TEST_CASE("The first page answers: the answer, its counts and every sentence")
{
    const TempDir folder;
    const QString first = oneLine(pageText(written(aReport(), folder), 1));
    CHECK(first.contains(QStringLiteral("71% of shifts ready")));
    CHECK(first.contains(QStringLiteral("63 of 88 rounds · 61 to 80")));
    CHECK(first.contains(QStringLiteral("more than chance explains")));
    CHECK(
        first.indexOf(QStringLiteral("71% of shifts")) < first.indexOf(QStringLiteral("It fell on nights")));
}

TEST_CASE("Every page has the running head and its number, as many as there are")
{
    const TempDir folder;
    const ReportDocument document = aReport();
    const QString path = written(document, folder);
    const int pages = pagesOf(path);
    CHECK(pages == ReportPages(document).count());
    CHECK(pages > 2);
    for (int page = 1; page <= pages; ++page) {
        const QString text = oneLine(pageText(path, page));
        CHECK(text.startsWith(
            QStringLiteral("Month of a labour ward Sorrel Hill · labour ward · October 2026")));
        CHECK(text.endsWith(QStringLiteral("%1 of %2").arg(page).arg(pages)));
        CHECK(text.contains(QStringLiteral("ledger 9f3ac2d17b40e855…")));
    }
}

TEST_CASE("No row of a long table is parted, and each page has the heading again")
{
    const TempDir folder;
    ReportDocument document = aReport();
    document.sections = {{QStringLiteral("A long table"), {aLongReportTable(200)}}};
    const QString path = written(document, folder);
    int next = 1;
    for (int page = 1; page <= pagesOf(path); ++page) {
        const QString text = pageText(path, page);
        static const QRegularExpression row(QStringLiteral("row (\\d+) +(\\d+) +([0-9.]+)%"));
        int rows = 0;
        for (auto it = row.globalMatch(text); it.hasNext(); ++next, ++rows) {
            const auto match = it.next();
            CHECK(match.captured(1).toInt() == next);
            CHECK(match.captured(2).toInt() == next);
            CHECK(match.captured(3).toDouble() == doctest::Approx(next / 2.0));
        }
        static const QRegularExpression heading(QStringLiteral("name +count +share"));
        CHECK(heading.match(text).hasMatch() == (rows > 0));
        CHECK(rows != 1);
    }
    CHECK(next == 201);
}

TEST_CASE("A figure of a crowded table is never broken")
{
    const TempDir folder;
    ChartTable crowded;
    for (int columns = 10; columns < 16; ++columns) {
        CAPTURE(columns);
        crowded.headers = QStringList(columns, QStringLiteral("Share of the loss"));
        crowded.numbers.assign(static_cast<std::size_t>(columns), true);
        crowded.rows.assign(3, QStringList(columns, QStringLiteral("6.736%"))); // Qt breaks it behind its point
        ReportDocument document = aReport();
        document.sections = {{QStringLiteral("Crowded"), {ReportTable{QStringLiteral("Shares"), crowded}}}};
        const QString path = written(document, folder);
        qsizetype whole = 0;
        for (int page = 1; page <= pagesOf(path); ++page) {
            const QString text = pageText(path, page);
            whole += text.count(QStringLiteral("6.736%"));
            CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("\\s736%"))));
        }
        CHECK(whole >= 3 * columns);
    }
}

TEST_CASE("Charts are vectors and fonts are embedded")
{
    const TempDir folder;
    const QString path = written(aReport(), folder);
    const QString images = outputOf(QStringLiteral("pdfimages"), {QStringLiteral("-list"), path});
    CHECK(images.count(u'\n') == 2); // its two lines of heading
    const QStringList fonts
        = outputOf(QStringLiteral("pdffonts"), {path}).split(u'\n', Qt::SkipEmptyParts).mid(2);
    REQUIRE(!fonts.isEmpty());
    static const QRegularExpression embedded(QStringLiteral(" yes +(yes|no) +(yes|no) +\\d+ +\\d+$"));
    for (const QString& font : fonts)
        CHECK_MESSAGE(embedded.match(font).hasMatch(), font);
}

TEST_CASE("The ledger's head and how to check it stand at the end")
{
    const TempDir folder;
    const QString path = written(aReport(), folder);
    const QString last = oneLine(pageText(path, pagesOf(path)));
    CHECK(last.contains(QStringLiteral("9f3ac2d1 7b40e855 66aa01c2 d3e4f506")));
    CHECK(last.contains(QStringLiteral("cradlepost verify")));
    CHECK(last.contains(QStringLiteral("Never delay care")));
}

TEST_CASE("A sentence names the page of what it speaks of")
{
    const TempDir folder;
    ReportDocument document = aReport();
    document.sentences = {{QStringLiteral("See the table."), 5}};
    const ReportPages pages(document);
    const QString path = written(document, folder);
    static const QRegularExpression reference(QStringLiteral("See the table\\. +page (\\d+)"));
    const auto match = reference.match(pageText(path, 1));
    REQUIRE(match.hasMatch());
    CHECK(pageText(path, match.captured(1).toInt()).contains(QStringLiteral("The figures")));
}

TEST_CASE("A compact document fits on one page, or says by how much it does not")
{
    const TempDir folder;
    CHECK(pagesOf(written(aHandOver(), folder)) == 1);
    ReportDocument document = aHandOver();
    document.sections.front().parts.push_back(aLongReportTable(60));
    const auto bytes = pdfOf(document, {});
    REQUIRE(!bytes);
    CHECK(bytes.error().code == ErrorCode::InvalidArgument);
    CHECK(bytes.error().message.find(" mm too long") != std::string::npos);
    CHECK(ReportPages(document).millimetresTooLong() > 50.0);
}

TEST_CASE("A document that is set closer saves its second page where that can be, and is never refused")
{
    const TempDir folder;
    const auto pages = [](int rows, bool closer) {
        ReportDocument document = aHandOver();
        document.compact = false;
        document.closer = closer;
        document.sections = {{QStringLiteral("Rows"), {aLongReportTable(rows)}}};
        return ReportPages(document).count();
    };
    int saved = 0;
    for (int rows = 1; rows < 60; ++rows) {
        CHECK(pages(rows, true) <= pages(rows, false));
        saved += pages(rows, false) == 2 && pages(rows, true) == 1 ? 1 : 0;
    }
    CHECK(saved > 0);
    ReportDocument document = aHandOver();
    document.compact = false;
    document.closer = true;
    document.sections.front().parts.push_back(aLongReportTable(90));
    CHECK(pagesOf(written(document, folder)) > 1);
}

TEST_CASE("Texts of any length and kind lose nothing and leave the page number where it is")
{
    const TempDir folder;
    ReportDocument document = aReport();
    const QString word = QStringLiteral("x").repeated(400);
    QString manyWords;
    for (int i = 0; i < 3000; ++i)
        manyWords += QStringLiteral("w%1 ").arg(i);
    document.place = qs(hostileText());
    document.sections = {{word,
        {ReportParagraph{manyWords},
            ReportTable{qs(hostileText()),
                {.headers = {word, QStringLiteral("b")},
                    .rows = {{manyWords, QStringLiteral("**1**")}, {word, qs(hostileText())}}}}}}};
    const QString path = written(document, folder);
    const int pages = pagesOf(path);
    QString all;
    for (int page = 1; page <= pages; ++page) {
        const QString text = pageText(path, page);
        CHECK(oneLine(text).endsWith(QStringLiteral("%1 of %2").arg(page).arg(pages)));
        all += text;
    }
    for (int i = 0; i < 3000; ++i) {
        static const QString boundary = QStringLiteral("\\b");
        const QRegularExpression once(boundary + QStringLiteral("w%1").arg(i) + boundary);
        CHECK(all.count(once) == 2);
    }
    CHECK(all.contains(QStringLiteral("<script>")));
}

TEST_CASE("A document of nothing but a title is a page, in either direction")
{
    const TempDir folder;
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const ReportDocument document{.title = QStringLiteral("Nothing yet"), .direction = direction};
        CHECK(pagesOf(written(document, folder)) == 1);
    }
}
