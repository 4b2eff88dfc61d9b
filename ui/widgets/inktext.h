// SPDX-License-Identifier: MIT
#pragma once

#include <QFont>
#include <QRect>
#include <QString>

#include <map>
#include <memory>
#include <tuple>

class QPainter;
class QTextLayout;

namespace cradlepost {

/// `marked` without the ** that set words in bold: for screen readers and tool tips.
QString plainText(const QString& marked);

/// The direction a text runs in when the layout runs in `layout`: initials, a number with its unit and other
/// text without a letter that runs right to left keep their order in a mirrored window.
Qt::LayoutDirection textDirection(const QString& text, Qt::LayoutDirection layout);

/// A text that wraps, with **bold** spans, laid out in either direction. Nothing is ever elided.
class InkText
{
public:
    InkText(const QString& marked, const QFont& font, Qt::LayoutDirection direction,
        Qt::Alignment alignment = Qt::AlignLeft);
    ~InkText();
    InkText(InkText&&) noexcept;
    InkText& operator=(InkText&&) noexcept;
    InkText(const InkText&) = delete;
    InkText& operator=(const InkText&) = delete;

    bool isEmpty() const;
    int naturalWidth() const; ///< on one line
    int widestWord() const; ///< below this width words are broken
    int height(int width) const; ///< 0 when empty
    int baseline() const; ///< of the first line, from the top

    /// From the top of `box`, in the painter's pen colour. Returns the height used.
    int draw(QPainter& painter, const QRect& box) const;

    /// The same, in the middle of the box's height.
    void drawMiddle(QPainter& painter, const QRect& box) const;

private:
    void measure() const;
    void layOut(int width) const;

    std::unique_ptr<QTextLayout> m_layout;
    Qt::Alignment m_alignment; ///< as seen, mirrored already
    int m_lineGap = 0;
    mutable int m_laidWidth = 0; ///< of the lines that m_layout holds now; 0 without
    mutable int m_naturalWidth = 0;
    mutable int m_widestWord = 0;
    mutable int m_lineHeight = 0;
    mutable int m_ascent = 0;
    mutable std::map<int, int> m_heights; ///< of the widths at which it wraps
};

/// The texts of a widget, shaped once: layouts ask for sizes many times before anything is painted, and
/// shaping is what costs. To be cleared when the widget's texts change.
class InkCache
{
public:
    const InkText& text(const QString& marked, const QFont& font, Qt::LayoutDirection direction,
        Qt::Alignment alignment = Qt::AlignLeft) const;
    void clear() { m_texts.clear(); }

private:
    using Key = std::tuple<QString, int, int, Qt::LayoutDirection, int>;
    mutable std::map<Key, InkText> m_texts;
};

}
