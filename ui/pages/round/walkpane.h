// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/sectionpage.h"

class QComboBox;
class QStackedWidget;
class QTimer;

namespace cradlepost {

class FinishBar;
class StandingSheet;
class TroubleBar;
class WalkSide;
class WrapLabel;

/** A walk through the room: sections at the side, the verdict as it forms, the items of one section. */
class WalkPane : public QWidget
{
    Q_OBJECT
public:
    WalkPane(Ward& ward, WalkInHand& hand, QWidget* parent = nullptr);

    /** The keyboard goes to the first item that is still open. */
    void start();
    /** To the card one was at. */
    void resume();
    void setFinishFault(const QString& text);
    /** The card of an item that is asked; opens its section. */
    ItemCard* showItem(std::size_t position);
    [[nodiscard]] std::optional<std::size_t> at() const { return m_at; }

Q_SIGNALS:
    void finishWanted();
    void leaveWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct AskedSection
    {
        QString title;
        std::vector<std::size_t> positions;
        SectionPage* page = nullptr;
    };
    void findSections();
    WalkSide* makeSide();
    QWidget* makeMain();
    SectionPage& page(std::size_t section);
    [[nodiscard]] std::size_t sectionOf(std::size_t position) const;
    void openSection(std::size_t section);
    void chooseSection(int section);
    void enterSection(int section);
    void move(std::size_t position, CardMove move);
    void goTo(std::size_t position);
    void goToFinish();
    void finishByKey();
    void step(std::size_t position, int by);
    void stepSection(int by);
    void showProgress();
    void tick();

    Ward& m_ward;
    WalkInHand& m_hand;
    TimeText m_times;
    CardScene m_scene;
    std::vector<AskedSection> m_sections;
    std::size_t m_section = 0;
    std::optional<std::size_t> m_at;
    WalkSide* m_side = nullptr;
    QComboBox* m_sectionBox = nullptr;
    StandingSheet* m_standingAbove = nullptr;
    WrapLabel* m_heading = nullptr;
    QStackedWidget* m_pages = nullptr;
    TroubleBar* m_trouble = nullptr;
    FinishBar* m_finish = nullptr;
    QTimer* m_tick = nullptr;
};

}
