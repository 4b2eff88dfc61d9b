// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/steptile.h"

#include "ui/theme/plate.h"
#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"
#include "ui/widgets/outcomemark.h"

#include <QMouseEvent>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

StepTile::StepTile(const QString& text, QWidget* parent)
    : QWidget(parent)
    , m_text(text)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setCursor(Qt::PointingHandCursor);
    setState(StepState::Then, false);
}

void StepTile::setState(StepState state, bool current)
{
    m_state = state;
    m_current = current;
    setAccessibleName(m_text + QStringLiteral(", ") + stateText());
    update();
}

QString StepTile::stateText() const
{
    switch (m_state) {
    case StepState::Now:
        return nowText();
    case StepState::Passed:
        return tr("passed");
    case StepState::Failed:
        return tr("failed");
    case StepState::Then:
        break;
    }
    return tr("to do");
}

QString StepTile::nowText() { return tr("now: Enter passed, − failed"); }

int StepTile::stateInset() const { return themeOf(*this).px(16); }

QSize StepTile::sizeHint() const
{
    const int width = themeOf(*this).px(230);
    return {width, heightForWidth(width)};
}

QSize StepTile::minimumSizeHint() const
{
    const Theme& theme = themeOf(*this);
    const InkText text(m_text, theme.font(TextRole::Body), layoutDirection());
    return {text.widestWord() + 2 * theme.space(Space::Near), 0};
}

int StepTile::heightForWidth(int width) const
{
    const Theme& theme = themeOf(*this);
    const int room = width - 2 * theme.space(Space::Near);
    // As high as the longest words make it: a tile does not jump when its turn comes.
    return InkText(m_text, theme.font(TextRole::Body), layoutDirection()).height(room)
        + InkText(nowText(), theme.font(TextRole::Small), layoutDirection()).height(room - stateInset())
        + 2 * theme.space(Space::Close) + 2;
}

void StepTile::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    const Roles& roles = theme.roles;
    QPainter painter(this);
    const bool passed = m_state == StepState::Passed;
    paintPlate(painter, rect(), passed ? roles.accentWash : roles.sheet,
        m_state == StepState::Failed ? roles.warning : roles.edge, 4);
    if (m_current)
        paintFocusRing(painter, rect(), theme, 4);
    const int side = theme.space(Space::Near);
    const QRect box = rect().adjusted(side, theme.space(Space::Close), -side, -theme.space(Space::Close));
    painter.setPen(roles.ink);
    const int used = InkText(m_text, theme.font(TextRole::Body), layoutDirection()).draw(painter, box);
    const QRect below(box.left(), box.top() + used + 2, box.width(), box.height() - used - 2);
    const int line = QFontMetrics(theme.font(TextRole::Small)).height();
    const Mark mark = passed           ? Mark::Met
        : m_state == StepState::Failed ? Mark::GapCritical
                                       : Mark::NotChecked;
    const QRect markBox(below.left(), below.top(), theme.px(11), line);
    paintMark(painter, QStyle::visualRect(layoutDirection(), below, markBox), mark, roles);
    painter.setPen(m_state == StepState::Failed ? roles.warning : roles.inkSoft);
    const QRect words(below.left() + stateInset(), below.top(), below.width() - stateInset(), below.height());
    InkText(stateText(), theme.font(TextRole::Small), layoutDirection())
        .draw(painter, QStyle::visualRect(layoutDirection(), below, words));
}

void StepTile::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton && rect().contains(event->position().toPoint()))
        Q_EMIT clicked();
}

}
