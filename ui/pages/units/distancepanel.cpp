// SPDX-License-Identifier: MIT
#include "ui/pages/units/distancepanel.h"

#include "ui/pages/panelfields.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <cmath>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr double mostKilometres = static_cast<double>(mostMetres) / 1000;
}

DistancePanel::DistancePanel(Ward& ward, QWidget* parent)
    : Sheet(tr("Ways between units, by which stock moves"), parent)
    , m_ward(ward)
    , m_known(new WrapLabel)
    , m_from(new QComboBox)
    , m_to(new QComboBox)
    , m_km(new QDoubleSpinBox)
    , m_by(initialsField(ward, "distanceByEdit"))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    makeFields();
}

void DistancePanel::makeFields()
{
    auto* table = new QPushButton(tr("Read a table…"));
    auto* one = new QPushButton(tr("Keep the way"));
    table->setObjectName(QStringLiteral("distanceTableButton"));
    one->setObjectName(QStringLiteral("keepDistanceButton"));
    m_known->setObjectName(QStringLiteral("distancesKnown"));
    m_from->setObjectName(QStringLiteral("distanceFromComboBox"));
    m_to->setObjectName(QStringLiteral("distanceToComboBox"));
    m_km->setObjectName(QStringLiteral("distanceKmSpinBox"));
    m_km->setRange(0, mostKilometres);
    m_km->setDecimals(1);
    m_km->setLocale(m_ward.language().locale());
    m_said->setObjectName(QStringLiteral("distanceSaid"));
    content().addWidget(m_known);
    addField(*this, tr("From"), m_from);
    addField(*this, tr("To"), m_to);
    addField(*this, tr("Kilometres (0: no way)"), m_km);
    addField(*this, tr("Initials"), m_by);
    auto* buttons = new FoldingRow;
    buttons->setSpacing(themeOf(*this).space(Space::Close));
    buttons->addWidget(one);
    buttons->addWidget(table);
    content().addWidget(buttons, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    content().addStretch(1);
    m_said->hide();
    connect(one, &QPushButton::clicked, this, &DistancePanel::keepOne);
    connect(table, &QPushButton::clicked, this, &DistancePanel::askForTable);
}

void DistancePanel::show()
{
    const auto units = m_ward.store().units().value_or(std::vector<Unit>());
    for (QComboBox* box : {m_from, m_to}) {
        const QString before = box->currentData().toString();
        box->clear();
        for (const Unit& unit : units)
            box->addItem(qs(unit.name), qs(unit.id));
        box->setCurrentIndex(std::max(0, box->findData(before)));
    }
    if (m_to->currentIndex() == m_from->currentIndex() && m_to->count() > 1)
        m_to->setCurrentIndex(m_from->currentIndex() == 0 ? 1 : 0);
    showKnown();
}

void DistancePanel::showKnown()
{
    const auto known = m_ward.store().distances();
    const int ways = known ? static_cast<int>(known->all().size()) : 0;
    m_known->setText(ways == 0
            ? tr("No way is known yet: any way counts the same. A table has the columns from, to and km.")
            : tr("%n way(s) known. Stock moves only where a way is known.", nullptr, ways));
}

void DistancePanel::say(const Result<void>& done, int ways)
{
    sayKept(*m_said, tr("%n way(s) kept.", nullptr, ways), done);
    if (!done)
        return;
    showKnown();
    Q_EMIT kept();
}

void DistancePanel::keepOne()
{
    constexpr double metresAKilometre = 1000;
    const Distance distance{.from = m_from->currentData().toString().toStdString(),
        .to = m_to->currentData().toString().toStdString(),
        .metres = std::llround(m_km->value() * metresAKilometre),
        .at = m_ward.now()};
    say(m_ward.store().setDistances({distance}, m_by->text().trimmed().toStdString()), 1);
}

Result<void> DistancePanel::read(const QString& path)
{
    const auto take = [&]() -> Result<std::size_t> {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            return fail(ErrorCode::NotFound, path.toStdString() + " cannot be read");
        std::vector<std::string> ids;
        for (const Unit& unit : m_ward.store().units().value_or(std::vector<Unit>()))
            ids.push_back(unit.id);
        const auto ways = readDistances(file.readAll().toStdString(), ids, m_ward.now());
        if (!ways)
            return tl::unexpected(ways.error());
        const auto set = m_ward.store().setDistances(*ways, m_by->text().trimmed().toStdString());
        return set ? Result<std::size_t>(ways->size()) : tl::unexpected(set.error());
    };
    const auto taken = take();
    const auto done = taken ? Result<void>() : tl::unexpected(taken.error());
    say(done, taken ? static_cast<int>(*taken) : 0);
    return done;
}

void DistancePanel::askForTable()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("Distances"), {}, tr("Tables (*.csv)"));
    if (!path.isEmpty())
        read(path);
}

}
