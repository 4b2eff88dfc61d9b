// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/fieldeditor.h"

#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QHBoxLayout>
#include <QSignalBlocker>

namespace cradlepost {

namespace {
constexpr int companyWidth = 150; ///< one width for all, so that the fields of a section stand in line
}

FieldEditor::FieldEditor(const Item& item, const CardScene& scene, ValueField* field, QWidget* parent)
    : AnswerEditor(item, scene, parent)
    , m_field(field)
    , m_company(new WrapLabel({}, TextRole::Small))
{
    const Theme& theme = themeOf(*this);
    m_field->setObjectName(QStringLiteral("valueField"));
    m_company->setTone(Tone::Hint);
    m_company->setFixedWidth(theme.px(companyWidth));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.space(Space::Near));
    row->addStretch(1);
    row->addWidget(m_field, 0, Qt::AlignVCenter);
    row->addWidget(m_company, 0, Qt::AlignVCenter);
    connect(m_field, &QLineEdit::textChanged, this, &AnswerEditor::edited);
}

EditState FieldEditor::state() const
{
    const QString typed = m_field->text().trimmed();
    if (typed.isEmpty())
        return m_kept.isEmpty() ? EditState::Empty : EditState::Cleared;
    return typed == m_kept ? EditState::AsKept : EditState::Changed;
}

void FieldEditor::setAnswer(const Answer& answer, const Judgement& judgement)
{
    m_kept = typedForm(answer);
    const QSignalBlocker quiet(m_field);
    m_field->setText(m_kept);
    if (m_field->hasFocus())
        m_field->selectAll();
    setCompany(company(answer, judgement));
}

void FieldEditor::setCompany(const QString& text) { m_company->setText(text); }

QWidget* FieldEditor::field() { return m_field; }

void FieldEditor::begin()
{
    if (state() != EditState::Changed)
        m_field->selectAll();
}

}
