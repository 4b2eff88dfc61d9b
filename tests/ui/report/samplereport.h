// SPDX-License-Identifier: MIT
#pragma once

#include "ui/report/reportdocument.h"
#include "ui/report/writereport.h"
#include "ui/text/language.h"

#include <QProcess>

namespace cradlepost::test {

/// An invented month with every kind of chart, prose and the tables of aTableBook(). Words in English or
/// Hindi; in the pseudo-language mirrored and longer.
ReportDocument aReport(const QString& language = QStringLiteral("en"));
ReportTables itsTables();

/// One page for a hand-over.
ReportDocument aHandOver();

/// `rows` rows "row 17 | 17 | 8.5%".
ReportTable aLongReportTable(int rows);

/// What a program of the system prints; empty when it fails.
QString outputOf(const QString& program, const QStringList& arguments);
int pagesOf(const QString& pdf);
/// The text of a page as it is laid out, counted from 1.
QString pageText(const QString& pdf, int page);

}
