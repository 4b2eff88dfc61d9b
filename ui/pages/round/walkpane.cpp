// SPDX-License-Identifier: MIT
#include "ui/pages/round/walkpane.h"

#include "ui/pages/round/finishbar.h"
#include "ui/pages/round/roundtext.h"
#include "ui/pages/round/standingsheet.h"
#include "ui/pages/round/troublebar.h"
#include "ui/pages/round/walkside.h"
#include "ui/text/verdicttext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QHBoxLayout>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>

namespace cradlepost {

namespace {
constexpr int sideBySideWidth = 860; ///< below it, grown with the text, the sections fold into one box
constexpr std::chrono::milliseconds tickLength{1000};
}

WalkPane::WalkPane(Ward& ward, WalkInHand& hand, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_hand(hand)
    , m_times(ward.times())
    , m_scene{.language = ward.language(),
          .times = m_times,
          .now = [&hand] { return hand.reference(); },
          .limits = hand.walk().draft().limits,
          .lastDay = hand.walk().context(hand.reference()).lastDay}
    , m_tick(new QTimer(this))
{
    findSections();
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(themeOf(*this).space(Space::Wide));
    m_side = makeSide();
    row->addWidget(m_side);
    row->addWidget(makeMain(), 1);
    for (const auto key : {Qt::Key_Return, Qt::Key_Enter}) {
        auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, &WalkPane::finishByKey);
    }
    connect(
        &m_hand, &WalkInHand::troubleChanged, m_trouble, [this] { m_trouble->setTrouble(m_hand.trouble()); });
    connect(m_trouble, &TroubleBar::againWanted, &m_hand, &WalkInHand::keepAgain);
    connect(m_tick, &QTimer::timeout, this, &WalkPane::tick);
    m_tick->start(tickLength);
    openSection(0);
    showProgress();
    m_trouble->setTrouble(m_hand.trouble());
}

void WalkPane::findSections()
{
    const Checklist& checklist = m_hand.checklist();
    std::size_t position = 0;
    for (const Section& section : checklist.sections) {
        AskedSection asked{.title = m_ward.language().wording(section.title), .positions = {}};
        for (std::size_t i = 0; i < section.items.size(); ++i, ++position) {
            if (m_hand.walk().isAsked(position))
                asked.positions.push_back(position);
        }
        if (!asked.positions.empty())
            m_sections.push_back(std::move(asked));
    }
}

WalkSide* WalkPane::makeSide()
{
    const Draft& draft = m_hand.walk().draft();
    QString walker = RoundText::walker(draft, m_times, m_ward.now());
    if (m_hand.recorded())
        walker += QStringLiteral(". ") + tr("It is being put right.");
    else if (m_ward.view()) {
        if (const QString late = RoundText::late(draft, m_ward.view()->shift, m_times); !late.isEmpty())
            walker += QStringLiteral(". ") + late;
    }
    auto* side = new WalkSide(RoundText::title(draft.kind, draft.shift), walker);
    side->hide(); // until the width is known
    connect(side, &WalkSide::sectionChosen, this, &WalkPane::chooseSection);
    connect(side, &WalkSide::sectionEntered, this, &WalkPane::enterSection);
    connect(side, &WalkSide::leaveWanted, this, &WalkPane::leaveWanted);
    return side;
}

QWidget* WalkPane::makeMain()
{
    const Theme& theme = themeOf(*this);
    auto* main = new QWidget;
    auto* column = new QVBoxLayout(main);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Close));
    m_heading = new WrapLabel({}, TextRole::Body);
    m_heading->setTone(Tone::Soft);
    m_heading->setWeight(TextWeight::SemiBold);
    m_heading->setObjectName(QStringLiteral("sectionHeading"));
    m_sectionBox = new QComboBox;
    m_sectionBox->setObjectName(QStringLiteral("sectionComboBox"));
    m_sectionBox->setAccessibleName(tr("Section"));
    m_standingAbove = new StandingSheet(true);
    m_trouble = new TroubleBar;
    m_pages = new QStackedWidget;
    m_finish = new FinishBar(m_hand.recorded()    ? tr("On to the reason")
            : m_hand.kind() == RoundKind::Shift ? tr("Finish the round")
                                                : tr("Finish the check"));
    column->addWidget(m_standingAbove);
    column->addWidget(m_sectionBox);
    column->addWidget(m_heading);
    column->addWidget(m_trouble);
    column->addWidget(m_pages, 1);
    column->addWidget(m_finish);
    connect(m_sectionBox, &QComboBox::activated, this, &WalkPane::enterSection);
    connect(m_finish, &FinishBar::finishWanted, this, &WalkPane::finishWanted);
    connect(m_finish, &FinishBar::goOnWanted, this, &WalkPane::resume);
    return main;
}

SectionPage& WalkPane::page(std::size_t section)
{
    AskedSection& asked = m_sections[section];
    if (asked.page == nullptr) {
        asked.page = new SectionPage(m_hand, m_scene, asked.positions);
        m_pages->addWidget(asked.page);
        connect(asked.page, &SectionPage::moveWanted, this, &WalkPane::move);
        connect(asked.page, &SectionPage::answered, this, [this](std::size_t position, bool goOn) {
            showProgress();
            if (goOn)
                move(position, CardMove::NextOpen);
        });
        for (const std::size_t position : asked.positions)
            connect(asked.page->card(position), &ItemCard::activated, this,
                [this, position] { m_at = position; });
    }
    return *asked.page;
}

std::size_t WalkPane::sectionOf(std::size_t position) const
{
    const auto found = std::find_if(m_sections.begin(), m_sections.end(), [&](const AskedSection& asked) {
        return std::find(asked.positions.begin(), asked.positions.end(), position) != asked.positions.end();
    });
    return found == m_sections.end() ? 0 : static_cast<std::size_t>(found - m_sections.begin());
}

void WalkPane::openSection(std::size_t section)
{
    m_section = section;
    m_pages->setCurrentWidget(&page(section));
    m_side->setSection(static_cast<int>(section));
    m_sectionBox->setCurrentIndex(static_cast<int>(section));
    m_heading->setText(tr("%1 · %n item(s)", nullptr, static_cast<int>(m_sections[section].positions.size()))
                           .arg(m_sections[section].title));
    m_finish->setVisible(section + 1 == m_sections.size());
}

void WalkPane::chooseSection(int section)
{
    if (section < 0 || section >= static_cast<int>(m_sections.size())
        || static_cast<std::size_t>(section) == m_section)
        return;
    openSection(static_cast<std::size_t>(section));
    m_at.reset();
}

void WalkPane::enterSection(int section)
{
    chooseSection(section);
    resume();
}

ItemCard* WalkPane::showItem(std::size_t position)
{
    if (const std::size_t section = sectionOf(position); section != m_section)
        openSection(section);
    return page(m_section).card(position);
}

void WalkPane::goTo(std::size_t position)
{
    if (ItemCard* card = showItem(position))
        card->takeFocus();
    m_at = position;
}

void WalkPane::start()
{
    if (const auto open = m_hand.nextOpen(std::nullopt))
        goTo(*open);
    else
        goToFinish();
}

void WalkPane::resume()
{
    if (m_at && sectionOf(*m_at) == m_section)
        return goTo(*m_at);
    const auto& positions = m_sections[m_section].positions;
    const auto open = std::find_if(
        positions.begin(), positions.end(), [this](std::size_t p) { return m_hand.isOpen(p); });
    goTo(open == positions.end() ? positions.front() : *open);
}

void WalkPane::move(std::size_t position, CardMove move)
{
    switch (move) {
    case CardMove::Previous:
        return step(position, -1);
    case CardMove::Next:
        return step(position, 1);
    case CardMove::PreviousSection:
        return stepSection(-1);
    case CardMove::NextSection:
        return stepSection(1);
    case CardMove::NextOpen:
        break;
    }
    if (const auto open = m_hand.nextOpen(position); open && *open != position)
        goTo(*open);
    else if (!open)
        goToFinish();
}

void WalkPane::step(std::size_t position, int by)
{
    const auto& asked = m_hand.walk().draft().asked;
    const auto here = std::find(asked.begin(), asked.end(), position);
    if (by < 0)
        return here == asked.begin() ? m_side->takeFocus(Qt::BacktabFocusReason) : goTo(*(here - 1));
    if (here + 1 != asked.end())
        return goTo(*(here + 1));
    m_finish->takeFocus();
}

void WalkPane::stepSection(int by)
{
    const int wanted = static_cast<int>(m_section) + by;
    if (wanted < 0 || wanted >= static_cast<int>(m_sections.size()))
        return;
    openSection(static_cast<std::size_t>(wanted));
    m_at.reset();
    resume();
}

void WalkPane::goToFinish()
{
    if (m_section + 1 != m_sections.size())
        openSection(m_sections.size() - 1);
    m_finish->show();
    m_finish->takeFocus();
}

void WalkPane::finishByKey()
{
    m_finish->show();
    m_finish->finish();
}

void WalkPane::setFinishFault(const QString& text)
{
    m_finish->show();
    m_finish->setFault(text);
}

void WalkPane::showProgress()
{
    std::vector<SectionEntry> entries;
    for (const AskedSection& asked : m_sections) {
        const auto open = std::count_if(asked.positions.begin(), asked.positions.end(),
            [this](std::size_t p) { return m_hand.isOpen(p); });
        const int total = static_cast<int>(asked.positions.size());
        entries.push_back({.name = asked.title, .done = total - static_cast<int>(open), .total = total});
        const QString name = tr("%1 · %2 of %3").arg(asked.title).arg(entries.back().done).arg(total);
        const int at = static_cast<int>(entries.size()) - 1;
        if (at == m_sectionBox->count())
            m_sectionBox->addItem(name);
        else if (m_sectionBox->itemText(at) != name)
            m_sectionBox->setItemText(at, name);
    }
    m_side->setSections(entries);
    m_side->setSection(static_cast<int>(m_section));
    const auto open = m_hand.walk().open().size();
    const Verdict verdict = m_hand.walk().verdict(m_hand.reference());
    const QString sentence
        = VerdictText(m_ward.language(), m_times).forming(m_hand.checklist(), verdict, open);
    m_side->setStanding(verdict.state, sentence);
    m_standingAbove->setStanding(verdict.state, sentence);
    m_finish->setOpen(static_cast<int>(open));
}

void WalkPane::tick()
{
    if (!isVisible())
        return;
    if (SectionPage* shown = m_sections[m_section].page)
        shown->tick();
    showProgress();
}

void WalkPane::resizeEvent(QResizeEvent* event)
{
    const bool beside = width() >= themeOf(*this).px(sideBySideWidth);
    m_side->setVisible(beside);
    m_heading->setVisible(beside);
    m_sectionBox->setVisible(!beside);
    m_standingAbove->setVisible(!beside);
    QWidget::resizeEvent(event);
}

}
