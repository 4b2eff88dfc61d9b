// SPDX-License-Identifier: MIT
#include "ui/pages/setup/escalationsheet.h"

#include "core/gap/escalationrecord.h"
#include "ui/pages/gaps/gaptext.h"
#include "ui/pages/panelfields.h"
#include "ui/pages/stores/initialsedit.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int step = 25;
}

EscalationSheet::EscalationSheet(Ward& ward, QWidget* parent)
    : Sheet(tr("Who hears of a gap that lasts"), parent)
    , m_ward(ward)
    , m_who(new InitialsEdit(ward))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    auto* about = new WrapLabel(
        tr("In percent of the time that there is to mend it. Of a gap found at 8:00 and due at 20:00 they "
           "hear at 50 % by 14:00, at 100 % when it is due."),
        TextRole::Small);
    about->setTone(Tone::Soft);
    content().addWidget(about);
    for (std::size_t at = 0; at < who.size(); ++at) {
        auto* box = new QSpinBox;
        box->setRange(0, mostEscalationPercent);
        box->setSingleStep(step);
        box->setSpecialValueText(tr("never"));
        box->setSuffix(tr(" %", "behind a number"));
        box->setLocale(m_ward.language().locale());
        box->setObjectName(QStringLiteral("escalation-%1").arg(QLatin1String(codeName(who[at]))));
        m_percents[at] = box;
        const QString name = GapText::person(who[at]);
        addField(*this, name.left(1).toUpper() + name.mid(1), box);
    }
    m_who->setObjectName(QStringLiteral("escalationWhoEdit"));
    m_said->setObjectName(QStringLiteral("escalationSaid"));
    addField(*this, tr("Your initials"), m_who);
    auto* button = new QPushButton(tr("Keep"));
    button->setObjectName(QStringLiteral("keepEscalationButton"));
    content().addWidget(button, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    m_said->hide();
    connect(button, &QPushButton::clicked, this, &EscalationSheet::keep);
    connect(m_who, &QLineEdit::returnPressed, this, &EscalationSheet::keep);
    connect(&m_ward, &Ward::changed, this, [this, unit = m_ward.unit()]() mutable {
        if (unit != m_ward.unit()) {
            unit = m_ward.unit();
            show();
            load();
        }
    });
    if (m_ward.view())
        load();
    else
        hide(); // a ward comes first
}

void EscalationSheet::load()
{
    for (std::size_t at = 0; at < who.size(); ++at) {
        const auto& levels = m_ward.escalation();
        const auto level = std::find_if(
            levels.begin(), levels.end(), [&](const EscalationLevel& one) { return one.to == who[at]; });
        m_percents[at]->setValue(level == levels.end() ? 0 : level->percent);
    }
}

void EscalationSheet::keep()
{
    std::vector<EscalationLevel> levels;
    for (std::size_t at = 0; at < who.size(); ++at) {
        if (m_percents[at]->value() > 0)
            levels.push_back({.to = who[at], .percent = m_percents[at]->value()});
    }
    if (!m_who->take())
        return say(tr("Say who you are: your initials."), true);
    if (const auto done = m_ward.store().setEscalation(m_ward.unit(), levels, m_ward.actor()); !done)
        return say(ErrorText::told(done.error()), true);
    m_ward.refresh();
    say(tr("Kept."), false);
}

void EscalationSheet::say(const QString& text, bool wrong)
{
    m_said->setTone(wrong ? Tone::Warning : Tone::Soft);
    m_said->setText(text);
    m_said->show();
}

}
