// SPDX-License-Identifier: MIT
#include "ui/widgets/factsheet.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

namespace {
/// Draws when there is a painter, measures in any case.
int put(const InkText& text, const QRect& room, QPainter* painter, const QColor& colour)
{
    if (!painter)
        return text.height(room.width());
    painter->setPen(colour);
    return text.draw(*painter, room);
}
}

FactSheet::FactSheet(QWidget* parent)
    : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FactSheet::setFact(const Fact& fact)
{
    m_fact = fact;
    m_ink.clear();
    setAccessibleName(fact.title);
    QStringList parts{plainText(fact.value), plainText(fact.aside)};
    for (const QString& line : fact.lines)
        parts.append(plainText(line));
    parts.removeAll(QString());
    setAccessibleDescription(parts.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

QSize FactSheet::sizeHint() const
{
    const int width = std::max(minimumSizeHint().width(), themeOf(*this).px(300));
    return {width, heightForWidth(width)};
}

QSize FactSheet::minimumSizeHint() const
{
    const Theme& theme = themeOf(*this);
    int widest = std::max({ink(m_fact.title, TextRole::Small, TextWeight::SemiBold).widestWord(),
        ink(m_fact.value, TextRole::Title, TextWeight::SemiBold).widestWord(),
        ink(m_fact.aside, TextRole::Body).widestWord()});
    for (const QString& line : m_fact.lines)
        widest = std::max(widest, ink(line, TextRole::Small).widestWord());
    const int width = widest + 2 * theme.space(Space::Apart);
    return {width, heightForWidth(std::max(width, theme.px(300)))};
}

int FactSheet::heightForWidth(int width) const { return layOut(width, nullptr); }

int FactSheet::layOut(int width, QPainter* painter) const
{
    const Theme& theme = themeOf(*this);
    const Roles& roles = theme.roles;
    const int margin = theme.space(Space::Apart);
    QRect room(margin, margin, width - 2 * margin, 1 << 16);
    room.setTop(margin
        + put(ink(m_fact.title, TextRole::Small, TextWeight::SemiBold), room, painter, roles.inkSoft)
        + theme.space(Space::Close));
    room.setTop(room.top() + valueAndAside(room, painter));
    if (m_fact.progress) {
        const QRect bar(room.left(), room.top() + theme.space(Space::Close), room.width(), theme.px(10));
        if (painter)
            paintBar(*painter, bar);
        room.setTop(bar.bottom() + 1 + theme.space(Space::Tight));
    }
    for (const QString& line : m_fact.lines) {
        room.setTop(room.top() + theme.space(Space::Tight));
        room.setTop(room.top() + put(ink(line, TextRole::Small), room, painter, roles.inkHint));
    }
    return room.top() + margin;
}

int FactSheet::valueAndAside(const QRect& room, QPainter* painter) const
{
    const Theme& theme = themeOf(*this);
    const InkText& value = ink(m_fact.value, TextRole::Title, TextWeight::SemiBold);
    const InkText& aside = ink(m_fact.aside, TextRole::Body);
    const int valueHeight = put(value, room, painter, theme.roles.ink);
    if (aside.isEmpty())
        return valueHeight;
    const int start = value.naturalWidth() + theme.space(Space::Close);
    if (!value.isEmpty() && start + aside.naturalWidth() <= room.width()) {
        aside.height(room.width() - start);
        const QRect box(room.left() + start, room.top(), room.width() - start, room.height());
        const QRect onLine = QStyle::visualRect(layoutDirection(), room, box);
        put(aside, onLine.translated(0, value.baseline() - aside.baseline()), painter, theme.roles.ink);
        return valueHeight;
    }
    const int below = valueHeight + (value.isEmpty() ? 0 : theme.space(Space::Tight));
    return below + put(aside, room.adjusted(0, below, 0, 0), painter, theme.roles.ink);
}

void FactSheet::paintBar(QPainter& painter, const QRect& bar) const
{
    const Theme& theme = themeOf(*this);
    const double done = std::clamp(m_fact.progress.value_or(0.0), 0.0, 1.0);
    const int reached = static_cast<int>(bar.width() * done);
    const double radius = bar.height() / 2.0;
    const auto mirrored = [&](const QRect& part) { return QStyle::visualRect(layoutDirection(), bar, part); };
    paintPlate(painter, bar, theme.roles.track, QColor(), radius);
    if (reached > bar.height())
        paintPlate(painter, mirrored(QRect(bar.left(), bar.top(), reached, bar.height())), theme.roles.amber,
            QColor(), radius);
    const int over = theme.px(4);
    const QRect tick(bar.left() + reached - 1, bar.top() - over, theme.px(2), bar.height() + 2 * over);
    painter.fillRect(mirrored(tick), theme.roles.ink);
}

const InkText& FactSheet::ink(const QString& text, TextRole role, TextWeight weight) const
{
    return m_ink.text(text, themeOf(*this).font(role, weight), layoutDirection());
}

void FactSheet::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::LayoutDirectionChange)
        m_ink.clear();
    QWidget::changeEvent(event);
}

void FactSheet::paintEvent(QPaintEvent* /*event*/)
{
    const Roles& roles = themeOf(*this).roles;
    QPainter painter(this);
    paintPlate(painter, rect(), roles.sheet, roles.line);
    layOut(width(), &painter);
}

}
