// SPDX-License-Identifier: MIT
#include "ui/widgets/inktext.h"

#include <cmath>
#include <QPainter>
#include <QStringList>
#include <QStyle>
#include <QTextLayout>

namespace cradlepost {

namespace {
constexpr int unbounded = 1 << 20;

QTextLayout::FormatRange boldRange(qsizetype start, qsizetype length)
{
    QTextLayout::FormatRange range;
    range.start = static_cast<int>(start);
    range.length = static_cast<int>(length);
    range.format.setFontWeight(QFont::DemiBold);
    return range;
}
}

QString plainText(const QString& marked) { return QString(marked).remove(QStringLiteral("**")); }

Qt::LayoutDirection textDirection(const QString& text, Qt::LayoutDirection layout)
{
    if (layout == Qt::LeftToRight)
        return text.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight;
    bool latin = false;
    for (const QChar letter : text) {
        const QChar::Direction direction = letter.direction();
        if (direction == QChar::DirR || direction == QChar::DirAL)
            return Qt::RightToLeft;
        latin = latin || direction == QChar::DirL;
    }
    return latin ? Qt::LeftToRight : Qt::RightToLeft;
}

InkText::InkText(
    const QString& marked, const QFont& font, Qt::LayoutDirection direction, Qt::Alignment alignment)
    : m_layout(std::make_unique<QTextLayout>())
    , m_lineGap(font.pixelSize() / 10)
{
    QString text;
    QList<QTextLayout::FormatRange> ranges;
    const QStringList parts = marked.split(QStringLiteral("**"));
    for (qsizetype i = 0; i < parts.size(); ++i) {
        if (i % 2 == 1 && !parts.at(i).isEmpty())
            ranges.append(boldRange(text.size(), parts.at(i).size()));
        text += parts.at(i);
    }
    text.replace(u'\n', QChar::LineSeparator);
    QTextOption option(QStyle::visualAlignment(direction, alignment) | Qt::AlignAbsolute);
    option.setTextDirection(textDirection(text, direction));
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    m_layout->setText(text);
    m_layout->setFont(font);
    m_layout->setTextOption(option);
    m_layout->setFormats(ranges);
    m_layout->setCacheEnabled(true);
}

InkText::~InkText() = default;
InkText::InkText(InkText&&) noexcept = default;
InkText& InkText::operator=(InkText&&) noexcept = default;

bool InkText::isEmpty() const { return m_layout->text().isEmpty(); }

int InkText::naturalWidth() const
{
    if (m_naturalWidth < 0) {
        layOut(unbounded);
        m_naturalWidth = static_cast<int>(std::ceil(m_layout->maximumWidth())) + 1;
    }
    return m_naturalWidth;
}

/// Breaking anywhere would make the least width that of a letter, so it is asked with whole words.
int InkText::widestWord() const
{
    if (isEmpty())
        return 0;
    if (m_widestWord < 0) {
        const QTextOption kept = m_layout->textOption();
        QTextOption whole = kept;
        whole.setWrapMode(QTextOption::WordWrap);
        m_layout->setTextOption(whole);
        m_laidWidth = -1;
        layOut(unbounded);
        m_widestWord = static_cast<int>(std::ceil(m_layout->minimumWidth())) + 1;
        m_layout->setTextOption(kept);
        m_laidWidth = -1;
    }
    return m_widestWord;
}

int InkText::height(int width) const { return layOut(width); }

int InkText::baseline() const
{
    layOut(m_laidWidth > 0 ? m_laidWidth : unbounded);
    return m_layout->lineCount() > 0 ? static_cast<int>(m_layout->lineAt(0).ascent()) : 0;
}

int InkText::draw(QPainter& painter, const QRect& box) const
{
    const int height = layOut(box.width());
    m_layout->draw(&painter, box.topLeft());
    return height;
}

void InkText::drawMiddle(QPainter& painter, const QRect& box) const
{
    const int spare = (box.height() - height(box.width())) / 2;
    draw(painter, box.adjusted(0, spare, 0, 0));
}

int InkText::layOut(int width) const
{
    if (width == m_laidWidth || isEmpty())
        return m_laidHeight;
    double top = 0.0;
    m_layout->beginLayout();
    for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
        if (top > 0.0)
            top += m_lineGap;
        line.setLineWidth(std::max(1, width));
        line.setPosition({0.0, top});
        top += line.height();
    }
    m_layout->endLayout();
    m_laidWidth = width;
    m_laidHeight = static_cast<int>(std::ceil(top));
    return m_laidHeight;
}

const InkText& InkCache::text(
    const QString& marked, const QFont& font, Qt::LayoutDirection direction, Qt::Alignment alignment) const
{
    const Key key(marked, font.pixelSize(), font.weight(), direction, static_cast<int>(alignment));
    const auto known = m_texts.find(key);
    if (known != m_texts.end())
        return known->second;
    return m_texts.emplace(key, InkText(marked, font, direction, alignment)).first->second;
}

}
