// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/district.h"
#include "ui/pages/units/unitschoice.h"
#include "ui/pages/ward.h"
#include "ui/report/district/districtsheets.h"

#include <memory>
#include <QWidget>

class QComboBox;
class QPushButton;
class QVBoxLayout;

namespace cradlepost {

class ChartView;
class DistancePanel;
class FindingsList;
class VisitPanel;
class WeightsPanel;
class WrapLabel;

/** *Units*: which unit to see first, and how the units compare, small ones too. */
class UnitsPage : public QWidget
{
    Q_OBJECT
public:
    /** `choice`: what was looked at last; the month before the present one when there is none. */
    UnitsPage(Ward& ward, std::optional<UnitsChoice> choice, const VisitWeights& weights,
        QWidget* parent = nullptr);
    ~UnitsPage() override;

    [[nodiscard]] const UnitsChoice& choice() const { return m_choice; }
    void setChoice(const UnitsChoice& choice);
    /** The review that is shown; nullptr when it failed. */
    [[nodiscard]] const DistrictReview* review() const { return m_review.get(); }
    /** Writes the report of what is shown by the ending of `path`. */
    Result<void> writeReport(const QString& path);

Q_SIGNALS:
    void choiceChanged(const cradlepost::UnitsChoice& choice);
    void weightsChanged(const cradlepost::VisitWeights& weights);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeBar();
    QWidget* makeEntries();
    void connectParts();
    void move(int months);
    void setLong(bool isLong);
    void reload();
    bool load();
    void showLevels();
    void showFault(const Error& fault);
    void showReview();
    void showSheets();
    void follow(int finding);
    void askForReport();
    [[nodiscard]] Date today() const;

    Ward& m_ward;
    UnitsChoice m_choice;
    std::unique_ptr<DistrictHistory> m_history;
    std::unique_ptr<DistrictReview> m_review;
    std::unique_ptr<DistrictScene> m_scene;
    WrapLabel* m_spanLabel;
    QPushButton* m_before;
    QPushButton* m_after;
    QPushButton* m_long;
    QComboBox* m_level;
    QPushButton* m_report;
    WrapLabel* m_said;
    WrapLabel* m_answer;
    WrapLabel* m_company;
    FindingsList* m_findings;
    QWidget* m_sheets;
    QVBoxLayout* m_rows;
    VisitPanel* m_visit;
    DistancePanel* m_distances;
    WeightsPanel* m_weights;
    std::vector<std::pair<DistrictPart, ChartView*>> m_views;
};

}
