// SPDX-License-Identifier: MIT
#include "ui/pages/stores/deviceform.h"

#include "ui/pages/panelfields.h"
#include "ui/pages/stores/initialsedit.h"
#include "ui/text/errortext.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

using Deed = DeviceForm::Deed;

std::vector<Deed> deedsOf(const DeviceRow& row)
{
    std::vector<Deed> deeds;
    if (row.state == EquipmentState::OutForRepair)
        deeds = {Deed::Back, Deed::MadeSpare};
    else
        deeds = {Deed::Broken, Deed::FailedTest, Deed::SentToService};
    if (row.state == EquipmentState::Spare)
        deeds.push_back(Deed::Back);
    if (row.state == EquipmentState::InUse)
        deeds.push_back(Deed::MadeSpare);
    if (row.device.kind == EquipmentKind::Scale || row.device.kind == EquipmentKind::Thermometer)
        deeds.insert(deeds.begin(), Deed::Checked);
    for (const Deed one : {Deed::Serviced, Deed::Calibrated, Deed::Gone})
        deeds.push_back(one);
    return deeds;
}

QString nameOf(Deed deed)
{
    switch (deed) {
    case Deed::Broken:
        return DeviceForm::tr("Goes out: does not work");
    case Deed::FailedTest:
        return DeviceForm::tr("Goes out: failed its test");
    case Deed::SentToService:
        return DeviceForm::tr("Goes out: to be serviced");
    case Deed::Back:
        return DeviceForm::tr("In use again");
    case Deed::MadeSpare:
        return DeviceForm::tr("Is the spare now");
    case Deed::Serviced:
        return DeviceForm::tr("Was serviced here");
    case Deed::Calibrated:
        return DeviceForm::tr("Was calibrated");
    case Deed::Checked:
        return DeviceForm::tr("Check of its reading");
    case Deed::Gone:
        break;
    }
    return DeviceForm::tr("Is no longer here");
}

}

DeviceForm::DeviceForm(Ward& ward, QWidget* parent)
    : Sheet({}, parent)
    , m_ward(ward)
    , m_about(new WrapLabel({}, TextRole::Small))
    , m_deed(new QComboBox)
    , m_true(new QLineEdit)
    , m_shown(new QLineEdit)
    , m_who(new InitialsEdit(ward))
    , m_keep(new QPushButton(tr("Keep")))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    m_about->setObjectName(QStringLiteral("deviceAbout"));
    m_about->setTone(Tone::Soft);
    m_deed->setObjectName(QStringLiteral("deedComboBox"));
    m_true->setObjectName(QStringLiteral("trueEdit"));
    m_shown->setObjectName(QStringLiteral("shownEdit"));
    m_who->setObjectName(QStringLiteral("deviceWhoEdit"));
    m_keep->setObjectName(QStringLiteral("keepDeviceButton"));
    m_keep->setProperty("primary", true);
    m_said->setObjectName(QStringLiteral("deviceSaid"));
    content().addWidget(m_about);
    addField(*this, tr("What happened"), m_deed);
    m_trueLabel = addField(*this, tr("Known weight, g"), m_true);
    m_shownLabel = addField(*this, tr("It shows"), m_shown);
    addField(*this, tr("Your initials"), m_who);
    content().addWidget(m_keep, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    connect(m_deed, &QComboBox::currentIndexChanged, this, &DeviceForm::followDeed);
    connect(m_keep, &QPushButton::clicked, this, &DeviceForm::keep);
    for (QLineEdit* edit : {m_true, m_shown, static_cast<QLineEdit*>(m_who)})
        connect(edit, &QLineEdit::returnPressed, this, &DeviceForm::keep);
    say({}, false);
    setDevice(std::nullopt);
}

void DeviceForm::setDevice(const std::optional<DeviceRow>& device)
{
    const bool same
        = device && m_device && device->device.id == m_device->device.id && device->state == m_device->state;
    m_device = device;
    setVisible(device.has_value());
    if (!device)
        return;
    setTitle(qs(device->device.label));
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    m_about->setText(text.deviceCourse(*device).join(QLatin1Char('\n')));
    if (same)
        return;
    fillDeeds();
    m_true->clear();
    m_shown->clear();
    followDeed();
}

void DeviceForm::focusDeed() { m_deed->setFocus(Qt::OtherFocusReason); }

void DeviceForm::fillDeeds()
{
    const QSignalBlocker still(m_deed);
    m_deed->clear();
    for (const Deed one : deedsOf(*m_device))
        m_deed->addItem(nameOf(one), static_cast<int>(one));
}

DeviceForm::Deed DeviceForm::deed() const { return static_cast<Deed>(m_deed->currentData().toInt()); }

void DeviceForm::followDeed()
{
    const bool checks = m_device && deed() == Deed::Checked;
    const bool scale = isScale();
    m_trueLabel->setText(scale ? tr("Known weight, g") : tr("The reference shows, °C"));
    m_shownLabel->setText(scale ? tr("The scale shows, g") : tr("The thermometer shows, °C"));
    m_true->setAccessibleName(m_trueLabel->text());
    m_shown->setAccessibleName(m_shownLabel->text());
    for (QWidget* widget : {static_cast<QWidget*>(m_trueLabel), static_cast<QWidget*>(m_shownLabel),
             static_cast<QWidget*>(m_true), static_cast<QWidget*>(m_shown)})
        widget->setVisible(checks);
}

bool DeviceForm::isScale() const { return m_device && m_device->device.kind == EquipmentKind::Scale; }

std::optional<EquipmentDeed> DeviceForm::check() const
{
    if (isScale()) {
        bool known = false;
        bool shown = false;
        const ScaleChecked scale{
            .known = m_true->text().trimmed().toInt(&known), .read = m_shown->text().trimmed().toInt(&shown)};
        return known && shown ? std::optional<EquipmentDeed>(scale) : std::nullopt;
    }
    const auto reference = Decimal::parse(m_true->text().trimmed().toStdString());
    const auto read = Decimal::parse(m_shown->text().trimmed().toStdString());
    if (!reference || !read)
        return std::nullopt;
    return ThermometerChecked{.reference = *reference, .read = *read};
}

std::vector<EquipmentEvent> DeviceForm::events(
    const EquipmentRegister& known, const std::string& device, Deed deed, Instant at)
{
    const auto one = [&](EquipmentDeed what) {
        return std::vector<EquipmentEvent>{{.device = device, .at = at, .deed = what}};
    };
    switch (deed) {
    case Deed::Broken:
        return takeOut(known, device, MoveReason::Broken, at);
    case Deed::FailedTest:
        return takeOut(known, device, MoveReason::FailedTest, at);
    case Deed::SentToService:
        return takeOut(known, device, MoveReason::Service, at);
    case Deed::Back:
        return bringBack(known, device, at);
    case Deed::MadeSpare:
        return one(Moved{.to = EquipmentState::Spare, .reason = MoveReason::StepsBack});
    case Deed::Serviced:
        return one(Serviced{});
    case Deed::Calibrated:
        return one(Calibrated{});
    case Deed::Checked:
    case Deed::Gone:
        break;
    }
    return one(Moved{.to = EquipmentState::Retired, .reason = MoveReason::WornOut});
}

void DeviceForm::say(const QString& text, bool wrong)
{
    m_said->setTone(wrong ? Tone::Warning : Tone::Soft);
    m_said->setText(text);
    m_said->setVisible(!text.isEmpty());
}

void DeviceForm::keep()
{
    if (!m_device)
        return;
    const std::string& id = m_device->device.id;
    if (deed() == Deed::Checked) {
        const auto checked = check();
        if (!checked)
            return say(isScale() ? tr("Give both weights in whole grams, for example 3500.")
                                 : tr("Give both readings as numbers, for example 36.8."),
                true);
        return write({{.device = id, .at = m_ward.now(), .deed = *checked}});
    }
    const auto known = m_ward.store().equipmentRegister(m_ward.unit());
    if (!known)
        return say(ErrorText::told(known.error()), true);
    write(events(*known, id, deed(), m_ward.now()));
}

void DeviceForm::write(const std::vector<EquipmentEvent>& events)
{
    if (!m_who->take())
        return say(tr("Say who you are: your initials."), true);
    if (const auto done = m_ward.store().noteEquipment(m_ward.unit(), events, m_ward.actor()); !done)
        return say(ErrorText::told(done.error()), true);
    m_true->clear();
    m_shown->clear();
    say(events.size() > 1 ? tr("Kept; the spare changed places with it.") : tr("Kept."), false);
    m_ward.refresh();
}

}
