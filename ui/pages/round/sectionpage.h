// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/itemcard.h"
#include "ui/pages/round/walkinhand.h"

#include <QScrollArea>

namespace cradlepost {

/** The cards of one section, one below the other. */
class SectionPage : public QScrollArea
{
    Q_OBJECT
public:
    /** `positions` are those that are asked. */
    SectionPage(WalkInHand& hand, const CardScene& scene, std::vector<std::size_t> positions,
        QWidget* parent = nullptr);

    [[nodiscard]] const std::vector<std::size_t>& positions() const { return m_positions; }
    [[nodiscard]] ItemCard* card(std::size_t position) const;
    void tick();

Q_SIGNALS:
    void answered(std::size_t position, bool goOn);
    void moveWanted(std::size_t position, cradlepost::CardMove move);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void addCard(std::size_t position, const CardScene& scene);
    void take(std::size_t position, const Answer& answer, bool goOn);
    void bringIntoView(ItemCard* card);
    void showFromTop(const ItemCard& card);

    WalkInHand& m_hand;
    std::vector<std::size_t> m_positions;
    std::vector<ItemCard*> m_cards;
};

}
