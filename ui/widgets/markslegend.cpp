// SPDX-License-Identifier: MIT
#include "ui/widgets/markslegend.h"
#include "ui/theme/theme.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

MarksLegend::MarksLegend(const std::vector<Mark>& marks, QWidget* parent)
    : QWidget(parent)
    , m_marks(marks)
{
    if (m_marks.empty())
        m_marks.assign(std::begin(allMarks), std::end(allMarks));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    nameIt();
}

const InkText& MarksLegend::word(Mark mark) const
{
    return m_ink.text(OutcomeMark::word(mark), themeOf(*this).font(TextRole::Small), layoutDirection());
}

int MarksLegend::entryWidth(Mark mark) const
{
    const Theme& theme = themeOf(*this);
    return theme.px(14) + theme.px(6) + word(mark).naturalWidth();
}

int MarksLegend::lineHeight() const
{
    const Theme& theme = themeOf(*this);
    return std::max(QFontMetrics(theme.font(TextRole::Small)).height(), theme.px(16));
}

/// Where an entry goes: behind the last one, or at the start of the next line.
QPoint MarksLegend::nextPlace(QPoint place, int entry, int width) const
{
    if (place.x() > 0 && place.x() + entry > width)
        return {0, place.y() + lineHeight() + themeOf(*this).space(Space::Tight)};
    return place;
}

QSize MarksLegend::sizeHint() const
{
    int width = 0;
    for (const Mark mark : m_marks)
        width += entryWidth(mark) + themeOf(*this).space(Space::Apart);
    return {width, lineHeight()};
}

QSize MarksLegend::minimumSizeHint() const
{
    int width = 0;
    for (const Mark mark : m_marks)
        width = std::max(width, entryWidth(mark));
    return {width, lineHeight()};
}

int MarksLegend::heightForWidth(int width) const
{
    QPoint place;
    for (const Mark mark : m_marks) {
        place = nextPlace(place, entryWidth(mark), width);
        place.rx() += entryWidth(mark) + themeOf(*this).space(Space::Apart);
    }
    return place.y() + lineHeight();
}

void MarksLegend::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    QPainter painter(this);
    painter.setPen(theme.roles.inkSoft);
    const auto mirrored
        = [&](const QRect& part) { return QStyle::visualRect(layoutDirection(), rect(), part); };
    QPoint place;
    for (const Mark mark : m_marks) {
        const int entry = entryWidth(mark);
        place = nextPlace(place, entry, width());
        const QRect box(place, QSize(theme.px(14), lineHeight()));
        paintMark(painter, mirrored(box), mark, theme.roles);
        const int skip = theme.px(14) + theme.px(6);
        const QRect room(place.x() + skip, place.y(), entry - skip, lineHeight());
        word(mark).drawMiddle(painter, mirrored(room));
        place.rx() += entry + theme.space(Space::Apart);
    }
}

void MarksLegend::changeEvent(QEvent* event)
{
    m_ink.clear();
    if (event->type() == QEvent::LanguageChange) {
        nameIt();
        updateGeometry();
        update();
    }
    QWidget::changeEvent(event);
}

void MarksLegend::nameIt()
{
    QStringList words;
    for (const Mark mark : m_marks)
        words.append(OutcomeMark::word(mark));
    setAccessibleName(tr("Marks in use"));
    setAccessibleDescription(words.join(QStringLiteral(", ")));
}

}
