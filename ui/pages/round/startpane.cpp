// SPDX-License-Identifier: MIT
#include "ui/pages/round/startpane.h"

#include "ui/pages/round/roundtext.h"
#include "ui/pages/round/whorow.h"
#include "ui/text/errortext.h"
#include "ui/text/verdicttext.h"
#include "ui/text/wardtext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/verdictbanner.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>

namespace cradlepost {

namespace {
QPushButton* makeButton(const char* name)
{
    auto* button = new QPushButton;
    button->setObjectName(QLatin1String(name));
    return button;
}
}

StartPane::StartPane(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_banner(new VerdictBanner)
    , m_fault(new WrapLabel)
    , m_who(new WhoRow(ward))
    , m_whoTitle(new WrapLabel(tr("Who walks it"), TextRole::Small))
{
    const Theme& theme = themeOf(*this);
    m_banner->setObjectName(QStringLiteral("startBanner"));
    m_fault->setTone(Tone::Warning);
    m_fault->setObjectName(QStringLiteral("startFault"));
    m_whoTitle->setTone(Tone::Soft);
    m_whoTitle->setWeight(TextWeight::SemiBold);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    column->addWidget(m_banner);
    column->addSpacing(theme.space(Space::Near));
    column->addWidget(m_whoTitle);
    column->addWidget(m_who);
    column->addSpacing(theme.space(Space::Near));
    column->addWidget(makeButtons());
    column->addWidget(m_fault);
    column->addWidget(makePutAside());
    column->addSpacing(theme.space(Space::Near));
    auto* caution = new WrapLabel(WardText::neverDelayCare(), TextRole::Small);
    caution->setTone(Tone::Hint);
    column->addWidget(caution);
    column->addStretch(1);
    m_fault->hide();
    connect(&m_ward, &Ward::changed, this, &StartPane::refresh);
    connect(&m_ward, &Ward::actorChanged, this, [this] { setFault({}); });
    connect(m_who, &WhoRow::chosen, this, &StartPane::takeFocus);
    connect(m_who, &WhoRow::entered, this, [this] { begin(m_primaryKind); });
    refresh();
}

QWidget* StartPane::makeButtons()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    m_primary = makeButton("beginRoundButton");
    m_primary->setProperty("primary", true);
    m_recheck = makeButton("recheckButton");
    m_preBirth = makeButton("preBirthButton");
    m_afterUse = makeButton("afterUseButton");
    m_spotCheck = makeButton("spotCheckButton");
    m_spotCheck->setToolTip(tr("Look at things again yourself, without seeing what the round said of them."));
    m_spotCheck->setAccessibleDescription(m_spotCheck->toolTip());
    connect(m_primary, &QPushButton::clicked, this, [this] { begin(m_primaryKind); });
    connect(m_recheck, &QPushButton::clicked, this, [this] { begin(RoundKind::Recheck); });
    connect(m_preBirth, &QPushButton::clicked, this, [this] { begin(RoundKind::PreBirth); });
    connect(m_afterUse, &QPushButton::clicked, this, [this] { begin(RoundKind::AfterUse); });
    connect(m_spotCheck, &QPushButton::clicked, this, [this] { begin(RoundKind::SpotCheck); });
    for (QPushButton* button : {m_primary, m_recheck, m_preBirth, m_afterUse, m_spotCheck}) {
        button->installEventFilter(this);
        row->addWidget(button);
    }
    row->addWidget(new WrapLabel, 1);
    return row;
}

QWidget* StartPane::makePutAside()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    m_asideWords = new WrapLabel;
    m_asideWords->setTone(Tone::Warning);
    m_asideButton = makeButton("putAsideButton");
    m_keepButton = makeButton("keepDraftButton");
    m_keepButton->setText(tr("Keep it"));
    row->addWidget(m_asideWords);
    row->addWidget(m_keepButton);
    row->addWidget(m_asideButton);
    row->addWidget(new WrapLabel, 1);
    for (QPushButton* button : {m_asideButton, m_keepButton})
        button->installEventFilter(this);
    connect(m_asideButton, &QPushButton::clicked, this, &StartPane::putAside);
    connect(m_keepButton, &QPushButton::clicked, this, [this] {
        m_askingAside = false;
        showButtons();
        takeFocus();
    });
    m_aside = row;
    return row;
}

const Draft* StartPane::draft(RoundKind kind) const
{
    if (!m_ward.view())
        return nullptr;
    const auto& drafts = m_ward.view()->drafts;
    const auto found
        = std::find_if(drafts.begin(), drafts.end(), [&](const Draft& d) { return d.kind == kind; });
    return found == drafts.end() ? nullptr : &*found;
}

bool StartPane::isDone() const
{
    const auto& view = m_ward.view();
    return view && view->standing && view->standing->round.shift.slot() == view->shift.slot();
}

void StartPane::refresh()
{
    m_who->refresh();
    showState();
    showButtons();
}

QString StartPane::sentence() const
{
    const auto& view = *m_ward.view();
    const TimeText times = m_ward.times();
    if (const Draft* left = draft(RoundKind::Shift)) {
        const QString late = RoundText::late(*left, view.shift, times);
        const QString begun = tr("**%1** is begun: %2 of %n item(s) answered, by %3.", nullptr,
            static_cast<int>(left->asked.size()))
                                  .arg(RoundText::title(RoundKind::Shift, left->shift))
                                  .arg(RoundText::answered(*left))
                                  .arg(RoundText::walker(*left, times, m_ward.now()));
        return late.isEmpty() ? begun : begun + QLatin1Char(' ') + late;
    }
    if (isDone())
        return tr("**%1** is done. %2")
            .arg(RoundText::title(RoundKind::Shift, view.shift),
                VerdictText(m_ward.language(), times)
                    .sentence(view.adopted.checklist, *view.standing, m_ward.now()));
    return tr("**%1**: %2. %n item(s) in %3.", nullptr, static_cast<int>(view.adopted.checklist.itemCount()))
        .arg(RoundText::title(RoundKind::Shift, view.shift), times.shift(view.shift),
            tr("%n section(s)", nullptr, static_cast<int>(view.adopted.checklist.sections.size())));
}

void StartPane::showState()
{
    const auto& view = m_ward.view();
    if (m_ward.fault() || !view) {
        const Error fault = m_ward.fault().value_or(Error{ErrorCode::NotFound, {}, {}});
        m_banner->setVerdict(
            VerdictState::NoRound, ErrorText::sentence(fault) + QLatin1Char(' ') + ErrorText::advice(fault));
        return;
    }
    const bool open = draft(RoundKind::Shift) != nullptr || !isDone();
    m_banner->setVerdict(
        open ? VerdictState::NoRound : RoundText::state(view->standing->verdict.state), sentence());
}

void StartPane::showButtons()
{
    const auto& view = m_ward.view();
    const bool usable = view.has_value() && !m_ward.fault();
    const bool missing = usable && view->standing && !view->standing->verdict.reasons.empty();
    m_primaryKind = RoundKind::PreBirth;
    if (draft(RoundKind::Shift) != nullptr || !isDone())
        m_primaryKind = RoundKind::Shift;
    else if (draft(RoundKind::AfterUse) != nullptr)
        m_primaryKind = RoundKind::AfterUse;
    else if (missing || draft(RoundKind::Recheck) != nullptr)
        m_primaryKind = RoundKind::Recheck;
    m_primary->setText(RoundText::begin(m_primaryKind, draft(m_primaryKind)));
    m_primary->setEnabled(usable);
    const auto show = [&](QPushButton* button, RoundKind kind, bool possible) {
        button->setText(RoundText::begin(kind, draft(kind)));
        button->setVisible(usable && possible && m_primaryKind != kind);
    };
    show(m_recheck, RoundKind::Recheck, missing || draft(RoundKind::Recheck) != nullptr);
    show(m_preBirth, RoundKind::PreBirth, true);
    show(m_afterUse, RoundKind::AfterUse, true);
    show(m_spotCheck, RoundKind::SpotCheck, true);
    const Draft* left = draft(m_primaryKind);
    m_aside->setVisible(usable && left != nullptr);
    m_asideWords->setVisible(m_askingAside);
    m_keepButton->setVisible(m_askingAside);
    m_asideButton->setText(m_askingAside ? tr("Drop it") : tr("Put it aside"));
    if (left != nullptr)
        m_asideWords->setText(
            tr("%n answer(s) are dropped and nothing is recorded.", nullptr, RoundText::answered(*left)));
}

void StartPane::putAside()
{
    if (!m_askingAside) {
        m_askingAside = true;
        showButtons();
        m_keepButton->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_askingAside = false;
    const auto dropped = m_ward.putAside(m_primaryKind);
    if (!dropped)
        setFault(
            ErrorText::sentence(dropped.error()) + QLatin1Char(' ') + ErrorText::advice(dropped.error()));
    refresh();
    takeFocus();
}

void StartPane::begin(RoundKind kind)
{
    if (!m_who->take() && draft(kind) == nullptr) {
        setFault(tr("First say who walks it: choose or type initials."));
        m_who->askForInitials();
        return;
    }
    setFault({});
    Q_EMIT beginWanted(kind);
}

void StartPane::setFault(const QString& text)
{
    m_fault->setText(text);
    m_fault->setVisible(!text.isEmpty());
}

void StartPane::takeFocus()
{
    const bool nobody = m_ward.actor().empty() && draft(m_primaryKind) == nullptr;
    nobody ? m_who->takeFocus() : m_primary->setFocus(Qt::TabFocusReason);
}

bool StartPane::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto& key = *static_cast<QKeyEvent*>(event);
    if ((key.key() != Qt::Key_Return && key.key() != Qt::Key_Enter) || key.isAutoRepeat())
        return QWidget::eventFilter(watched, event);
    static_cast<QPushButton*>(watched)->click();
    return true;
}

}
