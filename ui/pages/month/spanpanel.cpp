// SPDX-License-Identifier: MIT
#include "ui/pages/month/spanpanel.h"

#include "ui/text/qdays.h"
#include "ui/text/timetext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QCheckBox>
#include <QDateEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr int treeHeight = 200;

std::string idOf(const QTreeWidgetItem& item) { return item.data(0, Qt::UserRole).toString().toStdString(); }

}

SpanPanel::SpanPanel(const Language& language, QWidget* parent)
    : Sheet({}, parent)
    , m_language(language)
    , m_from(new QDateEdit)
    , m_to(new QDateEdit)
    , m_compare(new QCheckBox(tr("Compare with")))
    , m_againstFrom(new QDateEdit)
    , m_againstTo(new QDateEdit)
    , m_shifts(new QVBoxLayout)
    , m_items(new QTreeWidget)
{
    const Theme& theme = themeOf(*this);
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Wide));
    row->addWidget(makeDays(), 1, Qt::AlignTop);
    row->addWidget(makeWhat(), 2, Qt::AlignTop);
    content().addWidget(row);
}

QWidget* SpanPanel::makeDays()
{
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Close));
    const auto addSpan = [&](QDateEdit* from, QDateEdit* to, const QString& fromName, const QString& toName) {
        auto* days = new FoldingRow;
        days->setSpacing(theme.space(Space::Close));
        for (QDateEdit* edit : {from, to}) {
            edit->setDisplayFormat(QStringLiteral("d MMM yyyy"));
            edit->setLocale(m_language.locale());
            edit->setCalendarPopup(true);
            days->addWidget(edit, 1);
        }
        from->setAccessibleName(fromName);
        to->setAccessibleName(toName);
        column->addWidget(days);
    };
    column->addWidget(new WrapLabel(tr("First and last day"), TextRole::Small));
    addSpan(m_from, m_to, tr("First day"), tr("Last day"));
    m_from->setObjectName(QStringLiteral("fromDateEdit"));
    m_to->setObjectName(QStringLiteral("toDateEdit"));
    m_compare->setObjectName(QStringLiteral("compareCheckBox"));
    column->addWidget(m_compare);
    addSpan(m_againstFrom, m_againstTo, tr("Compare with: first day"), tr("Compare with: last day"));
    const auto follow = [this](bool on) {
        m_againstFrom->setEnabled(on);
        m_againstTo->setEnabled(on);
    };
    connect(m_compare, &QCheckBox::toggled, this, follow);
    follow(false);
    auto* buttons = new FoldingRow;
    buttons->setSpacing(theme.space(Space::Close));
    auto* apply = new QPushButton(tr("Show this"));
    apply->setObjectName(QStringLiteral("applySpanButton"));
    auto* month = new QPushButton(tr("Whole month, everything"));
    month->setObjectName(QStringLiteral("wholeMonthButton"));
    buttons->addWidget(apply);
    buttons->addWidget(month);
    column->addWidget(buttons);
    connect(apply, &QPushButton::clicked, this, [this] { Q_EMIT chosen(choice()); });
    connect(month, &QPushButton::clicked, this, &SpanPanel::wantMonth);
    return holder;
}

QWidget* SpanPanel::makeWhat()
{
    const Theme& theme = themeOf(*this);
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Wide));
    auto* shifts = new QWidget;
    shifts->setLayout(m_shifts);
    m_shifts->setContentsMargins(0, 0, 0, 0);
    m_items->setObjectName(QStringLiteral("itemTree"));
    m_items->setAccessibleName(tr("Sections and items"));
    m_items->setHeaderHidden(true);
    m_items->setMinimumHeight(theme.px(treeHeight));
    row->addWidget(shifts, 0, Qt::AlignTop);
    row->addWidget(m_items, 1);
    return row;
}

void SpanPanel::show(const ReviewChoice& choice, const std::vector<std::string>& shifts,
    const Checklist& checklist, Date today)
{
    for (QDateEdit* edit : {m_from, m_to, m_againstFrom, m_againstTo})
        edit->setMaximumDate(toQDate(today));
    const ReviewSpan against = choice.against.value_or(choice.monthBeside(-1));
    m_from->setDate(toQDate(choice.span.from));
    m_to->setDate(toQDate(addDays(choice.span.to, -1)));
    m_againstFrom->setDate(toQDate(against.from));
    m_againstTo->setDate(toQDate(addDays(against.to, -1)));
    m_compare->setChecked(choice.against.has_value());
    showShifts(shifts, choice.filter);
    showItems(checklist, choice.filter);
}

void SpanPanel::showShifts(const std::vector<std::string>& shifts, const ReviewFilter& filter)
{
    qDeleteAll(m_shiftBoxes);
    m_shiftBoxes.clear();
    for (const std::string& code : shifts) {
        auto* box = new QCheckBox(TimeText::shiftName(code));
        box->setObjectName(QStringLiteral("shift-") + qs(code));
        box->setProperty("code", qs(code));
        box->setChecked(filter.takesShift(code));
        m_shifts->addWidget(box);
        m_shiftBoxes.push_back(box);
    }
}

void SpanPanel::showItems(const Checklist& checklist, const ReviewFilter& filter)
{
    m_items->clear();
    for (const Section& section : checklist.sections) {
        auto* top = new QTreeWidgetItem(m_items, {m_language.wording(section.title)});
        top->setData(0, Qt::UserRole, qs(section.id));
        top->setFlags(top->flags() | Qt::ItemIsAutoTristate | Qt::ItemIsUserCheckable);
        for (const Item& item : section.items) {
            auto* child = new QTreeWidgetItem(top, {m_language.wording(item.label)});
            child->setData(0, Qt::UserRole, qs(item.id));
            child->setCheckState(0, filter.takesItem(section.id, item.id) ? Qt::Checked : Qt::Unchecked);
        }
    }
}

ReviewChoice SpanPanel::choice() const
{
    const auto spanOf = [](const QDateEdit* from, const QDateEdit* to) {
        const auto [first, last] = std::minmax({fromQDate(from->date()), fromQDate(to->date())});
        return ReviewSpan{.from = first, .to = addDays(last, 1)};
    };
    ReviewChoice choice{.span = spanOf(m_from, m_to)};
    if (m_compare->isChecked())
        choice.against = spanOf(m_againstFrom, m_againstTo);
    for (const QCheckBox* box : m_shiftBoxes) {
        if (box->isChecked())
            choice.filter.shifts.push_back(box->property("code").toString().toStdString());
    }
    // All of them, or none, is no filter.
    if (choice.filter.shifts.size() == m_shiftBoxes.size())
        choice.filter.shifts.clear();
    bool whole = true;
    for (int i = 0; i < m_items->topLevelItemCount(); ++i) {
        const QTreeWidgetItem* top = m_items->topLevelItem(i);
        whole = whole && top->checkState(0) == Qt::Checked;
        for (int j = 0; j < top->childCount(); ++j) {
            if (top->child(j)->checkState(0) == Qt::Checked)
                choice.filter.items.push_back(idOf(*top->child(j)));
        }
    }
    if (whole)
        choice.filter.items.clear();
    return choice;
}

void SpanPanel::wantMonth()
{
    Q_EMIT chosen(ReviewChoice{
        .span = ReviewChoice{.span = {.from = fromQDate(m_from->date()), .to = {}}}.monthBeside(0)});
}

}
