// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/stockitem.h"
#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QSpinBox;

namespace cradlepost {

class InitialsEdit;
class WrapLabel;

/** What a shelf is: its name, its levels, how it is delivered and kept. Changes one or puts up a new one. */
class ShelfForm : public Sheet
{
    Q_OBJECT
public:
    explicit ShelfForm(Ward& ward, QWidget* parent = nullptr);

    /** On that shelf, or for a new one. */
    void open(const std::optional<StockItem>& item);

Q_SIGNALS:
    /** Kept, or put aside when it is empty: the id of the shelf. */
    void closed(const std::string& shelf);

private:
    QSpinBox* addNumber(const QString& name, const char* objectName, int least, int most);
    void addChoices();
    void addButtons();
    void fillFridges(const std::string& chosen);
    [[nodiscard]] StockItem read() const;
    [[nodiscard]] bool isTaken(const std::string& id) const;
    void keep();
    void say(const QString& text);

    Ward& m_ward;
    std::optional<StockItem> m_item; ///< what is changed; none: a new one
    QLineEdit* m_name;
    QSpinBox* m_par;
    QSpinBox* m_minimum;
    QSpinBox* m_emergency;
    QSpinBox* m_pack;
    QSpinBox* m_days;
    QComboBox* m_service;
    QComboBox* m_fridge;
    QCheckBox* m_expires;
    QCheckBox* m_frost;
    QCheckBox* m_retired;
    InitialsEdit* m_who;
    WrapLabel* m_said;
};

}
