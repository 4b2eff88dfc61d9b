// SPDX-License-Identifier: MIT
#include "ui/pages/gaps/gapspage.h"

#include "ui/pages/gaps/gapeditor.h"
#include "ui/pages/gaps/gaptext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QHBoxLayout>
#include <QPushButton>
#include <QShortcut>

namespace cradlepost {

namespace {
constexpr int editorWidth = 330;
constexpr std::size_t shownMended = 6;
constexpr std::chrono::hours mendedSpan {24 * 14};
}

GapsPage::GapsPage(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_answer(new WrapLabel({}, TextRole::Finding))
    , m_sentence(new WrapLabel({}, TextRole::Lead))
    , m_open(new ActionTable)
    , m_mendedTitle(new WrapLabel(tr("Mended in the last 14 days"), TextRole::Small))
    , m_mended(new ActionTable)
    , m_recheck(new QPushButton(tr("Re-check what is missing")))
    , m_editor(new GapEditor(ward))
{
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(theme.space(Space::Wide), theme.space(Space::Apart), theme.space(Space::Wide),
        theme.space(Space::Apart));
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Wide));
    row->addWidget(makeLists(), 1);
    m_editor->setMinimumWidth(theme.px(editorWidth));
    m_editor->setMaximumWidth(theme.px(editorWidth));
    row->addWidget(m_editor, 0, Qt::AlignTop);
    page->addWidget(row);
    page->addStretch(1);
    connect(&m_ward, &Ward::changed, this, &GapsPage::refresh);
    connect(m_open, &ActionTable::cursorMoved, this, &GapsPage::choose);
    connect(m_open, &ActionTable::rowActivated, m_editor, &GapEditor::focusOwner);
    connect(m_mended, &ActionTable::rowActivated, this, &GapsPage::chooseMended);
    connect(m_editor, &GapEditor::recheckWanted, this, &GapsPage::itemWanted);
    makeKeys();
    connect(m_recheck, &QPushButton::clicked, this, [this] { Q_EMIT roundWanted(RoundKind::Recheck); });
    refresh();
}

void GapsPage::makeKeys()
{
    const auto add = [this](Qt::Key key, void (GapEditor::*deed)()) {
        auto* shortcut = new QShortcut(key, m_open);
        shortcut->setContext(Qt::WidgetShortcut);
        connect(shortcut, &QShortcut::activated, m_editor, deed);
    };
    add(Qt::Key_R, &GapEditor::recheck);
    add(Qt::Key_M, &GapEditor::mend);
    add(Qt::Key_V, &GapEditor::verify);
}

QWidget* GapsPage::makeLists()
{
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    m_answer->setWeight(TextWeight::SemiBold);
    m_open->setObjectName(QStringLiteral("openGapsTable"));
    m_open->setAccessibleName(tr("Open gaps"));
    m_open->setEmptyText(tr("Nothing is open."));
    m_recheck->setObjectName(QStringLiteral("recheckButton"));
    m_mended->setAccessibleName(tr("Mended gaps"));
    m_mended->setObjectName(QStringLiteral("mendedGapsTable"));
    m_mended->setHeaders({tr("What was missing"), tr("How long"), tr("Who"), tr("Mended")});
    m_mended->setEmptyText(tr("Nothing was mended in this time."));
    m_mendedTitle->setWeight(TextWeight::SemiBold);
    m_mendedTitle->setTone(Tone::Soft);
    column->addWidget(m_answer);
    column->addWidget(m_sentence);
    column->addWidget(m_open);
    column->addWidget(m_recheck, 0, Qt::AlignLeft);
    column->addSpacing(theme.space(Space::Near));
    column->addWidget(m_mendedTitle);
    column->addWidget(m_mended);
    column->addStretch(1);
    return holder;
}

void GapsPage::refresh()
{
    if (!m_ward.view())
        return;
    const auto& view = *m_ward.view();
    showOpen(view.gaps);
    m_recheck->setVisible(view.standing && !view.standing->verdict.reasons.empty());
    showMended();
}

void GapsPage::showOpen(const std::vector<Gap>& gaps)
{
    const GapText text(m_ward);
    m_answer->setText(GapText::answer(gaps.size()));
    m_answer->setTone(gaps.empty() || gaps.front().severity != Severity::Critical ? Tone::Ink : Tone::Warning);
    m_sentence->setText(text.sentence(gaps));
    std::vector<ActionRow> rows;
    for (const Gap& gap : gaps)
        rows.push_back(text.open(gap));
    const int cursor = m_open->cursor();
    m_open->setRows(rows);
    choose(std::clamp(cursor, 0, std::max(static_cast<int>(gaps.size()) - 1, 0)));
}

void GapsPage::showMended()
{
    const auto closed = m_ward.store().closedGaps(m_ward.unit(), m_ward.now() - mendedSpan);
    const GapText text(m_ward);
    std::vector<ActionRow> rows;
    m_closed = closed.value_or(std::vector<Gap>());
    // What a second person has still to look at must not fall off the end.
    std::stable_partition(m_closed.begin(), m_closed.end(), [](const Gap& gap) { return gap.wantsVerifying(); });
    if (m_closed.size() > shownMended)
        m_closed.resize(shownMended);
    for (const Gap& gap : m_closed)
        rows.push_back(text.mended(gap));
    m_mended->setRows(rows);
}

void GapsPage::chooseMended(int row)
{
    const auto at = static_cast<std::size_t>(std::max(row, 0));
    if (at >= m_closed.size())
        return;
    m_editor->setGap(m_closed[at]);
    m_editor->focusOwner();
}

void GapsPage::choose(int row)
{
    const auto& gaps = m_ward.view()->gaps;
    const auto at = static_cast<std::size_t>(row);
    m_editor->setGap(row >= 0 && at < gaps.size() ? std::optional(gaps[at]) : std::nullopt);
}

}
