// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "ui/widgets/foldingrow.h"

#include <optional>

namespace cradlepost {

class WrapLabel;

/** Says that the last answers are not on disk yet, and lets one try again; hidden while all is well. */
class TroubleBar : public FoldingRow
{
    Q_OBJECT
public:
    explicit TroubleBar(QWidget* parent = nullptr);

    void setTrouble(const std::optional<Error>& trouble);

Q_SIGNALS:
    void againWanted();

private:
    WrapLabel* m_words;
};

}
