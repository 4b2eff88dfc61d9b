// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace cradlepost {

class WrapLabel;

/** What came in, was used, was lost or was counted of one item; writes one movement. */
class StockForm : public Sheet
{
    Q_OBJECT
public:
    explicit StockForm(Ward& ward, QWidget* parent = nullptr);

    /** Of which shelf; nothing hides the fields. */
    void setShelf(const std::optional<ShelfRow>& shelf);
    /** A count to put the book right, to be given its reason and kept. */
    void offer(const BookDifference& difference);
    void focusPieces();

private:
    WrapLabel* addField(const QString& name, QWidget* field, WrapLabel* below = nullptr);
    void fillKinds();
    void fillReasons();
    void followKind();
    void clearFields();
    [[nodiscard]] MovementKind kind() const;
    [[nodiscard]] std::optional<StockMovement> read();
    static void say(WrapLabel* where, const QString& text);
    /** At the field that it is about. */
    void tell(const Error& error);
    void keep();

    Ward& m_ward;
    std::optional<ShelfRow> m_shelf;
    std::optional<StockMovement> m_offered; ///< the count that was offered, while it is not changed
    WrapLabel* m_about;
    QComboBox* m_kind;
    QLineEdit* m_pieces;
    WrapLabel* m_piecesSaid;
    QLineEdit* m_lot;
    QLineEdit* m_expiry;
    WrapLabel* m_expirySaid;
    QComboBox* m_reason;
    WrapLabel* m_reasonLabel = nullptr;
    QLineEdit* m_who;
    WrapLabel* m_whoSaid;
    QPushButton* m_keep;
    WrapLabel* m_said;
    std::vector<QWidget*> m_fields;
};

}
