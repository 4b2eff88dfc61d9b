// SPDX-License-Identifier: MIT
#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "tests/support/sampletables.h"
#include "tests/ui/report/samplereport.h"
#include "ui/report/htmlreport.h"
#include "ui/report/htmlwords.h"
#include "ui/theme/roles.h"

#include <doctest/doctest.h>
#include <QRegularExpression>
#include <QXmlStreamReader>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

QString page(const ReportDocument& document) { return QString::fromUtf8(must(htmlOf(document))); }

/// Elements by name, of the page read as XML: our own page closes all but its <meta> and <br>.
QMap<QString, int> elementsOf(QString html)
{
    static const QRegularExpression open(QStringLiteral("<(meta [^>]*|br)>"));
    html.remove(QStringLiteral("<!DOCTYPE html>")).replace(open, QStringLiteral("<\\1/>"));
    html.replace(QStringLiteral("xlink:"), QString());
    QMap<QString, int> elements;
    QXmlStreamReader reader(html);
    while (!reader.atEnd()) {
        if (reader.readNext() == QXmlStreamReader::StartElement)
            ++elements[reader.name().toString()];
    }
    CHECK_MESSAGE(!reader.hasError(), reader.errorString().toStdString(), " at ", reader.lineNumber());
    return elements;
}

}

TEST_CASE("The page is well-formed and needs nothing from outside: no script, image, link or address")
{
    for (const char* language : {"en", "hi", pseudoLanguage}) {
        const QString html = page(aReport(QLatin1String(language)));
        const auto elements = elementsOf(html);
        for (const char* refused :
            {"script", "image", "img", "link", "iframe", "object", "foreignObject", "use"})
            CHECK_MESSAGE(elements.value(QLatin1String(refused)) == 0, refused);
        static const QRegularExpression outside(QStringLiteral("(https?:|url\\(|@import|src=|href=\"[^#])"));
        CHECK_MESSAGE(!outside.match(html).hasMatch(), outside.match(html).captured());
        CHECK(elements.value(QStringLiteral("svg")) == 8);
        CHECK(elements.value(QStringLiteral("h1")) == 1);
        CHECK(elements.value(QStringLiteral("path")) > 20);
    }
}

TEST_CASE("Language and direction are said")
{
    CHECK(page(aReport(QStringLiteral("hi"))).contains(QStringLiteral("<html lang=\"hi\" dir=\"ltr\">")));
    CHECK(page(aReport(QLatin1String(pseudoLanguage))).contains(QStringLiteral("dir=\"rtl\"")));
}

TEST_CASE("Tables are real ones: headings with scope, numbers marked, a caption")
{
    ReportDocument document = aReport();
    document.sections = {{QStringLiteral("Figures"), {aLongReportTable(200)}}};
    const QString html = page(document);
    const auto elements = elementsOf(html);
    CHECK(elements.value(QStringLiteral("caption")) == 1);
    CHECK(elements.value(QStringLiteral("tr")) == 201);
    CHECK(elements.value(QStringLiteral("td")) == 400);
    CHECK(html.count(QStringLiteral("scope=\"col\"")) == 3);
    CHECK(html.count(QStringLiteral("scope=\"row\"")) == 200);
    CHECK(html.contains(
        QStringLiteral("<th scope=\"row\">row 17</th><td class=\"n\">17</td><td class=\"n\">8.5%</td>")));
}

TEST_CASE("Each sentence leads to the section that shows it")
{
    const QString html = page(aReport());
    for (int i = 2; i <= 5; ++i) {
        CHECK(html.count(QStringLiteral("href=\"#section-%1\"").arg(i)) == 1);
        CHECK(html.count(QStringLiteral("id=\"section-%1\"").arg(i)) == 1);
    }
}

TEST_CASE(
    "Drawings follow the reader's scheme: no colour of the light one is left fixed where dark has another")
{
    const QString html = page(aReport());
    CHECK(!html.contains(QStringLiteral("class=\"light\"")));
    const QString drawings = html.mid(html.indexOf(QStringLiteral("<svg")));
    for (const QColor& shade :
        {lightRoles().ink, lightRoles().accent, lightRoles().warning, lightRoles().line})
        CHECK_MESSAGE(!drawings.contains(shade.name()), shade.name());
    CHECK(html.contains(lightRoles().accent.name() + u';'));
    CHECK(html.contains(darkRoles().accent.name() + u';'));
    static const QRegularExpression used(QStringLiteral("var\\(--c(\\d+)\\)"));
    for (auto it = used.globalMatch(html); it.hasNext();)
        REQUIRE(html.count(QStringLiteral("--c%1: ").arg(it.next().captured(1))) == 2);
}

TEST_CASE("Hostile text stays text wherever it stands")
{
    ReportDocument document = aReport();
    const QString bad = qs(hostileText()) + QStringLiteral(" ' onload='x") + QChar(0x07);
    for (QString* text : {&document.title, &document.place, &document.span, &document.answer,
             &document.company, &document.language, &document.seal.made, &document.seal.station})
        *text = bad;
    document.sentences = {{bad, 0}};
    document.cautions = {bad};
    document.method = {bad};
    for (ReportSection& section : document.sections) {
        section.title = bad;
        for (ReportPart& part : section.parts) {
            if (auto* chart = std::get_if<ReportChart>(&part)) {
                chart->content.title = chart->content.finding = chart->content.smallPrint = bad;
                chart->content.table = {{bad}, {{bad}}, {}};
            }
        }
    }
    document.sections.push_back({bad, {ReportParagraph{bad}, ReportTable{bad, {{bad}, {{bad}}, {}}}}});
    const QString html = page(document);
    const auto elements = elementsOf(html);
    CHECK(elements.value(QStringLiteral("script")) == 0);
    CHECK(elements.value(QStringLiteral("b")) == 0);
    CHECK(!html.contains(QStringLiteral("<script")));
    CHECK(!html.contains(QStringLiteral("onload='")));
    CHECK(!html.contains(QChar(0x07)));
}

TEST_CASE("Bold marks become strong, signs of HTML themselves")
{
    CHECK(htmlMarked(QStringLiteral("a **b** <c>")) == QStringLiteral("a <strong>b</strong> &lt;c&gt;"));
    CHECK(htmlAttribute(QStringLiteral("a\"'\nb")) == QStringLiteral("a&quot;&#39; b"));
    CHECK(htmlText(QStringLiteral("a\nb")) == QStringLiteral("a<br>b"));
}

TEST_CASE("The page holds every word that the document says")
{
    const ReportDocument document = aReport();
    const QString html = page(document);
    for (const QString& text : {document.place, document.span, document.answer, document.company})
        CHECK(html.contains(htmlText(text)));
    for (const ReportSentence& sentence : document.sentences)
        CHECK(html.contains(htmlMarked(sentence.text)));
    for (const QString& caution : document.cautions)
        CHECK(html.contains(htmlText(caution)));
    CHECK(html.contains(QStringLiteral("9f3ac2d1 7b40e855")));
}
