// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/district.h"
#include "ui/pages/ward.h"
#include "ui/report/district/districtsheets.h"

#include <memory>
#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace cradlepost {

class ChartView;
class FindingsList;
class WrapLabel;

/** *Units*: which unit to see first, and how the units compare, small ones too. */
class UnitsPage : public QWidget
{
    Q_OBJECT
public:
    explicit UnitsPage(Ward& ward, QWidget* parent = nullptr);
    ~UnitsPage() override;

    [[nodiscard]] const ReviewSpan& span() const { return m_span; }
    void setSpan(const ReviewSpan& span);
    /** The review that is shown; nullptr when it failed. */
    [[nodiscard]] const DistrictReview* review() const { return m_review.get(); }
    /** Writes the report of what is shown by the ending of `path`. */
    Result<void> writeReport(const QString& path);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeBar();
    void connectParts();
    void move(int months);
    void setLong(bool isLong);
    void reload();
    bool load();
    void showFault(const Error& fault);
    void showReview();
    void showSheets();
    void follow(int finding);
    void askForReport();
    [[nodiscard]] Date today() const;

    Ward& m_ward;
    ReviewSpan m_span; ///< whole months
    std::unique_ptr<DistrictHistory> m_history;
    std::unique_ptr<DistrictReview> m_review;
    std::unique_ptr<DistrictScene> m_scene;
    WrapLabel* m_spanLabel;
    QPushButton* m_before;
    QPushButton* m_after;
    QPushButton* m_long;
    QPushButton* m_report;
    WrapLabel* m_said;
    WrapLabel* m_answer;
    WrapLabel* m_company;
    FindingsList* m_findings;
    QWidget* m_sheets;
    QVBoxLayout* m_rows;
    std::vector<std::pair<DistrictPart, ChartView*>> m_views;
};

}
