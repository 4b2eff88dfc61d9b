// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/pages/ward.h"

#include <QWidget>

namespace cradlepost {

class ActionTable;
class DeviceForm;

/** The register of devices: what is out and what is due first; and what happened to the chosen one. */
class DevicesPane : public QWidget
{
    Q_OBJECT
public:
    explicit DevicesPane(Ward& ward, QWidget* parent = nullptr);

    void display(const StoresView& view);

private:
    void choose(int row);

    Ward& m_ward;
    std::vector<DeviceRow> m_rows;
    std::string m_chosen; ///< device
    ActionTable* m_devices;
    DeviceForm* m_form;
};

}
