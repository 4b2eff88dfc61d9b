// SPDX-License-Identifier: MIT
#include "ui/pages/month/recordedpanel.h"

#include "ui/text/errortext.h"
#include "ui/text/qdays.h"
#include "ui/text/timetext.h"
#include "ui/text/wardtext.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QDateEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

RecordedPanel::RecordedPanel(Ward& ward, QWidget* parent)
    : Sheet(tr("A round that was entered wrong"), parent)
    , m_ward(ward)
    , m_day(new QDateEdit)
    , m_shift(new QComboBox)
    , m_said(new WrapLabel)
    , m_open(new QPushButton(tr("Put it right…")))
{
    m_day->setObjectName(QStringLiteral("recordedDayEdit"));
    m_day->setAccessibleName(tr("Day"));
    m_day->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    m_day->setLocale(m_ward.language().locale());
    m_day->setCalendarPopup(true);
    m_shift->setObjectName(QStringLiteral("recordedShiftComboBox"));
    m_shift->setAccessibleName(tr("Shift"));
    m_said->setObjectName(QStringLiteral("recordedSaid"));
    m_open->setObjectName(QStringLiteral("putRightButton"));
    content().addWidget(
        new WrapLabel(tr("What was recorded stays; the correction stands beside it with its reason.")));
    content().addWidget(m_day, 0, Qt::AlignLeft);
    content().addWidget(m_shift, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    content().addWidget(m_open, 0, Qt::AlignLeft);
    connect(m_day, &QDateEdit::dateChanged, this, &RecordedPanel::look);
    connect(m_shift, &QComboBox::currentIndexChanged, this, &RecordedPanel::look);
    connect(m_open, &QPushButton::clicked, this, [this] {
        if (m_round)
            Q_EMIT putRightWanted(*m_round);
    });
}

void RecordedPanel::show(Date from, Date to, Date today)
{
    const QSignalBlocker day(m_day);
    const QSignalBlocker shift(m_shift);
    const Date last = std::max(from, std::min(addDays(to, -1), today));
    m_day->setMaximumDate(toQDate(today));
    m_day->setDate(toQDate(last));
    const int at = std::max(0, m_shift->currentIndex());
    m_shift->clear();
    if (m_ward.view()) {
        for (const ShiftStart& start : m_ward.view()->calendar.pattern().starts)
            m_shift->addItem(TimeText::shiftName(start.code));
    }
    m_shift->setCurrentIndex(std::min(at, m_shift->count() - 1));
    look();
}

void RecordedPanel::look()
{
    m_round.reset();
    m_open->setEnabled(false);
    if (m_shift->currentIndex() < 0)
        return;
    auto rounds = m_ward.store().roundsOfShift(
        m_ward.unit(), slotOf(fromQDate(m_day->date()), m_shift->currentIndex()));
    if (!rounds)
        return m_said->setText(ErrorText::sentence(rounds.error()));
    const auto found = std::find_if(rounds->begin(), rounds->end(),
        [](const SavedRound& one) { return one.round.kind == RoundKind::Shift; });
    if (found == rounds->end())
        return m_said->setText(tr("No round was recorded in this shift."));
    m_round = std::move(*found);
    m_said->setText(words(*m_round));
    m_open->setEnabled(true);
}

QString RecordedPanel::words(const SavedRound& round) const
{
    //: %1 initials, %2 a time, %3 "Ready", "Not ready"
    QString text = tr("Walked by %1, finished %2: %3.")
                       .arg(qs(round.actor), m_ward.times().moment(round.round.finished, m_ward.now()),
                           WardText::readiness(round.round.state));
    for (const Amendment& amendment : round.amendments)
        text += QLatin1Char(' ')
            + tr("Put right %1 by %2: %3.")
                  .arg(m_ward.times().moment(amendment.at, m_ward.now()), qs(amendment.actor),
                      qs(amendment.reason));
    return text;
}

}
