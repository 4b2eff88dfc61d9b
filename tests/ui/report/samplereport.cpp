// SPDX-License-Identifier: MIT
#include "tests/ui/report/samplereport.h"

#include "tests/support/sampletables.h"
#include "tests/ui/charts/samplecharts.h"
#include "ui/report/printedtable.h"
#include "ui/text/pseudotranslator.h"

namespace cradlepost::test {

namespace {

QString hash() { return QStringLiteral("9f3ac2d17b40e85566aa01c2d3e4f5060718293a4b5c6d7e8f90a1b2c3d4e5f6"); }

ReportDocument english()
{
    ReportDocument report{.title = QStringLiteral("Month of a labour ward"),
        .place = QStringLiteral("Sorrel Hill · labour ward"),
        .span = QStringLiteral("October 2026"),
        .answer = QStringLiteral("71% of shifts ready"),
        .company = QStringLiteral("63 of 88 rounds · 61 to 80 · five shifts without a round")};
    report.sentences
        = {{QStringLiteral("It fell on nights from 12 October, **more than chance explains**."), 1},
            {QStringLiteral(
                 "Three items make up **64% of what was lost**; the kits were short on 19 nights because "
                 "of cord ties."),
                2},
            {QStringLiteral("Half of all gaps are mended **within 13 hours**."), 3},
            {QStringLiteral(
                 "Room temperatures end in .0 more often than a thermometer would: ask how they are read."),
                4}};
    report.method
        = {QStringLiteral("Shares carry 95% limits after Wilson (1927). Weeks are compared by a p' chart "
                          "(Laney 2002); a week outside its limits is a signal."),
            QStringLiteral(
                "Time to restore is the Kaplan-Meier estimate; gaps still open count as far as seen.")};
    report.cautions
        = {QStringLiteral("It supports, never replaces, local protocols and licensed clinical judgement."),
            QStringLiteral("Never delay care of mother or baby to fill in a form.")};
    report.seal = {QStringLiteral("3 November 2026, 08:12"), QStringLiteral("st-5f2c"), hash()};
    report.language = QStringLiteral("en");
    return report;
}

ReportDocument hindi()
{
    ReportDocument report{.title = QStringLiteral("प्रसव कक्ष का महीना"),
        .place = QStringLiteral("सोरेल हिल · प्रसव कक्ष"),
        .span = QStringLiteral("अक्टूबर 2026"),
        .answer = QStringLiteral("71% पालियाँ तैयार"),
        .company = QStringLiteral("88 में से 63 राउंड · 61 से 80 · पाँच पालियों में कोई राउंड नहीं")};
    report.sentences
        = {{QStringLiteral("12 अक्टूबर से रात की पालियों में यह गिरा, **संयोग से जितना हो सकता है उससे अधिक**।"), 1},
            {QStringLiteral("तीन मदों में **कुल कमी का 64%** है; नाल बाँधने के धागे न होने से किट 19 रातों में कम थे।"), 2},
            {QStringLiteral("आधी कमियाँ **13 घंटे के भीतर** दूर हो जाती हैं।"), 3},
            {QStringLiteral(
                 "कमरे का तापमान .0 पर इतनी बार समाप्त होता है जितना थर्मामीटर में नहीं होता: पूछें कि कैसे पढ़ा जाता है।"),
                4}};
    report.method = {QStringLiteral("हिस्सों के साथ विल्सन (1927) की 95% सीमाएँ दी गई हैं।")};
    report.cautions = {QStringLiteral("फ़ॉर्म भरने के लिए माँ या शिशु की देखभाल में कभी देर न करें।")};
    report.seal = {QStringLiteral("3 नवंबर 2026, 08:12"), QStringLiteral("st-5f2c"), hash()};
    report.language = QStringLiteral("hi");
    return report;
}

void addSections(ReportDocument& report, Wording wording)
{
    const auto table = [](std::size_t i) {
        return printedTable(aTableBook().tables.at(i), {.words = {}, .locale = QLocale(QLocale::English)});
    };
    const bool isHindi = wording == Wording::Hindi;
    report.sections = {
        {{}, {ReportChart{sampleCalendar(wording), true}, ReportChart{sampleShares(wording), true}}},
        {{}, {ReportChart{sampleShiftControl(wording)}}},
        {{}, {ReportChart{sampleBars(wording)}, ReportChart{sampleMap(wording)}}},
        {{}, {ReportChart{sampleSurvival(wording)}}},
        {isHindi ? QStringLiteral("क्या प्रविष्टियों पर भरोसा किया जा सकता है?")
                 : QStringLiteral("Can the entries be trusted?"),
            {ReportParagraph{isHindi ? QStringLiteral("यह एक प्रश्न है, आरोप नहीं।")
                                     : QStringLiteral("A question to ask, not an accusation.")},
                ReportChart{sampleHistogram(wording), true}, ReportChart{sampleMultiples(wording), true}}},
        {isHindi ? QStringLiteral("आँकड़े") : QStringLiteral("The figures"),
            {ReportTable{QStringLiteral("lost-readiness"), table(0)}, aLongReportTable(40)}}};
}

void pseudo(QString& text) { text = text.isEmpty() ? text : pseudoText(text); }

void pseudo(ReportDocument& report)
{
    for (QString* text :
        {&report.title, &report.place, &report.span, &report.answer, &report.company, &report.seal.made})
        pseudo(*text);
    for (ReportSentence& sentence : report.sentences)
        pseudo(sentence.text);
    for (auto* paragraphs : {&report.method, &report.cautions}) {
        for (QString& paragraph : *paragraphs)
            pseudo(paragraph);
    }
    for (ReportSection& section : report.sections)
        pseudo(section.title);
    report.language = QStringLiteral("x-pseudo");
    report.direction = Qt::RightToLeft;
}

}

ReportDocument aReport(const QString& language)
{
    const bool isHindi = language == QLatin1String("hi");
    ReportDocument report = isHindi ? hindi() : english();
    addSections(report, isHindi ? Wording::Hindi : Wording::English);
    if (language == QLatin1String(pseudoLanguage))
        pseudo(report);
    return report;
}

ReportTables itsTables()
{
    ReportTables tables{.book = aTableBook(), .words = {}};
    tables.book.about.ledgerHead = hash().toStdString();
    return tables;
}

ReportDocument aHandOver()
{
    ReportDocument report = english();
    report.compact = true;
    report.sections = {{QStringLiteral("Gaps that the next shift inherits"),
        {aLongReportTable(12), ReportChart{sampleCalendar()}}}};
    return report;
}

ReportTable aLongReportTable(int rows)
{
    return {QStringLiteral("A table of %1 rows").arg(rows),
        printedTable(aLongTable(rows), {.words = {}, .locale = QLocale(QLocale::English)})};
}

QString outputOf(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60'000) || process.exitCode() != 0)
        return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

int pagesOf(const QString& pdf)
{
    const QString info = outputOf(QStringLiteral("pdfinfo"), {pdf});
    return info.section(QStringLiteral("Pages:"), 1).section(u'\n', 0, 0).trimmed().toInt();
}

QString pageText(const QString& pdf, int page)
{
    const QString number = QString::number(page);
    return outputOf(QStringLiteral("pdftotext"),
        {QStringLiteral("-layout"), QStringLiteral("-f"), number, QStringLiteral("-l"), number, pdf,
            QStringLiteral("-")});
}

}
