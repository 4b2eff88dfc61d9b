// SPDX-License-Identifier: MIT
#include "ui/pages/shift/thisshiftpage.h"

#include "ui/pages/shift/shifttext.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/markslegend.h"

#include <algorithm>
#include <QBoxLayout>
#include <QPushButton>
#include <QResizeEvent>
#include <QShortcut>

namespace cradlepost {

namespace {
constexpr std::size_t shownRows = 3;
constexpr int stripDays = 14;
constexpr int factColumnWidth = 340;
constexpr int sideBySideWidth = 960; ///< below it, grown with the text, the facts go under the answer
}

ThisShiftPage::ThisShiftPage(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_top(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_factHolder(new QWidget)
    , m_strip(new ReadinessStrip)
    , m_legend(new MarksLegend({Mark::Met, Mark::GapCritical, Mark::Gap, Mark::NotChecked}))
{
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(
        theme.space(Space::Wide), theme.space(Space::Near), theme.space(Space::Wide), theme.space(Space::Tight));
    page->setSpacing(theme.space(Space::Near));
    m_factColumn = new QVBoxLayout(m_factHolder);
    m_factColumn->setContentsMargins(0, 0, 0, 0);
    m_factColumn->setSpacing(theme.space(Space::Near));
    m_factColumn->addWidget(makeWays());
    m_top->setSpacing(theme.space(Space::Wide));
    m_top->addWidget(makeAnswer(), 1);
    m_top->addWidget(m_factHolder, 0, Qt::AlignTop);
    page->addLayout(m_top);
    page->addWidget(m_strip);
    page->addWidget(m_legend);
    page->addStretch(1);
    connect(&m_ward, &Ward::changed, this, &ThisShiftPage::refresh);
    refresh();
}

QWidget* ThisShiftPage::makeAnswer()
{
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    m_banner = new VerdictBanner;
    m_banner->setObjectName(QStringLiteral("verdictBanner"));
    m_mend = new ActionTable;
    m_mend->setObjectName(QStringLiteral("mendTable"));
    connect(m_mend, &ActionTable::rowActivated, this, [this] { Q_EMIT gapsWanted(); });
    column->addWidget(m_banner);
    column->addWidget(m_mend);
    column->addWidget(makeButtons(), 0, Qt::AlignLeft);
    column->addStretch(1);
    return holder;
}

QWidget* ThisShiftPage::makeButtons()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    m_primary = new QPushButton;
    m_primary->setProperty("primary", true);
    m_primary->setObjectName(QStringLiteral("primaryButton"));
    m_preBirth = new QPushButton(tr("Check before a birth"));
    m_preBirth->setObjectName(QStringLiteral("preBirthButton"));
    m_afterUse = new QPushButton(tr("Used: check after use"));
    m_afterUse->setObjectName(QStringLiteral("afterUseButton"));
    m_more = new QPushButton;
    m_more->setObjectName(QStringLiteral("allGapsButton"));
    for (QPushButton* button : {m_primary, m_preBirth, m_afterUse, m_more})
        row->addWidget(button);
    connect(m_primary, &QPushButton::clicked, this, [this] { Q_EMIT roundWanted(m_primaryKind); });
    connect(m_preBirth, &QPushButton::clicked, this, [this] { Q_EMIT roundWanted(RoundKind::PreBirth); });
    connect(m_afterUse, &QPushButton::clicked, this, [this] { Q_EMIT roundWanted(RoundKind::AfterUse); });
    connect(m_more, &QPushButton::clicked, this, [this] { Q_EMIT gapsWanted(); });
    return row;
}

QWidget* ThisShiftPage::makeWays()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    const auto add = [&](const QString& text, Qt::Key key, const char* name, void (ThisShiftPage::*wanted)()) {
        //: %1 what the button does, %2 the key that does it
        auto* button = new QPushButton(tr("%1 · %2").arg(text, QKeySequence(key).toString(QKeySequence::NativeText)));
        button->setObjectName(QLatin1String(name));
        row->addWidget(button);
        connect(button, &QPushButton::clicked, this, wanted);
        connect(new QShortcut(key, this), &QShortcut::activated, this, wanted);
    };
    add(tr("Births and warmers"), Qt::Key_B, "boardButton", &ThisShiftPage::boardWanted);
    add(tr("Hand over"), Qt::Key_H, "handoverButton", &ThisShiftPage::handoverWanted);
    return row;
}

void ThisShiftPage::refresh()
{
    if (m_ward.fault())
        showFault(*m_ward.fault());
    else if (m_ward.view())
        show(*m_ward.view());
}

void ThisShiftPage::showFault(const Error& fault)
{
    m_banner->setVerdict(VerdictState::NoRound,
        QStringLiteral("**%1** %2 %3")
            .arg(ErrorText::sentence(fault), ErrorText::advice(fault), qs(fault.message)));
    m_mend->setVisible(false);
    m_strip->setVisible(false);
    m_legend->setVisible(false);
}

void ThisShiftPage::show(const ShiftView& view)
{
    const ShiftText text(m_ward, view);
    const QString lost = text.lost();
    m_banner->setVerdict(
        text.state(), lost.isEmpty() ? text.sentence() : text.sentence() + QLatin1Char(' ') + lost);
    const bool anything = text.rowCount() > 0;
    m_mend->setHeaders({view.standing ? tr("Mend first") : tr("Left open by earlier shifts")});
    m_rows = text.rows(shownRows);
    m_rowCount = text.rowCount();
    m_mend->setVisible(anything);
    m_more->setText(tr("All %n", nullptr, static_cast<int>(text.rowCount())));
    showButtons(view);
    showFacts(text);
    const auto columns = strip(m_ward.store(), view, stripDays);
    m_strip->setVisible(columns.has_value());
    m_legend->setVisible(columns.has_value());
    if (columns)
        m_strip->setData(text.strip(*columns));
    fit();
}

/** One row less where that saves the page from scrolling. */
void ThisShiftPage::fit()
{
    const auto show = [this](std::size_t most) {
        const auto end = m_rows.begin() + static_cast<std::ptrdiff_t>(std::min(most, m_rows.size()));
        m_mend->setRows({m_rows.begin(), end});
        m_more->setVisible(m_rowCount > most);
    };
    show(shownRows);
    const auto fits = [this] { return layout()->totalHeightForWidth(width()) <= parentWidget()->height(); };
    if (parentWidget() == nullptr || m_rows.size() < shownRows || fits())
        return;
    show(shownRows - 1);
    if (!fits())
        show(shownRows);
}

void ThisShiftPage::showButtons(const ShiftView& view)
{
    const bool begun = std::any_of(
        view.drafts.begin(), view.drafts.end(), [](const Draft& d) { return d.kind == RoundKind::Shift; });
    const bool used = std::any_of(
        view.drafts.begin(), view.drafts.end(), [](const Draft& d) { return d.kind == RoundKind::AfterUse; });
    const bool missing = view.standing && !view.standing->verdict.reasons.empty();
    if (!view.standing || begun) {
        m_primaryKind = RoundKind::Shift;
        m_primary->setText(begun ? tr("Take up the round") : tr("Begin the round"));
    } else if (used) {
        m_primaryKind = RoundKind::AfterUse;
        m_primary->setText(tr("Finish the check after use"));
    } else if (missing) {
        m_primaryKind = RoundKind::Recheck;
        m_primary->setText(tr("Re-check what is missing"));
    } else {
        m_primaryKind = RoundKind::PreBirth;
        m_primary->setText(tr("Check before a birth"));
    }
    m_preBirth->setVisible(m_primaryKind != RoundKind::PreBirth);
    m_afterUse->setVisible(m_primaryKind != RoundKind::AfterUse);
}

void ThisShiftPage::showFacts(const ShiftText& text)
{
    const auto facts = text.facts();
    while (m_facts.size() < facts.size()) {
        auto* sheet = new FactSheet;
        m_factColumn->insertWidget(static_cast<int>(m_facts.size()), sheet);
        m_facts.push_back(sheet);
    }
    for (std::size_t i = 0; i < m_facts.size(); ++i) {
        m_facts[i]->setVisible(i < facts.size());
        if (i < facts.size())
            m_facts[i]->setFact(facts[i]);
    }
}

void ThisShiftPage::resizeEvent(QResizeEvent* event)
{
    const Theme& theme = themeOf(*this);
    const bool beside = width() >= theme.px(sideBySideWidth);
    m_top->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_factHolder->setMinimumWidth(beside ? theme.px(factColumnWidth) : 0);
    m_factHolder->setMaximumWidth(beside ? theme.px(factColumnWidth) : QWIDGETSIZE_MAX);
    QWidget::resizeEvent(event);
    if (event->oldSize().width() != event->size().width())
        fit();
}

}
