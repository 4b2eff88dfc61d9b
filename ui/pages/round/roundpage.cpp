// SPDX-License-Identifier: MIT
#include "ui/pages/round/roundpage.h"

#include "ui/pages/round/cards/itemcard.h"
#include "ui/pages/round/putrightpane.h"
#include "ui/pages/round/resultpane.h"
#include "ui/pages/round/startpane.h"
#include "ui/pages/round/walkpane.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"

#include <QHideEvent>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
QString faultText(const Error& error)
{
    const QString advice = ErrorText::advice(error);
    return advice.isEmpty() ? ErrorText::sentence(error)
                            : ErrorText::sentence(error) + QLatin1Char(' ') + advice;
}
}

RoundPage::RoundPage(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_unit(ward.unit())
    , m_stack(new QStackedWidget)
    , m_start(new StartPane(ward))
{
    const Theme& theme = themeOf(*this);
    setFocusPolicy(Qt::StrongFocus);
    auto* column = new QVBoxLayout(this);
    const int wide = theme.space(Space::Wide);
    column->setContentsMargins(wide, theme.space(Space::Apart), wide, theme.space(Space::Apart));
    column->addWidget(m_stack);
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidgetResizable(true);
    scroll->setWidget(m_start);
    m_startHolder = scroll;
    m_stack->addWidget(scroll);
    connect(m_start, &StartPane::beginWanted, this, &RoundPage::begin);
    connect(&m_ward, &Ward::changed, this, &RoundPage::followWard);
}

RoundPage::~RoundPage() = default;

void RoundPage::open(QWidget* pane)
{
    if (m_stack->indexOf(pane) < 0)
        m_stack->addWidget(pane);
    m_stack->setCurrentWidget(pane);
}

void RoundPage::drop()
{
    // Every answer is on disk already: what goes is only what is shown.
    delete m_putRight;
    m_putRight = nullptr;
    delete m_walk;
    m_walk = nullptr;
    delete m_hand;
    m_hand = nullptr;
    delete m_result;
    m_result = nullptr;
}

void RoundPage::begin(RoundKind kind)
{
    if (m_hand != nullptr && m_hand->kind() == kind && m_walk != nullptr && !m_hand->recorded()) {
        open(m_walk);
        return m_walk->resume();
    }
    take(m_ward.takeUp(kind));
}

void RoundPage::beginOne(const std::string& item) { take(m_ward.takeUpOne(item)); }

void RoundPage::take(Result<Walk> walk)
{
    if (!walk) {
        toStart();
        if (m_ward.actor().empty())
            m_start->setFault(tr("First say who walks it: choose or type initials."));
        else
            m_start->setFault(faultText(walk.error()));
        return;
    }
    drop();
    m_hand = new WalkInHand(m_ward, std::move(*walk), this);
    m_walk = new WalkPane(m_ward, *m_hand);
    connect(m_hand, &WalkInHand::saved, this, &RoundPage::saved);
    // Later: the pane that asks is on the way out.
    connect(m_walk, &WalkPane::finishWanted, this, &RoundPage::finish, Qt::QueuedConnection);
    connect(m_walk, &WalkPane::leaveWanted, this, &RoundPage::toStart, Qt::QueuedConnection);
    open(m_walk);
    m_walk->start();
}

void RoundPage::putRight(const SavedRound& round)
{
    auto walk = m_ward.takeUpAgain(round);
    if (!walk) {
        toStart();
        return m_start->setFault(faultText(walk.error()));
    }
    drop();
    m_hand = new WalkInHand(m_ward, std::move(*walk), round, this);
    m_walk = new WalkPane(m_ward, *m_hand);
    connect(m_walk, &WalkPane::finishWanted, this, &RoundPage::askForReason, Qt::QueuedConnection);
    connect(m_walk, &WalkPane::leaveWanted, this, &RoundPage::leave, Qt::QueuedConnection);
    open(m_walk);
    m_walk->resume();
}

/** What was changed is not lost by leaving: the changes are shown, and left only when that is said. */
void RoundPage::leave()
{
    if (m_hand != nullptr && m_hand->hasChanged())
        askForReason();
    else
        toStart();
}

void RoundPage::askForReason()
{
    if (m_hand == nullptr)
        return;
    delete m_putRight;
    m_putRight = new PutRightPane(m_ward, *m_hand);
    connect(m_putRight, &PutRightPane::backWanted, this, [this] {
        open(m_walk);
        if (const auto changed = m_hand->firstChanged())
            m_walk->showItem(*changed)->takeFocus();
        else
            m_walk->resume();
    });
    connect(m_putRight, &PutRightPane::leaveWanted, this, &RoundPage::toStart, Qt::QueuedConnection);
    connect(
        m_putRight, &PutRightPane::recorded, this,
        [this] {
            Q_EMIT saved(m_ward.now());
            toStart();
            m_start->setFault({});
            Q_EMIT finished(RoundKind::Shift);
        },
        Qt::QueuedConnection);
    open(m_putRight);
    m_putRight->takeFocus();
}

void RoundPage::toStart()
{
    drop();
    m_ward.refresh();
    open(m_startHolder);
    m_start->refresh();
    m_start->takeFocus();
}

void RoundPage::finish()
{
    if (m_hand == nullptr)
        return;
    const Walk walk = m_hand->walk();
    const Instant at = m_ward.now();
    const auto id = m_ward.finish(walk);
    if (!id)
        return m_walk->setFinishFault(faultText(id.error()));
    const RoundKind kind = walk.draft().kind;
    drop();
    m_result = new ResultPane(m_ward, walk, *id, at);
    connect(m_result, &ResultPane::seeShiftWanted, this, [this, kind] { Q_EMIT finished(kind); });
    connect(m_result, &ResultPane::anotherWanted, this, &RoundPage::toStart, Qt::QueuedConnection);
    open(m_result);
    m_result->takeFocus();
    Q_EMIT saved(at);
    Q_EMIT recorded(kind);
}

void RoundPage::followWard()
{
    if (m_ward.unit() == m_unit)
        return;
    m_unit = m_ward.unit();
    drop();
    open(m_startHolder);
}

void RoundPage::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    if (m_stack->currentWidget() == m_walk && m_walk != nullptr)
        m_walk->resume();
    else if (m_putRight != nullptr && m_stack->currentWidget() == m_putRight)
        m_putRight->takeFocus();
    else if (m_result != nullptr && m_stack->currentWidget() == m_result)
        m_result->takeFocus();
    else
        m_start->takeFocus();
}

void RoundPage::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    if (m_result != nullptr && !event->spontaneous()) {
        open(m_startHolder); // seen is seen: the next visit begins anew
        m_result->deleteLater();
        m_result = nullptr;
    }
}

}
