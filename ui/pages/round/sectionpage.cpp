// SPDX-License-Identifier: MIT
#include "ui/pages/round/sectionpage.h"

#include "ui/text/wardtext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QApplication>
#include <QPointer>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

namespace cradlepost {

SectionPage::SectionPage(
    WalkInHand& hand, const CardScene& scene, std::vector<std::size_t> positions, QWidget* parent)
    : QScrollArea(parent)
    , m_hand(hand)
    , m_positions(std::move(positions))
{
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    const Theme& theme = themeOf(*this);
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Close));
    setWidget(body);
    for (const std::size_t position : m_positions)
        addCard(position, scene);
    auto* caution = new WrapLabel(WardText::neverDelayCare(), TextRole::Small);
    caution->setTone(Tone::Hint);
    column->addSpacing(theme.space(Space::Tight));
    column->addWidget(caution);
    column->addStretch(1);
}

void SectionPage::addCard(std::size_t position, const CardScene& scene)
{
    auto* card = new ItemCard(m_hand.checklist().item(position), scene);
    card->setAnswer(m_hand.walk().answer(position), m_hand.judged(position));
    m_cards.push_back(card);
    widget()->layout()->addWidget(card);
    connect(card, &ItemCard::given, this,
        [this, position](const Answer& answer, bool goOn) { take(position, answer, goOn); });
    connect(card, &ItemCard::moveWanted, this,
        [this, position](CardMove move) { Q_EMIT moveWanted(position, move); });
    card->installEventFilter(this);
    connect(card, &ItemCard::activated, this, [this, card] { bringIntoView(card); });
}

bool SectionPage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::Move) {
        // By its help, a message or the reasons: what it grew by is what one wants to see. The card before it, which
        // has no help any more, moves it.
        if (auto* card = qobject_cast<ItemCard*>(watched); card != nullptr && card->isActive())
            bringIntoView(card);
    }
    return QScrollArea::eventFilter(watched, event);
}

void SectionPage::bringIntoView(ItemCard* card)
{
    // After the layout, and with the next card in sight one knows what comes.
    QTimer::singleShot(0, this, [this, card = QPointer(card)] {
        if (!card || !card->isActive())
            return;
        if (card->height() > viewport()->height())
            showFromTop(*card);
        else
            ensureWidgetVisible(card, 0,
                std::min(card->height() + themeOf(*this).space(Space::Close), viewport()->height() / 4));
    });
}

/// Of a card that is higher than the page its name, as far as what has the keyboard stays in sight.
void SectionPage::showFromTop(const ItemCard& card)
{
    const int gap = themeOf(*this).space(Space::Tight);
    int top = card.mapTo(widget(), QPoint()).y() - gap;
    if (const QWidget* focus = QApplication::focusWidget(); focus != nullptr && card.isAncestorOf(focus)) {
        const int focusTop = focus->mapTo(widget(), QPoint()).y();
        top = std::max(top, focusTop + focus->height() + gap - viewport()->height());
        top = std::min(top, focusTop - gap);
    }
    verticalScrollBar()->setValue(top);
}

void SectionPage::take(std::size_t position, const Answer& answer, bool goOn)
{
    ItemCard* one = card(position);
    const auto given = m_hand.give(position, answer);
    if (!given)
        return one->refuse(given.error());
    one->setAnswer(answer, m_hand.judged(position));
    Q_EMIT answered(position, goOn);
}

ItemCard* SectionPage::card(std::size_t position) const
{
    const auto at = std::find(m_positions.begin(), m_positions.end(), position);
    return at == m_positions.end() ? nullptr : m_cards[static_cast<std::size_t>(at - m_positions.begin())];
}

void SectionPage::tick()
{
    for (std::size_t i = 0; i < m_cards.size(); ++i)
        m_cards[i]->tick(m_hand.judged(m_positions[i]));
}

}
