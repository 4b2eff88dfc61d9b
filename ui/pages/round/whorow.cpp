// SPDX-License-Identifier: MIT
#include "ui/pages/round/whorow.h"

#include "ui/pages/round/cards/tileflow.h"
#include "ui/theme/theme.h"
#include "ui/widgets/choicebutton.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int mostInitials = 12;
constexpr int initialsWidth = 140;
}

WhoRow::WhoRow(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_flow(new TileFlow)
    , m_initials(new QLineEdit)
{
    const Theme& theme = themeOf(*this);
    m_flow->setFilling(false);
    m_initials->setObjectName(QStringLiteral("initialsEdit"));
    m_initials->setMaxLength(mostInitials);
    m_initials->setPlaceholderText(tr("or type initials"));
    m_initials->setAccessibleName(tr("Initials of who walks the round"));
    m_initials->setMinimumWidth(theme.px(initialsWidth));
    m_initials->installEventFilter(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_flow);
    m_flow->addTile(m_initials);
    connect(m_initials, &QLineEdit::editingFinished, this, &WhoRow::take);
    connect(&m_ward, &Ward::actorChanged, this, &WhoRow::showActor);
    refresh();
}

void WhoRow::refresh()
{
    auto people = m_ward.store().people(m_ward.unit()).value_or(std::vector<Person>());
    if (people != m_people) { // or the one that has the keyboard would lose it with every tick of the ward
        m_people = std::move(people);
        qDeleteAll(m_choices);
        m_choices.clear();
        for (const Person& person : m_people) {
            auto* choice = new ChoiceButton(qs(person.initials), qs(person.role));
            choice->setObjectName(QStringLiteral("person-%1").arg(qs(person.initials)));
            choice->installEventFilter(this);
            m_choices.push_back(choice);
            connect(choice, &ChoiceButton::clicked, this, [this, initials = person.initials] {
                m_initials->clear();
                m_ward.setActor(initials);
                showActor();
                Q_EMIT chosen();
            });
        }
        std::vector<QWidget*> tiles(m_choices.begin(), m_choices.end());
        tiles.push_back(m_initials);
        m_initials->setParent(nullptr); // taken in again it comes after the people for the keyboard too
        m_flow->setTiles(tiles);
    }
    showActor();
}

void WhoRow::showActor()
{
    const QString actor = qs(m_ward.actor());
    bool known = false;
    for (ChoiceButton* choice : m_choices) {
        choice->setChecked(choice->text() == actor);
        known = known || choice->isChecked();
    }
    if (known)
        m_initials->clear();
    else if (!m_initials->hasFocus())
        m_initials->setText(actor);
}

bool WhoRow::take()
{
    const std::string typed = m_initials->text().trimmed().toStdString();
    if (!typed.empty() && typed != m_ward.actor())
        m_ward.setActor(typed);
    return !m_ward.actor().empty();
}

void WhoRow::takeFocus()
{
    QWidget* first = m_choices.empty() ? static_cast<QWidget*>(m_initials) : m_choices.front();
    first->setFocus(Qt::TabFocusReason);
}

void WhoRow::askForInitials() { m_initials->setFocus(Qt::OtherFocusReason); }

bool WhoRow::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto& key = *static_cast<QKeyEvent*>(event);
    if ((key.key() != Qt::Key_Return && key.key() != Qt::Key_Enter) || key.isAutoRepeat())
        return false;
    if (auto* choice = qobject_cast<ChoiceButton*>(watched))
        choice->click();
    else if (take())
        Q_EMIT entered();
    return true;
}

}
