// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <QCoreApplication>

namespace cradlepost {

/** What went wrong and what to do, in the reader's language; the exact place stays as core wrote it. */
class ErrorText
{
    Q_DECLARE_TR_FUNCTIONS(ErrorText)
public:
    /** One sentence: of the entry that was refused, else by code. */
    [[nodiscard]] static QString sentence(const Error& error);
    /** What the person can do; falls back to the error's own hint where no word tells more. */
    [[nodiscard]] static QString advice(const Error& error);
    /** Both, for a form that was not taken. */
    [[nodiscard]] static QString told(const Error& error);
};

}
