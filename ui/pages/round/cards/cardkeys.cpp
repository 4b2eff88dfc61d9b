// SPDX-License-Identifier: MIT
// The keys of a card that all kinds share.
#include "ui/pages/round/cards/itemcard.h"
#include "ui/pages/round/cards/reasonrow.h"
#include "ui/text/reasontext.h"
#include "ui/widgets/choicebutton.h"
#include "ui/widgets/wraplabel.h"

#include <QKeyEvent>
#include <QLineEdit>

namespace cradlepost {

namespace {

bool isMinus(const QString& text) { return text == QLatin1String("-") || text == QStringLiteral("−"); }

GapReason firstReason(const Item& item)
{
    return item.kind() == ItemKind::Since ? GapReason::NotWorking : GapReason::NotKnown;
}

}

bool ItemCard::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto& key = *static_cast<QKeyEvent*>(event);
    if ((key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) != Qt::NoModifier)
        return false;
    return takeKey(key);
}

bool ItemCard::takeKey(const QKeyEvent& event)
{
    if (asksReason() && takeReasonKey(event))
        return true;
    if (takeMoveKey(event.key()) || m_editor->takeKey(event))
        return true;
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!event.isAutoRepeat())
            enter();
        return true;
    case Qt::Key_Escape:
        return bringBack();
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return takeDelete(event.key());
    default:
        return takeTextKey(event);
    }
}

bool ItemCard::takeMoveKey(int key)
{
    switch (key) {
    case Qt::Key_Up:
    case Qt::Key_Backtab:
        leave(CardMove::Previous);
        return true;
    case Qt::Key_Down:
    case Qt::Key_Tab:
        leave(CardMove::Next);
        return true;
    case Qt::Key_PageUp:
        leave(CardMove::PreviousSection);
        return true;
    case Qt::Key_PageDown:
        leave(CardMove::NextSection);
        return true;
    default:
        return false;
    }
}

bool ItemCard::takeTextKey(const QKeyEvent& event)
{
    const QString text = event.text();
    if (m_editor->wants(text))
        return false;
    if (isMinus(text)) {
        if (!event.isAutoRepeat())
            minus();
        return true;
    }
    if (text != QLatin1String("/"))
        return false;
    if (m_item.mayNotApply)
        doesNotApply();
    else
        say(tr("This always applies here: it is met or a gap."), true);
    return true;
}

bool ItemCard::takeReasonKey(const QKeyEvent& event)
{
    const int forward = layoutDirection() == Qt::RightToLeft ? -1 : 1;
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!event.isAutoRepeat())
            acceptReason(m_reasons->chosen(), true);
        return true;
    case Qt::Key_Escape:
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return bringBack();
    case Qt::Key_Left:
        acceptReason(m_reasons->beside(-forward), false);
        return true;
    case Qt::Key_Right:
        acceptReason(m_reasons->beside(forward), false);
        return true;
    default:
        break;
    }
    if (const auto reason = ReasonRow::onKey(event.text())) {
        acceptReason(*reason, false);
        return true;
    }
    return !event.text().isEmpty()
        && event.text().at(0).isPrint(); // nothing is typed while a reason is asked
}

bool ItemCard::takeDelete(int key)
{
    if (const auto* field = qobject_cast<QLineEdit*>(m_editor->field())) {
        const bool atEnd = field->hasSelectedText() || field->cursorPosition() == field->text().size();
        const bool edits = key == Qt::Key_Backspace ? !field->text().isEmpty() : !atEnd;
        if (edits)
            return false;
    }
    if (isChecked(m_answer)) {
        Q_EMIT given(NotChecked{}, false);
        say(tr("Taken back. Esc brings it again."), false);
    } else {
        m_editor->setAnswer(m_answer, {});
        say({}, false);
    }
    return true;
}

bool ItemCard::bringBack()
{
    const EditState state = m_editor->state();
    if (asksReason()) {
        const bool given = !m_reasonPending && std::holds_alternative<GapFound>(m_answer);
        closeReasons();
        say({}, false);
        if (given)
            Q_EMIT this->given(m_before.value_or(NotChecked{}), false);
        return true;
    }
    if (state == EditState::Changed || state == EditState::Cleared) {
        m_editor->setAnswer(m_answer, {});
        say({}, false);
        return true;
    }
    if (!m_before)
        return false;
    const Answer before = *m_before;
    Q_EMIT given(before, false);
    return true;
}

void ItemCard::enter()
{
    switch (m_editor->state()) {
    case EditState::Empty:
        if (isChecked(m_answer))
            Q_EMIT moveWanted(CardMove::NextOpen);
        else if (const auto answer = m_editor->answerToEnter())
            Q_EMIT given(*answer, true);
        else
            say(m_editor->refusal(), true);
        return;
    case EditState::AsKept:
        Q_EMIT moveWanted(CardMove::NextOpen);
        return;
    case EditState::Cleared:
        say(tr("%1 is kept. Esc shows it again, Delete takes it back.").arg(kept()), false);
        return;
    case EditState::Changed:
        break;
    }
    const auto answer = m_editor->read();
    if (answer)
        Q_EMIT given(*answer, true);
    else
        refuse(answer.error());
}

void ItemCard::leave(CardMove move)
{
    if (asksReason() && m_reasonPending) {
        say(tr("Enter makes it a gap instead of %1, Esc goes back.").arg(kept()), true);
        return;
    }
    const EditState state = m_editor->state();
    if (state == EditState::Cleared)
        m_editor->setAnswer(m_answer, {});
    if (state == EditState::Changed) {
        if (isChecked(m_answer)) { // never replaced by a key that only moves
            say(tr("Enter keeps what is typed instead of %1, Esc goes back.").arg(kept()), true);
            return;
        }
        const auto answer = m_editor->read();
        if (!answer)
            return refuse(answer.error());
        Q_EMIT given(*answer, false);
    }
    Q_EMIT moveWanted(move);
}

bool ItemCard::hasReading() const
{
    const bool plain = std::holds_alternative<NotChecked>(m_answer)
        || std::holds_alternative<DoesNotApply>(m_answer) || std::holds_alternative<Confirmed>(m_answer)
        || std::holds_alternative<GapFound>(m_answer);
    return !plain || m_editor->state() == EditState::Changed;
}

QString ItemCard::kept() const
{
    const QString reading = ReasonText(m_scene.language).answer(m_item, m_answer, m_scene.times);
    return reading.isEmpty() ? tr("the answer") : reading;
}

void ItemCard::minus()
{
    // In a function test '-' fails the step; only after its end it is a gap of the whole.
    if (QKeyEvent key(QEvent::KeyPress, Qt::Key_Minus, Qt::NoModifier, QStringLiteral("-"));
        m_editor->takeKey(key))
        return;
    openReasons();
}

void ItemCard::doesNotApply()
{
    if (hasReading())
        say(tr("%1 is kept. Take it back with Delete first.").arg(kept()), true);
    else
        Q_EMIT given(DoesNotApply{}, true);
}

void ItemCard::openReasons()
{
    const auto* gap = std::get_if<GapFound>(&m_answer);
    m_reasonPending = hasReading();
    const GapReason reason = gap != nullptr ? gap->reason : firstReason(m_item);
    if (gap == nullptr && !m_reasonPending) {
        m_before.reset();
        Q_EMIT given(GapFound{reason}, false);
    }
    m_reasons->choose(reason);
    m_reasons->show();
    say(m_reasonPending ? tr("A gap instead of %1? Choose why, Enter accepts, Esc goes back.").arg(kept())
                        : tr("Why? Choose, then Enter. Esc goes back."),
        false);
}

void ItemCard::closeReasons()
{
    if (!asksReason())
        return;
    m_reasons->hide();
    m_reasonPending = false;
    say({}, false);
}

void ItemCard::acceptReason(GapReason reason, bool goOn)
{
    m_reasons->choose(reason);
    if (m_reasonPending && !goOn)
        return;
    const bool same = m_answer == Answer(GapFound{reason});
    const QString message = m_message->text();
    if (goOn)
        closeReasons();
    if (!same)
        Q_EMIT given(GapFound{reason}, goOn);
    else if (goOn)
        Q_EMIT moveWanted(CardMove::NextOpen);
    if (!goOn)
        say(message, false);
}

}
