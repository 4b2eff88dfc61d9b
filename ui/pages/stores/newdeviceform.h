// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QLineEdit;

namespace cradlepost {

class InitialsEdit;
class WrapLabel;

/** Puts a device on the register. */
class NewDeviceForm : public Sheet
{
    Q_OBJECT
public:
    explicit NewDeviceForm(Ward& ward, QWidget* parent = nullptr);

private:
    void addField(const QString& name, QWidget* field, const char* objectName);
    void fillItems();
    /** "warmer-3": the first number of that kind that is free. */
    [[nodiscard]] Result<std::string> freeId(EquipmentKind kind) const;
    void say(const QString& text, bool wrong);
    void keep();

    Ward& m_ward;
    QComboBox* m_kind;
    QLineEdit* m_name;
    QLineEdit* m_number;
    QComboBox* m_item; ///< the item of the round that looks at it
    QLineEdit* m_days;
    QLineEdit* m_calibration;
    std::string m_filledFor; ///< unit whose items can be chosen
    InitialsEdit* m_who;
    WrapLabel* m_said;
};

}
