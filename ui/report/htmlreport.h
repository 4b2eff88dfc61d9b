// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "ui/report/reportdocument.h"

#include <QByteArray>

namespace cradlepost {

/// One page that needs nothing else: style and drawings inside, no script, no reference to anywhere. Light or
/// dark as the reader's system is, light on paper. Charts have the table behind them to open.
/// Error: Io without what draws SVG.
Result<QByteArray> htmlOf(const ReportDocument& document);

/// The same as a file, whole or not at all. Errors as htmlOf and writeWholeFile.
Result<void> writeHtml(const ReportDocument& document, const QString& path);

}
