// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/answereditor.h"

namespace cradlepost {

class StepTile;
class TileFlow;
class ValueField;
class WrapLabel;

/** A function test, step by step; each step is kept at once. The first failure ends it. */
class StepsEditor : public AnswerEditor
{
    Q_OBJECT
public:
    StepsEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

    [[nodiscard]] EditState state() const override;
    [[nodiscard]] Result<Answer> read() const override;
    [[nodiscard]] QString refusal() const override;
    void setAnswer(const Answer& answer, const Judgement& judgement) override;
    bool takeKey(const QKeyEvent& event) override;
    [[nodiscard]] bool spreads() const override { return true; }
    [[nodiscard]] QWidget* beside() override { return m_deviceRow; }
    [[nodiscard]] QString keys() const override;
    [[nodiscard]] QString minusLabel() const override;
    /** The step that the keys mark; none when the test has ended. */
    [[nodiscard]] std::optional<std::size_t> current() const { return m_current; }

protected:
    void begin() override { showTiles(); }
    void end() override { showTiles(); }

private:
    [[nodiscard]] const StepsRule& rule() const { return std::get<StepsRule>(item().rule); }
    [[nodiscard]] StepsDone done() const;
    void buildTiles();
    QWidget* makeDeviceRow();
    void pass();
    void fail();
    void goBack();
    void move(int by);
    void settle();
    void give(bool goOn);
    void goOn();
    bool takeText(const QKeyEvent& event);
    void showTiles();

    std::string m_marks;
    std::optional<StepsDone> m_kept;
    std::optional<std::size_t> m_current;
    bool m_giving = false;
    bool m_typingDevice = false;
    std::vector<StepTile*> m_tiles;
    TileFlow* m_flow;
    ValueField* m_device;
    QWidget* m_deviceRow;
    WrapLabel* m_advice;
};

}
