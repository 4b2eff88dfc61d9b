// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/fieldeditor.h"

namespace cradlepost {

/** How many there are; where they expire, by lot: "6 03/2027, 4 12/2026". */
class CountEditor : public FieldEditor
{
    Q_OBJECT
public:
    CountEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

    [[nodiscard]] Result<Answer> read() const override;
    [[nodiscard]] QString refusal() const override;
    /** Within a date '-' and '/' are part of it. */
    [[nodiscard]] bool wants(const QString& text) const override;
    [[nodiscard]] QString keys() const override;

protected:
    [[nodiscard]] QString typedForm(const Answer& answer) const override;
    [[nodiscard]] QString company(const Answer& answer, const Judgement& judgement) const override;

private:
    [[nodiscard]] const CountRule& rule() const { return std::get<CountRule>(item().rule); }
    [[nodiscard]] QString expired(const Counted& answer) const;
};

}
