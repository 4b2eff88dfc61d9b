// SPDX-License-Identifier: MIT
#pragma once

#include "ui/report/reportdocument.h"
#include "ui/text/handovertext.h"

namespace cradlepost {

/** One page of A4 for the next shift: what changed first, then situation, background, assessment,
 * recommendation, and who signed. */
ReportDocument handoverDocument(const Store& store, const HandoverWords& words, const Language& language,
    const TimeText& times, Instant now);

/** As a PDF, whole or not at all. Needs a QApplication; offscreen will do. Errors as writePdf. */
Result<void> writeHandover(const Store& store, const HandoverWords& words, const Language& language,
    const TimeText& times, Instant now, const QString& path);

}
