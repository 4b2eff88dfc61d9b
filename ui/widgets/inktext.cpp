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
    m_alignment = QStyle::visualAlignment(direction, alignment);
    QTextOption option;
    option.setTextDirection(textDirection(text, direction));
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
    measure();
    return m_naturalWidth;
}

int InkText::widestWord() const
{
    measure();
    return m_widestWord;
}

int InkText::baseline() const
{
    measure();
    return m_ascent;
}

int InkText::height(int width) const
{
    measure();
    if (width >= m_naturalWidth)
        return m_lineHeight;
    const auto known = m_heights.find(width);
    if (known != m_heights.end())
        return known->second;
    layOut(width);
    return m_heights[width];
}

int InkText::draw(QPainter& painter, const QRect& box) const
{
    const int used = height(box.width());
    if (isEmpty())
        return used;
    QPointF place = box.topLeft();
    const bool manyLines = m_layout->text().contains(QChar::LineSeparator); // each keeps to its own side
    if (box.width() >= m_naturalWidth && !manyLines) {
        layOut(unbounded);
        const int spare = box.width() - m_naturalWidth;
        place.rx() += m_alignment.testFlag(Qt::AlignRight) ? spare
            : m_alignment.testFlag(Qt::AlignHCenter)       ? spare / 2
                                                           : 0;
    } else {
        layOut(box.width());
    }
    m_layout->draw(&painter, place);
    return used;
}

void InkText::drawMiddle(QPainter& painter, const QRect& box) const
{
    const int spare = (box.height() - height(box.width())) / 2;
    draw(painter, box.adjusted(0, spare, 0, 0));
}

/// Each layout shapes the text anew, and shaping is what costs; so the one line that most texts are is laid
/// out once and gives all sizes, and only a text that wraps is laid out again.
void InkText::measure() const
{
    if (m_naturalWidth > 0 || isEmpty())
        return;
    layOut(unbounded);
    m_naturalWidth = static_cast<int>(std::ceil(m_layout->maximumWidth())) + 1;
    m_widestWord = static_cast<int>(std::ceil(m_layout->minimumWidth())) + 1;
    m_lineHeight = m_heights[unbounded];
    m_ascent = static_cast<int>(m_layout->lineAt(0).ascent());
}

void InkText::layOut(int width) const
{
    if (width == m_laidWidth)
        return;
    QTextOption option = m_layout->textOption();
    const bool wraps = width != unbounded;
    // Unbounded, the least width is asked, which has to be that of a word.
    option.setWrapMode(wraps ? QTextOption::WrapAtWordBoundaryOrAnywhere : QTextOption::WordWrap);
    option.setAlignment((wraps ? m_alignment : Qt::AlignLeft) | Qt::AlignAbsolute);
    m_layout->setTextOption(option);
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
    m_heights[width] = static_cast<int>(std::ceil(top));
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
