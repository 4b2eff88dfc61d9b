// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <functional>
#include <QCoreApplication>

class QWidget;

namespace cradlepost {

class WrapLabel;

/** Asks where a report goes, has it written, and says what came of it: the same on every page that has one.
 */
class ReportSaying
{
    Q_DECLARE_TR_FUNCTIONS(ReportSaying)
public:
    /** `name`: the file that is offered, "units-2026-10.pdf"; nothing happens when the person thinks better
     * of it. */
    static void ask(QWidget* over, WrapLabel& said, const QString& name,
        const std::function<Result<void>(const QString& path)>& write);
    /** What came of writing `path`. */
    static void say(WrapLabel& said, const QString& path, const Result<void>& written);
};

}
