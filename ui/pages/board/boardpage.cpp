// SPDX-License-Identifier: MIT
#include "ui/pages/board/boardpage.h"

#include "core/supply/clockentry.h"
#include "ui/pages/board/birthform.h"
#include "ui/pages/round/cards/valuefield.h"
#include "ui/text/boardtext.h"
#include "ui/text/errortext.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

QVBoxLayout* columnIn(QWidget* holder, const Theme& theme)
{
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    return column;
}

Mark markOf(const BirthCover& cover)
{
    Mark mark = cover.kit ? Mark::Met : Mark::Gap;
    for (const BabyPlace& one : cover.places) {
        if (one.place == WarmPlace::Late || one.place == WarmPlace::None)
            return Mark::GapCritical;
        if (one.place != WarmPlace::Ready && mark == Mark::Met)
            mark = Mark::Late;
    }
    return mark;
}

Mark markOf(const WarmerRow& row, const QString& byMistake)
{
    if (!byMistake.isEmpty())
        return Mark::GapCritical;
    switch (row.standing.state) {
    case WarmerState::Ready:
        return Mark::Met;
    case WarmerState::Warming:
        return Mark::Late;
    case WarmerState::Off:
        break;
    }
    return Mark::DoesNotApply;
}

}

BoardPage::BoardPage(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_answer(new WrapLabel({}, TextRole::Finding))
    , m_sentence(new WrapLabel({}, TextRole::Lead))
    , m_births(new ActionTable)
    , m_form(new BirthForm(ward))
    , m_warmers(new ActionTable)
    , m_at(new ValueField(QStringLiteral(":"), 6))
    , m_switch(new QPushButton)
    , m_said(new WrapLabel)
{
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    const int wide = theme.space(Space::Wide);
    page->setContentsMargins(wide, theme.space(Space::Apart), wide, theme.space(Space::Apart));
    page->setSpacing(theme.space(Space::Near));
    m_answer->setObjectName(QStringLiteral("boardAnswer"));
    m_answer->setWeight(TextWeight::SemiBold);
    m_said->setObjectName(QStringLiteral("boardSaid"));
    m_said->hide();
    page->addWidget(m_answer);
    page->addWidget(m_sentence);
    page->addWidget(makeBirths());
    page->addWidget(m_form);
    page->addWidget(m_said);
    page->addWidget(makeWarmers());
    page->addStretch(1);
    auto* back = new QPushButton(tr("Back to this shift · Esc"));
    back->setObjectName(QStringLiteral("backButton"));
    page->addWidget(back, 0, Qt::AlignLeft);
    connect(back, &QPushButton::clicked, this, &BoardPage::leaveWanted);
    connect(new QShortcut(Qt::Key_Escape, this), &QShortcut::activated, this, &BoardPage::leaveWanted);
    connect(m_form, &BirthForm::done, this, [this] { say({}); });
    connect(m_form, &BirthForm::mistyped, this, &BoardPage::sayMistyped);
    connect(m_form, &BirthForm::refused, this, [this](const Error& why) { say(tl::unexpected(why)); });
    connect(&m_ward, &Ward::changed, this, &BoardPage::refresh);
    refresh();
}

QWidget* BoardPage::makeBirths()
{
    auto* holder = new QWidget;
    auto* column = columnIn(holder, themeOf(*this));
    m_births->setObjectName(QStringLiteral("birthsTable"));
    m_births->setAccessibleName(tr("Births expected"));
    m_births->setHeaders({tr("Birth expected"), tr("Warm place"), tr("Kit"), tr("In")});
    m_births->setEmptyText(tr("No birth is expected."));
    column->addWidget(m_births);
    m_ends = makeEnds();
    column->addWidget(m_ends);
    return holder;
}

QWidget* BoardPage::makeEnds()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    row->addWidget(makeEnd(tr("Born"), Qt::Key_D, BirthChange::Done, "bornButton"));
    row->addWidget(makeEnd(tr("Moved elsewhere"), Qt::Key_M, BirthChange::Moved, "movedButton"));
    row->addWidget(makeEnd(tr("Called off"), Qt::Key_C, BirthChange::Cancelled, "calledOffButton"));
    row->addWidget(new QWidget, 1);
    return row;
}

QPushButton* BoardPage::makeEnd(const QString& text, Qt::Key key, BirthChange how, const char* name)
{
    //: %1 what the button does, %2 the key that does it
    auto* button
        = new QPushButton(tr("%1 · %2").arg(text, QKeySequence(key).toString(QKeySequence::NativeText)));
    button->setObjectName(QLatin1String(name));
    connect(button, &QPushButton::clicked, this, [this, how] { endBirth(how); });
    auto* shortcut = new QShortcut(key, m_births);
    shortcut->setContext(Qt::WidgetShortcut);
    connect(shortcut, &QShortcut::activated, this, [this, how] { endBirth(how); });
    return button;
}

QWidget* BoardPage::makeWarmers()
{
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* column = columnIn(holder, theme);
    m_warmers->setObjectName(QStringLiteral("warmersTable"));
    m_warmers->setAccessibleName(tr("Warmers"));
    m_warmers->setHeaders({tr("Warmer"), tr("On for how long"), tr("For the birth"), tr("Warm")});
    m_warmers->setEmptyText(tr("No warmer is on the register of devices yet."));
    m_at->setObjectName(QStringLiteral("switchTimeEdit"));
    m_at->setAccessibleName(tr("Switched at, time of day; empty means now"));
    m_at->setEmptyMeans(tr("now"));
    m_at->setRing(true);
    m_switch->setObjectName(QStringLiteral("switchButton"));
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Near));
    auto* at = new QLabel(tr("At"));
    at->setBuddy(m_at);
    for (QWidget* part : std::initializer_list<QWidget*>{at, m_at, m_switch})
        row->addWidget(part, 0, Qt::AlignVCenter);
    row->addWidget(new QWidget, 1);
    column->addWidget(m_warmers);
    column->addWidget(row);
    m_switching = row;
    connect(m_warmers, &ActionTable::rowActivated, this, &BoardPage::switchWarmer);
    connect(m_warmers, &ActionTable::cursorMoved, this, &BoardPage::showSwitch);
    connect(m_at, &QLineEdit::returnPressed, this, [this] { switchWarmer(m_warmers->cursor()); });
    connect(m_switch, &QPushButton::clicked, this, [this] { switchWarmer(m_warmers->cursor()); });
    return holder;
}

void BoardPage::takeFocus() { m_form->takeFocus(); }

void BoardPage::refresh()
{
    if (!isVisible() && !m_answer->text().isEmpty())
        return;
    const TimeText times = m_ward.times();
    const BoardText text(times, m_ward.board(), m_ward.now());
    m_answer->setText(text.answer());
    m_sentence->setText(text.sentence());
    showBirths();
    showWarmers();
}

void BoardPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
}

void BoardPage::showBirths()
{
    const TimeText times = m_ward.times();
    const Instant now = m_ward.now();
    const BoardText text(times, m_ward.board(), now);
    std::vector<ActionRow> rows;
    for (const BirthCover& cover : m_ward.board().births) {
        const Instant expected = cover.birth.expected;
        rows.push_back({.mark = markOf(cover),
            .title = tr("About %1").arg(times.moment(expected, now)),
            .subtitle = BoardText::babies(cover.birth.babies, cover.birth.preterm),
            .what = text.places(cover),
            .who = text.kit(cover),
            .by = expected >= now ? TimeText::span(expected - now) : tr("now"),
            .byAside = expected >= now ? QString() : tr("overdue")});
    }
    m_births->setRows(rows);
    m_ends->setVisible(!rows.empty());
}

void BoardPage::showWarmers()
{
    const TimeText times = m_ward.times();
    const Instant now = m_ward.now();
    const BoardView& board = m_ward.board();
    const BoardText text(times, board, now);
    std::vector<ActionRow> rows;
    for (const WarmerRow& row : board.warmers) {
        QStringList births;
        for (const BirthCover& cover : board.births) {
            for (const BabyPlace& one : cover.places) {
                if (one.device == row.device.id)
                    births << times.moment(cover.birth.expected, now);
            }
        }
        const QString mistake = text.offByMistake(row.device.id);
        const bool spare = row.state == EquipmentState::Spare;
        rows.push_back({.mark = markOf(row, mistake),
            .title = text.device(row.device.id),
            .subtitle = mistake.isEmpty() && spare ? tr("spare") : mistake,
            .what = text.running(row),
            .who = births.isEmpty() ? tr("none") : births.join(tr(", ")),
            .by = text.warm(row),
            .byAside = {}});
    }
    m_warmers->setRows(rows);
    m_switching->setVisible(!rows.empty());
    showSwitch();
}

void BoardPage::showSwitch()
{
    const auto& warmers = m_ward.board().warmers;
    const auto at = static_cast<std::size_t>(std::max(m_warmers->cursor(), 0));
    if (at >= warmers.size())
        return;
    const TimeText times = m_ward.times();
    const bool on = warmers[at].standing.onSince.has_value();
    const QString name = BoardText(times, m_ward.board(), m_ward.now()).device(warmers[at].device.id);
    m_switch->setText(on ? tr("%1 was switched off").arg(name) : tr("%1 was switched on").arg(name));
}

void BoardPage::endBirth(BirthChange how)
{
    const auto& births = m_ward.board().births;
    const auto at = static_cast<std::size_t>(std::max(m_births->cursor(), 0));
    if (at < births.size())
        say(m_ward.endBirth(births[at].birth.birth, how));
}

void BoardPage::switchWarmer(int row)
{
    const auto& warmers = m_ward.board().warmers;
    const auto at = static_cast<std::size_t>(std::max(row, 0));
    if (at >= warmers.size())
        return;
    const auto when = readPast(m_at->typed(), m_ward.now(), m_ward.times().zone());
    if (!when)
        return sayMistyped(qs(m_at->typed()));
    m_at->clear();
    const WarmerRow warmer = warmers[at];
    say(m_ward.switchWarmer(warmer.device.id, !warmer.standing.onSince, *when));
}

void BoardPage::say(const Result<void>& done)
{
    if (done)
        m_said->hide();
    else if (m_ward.actor().empty())
        warn(tr("First choose who is in charge, at the top."));
    else
        warn(ErrorText::told(done.error()));
}

void BoardPage::sayMistyped(const QString& time)
{
    if (time.isEmpty())
        warn(tr("Type the time of day: 16:30 or 1630."));
    else
        warn(tr("“%1” is no time of day. Type it as 16:30 or 1630.").arg(time));
}

void BoardPage::warn(const QString& text)
{
    m_said->setTone(Tone::Warning);
    m_said->setText(text);
    m_said->show();
}

}
