// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/setup/settings.h"
#include "ui/pages/ward.h"

#include <array>
#include <QWidget>

class QStackedWidget;
class QTimer;

namespace cradlepost {

class BoardPage;
class HandoverPage;
class HeaderBar;
class NavigationRail;
class NoticeBar;
class RoundPage;

/** The places of the window; their number is the key that leads there with Alt. The last two belong to *This shift*. */
enum class Place { ThisShift = 1, Round = 2, Gaps = 3, Stores = 4, Month = 5, Units = 6, Setup = 7, Board = 8, Handover = 9 };

/** The one window: the rail of places, the header, and the page that is open. */
class MainWindow : public QWidget
{
    Q_OBJECT
public:
    MainWindow(Store& store, const Clock& clock, const Language& language, Settings settings, QWidget* parent = nullptr);
    ~MainWindow() override;

    void openPlace(Place place);
    /** Opens *Round* and takes up or begins a round of that kind. */
    void beginRound(RoundKind kind);
    [[nodiscard]] Place place() const { return m_place; }
    [[nodiscard]] Ward& ward() { return m_ward; }
    /** The page of a place, made when it was not open yet. */
    QWidget* page(Place place);

Q_SIGNALS:
    /** The window has to be made anew in another language, size or colours. */
    void settingsChanged(const Settings& settings);
    /** Worth remembering, but nothing has to be made anew. */
    void settingsKept(const Settings& settings);

private:
    QWidget* makePage(Place place);
    QWidget* makeRound();
    QWidget* makeMonth();
    QWidget* makeUnits();
    QWidget* makeSetup();
    QWidget* makeBoard();
    QWidget* makeHandover();
    QWidget* makeShift();
    QWidget* makeGaps();
    void chooseUnit(const std::string& unit);

    Settings m_settings;
    Ward m_ward;
    Place m_place = Place::ThisShift;
    NavigationRail* m_rail;
    HeaderBar* m_header;
    QStackedWidget* m_stack;
    QTimer* m_tick;
    RoundPage* m_round = nullptr;
    BoardPage* m_board = nullptr;
    HandoverPage* m_handover = nullptr;
    std::array<QWidget*, 10> m_pages {};
};

}
