// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/reasonrow.h"

#include "ui/pages/round/cards/tileflow.h"
#include "ui/text/wardtext.h"
#include "ui/widgets/choicebutton.h"

#include <QLocale>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr GapReason reasons[] = {GapReason::Absent, GapReason::NotWorking, GapReason::NotClean,
    GapReason::Expired, GapReason::OutOfLimits, GapReason::NotKnown};
constexpr int count = static_cast<int>(std::size(reasons));
}

ReasonRow::ReasonRow(QWidget* parent)
    : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* flow = new TileFlow;
    column->addWidget(flow);
    for (int i = 0; i < count; ++i) {
        auto* button = new ChoiceButton(WardText::gapReason(reasons[i]), locale().toString(i + 1));
        button->setFocusPolicy(Qt::NoFocus);
        button->setObjectName(QStringLiteral("reason-%1").arg(QLatin1String(codeName(reasons[i]))));
        m_buttons.push_back(button);
        flow->addTile(button);
        connect(button, &ChoiceButton::clicked, this, [this, i] {
            choose(reasons[i]);
            Q_EMIT clicked(reasons[i]);
        });
    }
}

void ReasonRow::choose(GapReason reason)
{
    m_chosen = reason;
    for (int i = 0; i < count; ++i)
        m_buttons[static_cast<std::size_t>(i)]->setChecked(reasons[i] == reason);
}

std::optional<GapReason> ReasonRow::onKey(const QString& text)
{
    const int digit = text.size() == 1 ? text.at(0).digitValue() : -1;
    return digit >= 1 && digit <= count ? std::optional(reasons[digit - 1]) : std::nullopt;
}

GapReason ReasonRow::beside(int by) const
{
    return reasons[(static_cast<int>(m_chosen) + by + count) % count];
}

}
