// SPDX-License-Identifier: MIT
#include "ui/pages/gaps/gapeditor.h"

#include "ui/pages/gaps/gaptext.h"
#include "ui/pages/panelfields.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

GapEditor::GapEditor(Ward& ward, QWidget* parent)
    : Sheet({}, parent)
    , m_ward(ward)
    , m_life(new WrapLabel)
    , m_owner(new QLineEdit)
    , m_due(new QComboBox)
    , m_measure(new QLineEdit)
    , m_remark(new QLineEdit)
    , m_keep(new QPushButton(tr("Keep")))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    m_owner->setObjectName(QStringLiteral("ownerEdit"));
    m_owner->setMaxLength(static_cast<int>(maxOwnerLength));
    m_due->setObjectName(QStringLiteral("dueComboBox"));
    m_remark->setObjectName(QStringLiteral("remarkEdit"));
    m_remark->setMaxLength(static_cast<int>(maxRemarkLength));
    m_remark->setPlaceholderText(tr("Nothing about a patient"));
    m_measure->setObjectName(QStringLiteral("measureEdit"));
    m_measure->setMaxLength(static_cast<int>(maxRemarkLength));
    m_measure->setPlaceholderText(tr("For example: the spare from theatre"));
    m_keep->setObjectName(QStringLiteral("keepButton"));
    m_keep->setProperty("primary", true);
    content().addWidget(m_life);
    addField(tr("Who mends it"), m_owner);
    addField(tr("By when"), m_due);
    addField(tr("What helps until then"), m_measure);
    addField(tr("Remark"), m_remark);
    content().addWidget(m_keep, 0, Qt::AlignLeft);
    m_recheck = makeDeed("recheckItemButton", &GapEditor::recheck);
    m_mend = makeDeed("mendButton", &GapEditor::mend);
    m_verify = makeDeed("verifyButton", &GapEditor::verify);
    m_said->setObjectName(QStringLiteral("gapSaid"));
    m_life->setObjectName(QStringLiteral("gapLife"));
    content().addWidget(m_said);
    m_said->setTone(Tone::Soft);
    connect(m_keep, &QPushButton::clicked, this, &GapEditor::keep);
    for (QLineEdit* edit : {m_owner, m_measure, m_remark})
        connect(edit, &QLineEdit::returnPressed, this, &GapEditor::keep);
    connect(&m_ward, &Ward::actorChanged, this, &GapEditor::showDeeds);
    setGap(std::nullopt);
}

QPushButton* GapEditor::makeDeed(const char* name, void (GapEditor::*deed)())
{
    auto* button = new QPushButton;
    button->setObjectName(QLatin1String(name));
    content().addWidget(button, 0, Qt::AlignLeft);
    connect(button, &QPushButton::clicked, this, deed);
    return button;
}

void GapEditor::addField(const QString& name, QWidget* field)
{
    WrapLabel* const label = cradlepost::addField(*this, name, field);
    m_fields.insert(m_fields.end(), {label, field});
}

void GapEditor::setGap(const std::optional<Gap>& gap)
{
    const bool same = gap && m_gap && gap->item == m_gap->item && gap->nth == m_gap->nth;
    m_gap = gap;
    const bool open = gap && gap->isOpen();
    for (QWidget* field : m_fields)
        field->setVisible(open);
    m_keep->setVisible(open);
    if (!same)
        m_said->setText({});
    m_said->setVisible(!m_said->text().isEmpty());
    showDeeds();
    if (!gap) {
        setTitle(tr("No gap chosen"));
        m_life->setText(tr("Choose a gap to say who mends it and by when."));
        return;
    }
    const GapText text(m_ward);
    setTitle(text.title(*gap));
    m_life->setText(text.life(*gap));
    fillFields(*gap);
}

void GapEditor::fillFields(const Gap& gap)
{
    m_owner->setText(qs(gap.owner));
    QStringList known;
    for (const Person& person : m_ward.store().people(m_ward.unit()).value_or(std::vector<Person>()))
        known << qs(person.initials);
    auto* completer = new QCompleter(known, m_owner);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    m_owner->setCompleter(completer);
    m_measure->setText(qs(gap.measure));
    m_remark->setText(qs(gap.remark));
    fillDue(gap);
}

/** What can be done to the gap as it stands, by who is in charge; the keys work in the list of open gaps. */
void GapEditor::showDeeds()
{
    const bool open = m_gap && m_gap->isOpen();
    const QString who = m_ward.actor().empty() ? tr("me") : qs(m_ward.actor());
    const bool walked = m_ward.view() && m_ward.view()->standing;
    m_recheck->setText(tr("Re-check this item · R"));
    m_recheck->setVisible(open && walked);
    m_mend->setText(m_gap && !m_gap->mendedBy.empty() ? tr("Not mended after all · M") : tr("Mended by %1 · M").arg(who));
    m_mend->setVisible(open);
    m_verify->setText(tr("Looked at by %1 · V").arg(who));
    m_verify->setVisible(m_gap && m_gap->wantsVerifying());
}

void GapEditor::fillDue(const Gap& gap)
{
    using namespace std::chrono;
    const Instant now = m_ward.now();
    const TimeText times = m_ward.times();
    m_due->clear();
    const auto add = [&](const QString& name, Instant due) {
        m_due->addItem(tr("%1 · %2").arg(times.moment(due, now), name), qlonglong(toMs(due)));
    };
    add(tr("as it is"), gap.due);
    if (m_ward.view())
        add(tr("end of this shift"), m_ward.view()->shift.ends);
    add(tr("in 1 hour"), now + hours(1));
    add(tr("in 1 day"), now + hours(24));
    add(tr("in 3 days"), now + hours(72));
    add(tr("in 7 days"), now + hours(24 * 7));
    add(tr("in 30 days"), now + hours(24 * 30));
}

void GapEditor::focusOwner()
{
    const bool open = m_gap && m_gap->isOpen();
    QWidget* first = open ? static_cast<QWidget*>(m_owner) : m_verify;
    first->setFocus(Qt::OtherFocusReason);
}

GapAction GapEditor::blank() const
{
    return {.item = m_gap->item, .nth = m_gap->nth, .owner = {}, .due = {}, .remark = {}};
}

void GapEditor::recheck()
{
    if (m_gap && m_gap->isOpen())
        Q_EMIT recheckWanted(m_gap->item);
}

void GapEditor::mend()
{
    if (!m_gap || !m_gap->isOpen())
        return;
    GapAction action = blank();
    action.mended = m_gap->mendedBy.empty() ? m_ward.actor() : std::string();
    act(action);
}

void GapEditor::verify()
{
    if (!m_gap || !m_gap->wantsVerifying())
        return;
    GapAction action = blank();
    action.verified = m_ward.actor();
    act(action);
}

void GapEditor::keep()
{
    if (!m_gap)
        return;
    GapAction action = blank();
    if (const std::string owner = m_owner->text().trimmed().toStdString(); owner != m_gap->owner)
        action.owner = owner;
    if (const Instant due = fromMs(m_due->currentData().toLongLong()); due != m_gap->due)
        action.due = due;
    if (const std::string measure = m_measure->text().trimmed().toStdString(); measure != m_gap->measure)
        action.measure = measure;
    if (const std::string remark = m_remark->text().trimmed().toStdString(); remark != m_gap->remark)
        action.remark = remark;
    if (action.owner || action.due || action.measure || action.remark)
        act(action);
}

void GapEditor::act(const GapAction& action)
{
    const bool byName = action.verified || (action.mended && m_gap->mendedBy.empty());
    Result<void> done = fail(ErrorCode::InvalidArgument, "nobody is named");
    if (!byName || !m_ward.actor().empty())
        done = m_ward.act(action);
    m_said->setTone(done ? Tone::Soft : Tone::Warning);
    if (done)
        m_said->setText(tr("Kept."));
    else if (byName && m_ward.actor().empty())
        m_said->setText(tr("First choose who is in charge, at the top."));
    else
        m_said->setText(ErrorText::told(done.error()));
    m_said->setVisible(true);
}

}
