// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/month.h"
#include "ui/pages/month/reviewchoice.h"
#include "ui/pages/ward.h"
#include "ui/report/month/monthsheets.h"

#include <memory>
#include <QWidget>

class QVBoxLayout;

namespace cradlepost {

class ChartView;
class FindingsList;
class IdeaPanel;
class PaperPanel;
class RecordedPanel;
class SpanBar;
class SpanPanel;
class WrapLabel;

/** *Month*: how ready the room was, whether a change is real, whether the entries can be trusted. */
class MonthPage : public QWidget
{
    Q_OBJECT
public:
    /** `choice`: what was looked at last; the month before the present one when there is none. */
    MonthPage(Ward& ward, std::optional<ReviewChoice> choice, QWidget* parent = nullptr);
    ~MonthPage() override;

    [[nodiscard]] const ReviewChoice& choice() const { return m_choice; }
    void setChoice(const ReviewChoice& choice);
    /** The review that is shown; nullptr when it failed. */
    [[nodiscard]] const MonthReview* review() const { return m_review.get(); }
    /** Writes the report of what is shown by the ending of `path`. */
    Result<void> writeReport(const QString& path);

Q_SIGNALS:
    void choiceChanged(const cradlepost::ReviewChoice& choice);
    void putRightWanted(const cradlepost::SavedRound& round);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void connectParts();
    QWidget* makeAnswer();
    QWidget* makeEntries();
    void reload();
    void load();
    void showFault(const Error& fault);
    void showReview();
    void showSheets();
    void showComparison();
    void follow(int finding);
    void askForReport();
    [[nodiscard]] Date today() const;
    [[nodiscard]] QString filterWords() const;

    Ward& m_ward;
    ReviewChoice m_choice;
    std::string m_unit; ///< of what is shown
    std::unique_ptr<UnitHistory> m_history;
    std::unique_ptr<MonthReview> m_review;
    std::unique_ptr<TimeText> m_times;
    std::unique_ptr<MonthScene> m_scene;
    SpanBar* m_bar;
    SpanPanel* m_panel;
    WrapLabel* m_answer;
    WrapLabel* m_company;
    FindingsList* m_findings;
    WrapLabel* m_said;
    ChartView* m_comparison;
    QWidget* m_sheets;
    IdeaPanel* m_ideas;
    PaperPanel* m_paper;
    RecordedPanel* m_recorded;
    QVBoxLayout* m_rows;
    std::vector<std::pair<MonthPart, ChartView*>> m_views;
};

}
