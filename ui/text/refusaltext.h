// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <optional>
#include <QCoreApplication>

namespace cradlepost {

/** The words of core/base/refusal.h as sentences in the reader's language. */
class RefusalText
{
    Q_DECLARE_TR_FUNCTIONS(RefusalText)
public:
    QString what; ///< what is wrong, with its limits
    QString advice; ///< what to do; may be empty

    /** Nothing when the error carries no word that is known here. */
    [[nodiscard]] static std::optional<RefusalText> of(const Error& error);
};

}
