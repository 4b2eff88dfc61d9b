// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace cradlepost {

class InitialsEdit;
class WrapLabel;

/** What happened to one device; writes the events of it. */
class DeviceForm : public Sheet
{
    Q_OBJECT
public:
    explicit DeviceForm(Ward& ward, QWidget* parent = nullptr);

    /** Of which device; nothing hides the fields. */
    void setDevice(const std::optional<DeviceRow>& device);
    void focusDeed();

    /** What can be said of a device; each is one entry of the list. */
    enum class Deed {
        Broken,
        FailedTest,
        SentToService,
        Back,
        MadeSpare,
        Serviced,
        Calibrated,
        Checked,
        Gone
    };

private:
    void fillDeeds();
    void followDeed();
    [[nodiscard]] Deed deed() const;
    [[nodiscard]] static std::vector<EquipmentEvent> events(
        const EquipmentRegister& known, const std::string& device, Deed deed, Instant at);
    [[nodiscard]] bool isScale() const;
    /** The two readings of a check; nothing when one is no number. */
    [[nodiscard]] std::optional<EquipmentDeed> check() const;
    void say(const QString& text, bool wrong);
    void keep();
    void write(const std::vector<EquipmentEvent>& events);

    Ward& m_ward;
    std::optional<DeviceRow> m_device;
    WrapLabel* m_about;
    QComboBox* m_deed;
    QLineEdit* m_true;
    QLineEdit* m_shown;
    WrapLabel* m_trueLabel;
    WrapLabel* m_shownLabel;
    InitialsEdit* m_who;
    QPushButton* m_keep;
    WrapLabel* m_said;
};

}
