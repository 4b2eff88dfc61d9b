// SPDX-License-Identifier: MIT
#pragma once

#include "ui/report/paper.h"
#include "ui/report/reportdocument.h"
#include "ui/report/strip.h"

#include <memory>

namespace cradlepost {

/// A document laid out on A4. Needs a QApplication, offscreen will do. The document must outlive it.
class ReportPages
{
public:
    explicit ReportPages(const ReportDocument& document);
    ~ReportPages();
    ReportPages(const ReportPages&) = delete;
    ReportPages& operator=(const ReportPages&) = delete;

    int count() const { return static_cast<int>(m_flow.pages.size()); }
    const Paper& paper() const { return *m_paper; }
    /// By how much a compact document is longer than its page; 0 when it fits.
    double millimetresTooLong() const;
    /// Page 0 is the first; one unit of the painter is one unit of the paper.
    void paint(QPainter& painter, int page) const;

private:
    void layOut(double unitsPerInch);
    [[nodiscard]] bool isClose() const { return m_document.compact || m_document.closer; }
    void appendAnswer();
    void appendSentences();
    void appendSections();
    void appendParts(const std::vector<ReportPart>& parts);
    void appendSmallPrint();
    void appendNotes(const QString& title, const std::vector<QString>& paragraphs);
    void findSections();
    void paintSentence(QPainter& painter, const QRect& box, const ReportSentence& sentence) const;
    void paintHeadAndFoot(QPainter& painter, int page) const;

    const ReportDocument& m_document;
    std::unique_ptr<Paper> m_paper;
    std::vector<Strip> m_strips;
    PageFlow m_flow;
    std::vector<int> m_sectionPages; ///< by section, counted from 0
};

}
