// SPDX-License-Identifier: MIT
#include "ui/pages/units/visitpanel.h"

#include "ui/pages/reportsaying.h"
#include "ui/pages/panelfields.h"
#include "ui/report/district/visitdocument.h"
#include "ui/text/qdays.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

/** Units that call for a visit in their order, then the others. */
std::vector<std::size_t> visitOrder(const DistrictReview& review)
{
    std::vector<std::size_t> order;
    for (const VisitNeed& need : review.visits)
        order.push_back(need.unit);
    for (std::size_t unit = 0; unit < review.units.size(); ++unit) {
        if (std::find(order.begin(), order.end(), unit) == order.end())
            order.push_back(unit);
    }
    return order;
}

}

VisitPanel::VisitPanel(Ward& ward, QWidget* parent)
    : Sheet(tr("A visit: the sheet to take along, and what it found"), parent)
    , m_ward(ward)
    , m_which(new QComboBox)
    , m_sheet(new QPushButton(tr("Write the sheet…")))
    , m_day(new QDateEdit)
    , m_looked(new QSpinBox)
    , m_notMet(new QSpinBox)
    , m_by(initialsField(ward, "visitByEdit"))
    , m_keep(new QPushButton(tr("Keep the result")))
    , m_rule(new WrapLabel)
    , m_before(new WrapLabel({}, TextRole::Small))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    makeFields();
    connect(m_which, &QComboBox::currentIndexChanged, this, &VisitPanel::choose);
    connect(m_sheet, &QPushButton::clicked, this, &VisitPanel::askForSheet);
    connect(m_keep, &QPushButton::clicked, this, &VisitPanel::keep);
    connect(m_looked, &QSpinBox::valueChanged, m_notMet, &QSpinBox::setMaximum);
}

void VisitPanel::makeFields()
{
    m_which->setObjectName(QStringLiteral("visitUnitComboBox"));
    m_sheet->setObjectName(QStringLiteral("visitSheetButton"));
    m_day->setObjectName(QStringLiteral("visitDayEdit"));
    m_day->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    m_day->setLocale(m_ward.language().locale());
    m_day->setCalendarPopup(true);
    m_looked->setObjectName(QStringLiteral("visitLookedSpinBox"));
    m_looked->setMinimum(1);
    m_notMet->setObjectName(QStringLiteral("visitNotMetSpinBox"));
    m_keep->setObjectName(QStringLiteral("keepVisitButton"));
    m_before->setObjectName(QStringLiteral("visitsBefore"));
    m_before->setTone(Tone::Soft);
    m_said->setObjectName(QStringLiteral("visitSaid"));
    addField(*this, tr("Unit"), m_which);
    content().addWidget(m_sheet, 0, Qt::AlignLeft);
    content().addWidget(m_rule);
    addField(*this, tr("Day of the visit"), m_day);
    addField(*this, tr("Items looked at"), m_looked);
    addField(*this, tr("Items not met"), m_notMet);
    addField(*this, tr("Initials"), m_by);
    content().addWidget(m_keep, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    content().addWidget(m_before);
    m_said->hide();
}

void VisitPanel::clear()
{
    m_scene = nullptr;
    m_history = nullptr;
    setEnabled(false);
}

void VisitPanel::show(const DistrictScene& scene, const DistrictHistory& history, Date today)
{
    const QString before = m_which->currentData().toString();
    m_scene = &scene;
    m_history = &history;
    m_today = today;
    const bool isOpen = scene.review().sample.has_value();
    setEnabled(isOpen);
    m_which->blockSignals(true);
    m_which->clear();
    for (const std::size_t unit : visitOrder(scene.review()))
        m_which->addItem(scene.text().unit(unit), qs(scene.review().units[unit].id));
    m_which->setCurrentIndex(std::max(0, m_which->findData(before)));
    m_which->blockSignals(false);
    if (!isOpen)
        return;
    const stats::LqasRule& rule = scene.review().sample->rule;
    m_rule->setText(tr("Of %1 items picked by lot at least %2 must be met.")
                        .arg(scene.figures().count(rule.n), scene.figures().count(rule.d)));
    m_day->setMaximumDate(toQDate(today));
    m_day->setDate(toQDate(today));
    m_looked->setMaximum(static_cast<int>(rule.n));
    m_looked->setValue(static_cast<int>(rule.n));
    m_notMet->setValue(0);
    choose();
}

std::size_t VisitPanel::unit() const
{
    const std::string id = m_which->currentData().toString().toStdString();
    const auto& units = m_scene->review().units;
    const auto at
        = std::find_if(units.begin(), units.end(), [&](const DistrictUnit& one) { return one.id == id; });
    return at == units.end() ? 0 : static_cast<std::size_t>(at - units.begin());
}

void VisitPanel::choose()
{
    if (m_scene == nullptr || m_which->count() == 0)
        return;
    QStringList lines;
    for (const VisitResult& visit : m_scene->review().units[unit()].visits)
        lines.prepend(m_scene->text().visit(
            visit, m_scene->times().day(m_scene->times().zone().toLocal(visit.at).date)));
    m_before->setText(lines.isEmpty() ? tr("No visit in the year before.") : lines.join(QLatin1Char('\n')));
}

void VisitPanel::keep()
{
    if (m_scene == nullptr || m_which->count() == 0)
        return;
    const stats::LqasRule& rule = m_scene->review().sample->rule;
    const Date day = fromQDate(m_day->date());
    const Instant noon
        = m_scene->times().zone().toInstant({.date = day, .sinceMidnight = std::chrono::hours(12)});
    const VisitResult visit{.at = std::min(noon, m_ward.now()),
        .sample = rule.n,
        .pass = rule.d,
        .looked = m_looked->value(),
        .notMet = m_notMet->value(),
        .items = {}};
    const auto done = m_ward.store().noteVisit(
        m_which->currentData().toString().toStdString(), visit, m_by->text().trimmed().toStdString());
    sayKept(*m_said, tr("Kept: %1.").arg(m_scene->text().visit(visit, m_scene->times().day(day))),
        done ? Result<void>() : tl::unexpected(done.error()));
    if (done)
        Q_EMIT kept();
}

Result<void> VisitPanel::writeSheet(const QString& path)
{
    if (m_scene == nullptr || m_which->count() == 0)
        return fail(ErrorCode::NotFound, "there is no unit to visit");
    const PlannedVisit visit{.scene = *m_scene, .history = *m_history, .unit = unit(), .day = m_today};
    return writeVisitSheet(m_ward.store(), visit, path);
}

void VisitPanel::askForSheet()
{
    const QString name
        = QStringLiteral("visit-%1-%2.pdf").arg(m_which->currentData().toString(), qs(toIso(m_today)));
    ReportSaying::ask(this, *m_said, name, [this](const QString& path) { return writeSheet(path); });
}

}
