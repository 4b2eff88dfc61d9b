// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/pages/ward.h"

#include <QWidget>

class QPushButton;

namespace cradlepost {

class ActionTable;
class ShelfForm;
class StockForm;
class WrapLabel;

/** The shelves, what runs out first; what expires; the kits they make up; where the last round counted
 * otherwise. */
class ShelvesPane : public QWidget
{
    Q_OBJECT
public:
    explicit ShelvesPane(Ward& ward, QWidget* parent = nullptr);

    void display(const StoresView& view);

private:
    QWidget* makeLists();
    QWidget* makeForms();
    /** The form of the shelf itself, in the place of the one for what happened. */
    void describe(const std::optional<StockItem>& item);
    void described(const std::string& shelf);
    void showShelves();
    void showDifferences();
    void choose(int row);
    void chooseDifference(int row);
    void beginBook();

    Ward& m_ward;
    StoresView m_view;
    std::string m_chosen; ///< item
    QPushButton* m_begin;
    ActionTable* m_shelves;
    WrapLabel* m_expiring;
    WrapLabel* m_kits;
    WrapLabel* m_differencesTitle;
    ActionTable* m_differences;
    StockForm* m_form;
    ShelfForm* m_shelf;
    QPushButton* m_change;
    QPushButton* m_new;
};

}
