// SPDX-License-Identifier: MIT
#pragma once

#include "ui/report/reportdocument.h"

#include <QCoreApplication>

namespace cradlepost {

/// The words that every report has around what it says.
class ReportText
{
    Q_DECLARE_TR_FUNCTIONS(ReportText)
public:
    static QString pageOf(int page, int pages); ///< "3 of 7"
    static QString onPage(int page); ///< "page 3"
    static QString continued(const QString& title);
    static QString nothingToShow();
    static QString numbersBehind(); ///< opens the table behind a chart
    static QString methodTitle();
    static QString cautionsTitle();
    static QString sealTitle();
    /// Made when, at which station, at which head of its ledger, and how to check it.
    static std::vector<QString> seal(const ReportSeal& seal);
    /// One line of it for the foot of each page.
    static QString shortSeal(const ReportSeal& seal);
    static QString yes();
    static QString no();
};

}
