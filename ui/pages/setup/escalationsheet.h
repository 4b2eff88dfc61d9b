// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/escalation.h"
#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

#include <array>

class QSpinBox;

namespace cradlepost {

class InitialsEdit;
class WrapLabel;

/** Who hears of a gap that lasts, and after which part of its time. */
class EscalationSheet : public Sheet
{
    Q_OBJECT
public:
    explicit EscalationSheet(Ward& ward, QWidget* parent = nullptr);

private:
    static constexpr std::array who{EscalationTo::Owner, EscalationTo::InCharge, EscalationTo::QualityOfficer,
        EscalationTo::District};

    void load();
    void keep();
    void say(const QString& text, bool wrong);

    Ward& m_ward;
    std::array<QSpinBox*, who.size()> m_percents{};
    InitialsEdit* m_who;
    WrapLabel* m_said;
};

}
