// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/answer.h"

#include <QWidget>
#include <vector>

namespace cradlepost {

class ChoiceButton;
class TileFlow;

/** Why an item is not met: six choices on the digits 1 to 6. */
class ReasonRow : public QWidget
{
    Q_OBJECT
public:
    explicit ReasonRow(QWidget* parent = nullptr);

    void choose(GapReason reason);
    [[nodiscard]] GapReason chosen() const { return m_chosen; }
    /** The reason on that digit, if there is one. */
    [[nodiscard]] static std::optional<GapReason> onKey(const QString& text);
    /** The reason beside the chosen one, round the corner. */
    [[nodiscard]] GapReason beside(int by) const;

Q_SIGNALS:
    void clicked(cradlepost::GapReason reason);

private:
    std::vector<ChoiceButton*> m_buttons;
    GapReason m_chosen = GapReason::NotKnown;
};

}
