// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/answereditor.h"
#include "ui/pages/round/cards/valuefield.h"

namespace cradlepost {

class WrapLabel;

/** One field and, behind it, what keeps the reading company: unit, limits, what became of it. */
class FieldEditor : public AnswerEditor
{
    Q_OBJECT
public:
    [[nodiscard]] EditState state() const override;
    void setAnswer(const Answer& answer, const Judgement& judgement) override;
    [[nodiscard]] QWidget* field() override;

protected:
    void begin() override;
    FieldEditor(const Item& item, const CardScene& scene, ValueField* field, QWidget* parent);

    /** The kept answer as one would type it; empty for an answer of another kind. */
    [[nodiscard]] virtual QString typedForm(const Answer& answer) const = 0;
    [[nodiscard]] virtual QString company(const Answer& answer, const Judgement& judgement) const = 0;
    void setCompany(const QString& text);
    [[nodiscard]] const ValueField& value() const { return *m_field; }
    ValueField& value() { return *m_field; }

private:
    ValueField* m_field;
    WrapLabel* m_company;
    QString m_kept;
};

}
