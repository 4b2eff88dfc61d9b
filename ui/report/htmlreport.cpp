// SPDX-License-Identifier: MIT
#include "ui/report/htmlreport.h"

#include "core/exchange/wholefile.h"
#include "ui/report/htmlstyle.h"
#include "ui/report/htmlwords.h"
#include "ui/report/inlinesvg.h"
#include "ui/report/paper.h"
#include "ui/report/reporttext.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr int wholeWidth = 780;
constexpr int halfWidth = 356;

QString element(const char16_t* name, const QString& inside, const QString& attributes = {})
{
    const QString tag = QString::fromUtf16(name);
    return u'<' % tag % (attributes.isEmpty() ? QString() : QString(u' ' % attributes)) % u'>' % inside
        % u"</" % tag % u">\n";
}

QString ifAny(const char16_t* name, const QString& text, const QString& attributes = {})
{
    return text.isEmpty() ? QString() : element(name, htmlMarked(text), attributes);
}

QString classed(const char* name) { return QStringLiteral("class=\"%1\"").arg(QLatin1String(name)); }

QString sectionName(std::size_t section) { return QStringLiteral("section-%1").arg(section + 1); }

QString tableCell(const ChartTable& table, const QString& text, qsizetype column, const char* scope)
{
    const auto at = static_cast<std::size_t>(column);
    QStringList attributes;
    if (at < table.numbers.size() && table.numbers[at])
        attributes.append(classed("n"));
    if (scope != nullptr)
        attributes.append(QStringLiteral("scope=\"%1\"").arg(QLatin1String(scope)));
    return element(scope != nullptr ? u"th" : u"td", htmlText(text), attributes.join(u' ')).trimmed();
}

QString tableOf(const ChartTable& table, const QString& title)
{
    if (table.headers.isEmpty())
        return {};
    QString head;
    for (qsizetype i = 0; i < table.headers.size(); ++i)
        head += tableCell(table, table.headers.at(i), i, "col");
    QString body;
    for (const QStringList& row : table.rows) {
        QString cells;
        for (qsizetype i = 0; i < table.headers.size(); ++i)
            cells += tableCell(table, row.value(i), i, i == 0 ? "row" : nullptr);
        body += element(u"tr", cells);
    }
    return element(u"div",
        element(u"table",
            (title.isEmpty() ? QString() : element(u"caption", htmlText(title)))
                + element(u"thead", element(u"tr", head)) + element(u"tbody", body)),
        classed("scroll"));
}

/// The page being put together.
class HtmlPage
{
public:
    HtmlPage(const ReportDocument& document, const Output& output)
        : m_document(document)
        , m_drawings(output)
    {
    }

    QString text()
    {
        const QString body = header() + sections() + footer(); // first: the drawings collect their colours
        const QString style = htmlStyle(m_drawings.lightVariables(), m_drawings.darkVariables());
        const QString title
            = QStringList{m_document.title, m_document.place, m_document.span}.join(QStringLiteral(" · "));
        const QString head
            = QStringLiteral("<meta charset=\"utf-8\">\n"
                             "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                             "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                             "style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'\">\n")
            + element(u"title", htmlAttribute(title)) + element(u"style", style);
        return QStringLiteral("<!DOCTYPE html>\n<html lang=\"%1\" dir=\"%2\">\n")
                   .arg(htmlAttribute(
                            m_document.language.isEmpty() ? QStringLiteral("en") : m_document.language),
                       m_document.direction == Qt::RightToLeft ? QStringLiteral("rtl")
                                                               : QStringLiteral("ltr"))
            + element(u"head", head) + element(u"body", element(u"main", body)) + QStringLiteral("</html>\n");
    }

private:
    QString header() const
    {
        const QString where
            = m_document.place % (m_document.span.isEmpty() ? QString() : QString(u" · " % m_document.span));
        return element(u"header",
            ifAny(u"p", m_document.title, classed("small")) + ifAny(u"p", where, classed("where"))
                + ifAny(u"h1", m_document.answer) + ifAny(u"p", m_document.company, classed("hint"))
                + sentences());
    }

    QString sentences() const
    {
        QString items;
        for (const ReportSentence& sentence : m_document.sentences) {
            const auto section = static_cast<std::size_t>(sentence.section);
            const bool isLink = sentence.section >= 0 && section < m_document.sections.size();
            const QString words = htmlMarked(sentence.text);
            items += element(u"li",
                isLink
                    ? element(u"a", words, QStringLiteral("href=\"#%1\"").arg(sectionName(section))).trimmed()
                    : words);
        }
        return items.isEmpty() ? QString() : element(u"ul", items, classed("sentences"));
    }

    QString sections()
    {
        QString out;
        for (std::size_t i = 0; i < m_document.sections.size(); ++i) {
            const ReportSection& section = m_document.sections[i];
            out += element(u"section", ifAny(u"h2", section.title) + parts(section.parts),
                QStringLiteral("id=\"%1\"").arg(sectionName(i)));
        }
        return out;
    }

    QString parts(const std::vector<ReportPart>& all)
    {
        const auto halfAt = [&](std::size_t i) {
            const auto* chart = i < all.size() ? std::get_if<ReportChart>(&all[i]) : nullptr;
            return chart != nullptr && chart->half ? chart : nullptr;
        };
        QString out;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (halfAt(i) != nullptr && halfAt(i + 1) != nullptr) {
                out += element(u"div",
                    figure(halfAt(i)->content, halfWidth) + figure(halfAt(i + 1)->content, halfWidth),
                    classed("beside"));
                ++i;
            } else if (const auto* chart = std::get_if<ReportChart>(&all[i])) {
                out += figure(chart->content, wholeWidth);
            } else if (const auto* table = std::get_if<ReportTable>(&all[i])) {
                out += tableOf(table->table, table->title);
            } else {
                out += ifAny(u"p", std::get<ReportParagraph>(all[i]).text);
            }
        }
        return out;
    }

    QString figure(const ChartContent& content, int width)
    {
        QString inside = ifAny(u"h3", content.title);
        if (isEmpty(content.figure)) {
            inside
                += ifAny(u"p", content.emptyText.isEmpty() ? ReportText::nothingToShow() : content.emptyText);
        } else {
            const int least = chartLeastWidth(content.figure, paperTheme(), m_document.direction);
            const QString name = content.finding.isEmpty() ? content.title : content.finding;
            inside += m_drawings.of(content.figure, std::max(width, least), name, m_document.direction);
        }
        inside += ifAny(u"p", content.smallPrint, classed("small"));
        if (!content.table.headers.isEmpty())
            inside += element(u"details",
                element(u"summary", htmlText(ReportText::numbersBehind())) + tableOf(content.table, {}));
        return element(u"figure", inside);
    }

    QString footer() const
    {
        const auto notes = [](const QString& title, const std::vector<QString>& paragraphs) {
            QString out;
            for (const QString& paragraph : paragraphs)
                out += ifAny(u"p", paragraph, classed("small"));
            return out.isEmpty() ? out : QString(element(u"h2", htmlText(title)) + out);
        };
        return element(u"footer",
            notes(ReportText::cautionsTitle(), m_document.cautions)
                + notes(ReportText::methodTitle(), m_document.method)
                + notes(ReportText::sealTitle(), ReportText::seal(m_document.seal)));
    }

    const ReportDocument& m_document;
    InlineSvg m_drawings;
};

}

Result<QByteArray> htmlOf(const ReportDocument& document)
{
    return output().map([&](const Output* output) { return HtmlPage(document, *output).text().toUtf8(); });
}

Result<void> writeHtml(const ReportDocument& document, const QString& path)
{
    return htmlOf(document).and_then([&](const QByteArray& bytes) {
        return writeWholeFile(path.toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
    });
}

}
