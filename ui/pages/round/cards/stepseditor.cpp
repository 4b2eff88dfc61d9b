// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/stepseditor.h"

#include "ui/pages/round/cards/steptile.h"
#include "ui/pages/round/cards/tileflow.h"
#include "ui/pages/round/cards/valuefield.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QKeyEvent>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int tileWidth = 200;
constexpr int deviceLetters = 9;
constexpr int mostDeviceLetters = 24;
constexpr char16_t deviceCharacters[] = u"ABCDEFGHIJKLMNOPQRSTUVWXYZ.#";
}

StepsEditor::StepsEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : AnswerEditor(item, scene, parent)
    , m_marks(rule().steps.size(), '-')
    , m_flow(new TileFlow)
    , m_device(new ValueField(QString::fromUtf16(deviceCharacters), deviceLetters))
    , m_advice(new WrapLabel({}, TextRole::Small))
{
    const Theme& theme = themeOf(*this);
    m_advice->setTone(Tone::Warning);
    m_advice->setObjectName(QStringLiteral("stepsAdvice"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Close));
    buildTiles();
    column->addWidget(m_flow);
    column->addWidget(m_advice);
    m_deviceRow = makeDeviceRow();
    settle();
}

void StepsEditor::buildTiles()
{
    m_flow->setLeastWidth(tileWidth);
    for (std::size_t i = 0; i < rule().steps.size(); ++i) {
        auto* tile = new StepTile(
            //: %1 number of a step, %2 what to do
            tr("%1. %2").arg(static_cast<int>(i) + 1).arg(scene().language.wording(rule().steps[i].label)));
        tile->setObjectName(QStringLiteral("step-%1").arg(i + 1));
        m_tiles.push_back(tile);
        m_flow->addTile(tile);
        connect(tile, &StepTile::clicked, this, [this, i] {
            if (m_current == i)
                return pass();
            m_current = i;
            showTiles();
        });
    }
}

QWidget* StepsEditor::makeDeviceRow()
{
    auto* holder = new QWidget;
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(themeOf(*this).space(Space::Close));
    auto* label = new WrapLabel(tr("Its number", "of the device that is tested"), TextRole::Small);
    label->setTone(Tone::Soft);
    label->setMinimumWidth(label->sizeHint().width());
    m_device->setObjectName(QStringLiteral("deviceField"));
    m_device->setAccessibleName(tr("Number of the device that is tested"));
    m_device->setFont(themeOf(*this).font(TextRole::Body));
    m_device->setMaxLength(mostDeviceLetters);
    m_device->setFocusPolicy(Qt::ClickFocus); // typed from the card; Tab goes from card to card
    row->addWidget(label, 0, Qt::AlignVCenter);
    row->addWidget(m_device);
    connect(m_device, &QLineEdit::textChanged, this, &AnswerEditor::edited);
    return holder;
}

EditState StepsEditor::state() const
{
    if (!m_kept)
        return EditState::Empty;
    return *m_kept == done() ? EditState::AsKept : EditState::Changed;
}

StepsDone StepsEditor::done() const { return {.marks = m_marks, .device = m_device->typed()}; }

Result<Answer> StepsEditor::read() const { return Answer(done()); }

QString StepsEditor::refusal() const { return tr("The number of the device is too long."); }

void StepsEditor::setAnswer(const Answer& answer, const Judgement& /*judgement*/)
{
    const QSignalBlocker quiet(m_device);
    m_kept.reset();
    if (const auto* steps = std::get_if<StepsDone>(&answer)) {
        m_kept = *steps;
        m_marks = steps->marks;
        m_device->setText(qs(steps->device));
    } else {
        m_marks.assign(rule().steps.size(), '-');
        if (!m_giving)
            m_device->clear();
    }
    settle();
}

void StepsEditor::settle()
{
    const std::size_t next = m_marks.find('-');
    const bool ended = m_marks.find('f') != std::string::npos || next == std::string::npos;
    m_current = ended ? std::nullopt : std::optional(next);
    showTiles();
}

void StepsEditor::showTiles()
{
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        const bool current = isActive() && m_current == i;
        const StepState state = m_marks[i] == 'p' ? StepState::Passed
            : m_marks[i] == 'f'                   ? StepState::Failed
            : current                             ? StepState::Now
                                                  : StepState::Then;
        m_tiles[i]->setState(state, current);
    }
    const bool failed = !m_current && m_marks.find('f') != std::string::npos;
    m_advice->setText(
        failed ? tr("%1 Enter goes on.").arg(scene().language.wording(item().whenNotMet)) : QString());
    m_advice->setVisible(failed && isActive());
    Q_EMIT edited();
}

void StepsEditor::give(bool goOn)
{
    m_giving = true;
    const bool none = m_marks.find_first_of("pf") == std::string::npos;
    Q_EMIT given(none ? Answer(NotChecked{}) : Answer(done()), goOn);
    m_giving = false;
}

void StepsEditor::pass()
{
    m_typingDevice = false;
    m_marks[*m_current] = 'p';
    give(m_marks.find_first_of("-f") == std::string::npos);
}

void StepsEditor::fail()
{
    m_typingDevice = false;
    m_marks[*m_current] = 'f';
    give(false);
}

void StepsEditor::goBack()
{
    const std::size_t last
        = m_marks.find_last_of("pf", m_current ? (*m_current == 0 ? 0 : *m_current - 1) : m_marks.size());
    if (last == std::string::npos)
        return;
    m_marks[last] = '-';
    give(false);
}

void StepsEditor::move(int by)
{
    const std::size_t open = std::min(m_marks.find('-'), m_marks.size() - 1);
    if (!m_current)
        m_current = by > 0 ? open : m_marks.find_last_of("pf");
    else if (by > 0)
        m_current = std::min(*m_current + 1, open);
    else if (*m_current > 0)
        --*m_current;
    showTiles();
}

void StepsEditor::goOn()
{
    if (state() == EditState::Changed)
        return give(true); // only the number can have changed
    Q_EMIT passedOn();
}

bool StepsEditor::takeKey(const QKeyEvent& event)
{
    const bool rtl = layoutDirection() == Qt::RightToLeft;
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (event.isAutoRepeat())
            return true;
        m_current ? pass() : goOn();
        return true;
    case Qt::Key_Left:
        move(rtl ? 1 : -1);
        return true;
    case Qt::Key_Right:
        move(rtl ? -1 : 1);
        return true;
    case Qt::Key_Backspace:
        if (m_typingDevice && !m_device->text().isEmpty())
            m_device->backspace();
        else if (m_marks.find_first_of("pf") != std::string::npos)
            goBack();
        else if (!m_device->text().isEmpty())
            m_device->backspace();
        else
            return false;
        return true;
    default:
        return takeText(event);
    }
}

bool StepsEditor::takeText(const QKeyEvent& event)
{
    const QString text = event.text();
    if (text == QLatin1String("-") || text == QStringLiteral("−")) {
        if (!m_current)
            return false; // the test has ended: the card's gap with its reasons
        if (!event.isAutoRepeat())
            fail();
        return true;
    }
    if (text.isEmpty() || !text.at(0).isLetterOrNumber())
        return false;
    if (!m_device->hasFocus()) {
        if (!m_typingDevice)
            m_device->end(false);
        QKeyEvent typed(QEvent::KeyPress, event.key(), Qt::NoModifier, text);
        static_cast<QObject*>(m_device)->event(&typed);
    } else {
        m_typingDevice = true;
        return false;
    }
    m_typingDevice = true;
    return true;
}

QString StepsEditor::keys() const { return tr("Arrows go back. Type its number at any time."); }

QString StepsEditor::minusLabel() const
{
    return m_current && isActive() ? tr("Failed") : AnswerEditor::minusLabel();
}

}
