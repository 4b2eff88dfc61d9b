// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/verdict.h"
#include "ui/widgets/sheet.h"

namespace cradlepost {

/** The verdict while it forms: the word, and the sentence that explains it. */
class StandingSheet : public Sheet
{
    Q_OBJECT
public:
    /** `flat`: on one line, where height is scarce. */
    explicit StandingSheet(bool flat, QWidget* parent = nullptr);

    void setStanding(Readiness state, const QString& sentence);

private:
    bool m_flat;
    WrapLabel* m_word;
    WrapLabel* m_sentence;
};

}
