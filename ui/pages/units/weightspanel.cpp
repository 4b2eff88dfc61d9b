// SPDX-License-Identifier: MIT
#include "ui/pages/units/weightspanel.h"

#include "ui/text/codetext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QDoubleSpinBox>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace cradlepost {

WeightsPanel::WeightsPanel(const Language& language, const VisitWeights& weights, QWidget* parent)
    : Sheet(tr("What makes a visit needed, in points"), parent)
    , m_weights(weights)
{
    content().addWidget(new WrapLabel(
        tr("They order visits and rank nobody. 0 leaves a reason out. Kept on this computer.")));
    for (const WeightValue& weight : weightsOf(weights))
        addWeight(weight, language);
    auto* back = new QPushButton(tr("As they come"));
    back->setObjectName(QStringLiteral("weightsBackButton"));
    content().addWidget(back, 0, Qt::AlignLeft);
    connect(back, &QPushButton::clicked, this, &WeightsPanel::setBack);
}

void WeightsPanel::addWeight(const WeightValue& weight, const Language& language)
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Close));
    const QString name = CodeText::word(weight.code);
    auto* field = new QDoubleSpinBox;
    field->setObjectName(QStringLiteral("weight-%1").arg(QLatin1String(weight.code)));
    field->setRange(0, mostWeight);
    field->setDecimals(weight.isWhole ? 0 : 1);
    field->setLocale(language.locale());
    field->setKeyboardTracking(false); // a number is taken when it is typed out
    field->setValue(weight.value);
    field->setAccessibleName(name);
    row->addWidget(new WrapLabel(name), 1, Qt::AlignVCenter);
    row->addWidget(field, 0, Qt::AlignVCenter);
    content().addWidget(row);
    m_fields.emplace_back(weight.code, field);
    connect(field, &QDoubleSpinBox::valueChanged, this,
        [this, code = weight.code](double value) { take(code, value); });
}

void WeightsPanel::take(const char* code, double value)
{
    if (setWeight(m_weights, code, value))
        Q_EMIT changed(m_weights);
}

void WeightsPanel::setBack()
{
    m_weights = {};
    const auto plain = weightsOf(m_weights);
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const QSignalBlocker quiet(m_fields[i].second);
        m_fields[i].second->setValue(plain[i].value);
    }
    Q_EMIT changed(m_weights);
}

}
