// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/cylindereditor.h"

#include "ui/pages/round/cards/valuefield.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int letters = 6;
constexpr int flowLetters = 4;
}

CylinderEditor::CylinderEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : AnswerEditor(item, scene, parent)
    , m_gauge(new ValueField(QStringLiteral(".,"), letters))
    , m_unit(new WrapLabel({}, TextRole::Small))
    , m_size(new QComboBox)
    , m_flow(new ValueField(QStringLiteral(".,"), flowLetters))
    , m_minutes(new WrapLabel({}, TextRole::Small))
{
    buildSizes();
    m_gauge->setObjectName(QStringLiteral("gaugeField"));
    m_flow->setObjectName(QStringLiteral("flowField"));
    m_minutes->setObjectName(QStringLiteral("minutesLeft"));
    m_minutes->setTone(Tone::Soft);
    for (ValueField* field : {m_gauge, m_flow}) {
        field->setRing(true);
        connect(field, &QLineEdit::textChanged, this, &CylinderEditor::change);
    }
    connect(m_size, &QComboBox::currentIndexChanged, this, &CylinderEditor::change);
    auto* flowUnit = new WrapLabel(tr("L/min"), TextRole::Small);
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Apart));
    row->addWidget(labelled(tr("Gauge"), m_gauge, m_unit));
    row->addWidget(labelled(tr("Size"), m_size));
    row->addWidget(labelled(tr("Planned flow"), m_flow, flowUnit));
    row->addWidget(m_minutes, 1, Qt::AlignVCenter);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(row);
    setAnswer(NotChecked{}, {});
}

void CylinderEditor::buildSizes()
{
    for (const CylinderSize& one : rule().sizes)
        m_size->addItem(scene().language.wording(one.name), qs(one.id));
    m_size->setObjectName(QStringLiteral("sizeComboBox"));
    m_size->setAccessibleName(tr("Size of the cylinder"));
    m_size->setFocusPolicy(Qt::NoFocus); // keys stay with the gauge; s goes through the sizes
}

QWidget* CylinderEditor::labelled(const QString& text, QWidget* field, WrapLabel* behind)
{
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.space(Space::Close));
    auto* label = new WrapLabel(text, TextRole::Small);
    for (WrapLabel* one : {label, behind}) {
        if (one == nullptr)
            continue;
        one->setTone(Tone::Soft);
        one->setMinimumWidth(one->sizeHint().width());
    }
    row->addWidget(label, 0, Qt::AlignVCenter);
    row->addWidget(field, 0, Qt::AlignVCenter);
    if (behind != nullptr)
        row->addWidget(behind, 0, Qt::AlignVCenter);
    row->addStretch(1);
    if (auto* edit = qobject_cast<QLineEdit*>(field))
        edit->setAccessibleName(scene().language.wording(item().label) + QStringLiteral(", ") + text);
    return holder;
}

const CylinderSize& CylinderEditor::size() const
{
    return rule().sizes[static_cast<std::size_t>(std::max(0, m_size->currentIndex()))];
}

EditState CylinderEditor::state() const
{
    if (m_gauge->typed().empty())
        return m_kept ? EditState::Cleared : EditState::Empty;
    const auto typed = read();
    return m_kept && typed && std::get<CylinderRead>(*typed) == *m_kept ? EditState::AsKept
                                                                        : EditState::Changed;
}

Result<Answer> CylinderEditor::read() const
{
    const auto gauge = Decimal::parse(m_gauge->typed());
    if (!gauge)
        return tl::unexpected(gauge.error());
    const auto flow = Decimal::parse(m_flow->typed());
    if (!flow)
        return tl::unexpected(flow.error());
    const Answer answer = CylinderRead{.gauge = *gauge, .size = size().id, .flow = *flow};
    if (auto allowed = checkAnswer(item(), answer); !allowed)
        return tl::unexpected(allowed.error());
    return answer;
}

QString CylinderEditor::refusal() const
{
    const auto gauge = Decimal::parse(m_gauge->typed());
    const auto flow = Decimal::parse(m_flow->typed());
    if (!gauge)
        return tr("Type what the gauge shows, in %1.").arg(qs(size().unit));
    if (!flow || flow->thousandths <= 0)
        return tr("Type the planned flow in L/min, above 0.");
    if (gauge->thousandths >= 0 && gauge->thousandths <= size().fullPressure.thousandths)
        return tr("A flow of %1 L/min cannot be.").arg(m_flow->text());
    return tr("%1 %2 cannot be: full is %3. Read it again, and see that the size is right.")
        .arg(m_gauge->text(), qs(size().unit), qs(size().fullPressure.toString()));
}

void CylinderEditor::setAnswer(const Answer& answer, const Judgement& /*judgement*/)
{
    m_kept.reset();
    if (const auto* read = std::get_if<CylinderRead>(&answer))
        m_kept = *read;
    const QSignalBlocker quietGauge(m_gauge);
    const QSignalBlocker quietFlow(m_flow);
    const QSignalBlocker quietSize(m_size);
    m_gauge->setText(m_kept ? qs(m_kept->gauge.toString()) : QString());
    m_flow->setText(qs((m_kept ? m_kept->flow : rule().flow).toString()));
    m_size->setCurrentIndex(m_kept ? std::max(0, m_size->findData(qs(m_kept->size))) : 0);
    change();
}

void CylinderEditor::change()
{
    m_unit->setText(qs(size().unit));
    m_unit->setMinimumWidth(m_unit->sizeHint().width());
    const auto typed = read();
    if (typed) {
        const auto& cylinder = std::get<CylinderRead>(*typed);
        const auto minutes = cylinderMinutes(size(), cylinder.gauge, cylinder.flow);
        m_minutes->setText(tr("= %1 at %2 L/min · %3")
                               .arg(tr("%n min", "a length of time", static_cast<int>(minutes)),
                                   qs(cylinder.flow.toString()), limits()));
    } else {
        m_minutes->setText(limits());
    }
    Q_EMIT edited();
}

QWidget* CylinderEditor::field() { return m_gauge; }

void CylinderEditor::begin()
{
    if (!m_flow->hasFocus())
        m_gauge->selectAll();
}

void CylinderEditor::goToFlow(bool flow)
{
    ValueField* field = flow ? m_flow : m_gauge;
    field->setFocus(Qt::OtherFocusReason);
    field->selectAll();
}

bool CylinderEditor::takeKey(const QKeyEvent& event)
{
    switch (event.key()) {
    case Qt::Key_S:
        m_size->setCurrentIndex((m_size->currentIndex() + 1) % m_size->count());
        return true;
    case Qt::Key_F:
        goToFlow(!m_flow->hasFocus());
        return true;
    case Qt::Key_Backspace:
        if (!m_flow->hasFocus() || !m_flow->text().isEmpty())
            return false;
        goToFlow(false);
        return true;
    default:
        return false;
    }
}

QString CylinderEditor::keys() const { return tr("Keys: s for the size, f for the flow and back."); }

}
