// SPDX-License-Identifier: MIT
#include "ui/pages/round/finishbar.h"

#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>

namespace cradlepost {

FinishBar::FinishBar(const QString& finishText, QWidget* parent)
    : QWidget(parent)
    , m_finishText(finishText)
    , m_words(new WrapLabel({}, TextRole::Body))
    , m_finish(new QPushButton)
    , m_goOn(new QPushButton(tr("Go on")))
{
    setObjectName(QStringLiteral("finishBar"));
    m_finish->setObjectName(QStringLiteral("finishRoundButton"));
    m_finish->setProperty("primary", true);
    m_finish->setAccessibleDescription(tr("Ctrl+Enter"));
    m_finish->setToolTip(tr("Ctrl+Enter"));
    m_goOn->setObjectName(QStringLiteral("goOnButton"));
    m_words->setObjectName(QStringLiteral("finishWords"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    row->addWidget(m_words, 1, Qt::AlignVCenter);
    row->addWidget(m_goOn, 0, Qt::AlignVCenter);
    row->addWidget(m_finish, 0, Qt::AlignVCenter);
    column->addWidget(row);
    for (QPushButton* button : {m_finish, m_goOn})
        button->installEventFilter(this);
    connect(m_finish, &QPushButton::clicked, this, &FinishBar::finish);
    connect(m_goOn, &QPushButton::clicked, this, [this] {
        ask(false);
        Q_EMIT goOnWanted();
    });
    showState();
}

void FinishBar::setOpen(int items)
{
    if (items != m_open)
        m_asking = false; // what was asked about has changed
    m_open = items;
    showState();
}

void FinishBar::setFault(const QString& text)
{
    m_fault = text;
    showState();
}

void FinishBar::ask(bool asking)
{
    m_asking = asking;
    showState();
}

void FinishBar::showState()
{
    m_goOn->setVisible(m_asking);
    m_finish->setText(m_asking ? tr("Finish as it stands") : m_finishText);
    m_words->setTone(!m_fault.isEmpty() || m_asking ? Tone::Warning : Tone::Soft);
    if (!m_fault.isEmpty())
        m_words->setText(m_fault);
    else if (m_open > 0)
        m_words->setText(tr("%n item(s) not seen yet: they count as not checked.", nullptr, m_open));
    else
        m_words->setText(tr("All is answered."));
}

void FinishBar::finish()
{
    m_fault.clear();
    if (m_open > 0 && !m_asking) {
        ask(true);
        m_goOn->setFocus(Qt::OtherFocusReason);
        return;
    }
    Q_EMIT finishWanted();
}

void FinishBar::takeFocus() { m_finish->setFocus(Qt::TabFocusReason); }

bool FinishBar::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto& key = *static_cast<QKeyEvent*>(event);
    auto* button = static_cast<QPushButton*>(watched);
    switch (key.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!key.isAutoRepeat() && key.modifiers().testFlag(Qt::ControlModifier) == false)
            button->click();
        return !key.modifiers().testFlag(Qt::ControlModifier);
    case Qt::Key_Left:
    case Qt::Key_Right:
        if (m_asking)
            (button == m_finish ? m_goOn : m_finish)->setFocus(Qt::TabFocusReason);
        return true;
    case Qt::Key_Up:
    case Qt::Key_Escape:
        ask(false);
        Q_EMIT goOnWanted();
        return true;
    default:
        return QWidget::eventFilter(watched, event);
    }
}

}
