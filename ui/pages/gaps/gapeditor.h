// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace cradlepost {

class WrapLabel;

/** Who mends a gap, by when, and a remark; writes a gap action. */
class GapEditor : public Sheet
{
    Q_OBJECT
public:
    explicit GapEditor(Ward& ward, QWidget* parent = nullptr);

    /** Nothing chosen hides the fields. */
    void setGap(const std::optional<Gap>& gap);
    void focusOwner();

private:
    void addField(const QString& name, QWidget* field);
    void fillDue(const Gap& gap);
    void keep();

    Ward& m_ward;
    std::optional<Gap> m_gap;
    WrapLabel* m_life;
    QLineEdit* m_owner;
    QComboBox* m_due;
    QLineEdit* m_remark;
    QPushButton* m_keep;
    WrapLabel* m_said;
    std::vector<QWidget*> m_fields;
};

}
