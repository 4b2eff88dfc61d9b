// SPDX-License-Identifier: MIT
#include "ui/pages/round/putrightpane.h"

#include "core/round/amendment.h"
#include "ui/pages/round/roundtext.h"
#include "ui/pages/round/whorow.h"
#include "ui/text/errortext.h"
#include "ui/text/reasontext.h"
#include "ui/text/wardtext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

Mark markOf(Outcome outcome, Severity severity)
{
    switch (outcome) {
    case Outcome::Met:
        return Mark::Met;
    case Outcome::Gap:
        return severity == Severity::Critical ? Mark::GapCritical : Mark::Gap;
    case Outcome::DoesNotApply:
        return Mark::DoesNotApply;
    case Outcome::NotChecked:
        break;
    }
    return Mark::NotChecked;
}

/** "Gap: 23.1 °C", "Met" */
QString seen(const Ward& ward, const Item& item, const Answer& answer, const JudgeContext& context)
{
    const ReasonText text(ward.language());
    const Judgement judged = judge(item, answer, context);
    QString more = text.answer(item, answer, ward.times());
    if (more.isEmpty() && judged.outcome == Outcome::Gap && judged.reason)
        more = text.why(*judged.reason, &item);
    const QString outcome = WardText::outcome(judged.outcome);
    return more.isEmpty() ? outcome : PutRightPane::tr("%1: %2").arg(outcome, more);
}

std::vector<ActionRow> changesOf(const Ward& ward, const WalkInHand& hand)
{
    std::vector<ActionRow> rows;
    const JudgeContext context = hand.walk().context(hand.reference());
    const auto& before = hand.recorded()->round.answers;
    for (std::size_t at = 0; at < before.size(); ++at) {
        if (hand.walk().answer(at) == before[at])
            continue;
        const Item& item = hand.checklist().item(at);
        rows.push_back({.mark = markOf(hand.judged(at).outcome, item.severity),
            .title = ward.language().wording(item.label),
            .subtitle = {},
            .what = seen(ward, item, before[at], context),
            .who = seen(ward, item, hand.walk().answer(at), context),
            .by = {},
            .byAside = {}});
    }
    return rows;
}

}

PutRightPane::PutRightPane(Ward& ward, WalkInHand& hand, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_hand(hand)
    , m_reason(new QLineEdit)
    , m_who(new WhoRow(ward))
    , m_said(new WrapLabel)
{
    const Theme& theme = themeOf(*this);
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    auto* title = new WrapLabel(intro(), TextRole::Finding);
    title->setWeight(TextWeight::SemiBold);
    title->setObjectName(QStringLiteral("putRightIntro"));
    auto* changes = new ActionTable;
    changes->setObjectName(QStringLiteral("changesTable"));
    changes->setHeaders({tr("What is put right"), tr("Recorded"), tr("Now"), QString()});
    changes->setEmptyText(tr("No answer is different from what was recorded."));
    changes->setRows(changesOf(ward, hand));
    m_reason->setObjectName(QStringLiteral("reasonEdit"));
    m_reason->setMaxLength(static_cast<int>(maxAmendmentReason));
    m_reason->setPlaceholderText(tr("Nothing about a patient"));
    m_reason->setAccessibleName(tr("Why it is put right"));
    m_said->setObjectName(QStringLiteral("putRightSaid"));
    m_said->setTone(Tone::Warning);
    column->addWidget(title);
    column->addWidget(
        new WrapLabel(tr("The first record stays as it is. The correction stands beside it with its "
                         "reason, and from then on it is what counts.")));
    column->addWidget(changes);
    column->addWidget(new WrapLabel(tr("Why it is put right"), TextRole::Small));
    column->addWidget(m_reason);
    column->addWidget(new WrapLabel(tr("Who puts it right"), TextRole::Small));
    column->addWidget(m_who);
    column->addWidget(m_said);
    column->addWidget(makeButtons());
    column->addStretch(1);
    m_said->hide();
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidgetResizable(true);
    scroll->setWidget(body);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);
    connect(m_reason, &QLineEdit::returnPressed, this, &PutRightPane::record);
}

QWidget* PutRightPane::makeButtons()
{
    m_record = new QPushButton(tr("Record the correction"));
    m_record->setObjectName(QStringLiteral("recordCorrectionButton"));
    m_record->setProperty("primary", true);
    m_record->setEnabled(m_hand.hasChanged());
    m_back = new QPushButton(tr("Back to the items"));
    m_back->setObjectName(QStringLiteral("backToItemsButton"));
    auto* giveUp = new QPushButton(tr("Leave it as it was recorded"));
    giveUp->setObjectName(QStringLiteral("leaveRecordedButton"));
    auto* buttons = new FoldingRow;
    buttons->setSpacing(themeOf(*this).space(Space::Near));
    for (QPushButton* button : {m_record, m_back, giveUp})
        buttons->addWidget(button);
    buttons->addWidget(new WrapLabel, 1);
    connect(m_record, &QPushButton::clicked, this, &PutRightPane::record);
    connect(m_back, &QPushButton::clicked, this, &PutRightPane::backWanted);
    connect(giveUp, &QPushButton::clicked, this, &PutRightPane::leaveWanted);
    return buttons;
}

QString PutRightPane::intro() const
{
    const Draft& draft = m_hand.walk().draft();
    //: %1 "Round of the night shift", %2 "M. R., begun 19:12"
    QString text = tr("%1, %2: put right.")
                       .arg(RoundText::title(draft.kind, draft.shift),
                           RoundText::walker(draft, m_ward.times(), m_ward.now()));
    const auto earlier = m_hand.recorded()->amendments.size();
    if (earlier > 0)
        text += QLatin1Char(' ')
            + tr("It was put right %n time(s) before.", nullptr, static_cast<int>(earlier));
    return text;
}

void PutRightPane::takeFocus()
{
    if (m_hand.hasChanged())
        m_reason->setFocus(Qt::TabFocusReason);
    else
        m_back->setFocus(Qt::TabFocusReason);
}

void PutRightPane::record()
{
    if (!m_hand.hasChanged())
        return;
    m_who->take();
    const std::string reason = m_reason->text().simplified().toStdString();
    const auto say = [this](const QString& text) {
        m_said->setText(text);
        m_said->show();
    };
    if (!checkAmendmentReason(reason)) {
        m_reason->setFocus(Qt::OtherFocusReason);
        return say(tr("Say in a few words why it is put right."));
    }
    if (m_ward.actor().empty()) {
        m_who->takeFocus();
        return say(tr("Say who puts it right: choose or type initials."));
    }
    const auto id = m_ward.putRight(*m_hand.recorded(), m_hand.walk(), reason);
    if (!id)
        return say(ErrorText::told(id.error()));
    Q_EMIT recorded();
}

}
