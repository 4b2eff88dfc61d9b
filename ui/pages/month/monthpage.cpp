// SPDX-License-Identifier: MIT
#include "ui/pages/month/monthpage.h"

#include "core/store/unithistory.h"
#include "ui/charts/chartcanvas.h"
#include "ui/charts/chartview.h"
#include "ui/pages/month/ideapanel.h"
#include "ui/pages/month/paperpanel.h"
#include "ui/pages/month/recordedpanel.h"
#include "ui/pages/month/spanbar.h"
#include "ui/pages/month/spanpanel.h"
#include "ui/pages/reportsaying.h"
#include "ui/report/month/comparisonsheet.h"
#include "ui/report/month/monthdocument.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/findingslist.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QScrollArea>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

/** How sheets share their rows: pairs of stretches; a part that stands alone takes the whole row. */
struct RowPlan
{
    int first = 1;
    int second = 1; ///< 0: the sheet has the row to itself
};

/** In the order of monthSheets: done and course, lost and restore, readiness and pattern, the map, and so on.
 */
constexpr RowPlan plans[] = {{2, 5}, {1, 1}, {1, 1}, {1, 0}, {1, 1}, {1, 1}};
constexpr RowPlan readingPlan{3, 2};

}

MonthPage::MonthPage(Ward& ward, std::optional<ReviewChoice> choice, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_bar(new SpanBar(ward.language()))
    , m_panel(new SpanPanel(ward.language()))
    , m_findings(new FindingsList)
    , m_said(new WrapLabel)
    , m_comparison(new ChartView)
    , m_sheets(new QWidget)
    , m_rows(new QVBoxLayout(m_sheets))
{
    m_choice = choice
        ? *choice
        : ReviewChoice{.span = ReviewChoice{.span = {.from = today(), .to = {}}}.monthBeside(-1)};
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(theme.space(Space::Wide), theme.space(Space::Near), theme.space(Space::Wide),
        theme.space(Space::Apart));
    page->setSpacing(theme.space(Space::Near));
    page->addWidget(m_bar);
    page->addWidget(m_panel);
    page->addWidget(m_said);
    page->addWidget(makeAnswer());
    page->addWidget(m_findings);
    page->addWidget(m_comparison);
    page->addWidget(m_sheets);
    page->addWidget(makeEntries());
    page->addStretch(1);
    m_panel->hide();
    m_said->hide();
    m_comparison->hide();
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(theme.space(Space::Near));
    connectParts();
}

MonthPage::~MonthPage() = default;

QWidget* MonthPage::makeAnswer()
{
    constexpr double largeText = 1.3; // from here on a line does not hold both
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* row = new QBoxLayout(
        theme.textScale < largeText ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.space(Space::Apart));
    m_answer = new WrapLabel({}, TextRole::Finding);
    m_answer->setObjectName(QStringLiteral("monthAnswer"));
    m_answer->setWeight(TextWeight::SemiBold);
    m_company = new WrapLabel({}, TextRole::Body);
    m_company->setObjectName(QStringLiteral("monthCompany"));
    m_company->setTone(Tone::Soft);
    row->addWidget(m_answer);
    row->addWidget(m_company, 1);
    return holder;
}

/** What is entered here rather than read: ideas that are tried, rounds from paper, corrections. */
QWidget* MonthPage::makeEntries()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    m_ideas = new IdeaPanel(m_ward);
    m_paper = new PaperPanel(m_ward);
    m_recorded = new RecordedPanel(m_ward);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(themeOf(*this).space(Space::Near));
    column->addWidget(m_paper);
    column->addWidget(m_recorded);
    column->addStretch(1);
    row->addWidget(m_ideas, 1, Qt::AlignTop);
    row->addWidget(holder, 1, Qt::AlignTop);
    connect(m_ideas, &IdeaPanel::kept, this, &MonthPage::reload);
    connect(m_paper, &PaperPanel::entered, this, &MonthPage::reload);
    connect(m_recorded, &RecordedPanel::putRightWanted, this, &MonthPage::putRightWanted);
    return row;
}

void MonthPage::connectParts()
{
    m_findings->setObjectName(QStringLiteral("monthFindings"));
    m_said->setObjectName(QStringLiteral("monthSaid"));
    connect(&m_ward, &Ward::changed, this, [this] {
        if (isVisible() && m_ward.unit() != m_unit)
            reload();
    });
    connect(m_bar, &SpanBar::monthWanted, this, [this](int beside) {
        setChoice({.span = m_choice.monthBeside(beside), .filter = m_choice.filter, .against = std::nullopt});
    });
    connect(m_bar, &SpanBar::panelWanted, m_panel, &QWidget::setVisible);
    connect(m_bar, &SpanBar::reportWanted, this, &MonthPage::askForReport);
    connect(m_panel, &SpanPanel::chosen, this, [this](const ReviewChoice& choice) {
        m_bar->setPanelOpen(false);
        setChoice(choice);
    });
    connect(m_findings, &PaintedList::activated, this, &MonthPage::follow);
}

Date MonthPage::today() const { return m_ward.times().zone().toLocal(m_ward.now()).date; }

void MonthPage::setChoice(const ReviewChoice& choice)
{
    m_choice = choice;
    if (isVisible())
        reload();
    Q_EMIT choiceChanged(m_choice);
}

void MonthPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    reload();
}

void MonthPage::reload()
{
    m_said->hide();
    m_unit = m_ward.unit();
    load();
    m_bar->show(m_choice, today(), filterWords());
    if (m_review)
        showReview();
    const auto checklist = m_ward.store().checklistFor(m_unit, RoundKind::Shift, today());
    if (m_ward.view() && checklist) {
        std::vector<std::string> shifts;
        for (const ShiftStart& start : m_ward.view()->calendar.pattern().starts)
            shifts.push_back(start.code);
        m_panel->show(m_choice, shifts, checklist->checklist, today());
        m_ideas->show(checklist->checklist, today());
        m_recorded->show(m_choice.span.from, m_choice.span.to, today());
    }
}

void MonthPage::load()
{
    m_scene.reset();
    m_review.reset();
    auto history = unitHistory(m_ward.store(), m_unit, m_choice.span, m_ward.now());
    if (!history) {
        showFault(history.error());
        return;
    }
    m_history = std::make_unique<UnitHistory>(std::move(*history));
    auto review = reviewMonth(*m_history, m_choice.span, m_choice.filter);
    if (!review) {
        showFault(review.error());
        return;
    }
    m_review = std::make_unique<MonthReview>(std::move(*review));
    m_times = std::make_unique<TimeText>(m_ward.times());
    m_scene = std::make_unique<MonthScene>(*m_history, *m_review, m_ward.language(), *m_times);
}

void MonthPage::showFault(const Error& fault)
{
    m_answer->setText(ErrorText::sentence(fault));
    m_company->setText(ErrorText::advice(fault));
    m_findings->setRows({});
    m_sheets->hide();
    m_comparison->hide();
}

void MonthPage::showReview()
{
    m_answer->setText(m_scene->text().answer());
    m_company->setText(m_scene->text().company());
    std::vector<FindingRow> rows;
    for (std::size_t i = 0; i < std::min(m_review->findings.size(), mostFindings); ++i)
        rows.push_back({.text = m_scene->text().sentence(m_review->findings[i]),
            .question = m_review->findings[i].isQuestion});
    m_findings->setRows(rows);
    showSheets();
    showComparison();
}

/** Views are kept and filled anew: only their number changes, with the readings. */
void MonthPage::showSheets()
{
    const std::vector<MonthSheet> sheets = monthSheets(*m_scene);
    if (sheets.size() != m_views.size()) {
        m_views.clear();
        while (QLayoutItem* item = m_rows->takeAt(0)) {
            delete item->widget();
            delete item;
        }
        std::size_t next = 0;
        for (std::size_t row = 0; next < sheets.size(); ++row) {
            const RowPlan plan = row < std::size(plans) ? plans[row] : readingPlan;
            auto* holder = new FoldingRow;
            holder->setSpacing(themeOf(*this).space(Space::Near));
            for (const int stretch : {plan.first, plan.second}) {
                if (stretch == 0 || next == sheets.size())
                    continue;
                auto* view = new ChartView;
                holder->addWidget(view, stretch);
                m_views.emplace_back(sheets[next++].part, view);
            }
            m_rows->addWidget(holder);
        }
    }
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        m_views[i].second->setObjectName(sheets[i].content.fileName);
        m_views[i].second->setContent(sheets[i].content);
    }
    m_sheets->show();
}

void MonthPage::showComparison()
{
    m_comparison->setVisible(m_choice.against.has_value());
    if (!m_choice.against)
        return;
    auto content = comparisonSheet(m_ward.store(), *m_scene, *m_choice.against);
    if (content)
        m_comparison->setContent(*content);
    else
        m_comparison->setContent(
            {.title = ErrorText::sentence(content.error()), .emptyText = ErrorText::advice(content.error())});
}

void MonthPage::follow(int finding)
{
    const MonthPart part = m_review->findings[static_cast<std::size_t>(finding)].part;
    const auto at
        = std::find_if(m_views.begin(), m_views.end(), [&](const auto& view) { return view.first == part; });
    ChartView* view = at != m_views.end() ? at->second : m_views.empty() ? nullptr : m_views.front().second;
    if (view == nullptr)
        return;
    for (QWidget* above = parentWidget(); above != nullptr; above = above->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(above)) {
            area->ensureWidgetVisible(view, 0, themeOf(*this).space(Space::Wide));
            break;
        }
    }
    view->canvas().setFocus(Qt::TabFocusReason);
}

QString MonthPage::filterWords() const
{
    QStringList parts;
    QStringList shifts;
    for (const std::string& code : m_choice.filter.shifts)
        shifts.append(MonthText::shifts(code));
    parts.append(shifts.isEmpty() ? tr("all shifts") : shifts.join(QStringLiteral(", ")));
    parts.append(m_choice.filter.items.empty() && m_choice.filter.sections.empty()
            ? tr("all items")
            : tr("%n item(s)", nullptr, static_cast<int>(m_choice.filter.items.size())));
    return parts.join(QStringLiteral(" · "));
}

Result<void> MonthPage::writeReport(const QString& path)
{
    if (!m_scene)
        return fail(ErrorCode::NotFound, "there is no review to report");
    return writeMonthReport(m_ward.store(), *m_scene, path);
}

void MonthPage::askForReport()
{
    if (!m_scene)
        return;
    const QString name = QStringLiteral("%1-%2.pdf").arg(qs(m_unit), qs(toIso(m_choice.span.from)).left(7));
    ReportSaying::ask(this, *m_said, name, [this](const QString& path) { return writeReport(path); });
}

}
