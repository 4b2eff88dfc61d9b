// SPDX-License-Identifier: MIT
#include "ui/pages/units/unitspage.h"

#include "core/store/districthistory.h"
#include "ui/charts/chartcanvas.h"
#include "ui/charts/chartview.h"
#include "ui/report/district/districtdocument.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/findingslist.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QFileDialog>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr int longSpan = 3; // months

std::chrono::year_month monthOf(Date day) { return day.year() / day.month(); }

ReviewSpan monthsUpTo(std::chrono::year_month last, int months)
{
    return {.from = (last - std::chrono::months(months - 1)) / std::chrono::day(1),
        .to = (last + std::chrono::months(1)) / std::chrono::day(1)};
}

/** How many sheets stand in each row, with their stretches, in the order of districtSheets. */
struct RowPlan
{
    int first = 1;
    int second = 1; ///< 0: the sheet has the row to itself
};
constexpr RowPlan plans[] = {{1, 0}, {1, 1}, {1, 1}, {3, 2}};

}

UnitsPage::UnitsPage(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_spanLabel(new WrapLabel({}, TextRole::Title))
    , m_before(new QPushButton(tr("Month before")))
    , m_after(new QPushButton(tr("Month after")))
    , m_long(new QPushButton(tr("Three months")))
    , m_report(new QPushButton(tr("Report…")))
    , m_said(new WrapLabel)
    , m_answer(new WrapLabel({}, TextRole::Finding))
    , m_company(new WrapLabel({}, TextRole::Body))
    , m_findings(new FindingsList)
    , m_sheets(new QWidget)
    , m_rows(new QVBoxLayout(m_sheets))
{
    m_span = monthsUpTo(monthOf(today()) - std::chrono::months(1), 1);
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(theme.space(Space::Wide), theme.space(Space::Near), theme.space(Space::Wide),
        theme.space(Space::Apart));
    page->setSpacing(theme.space(Space::Near));
    page->addWidget(makeBar());
    for (QWidget* widget : std::initializer_list<QWidget*>{m_said, m_answer, m_company, m_findings, m_sheets})
        page->addWidget(widget);
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
    m_report->setObjectName(QStringLiteral("unitsReportButton"));
    m_report->setProperty("primary", true);
    row->addWidget(m_spanLabel, 1, Qt::AlignVCenter);
    for (QPushButton* button : {m_before, m_after, m_long, m_report})
        row->addWidget(button, 0, Qt::AlignVCenter);
    return row;
}

void UnitsPage::connectParts()
{
    connect(m_before, &QPushButton::clicked, this, [this] { move(-1); });
    connect(m_after, &QPushButton::clicked, this, [this] { move(+1); });
    connect(m_long, &QPushButton::toggled, this, &UnitsPage::setLong);
    connect(m_report, &QPushButton::clicked, this, &UnitsPage::askForReport);
    connect(m_findings, &PaintedList::activated, this, &UnitsPage::follow);
}

Date UnitsPage::today() const { return m_ward.times().zone().toLocal(m_ward.now()).date; }

void UnitsPage::setSpan(const ReviewSpan& span)
{
    m_span = span;
    if (isVisible())
        reload();
}

void UnitsPage::move(int months)
{
    const std::chrono::months by(months);
    setSpan({.from = (monthOf(m_span.from) + by) / std::chrono::day(1),
        .to = (monthOf(m_span.to) + by) / std::chrono::day(1)});
}

void UnitsPage::setLong(bool isLong)
{
    setSpan(monthsUpTo(monthOf(addDays(m_span.to, -1)), isLong ? longSpan : 1));
}

void UnitsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    reload();
}

void UnitsPage::reload()
{
    m_said->hide();
    m_after->setEnabled(m_span.to <= today());
    if (load())
        showReview();
}

bool UnitsPage::load()
{
    m_scene.reset();
    m_review.reset();
    auto history = districtHistory(m_ward.store(), m_span, m_ward.now());
    if (!history) {
        showFault(history.error());
        return false;
    }
    m_history = std::make_unique<DistrictHistory>(std::move(*history));
    m_review = std::make_unique<DistrictReview>(reviewDistrict(*m_history));
    m_scene = std::make_unique<DistrictScene>(*m_history, *m_review, m_ward.language());
    return true;
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
    const QString name = QStringLiteral("units-%1.pdf").arg(qs(toIso(m_span.from)).left(7));
    const QString path = QFileDialog::getSaveFileName(this, tr("Report"), name,
        tr("PDF (*.pdf);;Web page (*.html);;Spreadsheet (*.xlsx);;CSV (*.csv);;JSON (*.json)"));
    if (path.isEmpty())
        return;
    const auto written = writeReport(path);
    m_said->setText(written ? tr("Report written: %1").arg(path)
                            : QStringLiteral("%1 %2").arg(
                                ErrorText::sentence(written.error()), ErrorText::advice(written.error())));
    m_said->setTone(written ? Tone::Soft : Tone::Warning);
    m_said->show();
}

}
