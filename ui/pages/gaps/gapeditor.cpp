// SPDX-License-Identifier: MIT
#include "ui/pages/gaps/gapeditor.h"

#include "ui/pages/gaps/gaptext.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QComboBox>
#include <QCompleter>
#include <QLabel>
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
    m_keep->setObjectName(QStringLiteral("keepButton"));
    m_keep->setProperty("primary", true);
    content().addWidget(m_life);
    addField(tr("Who mends it"), m_owner);
    addField(tr("By when"), m_due);
    addField(tr("Remark"), m_remark);
    content().addWidget(m_keep, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    m_said->setTone(Tone::Soft);
    connect(m_keep, &QPushButton::clicked, this, &GapEditor::keep);
    for (QLineEdit* edit : {m_owner, m_remark})
        connect(edit, &QLineEdit::returnPressed, this, &GapEditor::keep);
    setGap(std::nullopt);
}

void GapEditor::addField(const QString& name, QWidget* field)
{
    auto* label = new QLabel(name);
    label->setFont(themeOf(*this).font(TextRole::Small));
    label->setBuddy(field);
    field->setAccessibleName(name);
    content().addWidget(label);
    content().addWidget(field);
    m_fields.insert(m_fields.end(), {label, field});
}

void GapEditor::setGap(const std::optional<Gap>& gap)
{
    const bool same = gap && m_gap && gap->item == m_gap->item && gap->nth == m_gap->nth;
    m_gap = gap;
    for (QWidget* field : m_fields)
        field->setVisible(gap.has_value());
    m_keep->setVisible(gap.has_value());
    if (!same)
        m_said->setText({});
    m_said->setVisible(!m_said->text().isEmpty());
    if (!gap) {
        setTitle(tr("No gap chosen"));
        m_life->setText(tr("Choose a gap to say who mends it and by when."));
        return;
    }
    const GapText text(m_ward);
    setTitle(text.title(*gap));
    m_life->setText(text.life(*gap));
    m_owner->setText(qs(gap->owner));
    QStringList known;
    for (const Person& person : m_ward.store().people(m_ward.unit()).value_or(std::vector<Person>()))
        known << qs(person.initials);
    auto* completer = new QCompleter(known, m_owner);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    m_owner->setCompleter(completer);
    m_remark->setText(qs(gap->remark));
    fillDue(*gap);
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

void GapEditor::focusOwner() { m_owner->setFocus(Qt::OtherFocusReason); }

void GapEditor::keep()
{
    if (!m_gap)
        return;
    GapAction action {.item = m_gap->item, .nth = m_gap->nth, .owner = {}, .due = {}, .remark = {}};
    if (const std::string owner = m_owner->text().trimmed().toStdString(); owner != m_gap->owner)
        action.owner = owner;
    if (const Instant due = fromMs(m_due->currentData().toLongLong()); due != m_gap->due)
        action.due = due;
    if (const std::string remark = m_remark->text().trimmed().toStdString(); remark != m_gap->remark)
        action.remark = remark;
    if (!action.owner && !action.due && !action.remark)
        return;
    const auto done = m_ward.act(action);
    m_said->setTone(done ? Tone::Soft : Tone::Warning);
    m_said->setText(done ? tr("Kept.") : ErrorText::sentence(done.error()) + QLatin1Char(' ') + qs(done.error().message));
    m_said->setVisible(true);
}

}
