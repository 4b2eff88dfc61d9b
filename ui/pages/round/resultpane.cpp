// SPDX-License-Identifier: MIT
#include "ui/pages/round/resultpane.h"

#include "ui/pages/round/roundtext.h"
#include "ui/text/reasontext.h"
#include "ui/text/verdicttext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/verdictbanner.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr qsizetype shownOfStation = 8;

bool unseen(const Reason& reason)
{
    return reason.code == ReasonCode::NotChecked || reason.code == ReasonCode::StepsUnfinished
        || reason.code == ReasonCode::UsedSince;
}

Mark markOf(const Reason& reason)
{
    if (unseen(reason))
        return Mark::NotChecked;
    return reason.severity == Severity::Critical ? Mark::GapCritical : Mark::Gap;
}

/** One reason as a row: the gap's owner and time when it has one. */
ActionRow rowOf(const Ward& ward, const Checklist& checklist, const Reason& reason)
{
    const ReasonText text(ward.language());
    const TimeText times = ward.times();
    const auto position = checklist.position(reason.item);
    const Item* item = position ? &checklist.item(*position) : nullptr;
    ActionRow row{.mark = markOf(reason),
        .title = text.title(reason, item),
        .subtitle = text.why(reason, item),
        .what = item != nullptr ? ward.language().wording(unseen(reason) ? item->help : item->whenNotMet)
                                : QString(),
        .who = {},
        .by = {},
        .byAside = {}};
    if (reason.readyAt) {
        row.by = times.moment(*reason.readyAt, ward.now());
        row.byAside = TimeText::span(*reason.readyAt - ward.now());
        return row;
    }
    if (!ward.view() || row.mark == Mark::NotChecked)
        return row;
    const auto& gaps = ward.view()->gaps;
    const auto gap
        = std::find_if(gaps.begin(), gaps.end(), [&](const Gap& g) { return g.item == reason.item; });
    if (gap != gaps.end()) {
        row.who = qs(gap->owner);
        row.by = times.moment(gap->due, ward.now());
    }
    return row;
}

QString sentenceOf(const Ward& ward, const Walk& walk, Instant at)
{
    //: %1 what was walked, %2 a time
    return ResultPane::tr("**%1** is done, finished %2.")
        .arg(RoundText::title(walk.draft().kind, walk.draft().shift), ward.times().moment(at, ward.now()));
}

}

ResultPane::ResultPane(const Ward& ward, const Walk& walk, const RecordId& id, Instant at, QWidget* parent)
    : QWidget(parent)
    , m_see(new QPushButton(tr("See This shift")))
{
    const Theme& theme = themeOf(*this);
    const Verdict verdict = walk.verdict(at);
    auto* banner = new VerdictBanner;
    banner->setObjectName(QStringLiteral("resultBanner"));
    banner->setVerdict(RoundText::state(verdict.state), sentenceOf(ward, walk, at));
    auto* table = new ActionTable;
    table->setObjectName(QStringLiteral("resultTable"));
    table->setEmptyText(tr("Nothing is missing."));
    int more = 0; // what nobody has seen and is not critical stands in one line
    std::vector<ActionRow> rows;
    for (const Reason& reason : verdict.reasons) {
        if (unseen(reason) && reason.severity != Severity::Critical)
            ++more;
        else
            rows.push_back(rowOf(ward, walk.checklist(), reason));
    }
    table->setRows(rows);
    auto* rest = new WrapLabel(tr("%n lesser item(s) were not seen.", nullptr, more), TextRole::Small);
    rest->setTone(Tone::Soft);
    auto* saved = new WrapLabel(tr("%1. Saved as record %2 of station %3…")
                                    .arg(VerdictText::figures(verdict))
                                    .arg(id.seq)
                                    .arg(qs(id.station).left(shownOfStation)),
        TextRole::Small);
    saved->setTone(Tone::Hint);
    saved->setObjectName(QStringLiteral("savedLine"));
    m_see->setProperty("primary", true);
    m_see->setObjectName(QStringLiteral("seeShiftButton"));
    auto* another = new QPushButton(tr("Another check"));
    another->setObjectName(QStringLiteral("anotherButton"));
    auto* buttons = new FoldingRow;
    buttons->setSpacing(theme.space(Space::Near));
    for (QPushButton* button : {m_see, another}) {
        button->installEventFilter(this);
        buttons->addWidget(button);
    }
    buttons->addWidget(new WrapLabel, 1);
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    column->addWidget(banner);
    column->addWidget(saved);
    column->addWidget(buttons);
    column->addWidget(table);
    column->addWidget(rest);
    rest->setVisible(more > 0); // not before it has a parent: it would be a window
    column->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(body);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);
    connect(m_see, &QPushButton::clicked, this, &ResultPane::seeShiftWanted);
    connect(another, &QPushButton::clicked, this, &ResultPane::anotherWanted);
}

void ResultPane::takeFocus() { m_see->setFocus(Qt::TabFocusReason); }

bool ResultPane::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress) {
        const auto& key = *static_cast<QKeyEvent*>(event);
        if ((key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) && !key.isAutoRepeat()) {
            static_cast<QPushButton*>(watched)->click();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}
