// SPDX-License-Identifier: MIT
#include "ui/report/reportpages.h"

#include "ui/report/chartstrips.h"
#include "ui/report/reporttext.h"
#include "ui/report/tablestrips.h"
#include "ui/report/textstrips.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {
constexpr double densestUnits = 124.0; ///< of 7.5 points: the least for a page that is read in a hurry
constexpr int pageColumn = 72;

const ReportChart* halfChart(const std::vector<ReportPart>& parts, std::size_t at)
{
    const auto* chart = at < parts.size() ? std::get_if<ReportChart>(&parts[at]) : nullptr;
    return chart != nullptr && chart->half ? chart : nullptr;
}
}

ReportPages::ReportPages(const ReportDocument& document)
    : m_document(document)
{
    layOut(usualUnits);
    if (isClose() && count() > 1)
        layOut(densestUnits);
}

ReportPages::~ReportPages() = default;

void ReportPages::layOut(double unitsPerInch)
{
    m_strips.clear(); // they hold on to the paper
    m_paper = std::make_unique<Paper>(m_document.direction, unitsPerInch);
    appendAnswer();
    appendSentences();
    appendSections();
    appendSmallPrint();
    m_flow = flow(m_strips, m_paper->body().height());
    findSections();
}

double ReportPages::millimetresTooLong() const
{
    return count() > 1 ? m_paper->toMillimetres(m_flow.height - m_paper->body().height()) : 0.0;
}

void ReportPages::appendAnswer()
{
    const Theme& theme = m_paper->theme();
    const QString whereAndWhen = QStringList{m_document.place, m_document.span}.join(
        m_document.place.isEmpty() || m_document.span.isEmpty() ? QString() : QStringLiteral(" · "));
    appendText(m_strips, *m_paper, whereAndWhen,
        {.role = TextRole::Lead,
            .weight = TextWeight::SemiBold,
            .colour = &Roles::inkSoft,
            .keepsNext = true});
    appendText(m_strips, *m_paper, m_document.answer,
        {.role = isClose() ? TextRole::Title : TextRole::Finding,
            .weight = TextWeight::SemiBold,
            .gap = theme.space(Space::Tight),
            .keepsNext = true});
    appendText(m_strips, *m_paper, m_document.company,
        {.colour = &Roles::inkHint, .gap = theme.space(Space::Tight), .wide = isClose()});
}

void ReportPages::appendSentences()
{
    const Theme& theme = m_paper->theme();
    const auto role = isClose() ? TextRole::Body : TextRole::Lead;
    const int width = m_paper->body().width() - pageColumn;
    int gap = theme.space(Space::Apart);
    for (const ReportSentence& sentence : m_document.sentences) {
        if (sentence.text.isEmpty())
            continue;
        m_strips.push_back({.height = m_paper->ink(sentence.text, role).height(width),
            .gap = gap,
            .paint = [this, &sentence](
                         QPainter& painter, const QRect& box) { paintSentence(painter, box, sentence); }});
        gap = theme.space(Space::Close);
    }
}

void ReportPages::paintSentence(QPainter& painter, const QRect& box, const ReportSentence& sentence) const
{
    const auto role = isClose() ? TextRole::Body : TextRole::Lead;
    const QRect words(box.left(), box.top(), box.width() - pageColumn, box.height());
    painter.setPen(m_paper->theme().roles.ink);
    const InkText& ink = m_paper->ink(sentence.text, role);
    ink.draw(painter, m_paper->seen(words, box));
    const auto section = static_cast<std::size_t>(sentence.section);
    if (sentence.section < 0 || section >= m_sectionPages.size() || count() == 1)
        return;
    const InkText& page = m_paper->ink(ReportText::onPage(m_sectionPages[section] + 1), TextRole::Small,
        TextWeight::Regular, Qt::AlignRight);
    const int top = box.top() + ink.baseline() - page.baseline();
    painter.setPen(m_paper->theme().roles.inkHint);
    page.draw(painter, m_paper->seen({box.right() + 1 - pageColumn, top, pageColumn, box.height()}, box));
}

void ReportPages::appendSections()
{
    for (std::size_t i = 0; i < m_document.sections.size(); ++i) {
        const ReportSection& section = m_document.sections[i];
        const std::size_t first = m_strips.size();
        appendText(m_strips, *m_paper, section.title,
            {.role = TextRole::Lead,
                .weight = TextWeight::SemiBold,
                .gap = (isClose() ? 1 : 2) * m_paper->theme().space(Space::Apart),
                .keepsNext = true});
        appendParts(section.parts);
        if (m_strips.size() > first)
            m_strips[first].section = static_cast<int>(i);
        if (!section.title.isEmpty() && m_strips.size() > first + 1)
            m_strips[first + 1].gap = std::min(m_strips[first + 1].gap, m_paper->theme().space(Space::Near));
    }
}

void ReportPages::appendParts(const std::vector<ReportPart>& parts)
{
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const ReportChart* half = halfChart(parts, i);
        const ReportChart* other = halfChart(parts, i + 1);
        if (half != nullptr && other != nullptr && fitBeside(*m_paper, half->content, other->content)) {
            appendChartsBeside(m_strips, *m_paper, half->content, other->content);
            ++i;
        } else if (const auto* chart = std::get_if<ReportChart>(&parts[i])) {
            appendChart(m_strips, *m_paper, chart->content);
        } else if (const auto* table = std::get_if<ReportTable>(&parts[i])) {
            appendTable(m_strips, *m_paper, table->title, table->table);
        } else {
            // Words that lead to a chart or table are never left behind on the page before.
            const bool leads = i + 1 < parts.size() && !std::holds_alternative<ReportParagraph>(parts[i + 1]);
            appendText(m_strips, *m_paper, std::get<ReportParagraph>(parts[i]).text,
                {.gap = m_paper->theme().space(Space::Near), .keepsNext = leads, .wide = isClose()});
        }
    }
}

void ReportPages::appendNotes(const QString& title, const std::vector<QString>& paragraphs)
{
    if (paragraphs.empty())
        return;
    const Theme& theme = m_paper->theme();
    appendText(m_strips, *m_paper, title,
        {.weight = TextWeight::SemiBold,
            .gap = theme.space(isClose() ? Space::Near : Space::Wide),
            .keepsNext = true});
    for (const QString& paragraph : paragraphs)
        appendText(m_strips, *m_paper, paragraph,
            {.role = TextRole::Small,
                .colour = &Roles::inkSoft,
                .gap = theme.space(Space::Tight),
                .wide = isClose()});
}

void ReportPages::appendSmallPrint()
{
    appendNotes(ReportText::cautionsTitle(), m_document.cautions);
    appendNotes(ReportText::methodTitle(), m_document.method);
    std::vector<QString> seal = ReportText::seal(m_document.seal);
    if (isClose() && !seal.empty())
        seal = {QStringList(seal.begin(), seal.end()).join(QLatin1Char(' '))};
    appendNotes(ReportText::sealTitle(), seal);
}

void ReportPages::findSections()
{
    m_sectionPages.assign(m_document.sections.size(), 0);
    for (std::size_t page = 0; page < m_flow.pages.size(); ++page) {
        for (const PlacedStrip& placed : m_flow.pages[page]) {
            if (placed.strip->section >= 0)
                m_sectionPages[static_cast<std::size_t>(placed.strip->section)] = static_cast<int>(page);
        }
    }
}

void ReportPages::paintHeadAndFoot(QPainter& painter, int page) const
{
    const Roles& roles = m_paper->theme().roles;
    const auto line = [&](const QRect& box, const QString& leading, const QString& trailing) {
        const InkText& end = m_paper->ink(trailing, TextRole::Small, TextWeight::Regular, Qt::AlignRight);
        const int room = std::min(end.naturalWidth(), box.width() / 2);
        const QRect start(
            box.left(), box.top(), box.width() - room - m_paper->theme().space(Space::Wide), box.height());
        m_paper->ink(leading).drawMiddle(painter, m_paper->seen(start, box));
        end.drawMiddle(painter, m_paper->seen({box.right() + 1 - room, box.top(), room, box.height()}, box));
    };
    painter.setPen(roles.inkHint);
    const QStringList place{m_document.place, m_document.span};
    line(m_paper->head(), m_document.title,
        place.join(place.contains(QString()) ? QString() : QStringLiteral(" · ")));
    line(m_paper->foot(), ReportText::shortSeal(m_document.seal), ReportText::pageOf(page + 1, count()));
    const QRect head = m_paper->head();
    painter.fillRect(QRectF(head.left(), head.bottom() + 5, head.width(), 0.75), roles.line);
}

void ReportPages::paint(QPainter& painter, int page) const
{
    paintHeadAndFoot(painter, page);
    const QRect body = m_paper->body();
    for (const PlacedStrip& placed : m_flow.pages[static_cast<std::size_t>(page)])
        placed.strip->paint(painter, {body.left(), body.top() + placed.top, body.width(), placed.height});
}

}
