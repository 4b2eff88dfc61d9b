// SPDX-License-Identifier: MIT
#include "ui/widgets/verdictbanner.h"
#include "ui/theme/theme.h"
#include "ui/widgets/outcomemark.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

namespace {
Mark markOf(VerdictState state)
{
    switch (state) {
    case VerdictState::NotReady:
        return Mark::GapCritical;
    case VerdictState::ReadyWithGaps:
        return Mark::Gap;
    case VerdictState::Ready:
        return Mark::Met;
    case VerdictState::NoRound:
        return Mark::NotChecked;
    }
    return Mark::NotChecked;
}

QColor wordColour(VerdictState state, const Roles& roles)
{
    switch (state) {
    case VerdictState::NotReady:
        return roles.warning;
    case VerdictState::ReadyWithGaps:
        return roles.ink;
    case VerdictState::Ready:
        return roles.accent;
    case VerdictState::NoRound:
        return roles.inkSoft;
    }
    return roles.ink;
}
}

VerdictBanner::VerdictBanner(QWidget* parent)
    : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    nameIt();
}

QString VerdictBanner::word(VerdictState state)
{
    switch (state) {
    case VerdictState::NotReady:
        return tr("Not ready");
    case VerdictState::ReadyWithGaps:
        return tr("Ready with gaps");
    case VerdictState::Ready:
        return tr("Ready");
    case VerdictState::NoRound:
        return tr("No round yet");
    }
    return {};
}

void VerdictBanner::setVerdict(VerdictState state, const QString& sentence)
{
    if (state == m_state && sentence == m_sentence)
        return;
    m_state = state;
    m_sentence = sentence;
    m_ink.clear();
    nameIt();
    updateGeometry();
    update();
}

const InkText& VerdictBanner::wordText() const
{
    return m_ink.text(
        word(m_state), themeOf(*this).font(TextRole::Verdict, TextWeight::SemiBold), layoutDirection());
}

const InkText& VerdictBanner::sentenceText() const
{
    return m_ink.text(m_sentence, themeOf(*this).font(TextRole::Lead), layoutDirection());
}

int VerdictBanner::markSide() const
{
    const QFontMetrics word(themeOf(*this).font(TextRole::Verdict, TextWeight::SemiBold));
    return word.capHeight() * 5 / 4;
}

int VerdictBanner::wordLeft() const { return markSide() + themeOf(*this).space(Space::Wide); }

QSize VerdictBanner::sizeHint() const
{
    const int width = std::max(wordLeft() + wordText().naturalWidth(),
        std::min(sentenceText().naturalWidth(), themeOf(*this).px(620)));
    return {width, heightForWidth(width)};
}

QSize VerdictBanner::minimumSizeHint() const
{
    const int width = std::max(wordLeft() + wordText().widestWord(), sentenceText().widestWord());
    return {width, wordText().height(1 << 20)};
}

int VerdictBanner::heightForWidth(int width) const
{
    const int word = wordText().height(width - wordLeft());
    const int sentence = sentenceText().height(width);
    return word + (sentence > 0 ? themeOf(*this).space(Space::Tight) + sentence : 0);
}

void VerdictBanner::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    QPainter painter(this);
    const QRect wordBox(wordLeft(), 0, width() - wordLeft(), height());
    const InkText& word = wordText();
    painter.setPen(wordColour(m_state, theme.roles));
    const int wordHeight = word.draw(painter, QStyle::visualRect(layoutDirection(), rect(), wordBox));
    const QFontMetrics metrics(theme.font(TextRole::Verdict, TextWeight::SemiBold));
    const int middle = word.baseline() - metrics.capHeight() / 2;
    const QRect markBox(theme.space(Space::Tight) / 2, middle - markSide() / 2, markSide(), markSide());
    paintStateMark(painter, QStyle::visualRect(layoutDirection(), rect(), markBox));
    painter.setPen(theme.roles.ink);
    sentenceText().draw(painter, rect().adjusted(0, wordHeight + theme.space(Space::Tight), 0, 0));
}

/// A disc fills only part of its box; beside this word all marks are to weigh the same.
void VerdictBanner::paintStateMark(QPainter& painter, const QRect& box) const
{
    const Mark mark = markOf(m_state);
    const double grow = mark == Mark::Met ? box.width() * 0.22
        : mark == Mark::NotChecked        ? box.width() * 0.15
                                          : 0.0;
    paintMark(painter, QRectF(box).adjusted(-grow, -grow, grow, grow), mark, themeOf(*this).roles);
}

void VerdictBanner::changeEvent(QEvent* event)
{
    m_ink.clear();
    if (event->type() == QEvent::LanguageChange) {
        nameIt();
        updateGeometry();
        update();
    }
    QWidget::changeEvent(event);
}

void VerdictBanner::nameIt()
{
    setAccessibleName(word(m_state));
    setAccessibleDescription(plainText(m_sentence));
}

}
