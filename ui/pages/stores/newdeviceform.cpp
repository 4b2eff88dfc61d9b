// SPDX-License-Identifier: MIT
#include "ui/pages/stores/newdeviceform.h"

#include "ui/pages/panelfields.h"
#include "ui/pages/stores/initialsedit.h"
#include "ui/text/errortext.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QComboBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr EquipmentKind kinds[] = {EquipmentKind::Warmer, EquipmentKind::BagMask, EquipmentKind::Suction,
    EquipmentKind::OxygenSource, EquipmentKind::Oximeter, EquipmentKind::Scale, EquipmentKind::Thermometer,
    EquipmentKind::Fridge, EquipmentKind::Clock, EquipmentKind::Other};
constexpr int longestName = 60;
constexpr int longestNumber = 40;
}

NewDeviceForm::NewDeviceForm(Ward& ward, QWidget* parent)
    : Sheet(tr("A new device"), parent)
    , m_ward(ward)
    , m_kind(new QComboBox)
    , m_name(new QLineEdit)
    , m_number(new QLineEdit)
    , m_item(new QComboBox)
    , m_days(new QLineEdit)
    , m_calibration(new QLineEdit)
    , m_who(new InitialsEdit(ward))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    for (const EquipmentKind one : kinds)
        m_kind->addItem(StoresText::device(one), static_cast<int>(one));
    m_name->setMaxLength(longestName);
    m_number->setMaxLength(longestNumber);
    addField(tr("Kind"), m_kind, "newKindComboBox");
    addField(tr("What the ward calls it"), m_name, "newNameEdit");
    addField(tr("Number on it, if any"), m_number, "newNumberEdit");
    addField(tr("What of the round looks at it"), m_item, "newItemComboBox");
    addField(tr("Days between services, if planned"), m_days, "newDaysEdit");
    addField(tr("Days between calibrations, if planned"), m_calibration, "newCalibrationEdit");
    addField(tr("Your initials"), m_who, "newWhoEdit");
    auto* button = new QPushButton(tr("Put on the register"));
    button->setObjectName(QStringLiteral("addDeviceButton"));
    m_said->setObjectName(QStringLiteral("newDeviceSaid"));
    content().addWidget(button, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    say({}, false);
    connect(button, &QPushButton::clicked, this, &NewDeviceForm::keep);
    for (QLineEdit* edit : {m_name, m_number, m_days, m_calibration, static_cast<QLineEdit*>(m_who)})
        connect(edit, &QLineEdit::returnPressed, this, &NewDeviceForm::keep);
    connect(&m_ward, &Ward::changed, this, &NewDeviceForm::fillItems);
    fillItems();
}

/** What a round tests, reads or measures; what was chosen stays chosen. */
void NewDeviceForm::fillItems()
{
    if (!m_ward.view() || m_ward.unit() == m_filledFor)
        return;
    m_filledFor = m_ward.unit();
    m_item->clear();
    m_item->addItem(tr("nothing"), QString());
    const Checklist& checklist = m_ward.view()->adopted.checklist;
    for (const Section& section : checklist.sections) {
        for (const Item& item : section.items) {
            const ItemKind kind = item.kind();
            if (kind == ItemKind::Steps || kind == ItemKind::Measure || kind == ItemKind::Cylinder)
                m_item->addItem(m_ward.language().wording(item.label), qs(item.id));
        }
    }
}

void NewDeviceForm::addField(const QString& name, QWidget* field, const char* objectName)
{
    field->setObjectName(QLatin1String(objectName));
    cradlepost::addField(*this, name, field);
}

Result<std::string> NewDeviceForm::freeId(EquipmentKind kind) const
{
    const auto known = m_ward.store().equipmentRegister(m_ward.unit());
    if (!known)
        return tl::unexpected(known.error());
    for (int number = 1;; ++number) {
        std::string id = std::string(codeName(kind)) + '-' + std::to_string(number);
        if (known->devices.find(id) == known->devices.end())
            return id;
    }
}

void NewDeviceForm::say(const QString& text, bool wrong)
{
    m_said->setTone(wrong ? Tone::Warning : Tone::Soft);
    m_said->setText(text);
    m_said->setVisible(!text.isEmpty());
}

void NewDeviceForm::keep()
{
    Equipment device{.kind = static_cast<EquipmentKind>(m_kind->currentData().toInt())};
    device.label = m_name->text().trimmed().toStdString();
    device.number = m_number->text().trimmed().toStdString();
    if (const std::string item = m_item->currentData().toString().toStdString(); !item.empty())
        device.serves = {item};
    for (const auto& [field, days] :
        {std::pair(m_days, &device.serviceDays), std::pair(m_calibration, &device.calibrationDays)}) {
        bool sound = true;
        const QString typed = field->text().trimmed();
        *days = typed.isEmpty() ? 0 : typed.toInt(&sound);
        if (!sound)
            return say(tr("Give the days as a whole number."), true);
    }
    if (!m_who->take())
        return say(tr("Say who you are: your initials."), true);
    const auto id = freeId(device.kind);
    if (!id)
        return say(ErrorText::told(id.error()), true);
    device.id = *id;
    const auto done = m_ward.store().noteEquipment(m_ward.unit(),
        {{.device = *id,
            .at = m_ward.now(),
            .deed = Added{.device = device, .state = EquipmentState::InUse}}},
        m_ward.actor());
    if (!done)
        return say(ErrorText::told(done.error()), true);
    for (QLineEdit* edit : {m_name, m_number, m_days, m_calibration})
        edit->clear();
    m_item->setCurrentIndex(0);
    say(tr("Kept."), false);
    m_ward.refresh();
}

}
