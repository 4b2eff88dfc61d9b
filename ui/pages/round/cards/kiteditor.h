// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/answereditor.h"

namespace cradlepost {

class TileFlow;
class ValueField;
class WrapLabel;

/** Pieces of each part of a kit; how many whole kits they make is shown as they are typed. */
class KitEditor : public AnswerEditor
{
    Q_OBJECT
public:
    KitEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

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
    [[nodiscard]] const KitRule& rule() const { return std::get<KitRule>(item().rule); }
    void addPart(const KitPart& part, TileFlow& flow);
    [[nodiscard]] std::size_t at() const;
    [[nodiscard]] std::optional<std::size_t> firstUnread() const;
    bool enter();
    bool sideways(bool forward);
    void go(std::size_t part);
    void showWhole();

    std::vector<ValueField*> m_parts;
    std::optional<KitCounted> m_kept;
    WrapLabel* m_whole;
};

}
