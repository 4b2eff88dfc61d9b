// SPDX-License-Identifier: MIT
#include "ui/pages/stores/devicespane.h"

#include "ui/pages/stores/deviceform.h"
#include "ui/pages/stores/newdeviceform.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/foldingrow.h"

#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr int formWidth = 330;

Mark markOf(const DeviceRow& row)
{
    if (row.state == EquipmentState::OutForRepair)
        return row.spare ? Mark::Gap : Mark::GapCritical;
    if (row.check && row.check->what.verdict == InstrumentVerdict::Off)
        return Mark::Gap;
    return !row.upkeep.empty() && row.upkeep.front().overdue ? Mark::Late : Mark::Met;
}

}

DevicesPane::DevicesPane(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_devices(new ActionTable)
    , m_form(new DeviceForm(ward))
{
    const Theme& theme = themeOf(*this);
    m_devices->setObjectName(QStringLiteral("devicesTable"));
    m_devices->setAccessibleName(tr("Devices, first due first"));
    m_devices->setHeaders({tr("Device"), tr("Upkeep"), tr("Kind"), tr("State")});
    m_devices->setEmptyText(tr("No device is on the register of this unit."));
    auto* forms = new QWidget;
    forms->setMinimumWidth(theme.px(formWidth));
    forms->setMaximumWidth(theme.px(formWidth));
    auto* below = new QVBoxLayout(forms);
    below->setContentsMargins(0, 0, 0, 0);
    below->setSpacing(theme.space(Space::Apart));
    below->addWidget(m_form);
    below->addWidget(new NewDeviceForm(ward));
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Wide));
    row->addWidget(m_devices, 1, Qt::AlignTop);
    row->addWidget(forms, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(row);
    column->addStretch(1);
    connect(m_devices, &ActionTable::cursorMoved, this, &DevicesPane::choose);
    connect(m_devices, &ActionTable::rowActivated, m_form, &DeviceForm::focusDeed);
    setFocusProxy(m_devices);
}

void DevicesPane::display(const StoresView& view)
{
    m_rows = view.devices;
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    std::vector<ActionRow> rows;
    for (const DeviceRow& row : m_rows)
        rows.push_back({.mark = markOf(row),
            .title = qs(row.device.label),
            .subtitle = qs(row.device.number),
            .what = text.upkeep(row),
            .who = StoresText::device(row.device.kind),
            .by = StoresText::state(row.state),
            .byAside = row.state == EquipmentState::OutForRepair ? TimeText::span(m_ward.now() - row.since)
                                                                 : QString()});
    const std::string chosen = m_chosen;
    m_devices->setRows(rows);
    const auto at = std::find_if(
        m_rows.begin(), m_rows.end(), [&](const DeviceRow& row) { return row.device.id == chosen; });
    m_devices->setCursorAt(at == m_rows.end() ? 0 : static_cast<int>(at - m_rows.begin()));
    choose(m_devices->cursor());
}

void DevicesPane::choose(int row)
{
    const auto at = static_cast<std::size_t>(row);
    const bool there = row >= 0 && at < m_rows.size();
    m_chosen = there ? m_rows[at].device.id : std::string();
    m_form->setDevice(there ? std::optional(m_rows[at]) : std::nullopt);
}

}
