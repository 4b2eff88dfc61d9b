// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/answereditor.h"

class QComboBox;

namespace cradlepost {

class ValueField;
class WrapLabel;

/** Gauge, size and planned flow of a gas cylinder; the minutes that are left follow as they are typed. */
class CylinderEditor : public AnswerEditor
{
    Q_OBJECT
public:
    CylinderEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

    [[nodiscard]] EditState state() const override;
    [[nodiscard]] Result<Answer> read() const override;
    [[nodiscard]] QString refusal() const override;
    void setAnswer(const Answer& answer, const Judgement& judgement) override;
    bool takeKey(const QKeyEvent& event) override;
    [[nodiscard]] QWidget* field() override;
    [[nodiscard]] bool spreads() const override { return true; }
    [[nodiscard]] QString keys() const override;

protected:
    void begin() override;

private:
    [[nodiscard]] const CylinderRule& rule() const { return std::get<CylinderRule>(item().rule); }
    [[nodiscard]] const CylinderSize& size() const;
    QWidget* labelled(const QString& text, QWidget* field, WrapLabel* behind = nullptr);
    void buildSizes();
    void change();
    void goToFlow(bool flow);

    ValueField* m_gauge;
    WrapLabel* m_unit;
    QComboBox* m_size;
    ValueField* m_flow;
    WrapLabel* m_minutes;
    std::optional<CylinderRead> m_kept;
};

}
