// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/kiteditor.h"

#include "core/round/entry.h"
#include "ui/pages/round/cards/tileflow.h"
#include "ui/pages/round/cards/valuefield.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int letters = 6;
constexpr int partWidth = 120;
}

KitEditor::KitEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : AnswerEditor(item, scene, parent)
    , m_whole(new WrapLabel({}, TextRole::Small))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(themeOf(*this).space(Space::Close));
    auto* flow = new TileFlow;
    flow->setLeastWidth(partWidth);
    for (const KitPart& part : rule().parts)
        addPart(part, *flow);
    m_whole->setObjectName(QStringLiteral("wholeKits"));
    m_whole->setTone(Tone::Soft);
    column->addWidget(flow);
    column->addWidget(m_whole);
    showWhole();
}

void KitEditor::addPart(const KitPart& part, TileFlow& flow)
{
    auto* tile = new QWidget;
    auto* column = new QVBoxLayout(tile);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(themeOf(*this).space(Space::Tight));
    const QString name = scene().language.wording(part.label);
    auto* label = new WrapLabel(
        part.perKit == 1 ? name : tr("%1, %2 a kit").arg(name).arg(part.perKit), TextRole::Small);
    label->setTone(Tone::Soft);
    auto* field = new ValueField({}, letters);
    field->setRing(true);
    field->setAccessibleName(scene().language.wording(item().label) + QStringLiteral(", ") + label->text());
    field->setObjectName(QStringLiteral("part-%1").arg(qs(part.id)));
    column->addStretch(1);
    column->addWidget(label);
    column->addWidget(field);
    m_parts.push_back(field);
    flow.addTile(tile);
    connect(field, &QLineEdit::textChanged, this, [this] {
        showWhole();
        Q_EMIT edited();
    });
}

EditState KitEditor::state() const
{
    const bool nothing
        = std::all_of(m_parts.begin(), m_parts.end(), [](const ValueField* f) { return f->typed().empty(); });
    if (nothing)
        return m_kept ? EditState::Cleared : EditState::Empty;
    const auto typed = read();
    return m_kept && typed && std::get<KitCounted>(*typed) == *m_kept ? EditState::AsKept
                                                                      : EditState::Changed;
}

Result<Answer> KitEditor::read() const
{
    KitCounted counted;
    for (const ValueField* field : m_parts) {
        const auto pieces = readPieces(field->typed());
        if (!pieces)
            return tl::unexpected(pieces.error());
        counted.parts.push_back(*pieces);
    }
    return Answer(counted);
}

QString KitEditor::refusal() const { return tr("Count each part; 0 where there is none."); }

void KitEditor::setAnswer(const Answer& answer, const Judgement& /*judgement*/)
{
    m_kept.reset();
    if (const auto* kit = std::get_if<KitCounted>(&answer))
        m_kept = *kit;
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        const QSignalBlocker quiet(m_parts[i]);
        m_parts[i]->setText(m_kept ? QString::number(m_kept->parts[i]) : QString());
    }
    showWhole();
}

void KitEditor::showWhole()
{
    const auto typed = read();
    if (!typed) {
        m_whole->setText(limits());
        return;
    }
    const WholeKits whole = wholeKits(rule(), std::get<KitCounted>(*typed));
    const QString made = tr("Makes %n whole kit(s); %1 sets the limit.", nullptr, whole.kits)
                             .arg(scene().language.wording(rule().parts[whole.limitingPart].label));
    m_whole->setText(made + QLatin1Char(' ') + tr("Asked: %1.").arg(limits()));
}

std::size_t KitEditor::at() const
{
    const auto found
        = std::find_if(m_parts.begin(), m_parts.end(), [](const ValueField* f) { return f->hasFocus(); });
    return found == m_parts.end() ? 0 : static_cast<std::size_t>(found - m_parts.begin());
}

std::optional<std::size_t> KitEditor::firstUnread() const
{
    const auto found = std::find_if(
        m_parts.begin(), m_parts.end(), [](const ValueField* f) { return !readPieces(f->typed()); });
    return found == m_parts.end() ? std::nullopt
                                  : std::optional(static_cast<std::size_t>(found - m_parts.begin()));
}

QWidget* KitEditor::field() { return m_parts[firstUnread().value_or(0)]; }

void KitEditor::begin() { m_parts[at()]->selectAll(); }

void KitEditor::go(std::size_t part)
{
    m_parts[part]->setFocus(Qt::OtherFocusReason);
    m_parts[part]->selectAll();
}

bool KitEditor::enter()
{
    const EditState now = state();
    const std::size_t part = at();
    if (now != EditState::Changed || !readPieces(m_parts[part]->typed()) || part + 1 == m_parts.size())
        return false;
    go(part + 1);
    return true;
}

bool KitEditor::sideways(bool forward)
{
    const std::size_t part = at();
    const ValueField& field = *m_parts[part];
    const bool atEdge = field.isMarked() || field.cursorPosition() == (forward ? field.text().size() : 0);
    if (!atEdge || (forward ? part + 1 == m_parts.size() : part == 0))
        return false;
    go(forward ? part + 1 : part - 1);
    return true;
}

bool KitEditor::takeKey(const QKeyEvent& event)
{
    const bool rtl = layoutDirection() == Qt::RightToLeft;
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return event.isAutoRepeat() || enter();
    case Qt::Key_Left:
        return sideways(rtl);
    case Qt::Key_Right:
        return sideways(!rtl);
    case Qt::Key_Backspace:
        if (!m_parts[at()]->text().isEmpty() || at() == 0)
            return false;
        go(at() - 1);
        return true;
    default:
        return false;
    }
}

QString KitEditor::keys() const { return tr("Enter goes to the next part, arrows go back."); }

}
