// SPDX-License-Identifier: MIT
#include "ui/pages/units/unitspage.h"

#include "core/review/visitweights.h"
#include "core/store/districthistory.h"
#include "ui/charts/chartcanvas.h"
#include "ui/charts/chartview.h"
#include "ui/pages/reportsaying.h"
#include "ui/pages/units/distancepanel.h"
#include "ui/pages/units/visitpanel.h"
#include "ui/pages/units/weightspanel.h"
#include "ui/report/district/districtdocument.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/findingslist.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr int longSpan = 3; // months

std::chrono::year_month monthOf(Date day) { return day.year() / day.month(); }

/** How many sheets stand in each row, with their stretches, in the order of districtSheets. */
struct RowPlan
{
    int first = 1;
    int second = 1; ///< 0: the sheet has the row to itself
};
constexpr RowPlan plans[] = {{1, 0}, {1, 1}, {1, 1}, {3, 2}, {1, 0}};

}

UnitsPage::UnitsPage(
    Ward& ward, std::optional<UnitsChoice> choice, const VisitWeights& weights, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_spanLabel(new WrapLabel({}, TextRole::Title))
    , m_before(new QPushButton(tr("Month before")))
    , m_after(new QPushButton(tr("Month after")))
    , m_long(new QPushButton(tr("Three months")))
    , m_level(new QComboBox)
    , m_report(new QPushButton(tr("Report…")))
    , m_said(new WrapLabel)
    , m_answer(new WrapLabel({}, TextRole::Finding))
    , m_company(new WrapLabel({}, TextRole::Body))
    , m_findings(new FindingsList)
    , m_sheets(new QWidget)
    , m_rows(new QVBoxLayout(m_sheets))
    , m_visit(new VisitPanel(ward))
    , m_distances(new DistancePanel(ward))
    , m_weights(new WeightsPanel(ward.language(), weights))
{
    m_choice = choice
        ? *choice
        : UnitsChoice{.span = UnitsChoice::monthsUpTo(monthOf(today()) - std::chrono::months(1), 1)};
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(theme.space(Space::Wide), theme.space(Space::Near), theme.space(Space::Wide),
        theme.space(Space::Apart));
    page->setSpacing(theme.space(Space::Near));
    page->addWidget(makeBar());
    for (QWidget* widget : std::initializer_list<QWidget*>{m_said, m_answer, m_company, m_findings, m_sheets})
        page->addWidget(widget);
    page->addWidget(makeEntries());
    page->addStretch(1);
    m_said->hide();
    m_said->setObjectName(QStringLiteral("unitsSaid"));
    m_answer->setObjectName(QStringLiteral("unitsAnswer"));
    m_answer->setWeight(TextWeight::SemiBold);
    m_company->setObjectName(QStringLiteral("unitsCompany"));
    m_company->setTone(Tone::Soft);
    m_findings->setObjectName(QStringLiteral("unitsFindings"));
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(theme.space(Space::Near));
    connectParts();
}

UnitsPage::~UnitsPage() = default;

QWidget* UnitsPage::makeBar()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    m_spanLabel->setWeight(TextWeight::SemiBold);
    m_spanLabel->setObjectName(QStringLiteral("unitsSpan"));
    m_before->setObjectName(QStringLiteral("unitsBeforeButton"));
    m_after->setObjectName(QStringLiteral("unitsAfterButton"));
    m_long->setObjectName(QStringLiteral("unitsLongButton"));
    m_long->setCheckable(true);
    m_long->setChecked(m_choice.isLong());
    m_level->setObjectName(QStringLiteral("unitsLevelComboBox"));
    m_level->setAccessibleName(tr("Level of facility"));
    m_report->setObjectName(QStringLiteral("unitsReportButton"));
    m_report->setProperty("primary", true);
    // With large text the two halves stand below each other, each still on one line.
    const auto half = [&](std::initializer_list<QWidget*> parts, int stretch) {
        auto* side = new FoldingRow;
        side->setSpacing(themeOf(*this).space(Space::Near));
        for (QWidget* part : parts)
            side->addWidget(part, part == m_spanLabel ? 1 : 0, Qt::AlignVCenter);
        row->addWidget(side, stretch);
    };
    half({m_spanLabel, m_before, m_after}, 1);
    half({m_long, m_level, m_report}, 0);
    return row;
}

/** What is entered here rather than read. */
QWidget* UnitsPage::makeEntries()
{
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Near));
    for (QWidget* panel : std::initializer_list<QWidget*>{m_visit, m_distances, m_weights})
        row->addWidget(panel, 1, Qt::AlignTop);
    return row;
}

void UnitsPage::connectParts()
{
    connect(m_before, &QPushButton::clicked, this, [this] { move(-1); });
    connect(m_after, &QPushButton::clicked, this, [this] { move(+1); });
    connect(m_long, &QPushButton::toggled, this, &UnitsPage::setLong);
    connect(m_report, &QPushButton::clicked, this, &UnitsPage::askForReport);
    connect(m_level, &QComboBox::activated, this, [this](int index) {
        setChoice({.span = m_choice.span, .level = m_level->itemData(index).toString().toStdString()});
    });
    connect(m_visit, &VisitPanel::kept, this, &UnitsPage::reload);
    connect(m_distances, &DistancePanel::kept, this, &UnitsPage::reload);
    connect(m_weights, &WeightsPanel::changed, this, [this](const VisitWeights& weights) {
        reload();
        Q_EMIT weightsChanged(weights);
    });
    connect(m_findings, &PaintedList::activated, this, &UnitsPage::follow);
}

Date UnitsPage::today() const { return m_ward.times().zone().toLocal(m_ward.now()).date; }

void UnitsPage::setChoice(const UnitsChoice& choice)
{
    m_choice = choice;
    if (isVisible())
        reload();
    Q_EMIT choiceChanged(m_choice);
}

void UnitsPage::move(int months)
{
    const std::chrono::months by(months);
    setChoice({.span = {.from = (monthOf(m_choice.span.from) + by) / std::chrono::day(1),
                   .to = (monthOf(m_choice.span.to) + by) / std::chrono::day(1)},
        .level = m_choice.level});
}

void UnitsPage::setLong(bool isLong)
{
    const auto last = monthOf(addDays(m_choice.span.to, -1));
    setChoice({.span = UnitsChoice::monthsUpTo(last, isLong ? longSpan : 1), .level = m_choice.level});
}

void UnitsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    reload();
}

void UnitsPage::reload()
{
    m_said->hide();
    m_after->setEnabled(m_choice.span.to <= today());
    m_distances->show();
    if (load())
        showReview();
}

bool UnitsPage::load()
{
    m_visit->clear();
    m_scene.reset();
    m_review.reset();
    auto history = districtHistory(m_ward.store(), m_choice.span, m_ward.now());
    if (!history) {
        showFault(history.error());
        return false;
    }
    m_history = std::make_unique<DistrictHistory>(std::move(*history));
    showLevels();
    keepLevel(*m_history, m_choice.level);
    DistrictOptions options;
    options.weights = m_weights->weights();
    m_review = std::make_unique<DistrictReview>(reviewDistrict(*m_history, options));
    m_scene = std::make_unique<DistrictScene>(*m_history, *m_review, m_ward.language());
    return true;
}

/** The levels that there are; one that is not there any more shows all. */
void UnitsPage::showLevels()
{
    m_level->clear();
    m_level->addItem(tr("All levels"), QString());
    for (const std::string& level : levelsOf(*m_history))
        m_level->addItem(qs(level), qs(level));
    const int at = m_level->findData(qs(m_choice.level));
    if (at < 0)
        m_choice.level.clear();
    m_level->setCurrentIndex(std::max(0, at));
    m_level->setVisible(m_level->count() > 2);
}

void UnitsPage::showFault(const Error& fault)
{
    m_answer->setText(ErrorText::sentence(fault));
    m_company->setText(ErrorText::advice(fault));
    m_findings->setRows({});
    m_sheets->hide();
}

void UnitsPage::showReview()
{
    //: %1 a month or a span of months
    m_spanLabel->setText(
        tr("%1 · %n unit(s)", nullptr, static_cast<int>(m_review->units.size())).arg(m_scene->span()));
    m_answer->setText(m_scene->text().answer());
    m_company->setText(m_scene->text().company());
    std::vector<FindingRow> rows;
    for (std::size_t i = 0; i < std::min(m_review->findings.size(), mostDistrictFindings); ++i)
        rows.push_back({.text = m_scene->text().sentence(m_review->findings[i]),
            .question = m_review->findings[i].isQuestion});
    m_findings->setRows(rows);
    showSheets();
    m_visit->show(*m_scene, *m_history, today());
}

/** Views are made once and filled anew. */
void UnitsPage::showSheets()
{
    const std::vector<DistrictSheet> sheets = districtSheets(*m_scene);
    if (m_views.empty()) {
        std::size_t next = 0;
        for (const RowPlan& plan : plans) {
            auto* holder = new FoldingRow;
            holder->setSpacing(themeOf(*this).space(Space::Near));
            for (const int stretch : {plan.first, plan.second}) {
                if (stretch == 0 || next == sheets.size())
                    continue;
                auto* view = new ChartView;
                view->setObjectName(sheets[next].content.fileName);
                holder->addWidget(view, stretch);
                m_views.emplace_back(sheets[next++].part, view);
            }
            m_rows->addWidget(holder);
        }
    }
    for (std::size_t i = 0; i < m_views.size(); ++i)
        m_views[i].second->setContent(sheets[i].content);
    m_sheets->show();
}

void UnitsPage::follow(int finding)
{
    const DistrictPart part = m_review->findings[static_cast<std::size_t>(finding)].part;
    const auto at
        = std::find_if(m_views.begin(), m_views.end(), [&](const auto& view) { return view.first == part; });
    if (at == m_views.end())
        return;
    for (QWidget* above = parentWidget(); above != nullptr; above = above->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(above)) {
            area->ensureWidgetVisible(at->second, 0, themeOf(*this).space(Space::Wide));
            break;
        }
    }
    at->second->canvas().setFocus(Qt::TabFocusReason);
}

Result<void> UnitsPage::writeReport(const QString& path)
{
    if (!m_scene)
        return fail(ErrorCode::NotFound, "there is no review to report");
    return writeDistrictReport(m_ward.store(), *m_scene, path);
}

void UnitsPage::askForReport()
{
    if (!m_scene)
        return;
    const QString name = QStringLiteral("units-%1.pdf").arg(qs(toIso(m_choice.span.from)).left(7));
    ReportSaying::ask(this, *m_said, name, [this](const QString& path) { return writeReport(path); });
}

}
