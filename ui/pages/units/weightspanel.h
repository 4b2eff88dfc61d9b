// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/visitweights.h"
#include "ui/text/language.h"
#include "ui/widgets/sheet.h"

class QDoubleSpinBox;

namespace cradlepost {

/** What makes a visit needed, in points: seen and set by the supervisor. */
class WeightsPanel : public Sheet
{
    Q_OBJECT
public:
    WeightsPanel(const Language& language, const VisitWeights& weights, QWidget* parent = nullptr);

    [[nodiscard]] const VisitWeights& weights() const { return m_weights; }

Q_SIGNALS:
    void changed(const cradlepost::VisitWeights& weights);

private:
    void addWeight(const WeightValue& weight, const Language& language);
    void take(const char* code, double value);
    void setBack();

    VisitWeights m_weights;
    std::vector<std::pair<const char*, QDoubleSpinBox*>> m_fields;
};

}
