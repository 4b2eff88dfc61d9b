// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartsaving.h"

#include <variant>
#include <vector>

namespace cradlepost {

struct ReportParagraph
{
    QString text; ///< ** marks what is printed bold
};

struct ReportChart
{
    ChartContent content;
    bool half = false; ///< two of these that follow each other stand side by side where there is room
};

struct ReportTable
{
    QString title;
    ChartTable table;
};

using ReportPart = std::variant<ReportParagraph, ReportChart, ReportTable>;

struct ReportSection
{
    QString title; ///< what was found; a section of one chart may leave it to the chart
    std::vector<ReportPart> parts;
};

/// One thing that the report says first.
struct ReportSentence
{
    QString text; ///< ** marks what is printed bold
    int section = -1; ///< position of the section that shows it; -1: none does
};

/// What the report can be checked by.
struct ReportSeal
{
    QString made; ///< "3 November 2026, 08:12"
    QString station;
    QString headHash; ///< of the ledger's last record, hex
};

/// A report before it has a form: words, charts and tables in the order in which they are read.
struct ReportDocument
{
    QString title; ///< "Month of a labour ward"
    QString place; ///< "Sorrel Hill · labour ward"
    QString span; ///< "October 2026"
    QString answer; ///< "71% of shifts ready", the largest on the page
    QString company; ///< its counts and limits: "63 of 88 rounds · 61 to 80"
    std::vector<ReportSentence> sentences;
    std::vector<ReportSection> sections;
    std::vector<QString> method; ///< small print, a paragraph each
    std::vector<QString> cautions;
    ReportSeal seal;
    QString language; ///< code, for those that read aloud: "hi"
    Qt::LayoutDirection direction = Qt::LeftToRight;
    bool compact = false; ///< has to fit on one page, as a hand-over does
    bool closer = false; ///< set as closely, but may go on to a second page
};

}
