// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/pages/ward.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace cradlepost {

class FactSheet;
class InitialsEdit;
class WrapLabel;

/** Each fridge: the last reading and what to do, excursions and what was inside; and the reading to enter. */
class FridgePane : public QWidget
{
    Q_OBJECT
public:
    explicit FridgePane(Ward& ward, QWidget* parent = nullptr);

    void display(const StoresView& view);

private:
    /** What one fridge says. */
    struct Words
    {
        FactSheet* fact = nullptr;
        WrapLabel* about = nullptr;
    };

    QWidget* makeForm();
    void showFridges(const StoresView& view);
    void fillChoice(const StoresView& view);
    [[nodiscard]] Result<FridgeReading> read() const;
    void keep();

    Ward& m_ward;
    QVBoxLayout* m_column = nullptr;
    std::vector<Words> m_words; ///< as many as there ever were fridges
    WrapLabel* m_none;
    QComboBox* m_which;
    WrapLabel* m_whichLabel = nullptr;
    QLineEdit* m_celsius;
    QLineEdit* m_lowest;
    QLineEdit* m_highest;
    InitialsEdit* m_who;
    WrapLabel* m_said;
    QWidget* m_form;
};

}
