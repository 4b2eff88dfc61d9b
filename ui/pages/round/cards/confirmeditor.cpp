// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/confirmeditor.h"

#include "ui/widgets/choicebutton.h"

#include <QHBoxLayout>
#include <QKeyEvent>

namespace cradlepost {

ConfirmEditor::ConfirmEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : AnswerEditor(item, scene, parent)
    , m_met(new ChoiceButton(tr("Met"), tr("Enter", "the key")))
{
    m_met->setObjectName(QStringLiteral("metButton"));
    m_met->setFocusPolicy(Qt::NoFocus);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_met);
    connect(m_met, &ChoiceButton::clicked, this, [this] {
        m_met->setChecked(true); // the answer decides, not the click
        Q_EMIT given(Confirmed{}, true);
    });
}

void ConfirmEditor::setAnswer(const Answer& answer, const Judgement& /*judgement*/)
{
    m_met->setChecked(std::holds_alternative<Confirmed>(answer));
}

bool ConfirmEditor::takeKey(const QKeyEvent& event)
{
    if (event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter)
        return false;
    // A key that is leant on answers one item, not ten.
    if (!event.isAutoRepeat())
        Q_EMIT given(Confirmed{}, true);
    return true;
}

}
