// SPDX-License-Identifier: MIT
#include "ui/pages/board/birthform.h"

#include "core/supply/clockentry.h"
#include "ui/pages/round/cards/valuefield.h"
#include "ui/widgets/foldingrow.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace cradlepost {

BirthForm::BirthForm(Ward& ward, QWidget* parent)
    : Sheet(tr("Put a birth on the board: when, how many, and nothing that says who"), parent)
    , m_ward(ward)
    , m_time(new ValueField(QStringLiteral(":"), 6))
    , m_babies(new QSpinBox)
    , m_preterm(new QCheckBox(tr("Preterm")))
{
    const Theme& theme = themeOf(*this);
    m_time->setObjectName(QStringLiteral("birthTimeEdit"));
    m_time->setAccessibleName(tr("Expected about, time of day"));
    m_time->setExample(QStringLiteral("16:30"));
    m_time->setRing(true);
    m_babies->setObjectName(QStringLiteral("babiesSpinBox"));
    m_babies->setRange(1, 4);
    m_babies->setAccessibleName(tr("Babies"));
    m_preterm->setObjectName(QStringLiteral("pretermCheckBox"));
    auto* put = new QPushButton(tr("Put up"));
    put->setObjectName(QStringLiteral("putUpButton"));
    put->setProperty("primary", true);
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Near));
    auto* about = new QLabel(tr("About"));
    about->setBuddy(m_time);
    auto* babies = new QLabel(tr("Babies"));
    babies->setBuddy(m_babies);
    for (QWidget* part : std::initializer_list<QWidget*>{about, m_time, babies, m_babies, m_preterm, put})
        row->addWidget(part, 0, Qt::AlignVCenter);
    row->addWidget(new QWidget, 1);
    content().addWidget(row);
    connect(put, &QPushButton::clicked, this, &BirthForm::putUp);
    connect(m_time, &QLineEdit::returnPressed, this, &BirthForm::putUp);
}

void BirthForm::takeFocus() { m_time->setFocus(Qt::OtherFocusReason); }

void BirthForm::putUp()
{
    const auto expected = readComing(m_time->typed(), m_ward.now(), m_ward.times().zone());
    if (!expected) {
        Q_EMIT mistyped(qs(m_time->typed()));
        return takeFocus();
    }
    const auto put = m_ward.expectBirth(*expected, m_babies->value(), m_preterm->isChecked());
    if (put) {
        m_time->clear();
        m_babies->setValue(1);
        m_preterm->setChecked(false);
    }
    if (put)
        Q_EMIT done();
    else
        Q_EMIT refused(put.error());
    takeFocus();
}

}
