// SPDX-License-Identifier: MIT
#include "ui/pages/stores/shelvespane.h"

#include "core/supply/shelfplan.h"
#include "ui/pages/stores/shelfform.h"
#include "ui/pages/stores/stockform.h"
#include "ui/text/errortext.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr int formWidth = 330;

Mark markOf(const ShelfRow& row)
{
    if (row.usable == 0)
        return Mark::GapCritical;
    return row.order > 0 || row.expiring.expired > 0 ? Mark::Gap : Mark::Met;
}

/** The shelf of an item; past the last one when there is none. */
std::size_t shelfOf(const StoresView& view, const std::string& item)
{
    const auto at = std::find_if(
        view.shelves.begin(), view.shelves.end(), [&](const ShelfRow& row) { return row.item.id == item; });
    return static_cast<std::size_t>(at - view.shelves.begin());
}

}

ShelvesPane::ShelvesPane(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_begin(new QPushButton(tr("Keep what the checklist counts")))
    , m_shelves(new ActionTable)
    , m_expiring(new WrapLabel({}, TextRole::Small))
    , m_kits(new WrapLabel)
    , m_differencesTitle(
          new WrapLabel(tr("The last round counted otherwise: Enter offers the count"), TextRole::Small))
    , m_differences(new ActionTable)
    , m_form(new StockForm(ward))
    , m_shelf(new ShelfForm(ward))
    , m_change(new QPushButton(tr("Change this shelf")))
    , m_new(new QPushButton(tr("A new shelf")))
{
    const Theme& theme = themeOf(*this);
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Wide));
    row->addWidget(makeLists(), 1);
    row->addWidget(makeForms(), 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(row);
    connect(m_begin, &QPushButton::clicked, this, &ShelvesPane::beginBook);
    connect(m_shelves, &ActionTable::cursorMoved, this, &ShelvesPane::choose);
    connect(m_shelves, &ActionTable::rowActivated, m_form, &StockForm::focusPieces);
    connect(m_differences, &ActionTable::rowActivated, this, &ShelvesPane::chooseDifference);
    setFocusProxy(m_shelves);
}

QWidget* ShelvesPane::makeForms()
{
    const Theme& theme = themeOf(*this);
    auto* forms = new QWidget;
    forms->setMinimumWidth(theme.px(formWidth));
    forms->setMaximumWidth(theme.px(formWidth));
    auto* column = new QVBoxLayout(forms);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    auto* buttons = new FoldingRow;
    buttons->setSpacing(theme.space(Space::Close));
    m_change->setObjectName(QStringLiteral("changeShelfButton"));
    m_new->setObjectName(QStringLiteral("newShelfButton"));
    for (QPushButton* button : {m_change, m_new})
        buttons->addWidget(button);
    buttons->addWidget(new QWidget, 1);
    column->addWidget(m_form);
    column->addWidget(buttons);
    column->addWidget(m_shelf);
    column->addStretch(1);
    m_shelf->hide();
    connect(m_new, &QPushButton::clicked, this, [this] { describe(std::nullopt); });
    connect(m_change, &QPushButton::clicked, this, [this] {
        if (const std::size_t at = shelfOf(m_view, m_chosen); at < m_view.shelves.size())
            describe(m_view.shelves[at].item);
    });
    connect(m_shelf, &ShelfForm::closed, this, &ShelvesPane::described);
    return forms;
}

void ShelvesPane::describe(const std::optional<StockItem>& item)
{
    m_form->hide();
    m_change->hide();
    m_new->hide();
    m_shelf->show();
    m_shelf->open(item);
}

void ShelvesPane::described(const std::string& shelf)
{
    m_shelf->hide();
    m_form->show();
    m_new->show();
    m_change->setVisible(!m_view.shelves.empty());
    m_shelves->setFocus(Qt::OtherFocusReason);
    const std::size_t at = shelfOf(m_view, shelf);
    if (at == m_view.shelves.size())
        return;
    m_shelves->setCursorAt(static_cast<int>(at));
    choose(m_shelves->cursor());
}

QWidget* ShelvesPane::makeLists()
{
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(themeOf(*this).space(Space::Near));
    m_kits->setObjectName(QStringLiteral("storesKits"));
    m_expiring->setObjectName(QStringLiteral("storesExpiring"));
    m_shelves->setObjectName(QStringLiteral("shelvesTable"));
    m_shelves->setAccessibleName(tr("Shelves, what runs out first"));
    m_shelves->setHeaders({tr("On the shelf"), tr("To do"), tr("Lasts"), tr("In date")});
    m_shelves->setEmptyText(tr("No item is kept in the stock book of this unit."));
    m_differences->setObjectName(QStringLiteral("differencesTable"));
    m_differences->setAccessibleName(tr("Where the round and the book disagree"));
    m_differences->setHeaders({tr("Item"), tr("Round and book"), tr("Lot"), tr("Seen")});
    m_differencesTitle->setWeight(TextWeight::SemiBold);
    m_differencesTitle->setTone(Tone::Soft);
    m_expiring->setTone(Tone::Soft);
    column->addWidget(m_differencesTitle);
    column->addWidget(m_differences);
    column->addWidget(m_kits);
    column->addWidget(m_expiring);
    column->addWidget(m_shelves);
    m_begin->setObjectName(QStringLiteral("beginBookButton"));
    m_begin->setProperty("primary", true);
    column->addWidget(m_begin, 0, Qt::AlignLeft);
    column->addStretch(1);
    return holder;
}

void ShelvesPane::display(const StoresView& view)
{
    m_view = view;
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    showShelves();
    showDifferences();
    m_begin->setVisible(m_view.shelves.empty());
    m_expiring->setVisible(!m_view.shelves.empty());
    m_expiring->setText(text.expiring(m_view));
    QStringList lines;
    for (const KitRow& row : m_view.kits)
        lines << text.kit(row, m_view);
    m_kits->setText(lines.join(QLatin1Char(' ')));
    m_kits->setVisible(!lines.isEmpty());
}

void ShelvesPane::showShelves()
{
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    std::vector<ActionRow> rows;
    for (const ShelfRow& row : m_view.shelves)
        rows.push_back({.mark = markOf(row),
            .title = qs(row.item.name),
            .subtitle = text.lots(row, m_view.today),
            .what = text.toDo(row),
            .who = text.cover(row),
            .by = text.pieces(row),
            .byAside = text.chance(row)});
    const std::string chosen = m_chosen;
    m_shelves->setRows(rows);
    // The chosen item stays chosen, wherever it stands now.
    const std::size_t at = shelfOf(m_view, chosen);
    m_shelves->setCursorAt(at == m_view.shelves.size() ? 0 : static_cast<int>(at));
    choose(m_shelves->cursor());
}

void ShelvesPane::showDifferences()
{
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    std::vector<ActionRow> rows;
    for (const BookDifference& one : m_view.differences) {
        const std::size_t at = shelfOf(m_view, one.item);
        rows.push_back({.mark = Mark::Gap,
            .title = qs(at == m_view.shelves.size() ? one.item : m_view.shelves[at].item.name),
            .subtitle = {},
            .what = text.difference(one),
            .who = one.lot ? StoresText::lot(*one.lot) : QString(),
            .by = m_ward.times().clock(one.correction.at),
            .byAside = {}});
    }
    m_differences->setRows(rows);
    m_differences->setVisible(!rows.empty());
    m_differencesTitle->setVisible(!rows.empty());
}

void ShelvesPane::choose(int row)
{
    const auto at = static_cast<std::size_t>(row);
    const bool there = row >= 0 && at < m_view.shelves.size();
    m_chosen = there ? m_view.shelves[at].item.id : std::string();
    m_change->setVisible(there && !m_shelf->isVisibleTo(this));
    m_form->setShelf(there ? std::optional(m_view.shelves[at]) : std::nullopt);
}

void ShelvesPane::chooseDifference(int row)
{
    const BookDifference difference = m_view.differences[static_cast<std::size_t>(row)];
    const std::size_t at = shelfOf(m_view, difference.item);
    if (at == m_view.shelves.size())
        return;
    m_shelves->setCursorAt(static_cast<int>(at));
    choose(m_shelves->cursor());
    m_form->offer(difference);
}

/** A shelf for each count and each part of a kit; levels and all else can be changed by what comes later. */
void ShelvesPane::beginBook()
{
    if (!m_ward.view())
        return;
    const std::string language = m_ward.language().code().toStdString();
    for (const StockItem& item : shelvesOf(m_ward.view()->adopted.checklist, language, m_ward.now())) {
        const auto done = m_ward.store().describeStockItem(m_ward.unit(), item, m_ward.actor());
        if (done)
            continue;
        m_expiring->setVisible(true);
        m_expiring->setText(ErrorText::told(done.error()));
        return;
    }
    m_ward.refresh();
}

}
