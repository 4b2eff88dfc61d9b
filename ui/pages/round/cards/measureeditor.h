// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/fieldeditor.h"

namespace cradlepost {

/** A number read from an instrument. */
class MeasureEditor : public FieldEditor
{
    Q_OBJECT
public:
    MeasureEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

    [[nodiscard]] Result<Answer> read() const override;
    [[nodiscard]] QString refusal() const override;
    bool takeKey(const QKeyEvent& event) override;
    /** Where readings below zero are possible, a '-' begins one; alone, with Enter, it is a gap. */
    [[nodiscard]] bool wants(const QString& text) const override;
    [[nodiscard]] QString keys() const override;

protected:
    [[nodiscard]] QString typedForm(const Answer& answer) const override;
    [[nodiscard]] QString company(const Answer& answer, const Judgement& judgement) const override;

private:
    [[nodiscard]] const MeasureRule& rule() const { return std::get<MeasureRule>(item().rule); }
    [[nodiscard]] bool goesBelowZero() const { return rule().plausibleLow < Decimal{}; }
};

}
