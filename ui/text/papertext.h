// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/papersheet.h"

#include <QCoreApplication>

namespace cradlepost {

/** What is wrong with a sheet of the paper backlog, in words. */
class PaperText
{
    Q_DECLARE_TR_FUNCTIONS(PaperText)
public:
    /** "Line 12, field 3 (finished)"; empty for the whole sheet. */
    [[nodiscard]] static QString place(const PaperFault& fault);
    /** What is wrong and how to write it. */
    [[nodiscard]] static QString sentence(const PaperFault& fault);

private:
    static QString ofTheSheet(const PaperFault& fault);
    static QString ofTheRow(const PaperFault& fault);
};

}
