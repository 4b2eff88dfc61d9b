// SPDX-License-Identifier: MIT
#include "ui/report/handover/handoverdocument.h"

#include "ui/report/pdfreport.h"
#include "ui/text/wardtext.h"

namespace cradlepost {

namespace {

/** Words of the page itself. */
struct HandoverPaper
{
    Q_DECLARE_TR_FUNCTIONS(HandoverPaper)
public:
    static QStringList gapHeaders()
    {
        return {tr("What is open"), tr("Why"), tr("Who mends it"), tr("Due")};
    }
};

ChartTable gapTable(const std::vector<HandoverGapWords>& gaps)
{
    ChartTable table{.headers = HandoverPaper::gapHeaders(), .rows = {}, .numbers = {}};
    for (const HandoverGapWords& gap : gaps)
        table.rows.push_back({gap.what, gap.why, gap.who, gap.by});
    return table;
}

ReportSection sectionOf(const HandoverPart& part)
{
    ReportSection section{.title = part.title, .parts = {}};
    if (!part.gaps.empty())
        section.parts.emplace_back(ReportTable{.title = {}, .table = gapTable(part.gaps)});
    if (!part.lines.isEmpty())
        section.parts.emplace_back(ReportParagraph{.text = part.lines.join(QLatin1Char('\n'))});
    return section;
}

ReportSection signatures(const HandoverWords& words)
{
    ReportSection section{.title = HandoverPaper::tr("Signed"), .parts = {}};
    const QString line = QStringLiteral(" ____________________");
    section.parts.emplace_back(
        ReportParagraph{.text = words.given.isEmpty() ? HandoverPaper::tr("Given by:") + line : words.given});
    section.parts.emplace_back(
        ReportParagraph{.text = words.taken.isEmpty() ? HandoverPaper::tr("Taken by:") + line : words.taken});
    return section;
}

ReportSeal sealOf(const Store& store, const TimeText& times, Instant now)
{
    ReportSeal seal{.made = qs(toIso(times.zone().toLocal(now).date)) + QLatin1Char(' ') + times.clock(now),
        .station = {},
        .headHash = {}};
    for (const Chain& chain : store.chains().value_or(std::vector<Chain>())) {
        seal.station = qs(chain.station);
        seal.headHash = QString::fromLatin1(QByteArray(
            reinterpret_cast<const char*>(chain.hash.data()), static_cast<qsizetype>(chain.hash.size()))
                                                .toHex());
    }
    return seal;
}

}

ReportDocument handoverDocument(const Store& store, const HandoverWords& words, const Language& language,
    const TimeText& times, Instant now)
{
    ReportDocument document{.title = HandoverPaper::tr("Handover of a labour ward"),
        .place = words.unit,
        .span = words.shift,
        .answer = words.answer,
        .company = words.company};
    document.sections.push_back(sectionOf(words.changes));
    for (const HandoverPart& part : words.parts)
        document.sections.push_back(sectionOf(part));
    document.sections.push_back(signatures(words));
    document.cautions = {WardText::neverDelayCare()};
    document.seal = sealOf(store, times, now);
    document.language = language.code();
    document.direction = language.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight;
    document.compact = true;
    return document;
}

Result<void> writeHandover(const Store& store, const HandoverWords& words, const Language& language,
    const TimeText& times, Instant now, const QString& path)
{
    return writePdf(handoverDocument(store, words, language, times, now), {}, path);
}

}
