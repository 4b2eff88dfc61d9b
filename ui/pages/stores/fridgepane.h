// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/pages/ward.h"

#include <QWidget>

class QLineEdit;

namespace cradlepost {

class FactSheet;
class InitialsEdit;
class WrapLabel;

/** The fridge: the last reading and what to do, excursions and what was inside, and the reading to enter. */
class FridgePane : public QWidget
{
    Q_OBJECT
public:
    explicit FridgePane(Ward& ward, QWidget* parent = nullptr);

    void display(const StoresView& view);

private:
    QWidget* makeForm();
    void addField(const QString& name, QLineEdit* field, QWidget& form);
    [[nodiscard]] Result<FridgeReading> read() const;
    void keep();

    Ward& m_ward;
    std::string m_fridge; ///< the first one of the register; empty: none
    FactSheet* m_fact;
    WrapLabel* m_about;
    WrapLabel* m_none;
    QLineEdit* m_celsius;
    QLineEdit* m_lowest;
    QLineEdit* m_highest;
    InitialsEdit* m_who;
    WrapLabel* m_said;
    QWidget* m_form;
};

}
