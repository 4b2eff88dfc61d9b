// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/answereditor.h"

namespace cradlepost {

class ChoiceButton;

/** Yes or no: Enter is yes, the card's '-' is no. */
class ConfirmEditor : public AnswerEditor
{
    Q_OBJECT
public:
    ConfirmEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

    [[nodiscard]] EditState state() const override { return EditState::Empty; }
    [[nodiscard]] Result<Answer> read() const override { return Answer(Confirmed{}); }
    [[nodiscard]] QString refusal() const override { return {}; }
    void setAnswer(const Answer& answer, const Judgement& judgement) override;
    bool takeKey(const QKeyEvent& event) override;

private:
    ChoiceButton* m_met;
};

}
