// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/fieldeditor.h"

namespace cradlepost {

/** The clock time since which something runs; Enter on an empty field means just now. */
class SinceEditor : public FieldEditor
{
    Q_OBJECT
public:
    SinceEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

    [[nodiscard]] Result<Answer> read() const override;
    [[nodiscard]] QString refusal() const override;
    void setAnswer(const Answer& answer, const Judgement& judgement) override;
    void tick(const Judgement& judgement) override;
    [[nodiscard]] std::optional<Answer> answerToEnter() const override;
    [[nodiscard]] QString keys() const override;

protected:
    [[nodiscard]] QString typedForm(const Answer& answer) const override;
    [[nodiscard]] QString company(const Answer& answer, const Judgement& judgement) const override;

private:
    Answer m_answer;
};

}
