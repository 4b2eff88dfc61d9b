// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/pages/ward.h"

#include <QWidget>

class QButtonGroup;

namespace cradlepost {

class DevicesPane;
class FridgePane;
class ShelvesPane;
class WrapLabel;

/** *Stores*: what runs out first, in one sentence; then the shelves, the devices or the fridge. */
class StoresPage : public QWidget
{
    Q_OBJECT
public:
    explicit StoresPage(Ward& ward, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeChoice();
    void refresh();
    void open(int pane);

    Ward& m_ward;
    bool m_stale = true;
    bool m_read = false; ///< at least once
    WrapLabel* m_answer;
    WrapLabel* m_sentence;
    QButtonGroup* m_choice;
    ShelvesPane* m_shelves;
    DevicesPane* m_devices;
    FridgePane* m_fridge;
};

}
