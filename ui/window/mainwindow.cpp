// SPDX-License-Identifier: MIT
#include "ui/window/mainwindow.h"

#include "core/review/visitweights.h"
#include "ui/pages/board/boardpage.h"
#include "ui/pages/gaps/gapspage.h"
#include "ui/pages/handover/handoverpage.h"
#include "ui/pages/month/monthpage.h"
#include "ui/pages/round/roundpage.h"
#include "ui/pages/setup/setuppage.h"
#include "ui/pages/shift/thisshiftpage.h"
#include "ui/pages/stores/storespage.h"
#include "ui/pages/units/unitspage.h"
#include "ui/widgets/navigationrail.h"
#include "ui/window/headerbar.h"
#include "ui/window/noticebar.h"

#include <QBoxLayout>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTimer>

namespace cradlepost {

namespace {

constexpr std::chrono::seconds tick {15}; // the shortest thing shown is a minute

/** The places that are built, in the order of the rail. */
constexpr std::array openPlaces {Place::ThisShift, Place::Round, Place::Gaps, Place::Stores, Place::Month, Place::Units,
    Place::Setup};

std::string firstUnit(const Store& store, const QString& wanted)
{
    const auto units = store.units();
    if (!units || units->empty())
        return {};
    for (const Unit& unit : *units) {
        if (unit.id == wanted.toStdString())
            return unit.id;
    }
    return units->front().id;
}

/** A page that grows past the window with large text scrolls instead of being cut. */
QWidget* scrolling(QWidget* page)
{
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(page);
    return area;
}

}

MainWindow::MainWindow(Store& store, const Clock& clock, const Language& language, Settings settings, QWidget* parent)
    : QWidget(parent)
    , m_settings(std::move(settings))
    , m_ward(store, clock, language, firstUnit(store, m_settings.unit))
    , m_rail(new NavigationRail)
    , m_header(nullptr)
    , m_stack(new QStackedWidget)
    , m_tick(new QTimer(this))
{
    setWindowTitle(tr("Cradlepost"));
    setLayoutDirection(language.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    m_ward.refresh();
    m_header = new HeaderBar(m_ward);
    auto* notice = new NoticeBar(m_ward);
    m_header->setNotice(notice);
    connect(notice, &NoticeBar::changed, m_header, &HeaderBar::arrange);
    std::vector<RailPlace> places;
    for (const Place place : openPlaces) {
        const QString names[] = {tr("This shift"), tr("Round"), tr("Gaps"), tr("Stores"), tr("Month"), tr("Units"), tr("Set-up")};
        places.push_back({.name = names[static_cast<std::size_t>(place) - 1], .key = static_cast<int>(place)});
    }
    m_rail->setPlaces(places);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    column->addWidget(m_header);
    column->addWidget(m_stack, 1);
    row->addWidget(m_rail);
    row->addLayout(column, 1);
    connect(m_rail, &NavigationRail::placeChosen, this,
        [this](int index) { openPlace(openPlaces[static_cast<std::size_t>(index)]); });
    connect(m_header, &HeaderBar::unitChosen, this, &MainWindow::chooseUnit);
    connect(m_tick, &QTimer::timeout, &m_ward, &Ward::refresh);
    m_tick->start(tick);
    openPlace(m_ward.unit().empty() ? Place::Setup : Place::ThisShift);
}

MainWindow::~MainWindow()
{
    // What is being typed is taken, and the pages go, while the ward that they look at is still there.
    if (QWidget* focused = focusWidget())
        focused->clearFocus();
    qDeleteAll(findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
}

void MainWindow::openPlace(Place place)
{
    const bool isAnother = m_stack->currentWidget() != nullptr && m_place != place;
    m_place = place;
    m_stack->setCurrentWidget(page(place));
    if (isAnother)
        m_ward.refresh(); // what was entered on the page before shows at once
    const bool ofShift = place == Place::Board || place == Place::Handover;
    const auto at = std::find(openPlaces.begin(), openPlaces.end(), ofShift ? Place::ThisShift : place);
    m_rail->setPlace(static_cast<int>(at - openPlaces.begin()));
    if (place == Place::Round)
        m_stack->currentWidget()->setFocus(Qt::OtherFocusReason);
    if (place == Place::Board)
        m_board->takeFocus();
    if (place == Place::Handover)
        m_handover->takeFocus();
}

void MainWindow::beginRound(RoundKind kind)
{
    openPlace(Place::Round);
    m_round->begin(kind);
}

QWidget* MainWindow::page(Place place)
{
    QWidget*& held = m_pages[static_cast<std::size_t>(place)];
    if (held == nullptr) {
        held = makePage(place);
        m_stack->addWidget(held);
    }
    return held;
}

QWidget* MainWindow::makePage(Place place)
{
    switch (place) {
    case Place::Round:
        return makeRound();
    case Place::Gaps:
        return makeGaps();
    case Place::Board:
        return makeBoard();
    case Place::Handover:
        return makeHandover();
    case Place::Stores:
        return scrolling(new StoresPage(m_ward));
    case Place::Month:
        return makeMonth();
    case Place::Units:
        return makeUnits();
    case Place::Setup:
        return makeSetup();
    default:
        break;
    }
    return makeShift();
}

QWidget* MainWindow::makeBoard()
{
    m_board = new BoardPage(m_ward);
    connect(m_board, &BoardPage::leaveWanted, this, [this] { openPlace(Place::ThisShift); });
    return scrolling(m_board);
}

QWidget* MainWindow::makeHandover()
{
    m_handover = new HandoverPage(m_ward);
    connect(m_handover, &HandoverPage::leaveWanted, this, [this] { openPlace(Place::ThisShift); });
    return scrolling(m_handover);
}

QWidget* MainWindow::makeGaps()
{
    auto* gaps = new GapsPage(m_ward);
    connect(gaps, &GapsPage::roundWanted, this, &MainWindow::beginRound);
    connect(gaps, &GapsPage::itemWanted, this, [this](const std::string& item) {
        openPlace(Place::Round);
        m_round->beginOne(item);
    });
    return scrolling(gaps);
}

QWidget* MainWindow::makeShift()
{
    auto* shift = new ThisShiftPage(m_ward);
    connect(shift, &ThisShiftPage::boardWanted, this, [this] { openPlace(Place::Board); });
    connect(shift, &ThisShiftPage::handoverWanted, this, [this] { openPlace(Place::Handover); });
    connect(shift, &ThisShiftPage::roundWanted, this, &MainWindow::beginRound);
    connect(shift, &ThisShiftPage::gapsWanted, this, [this] { openPlace(Place::Gaps); });
    return scrolling(shift);
}

QWidget* MainWindow::makeRound()
{
    m_round = new RoundPage(m_ward);
    connect(m_round, &RoundPage::saved, m_header, &HeaderBar::showSaved);
    connect(m_round, &RoundPage::finished, this, [this] { openPlace(Place::ThisShift); });
    return m_round;
}

QWidget* MainWindow::makeMonth()
{
    auto* month = new MonthPage(m_ward, choiceFromText(m_settings.review));
    connect(month, &MonthPage::choiceChanged, this, [this](const ReviewChoice& choice) {
        m_settings.review = toText(choice);
        Q_EMIT settingsKept(m_settings);
    });
    connect(month, &MonthPage::putRightWanted, this, [this](const SavedRound& round) {
        openPlace(Place::Round);
        m_round->putRight(round);
    });
    return scrolling(month);
}

QWidget* MainWindow::makeUnits()
{
    const auto weights = weightsFromText(m_settings.visitWeights.toStdString());
    auto* units = new UnitsPage(
        m_ward, unitsChoiceFromText(m_settings.units), weights.value_or(VisitWeights()));
    connect(units, &UnitsPage::choiceChanged, this, [this](const UnitsChoice& choice) {
        m_settings.units = toText(choice);
        Q_EMIT settingsKept(m_settings);
    });
    connect(units, &UnitsPage::weightsChanged, this, [this](const VisitWeights& set) {
        m_settings.visitWeights = qs(weightsText(set));
        Q_EMIT settingsKept(m_settings);
    });
    return scrolling(units);
}

QWidget* MainWindow::makeSetup()
{
    auto* setup = new SetupPage(m_ward, m_settings);
    connect(setup, &SetupPage::settingsChanged, this, [this](Settings settings) {
        settings.unit = m_settings.unit;
        settings.review = m_settings.review;
        settings.units = m_settings.units;
        settings.visitWeights = m_settings.visitWeights;
        Q_EMIT settingsChanged(settings);
    });
    connect(setup, &SetupPage::unitSaved, this, [this](const std::string& unit) {
        chooseUnit(unit);
        m_header->reload();
    });
    return scrolling(setup);
}

void MainWindow::chooseUnit(const std::string& unit)
{
    m_ward.setUnit(unit);
    m_settings.unit = qs(unit);
    m_header->reload();
    Q_EMIT settingsKept(m_settings);
}

}
