// SPDX-License-Identifier: MIT
#include "ui/pages/round/resultpane.h"

#include "ui/pages/round/roundtext.h"
#include "ui/text/reasontext.h"
#include "ui/text/verdicttext.h"
#include "ui/text/wardtext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/inktext.h"
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
ActionRow rowOf(const Ward& ward, const Checklist& checklist, const Reason& reason, bool isSpotCheck)
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
    if (!ward.view() || row.mark == Mark::NotChecked || isSpotCheck)
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
    const Draft& draft = walk.draft();
    if (draft.kind == RoundKind::SpotCheck)
        //: %1 the words "Spot check", %2 how many of the items were looked at
        return ResultPane::tr("**%1** is done: %2 of %n item(s) looked at. It changes no verdict and no gap.",
            nullptr, static_cast<int>(draft.asked.size()))
            .arg(RoundText::title(draft.kind, draft.shift))
            .arg(RoundText::answered(draft));
    //: %1 what was walked, %2 a time
    return ResultPane::tr("**%1** is done, finished %2.")
        .arg(RoundText::title(draft.kind, draft.shift), ward.times().moment(at, ward.now()));
}

/** A spot check has no verdict: it is held against the round in the review of the month. */
QWidget* bannerOf(RoundKind kind, const Verdict& verdict, const QString& sentence)
{
    if (kind == RoundKind::SpotCheck) {
        auto* words = new WrapLabel(plainText(sentence), TextRole::Body);
        words->setObjectName(QStringLiteral("spotCheckDone"));
        return words;
    }
    auto* banner = new VerdictBanner;
    banner->setObjectName(QStringLiteral("resultBanner"));
    banner->setVerdict(RoundText::state(verdict.state), sentence);
    return banner;
}

}

ResultPane::ResultPane(const Ward& ward, const Walk& walk, const RecordId& id, Instant at, QWidget* parent)
    : QWidget(parent)
    , m_see(new QPushButton(tr("See This shift")))
{
    const Theme& theme = themeOf(*this);
    const Verdict verdict = walk.verdict(at);
    const bool isSpotCheck = walk.draft().kind == RoundKind::SpotCheck;
    QWidget* banner = bannerOf(walk.draft().kind, verdict, sentenceOf(ward, walk, at));
    auto* table = new ActionTable;
    table->setObjectName(QStringLiteral("resultTable"));
    table->setEmptyText(tr("Nothing is missing."));
    int more = 0; // what nobody has seen and is not critical stands in one line
    std::vector<ActionRow> rows;
    for (const Reason& reason : verdict.reasons) {
        if (unseen(reason) && (isSpotCheck || reason.severity != Severity::Critical))
            ++more;
        else
            rows.push_back(rowOf(ward, walk.checklist(), reason, isSpotCheck));
    }
    table->setRows(rows);
    auto* rest = new WrapLabel(tr("%n lesser item(s) were not seen.", nullptr, more), TextRole::Small);
    rest->setTone(Tone::Soft);
    auto* saved = new WrapLabel(
        tr("%1. Saved as record %2 of station %3…")
            .arg(isSpotCheck ? WardText::roundKind(RoundKind::SpotCheck) : VerdictText::figures(verdict))
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
    rest->setVisible(more > 0 && !isSpotCheck); // not before it has a parent: it would be a window
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
