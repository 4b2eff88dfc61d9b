// SPDX-License-Identifier: MIT
#include "ui/window/headerbar.h"

#include "ui/theme/theme.h"
#include "ui/widgets/latecombobox.h"
#include "ui/widgets/wraplabel.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>

namespace cradlepost {

namespace {
constexpr int noticeWidth = 360; ///< in two lines of small print
}

HeaderBar::HeaderBar(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_grid(new QGridLayout(this))
    , m_unit(new LateComboBox)
    , m_shift(new WrapLabel)
    , m_actor(new LateComboBox)
    , m_clock(new QLabel)
{
    const Theme& theme = themeOf(*this);
    m_grid->setContentsMargins(
        theme.space(Space::Wide), theme.space(Space::Close), theme.space(Space::Wide), theme.space(Space::Close));
    m_grid->setHorizontalSpacing(theme.space(Space::Apart));
    m_grid->setVerticalSpacing(theme.space(Space::Tight));
    m_unit->setFont(theme.font(TextRole::Lead, TextWeight::SemiBold));
    m_unit->setAccessibleName(tr("Ward"));
    m_unit->setObjectName(QStringLiteral("unitComboBox"));
    m_actor->setAccessibleName(tr("In charge"));
    m_actor->setObjectName(QStringLiteral("actorComboBox"));
    m_actor->setToolTip(tr("Who walks the round: these initials go into each record"));
    m_unit->setFocusPolicy(Qt::TabFocus);
    m_actor->setFocusPolicy(Qt::TabFocus);
    m_grid->addWidget(m_unit, 0, 0);
    m_grid->setColumnStretch(1, 1);
    m_grid->setColumnStretch(2, 2);
    m_grid->addWidget(m_actor, 0, 3);
    m_grid->addWidget(m_clock, 0, 4);
    connect(m_unit, &QComboBox::activated, this,
        [this] { Q_EMIT unitChosen(m_unit->currentData().toString().toStdString()); });
    connect(m_actor, &QComboBox::activated, this,
        [this] { m_ward.setActor(m_actor->currentData().toString().toStdString()); });
    connect(&m_ward, &Ward::changed, this, &HeaderBar::refresh);
    connect(&m_ward, &Ward::actorChanged, this, &HeaderBar::fillPeople);
    reload();
}

void HeaderBar::reload()
{
    m_unit->clear();
    for (const Unit& unit : m_ward.store().units().value_or(std::vector<Unit>()))
        m_unit->addItem(qs(unit.name), qs(unit.id));
    m_unit->setCurrentIndex(m_unit->findData(qs(m_ward.unit())));
    m_unit->updateGeometry();
    m_unit->setVisible(m_unit->count() > 0);
    fillPeople();
    refresh();
}

void HeaderBar::fillPeople()
{
    m_actor->clear();
    m_actor->addItem(tr("Who is in charge?"), QString());
    for (const Person& person : m_ward.store().people(m_ward.unit()).value_or(std::vector<Person>()))
        m_actor->addItem(
            person.role.empty() ? qs(person.initials) : tr("%1, %2").arg(qs(person.initials), qs(person.role)),
            qs(person.initials));
    if (!m_ward.actor().empty() && m_actor->findData(qs(m_ward.actor())) < 0)
        m_actor->addItem(qs(m_ward.actor()), qs(m_ward.actor()));
    m_actor->setCurrentIndex(std::max(m_actor->findData(qs(m_ward.actor())), 0));
    m_actor->updateGeometry();
    m_actor->setVisible(m_unit->count() > 0);
    arrange();
}

void HeaderBar::refresh()
{
    const TimeText times = m_ward.times();
    m_clock->setText(times.clock(m_ward.now()));
    m_shift->setText(m_ward.view() ? times.shift(m_ward.view()->shift) : QString());
    if (m_actor->currentData().toString().toStdString() != m_ward.actor())
        fillPeople();
    arrange();
}

void HeaderBar::showSaved(Instant at)
{
    const auto seconds = (toMs(at) / 1000) % 60;
    m_clock->setText(tr("saved %1:%2").arg(m_ward.times().clock(at)).arg(seconds, 2, 10, QLatin1Char('0')));
}

void HeaderBar::setNotice(QWidget* notice)
{
    m_notice = notice;
    m_notice->setParent(this);
    arrange();
}

void HeaderBar::arrange()
{
    const int spaces = m_grid->contentsMargins().left() + m_grid->contentsMargins().right()
        + 4 * m_grid->horizontalSpacing();
    const int rest = m_unit->sizeHint().width() + m_actor->sizeHint().width() + m_clock->sizeHint().width() + spaces;
    const int shift = m_shift->sizeHint().width();
    const bool anything = m_notice != nullptr && !m_notice->isHidden();
    const int notice = anything ? std::min(m_notice->sizeHint().width(), themeOf(*this).px(noticeWidth)) : 0;
    m_grid->removeWidget(m_shift);
    if (m_notice != nullptr)
        m_grid->removeWidget(m_notice);
    int row = 0;
    const bool shiftFits = rest + shift <= width();
    m_grid->setColumnMinimumWidth(1, shiftFits ? shift : 0);
    if (shiftFits)
        m_grid->addWidget(m_shift, 0, 1, Qt::AlignVCenter);
    else // large text: the shift goes below, whole
        m_grid->addWidget(m_shift, ++row, 0, 1, 5);
    if (!anything)
        return;
    if (rest + shift + notice <= width())
        m_grid->addWidget(m_notice, 0, 2, Qt::AlignVCenter);
    else
        m_grid->addWidget(m_notice, ++row, 0, 1, 5);
}

void HeaderBar::resizeEvent(QResizeEvent* event)
{
    arrange();
    QWidget::resizeEvent(event);
}

void HeaderBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setPen(themeOf(*this).roles.line);
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

}
