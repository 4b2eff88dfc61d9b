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
    /** To the first field, or of a closed gap to what can still be done. */
    void focusOwner();
    void recheck();
    /** Says that who is in charge mended it, or that it is not mended after all. */
    void mend();
    /** Says that who is in charge looked at what another mended. */
    void verify();

Q_SIGNALS:
    /** Only the gap's own item. */
    void recheckWanted(const std::string& item);

private:
    void addField(const QString& name, QWidget* field);
    void fillDue(const Gap& gap);
    void fillFields(const Gap& gap);
    void showDeeds();
    void act(const GapAction& action);
    [[nodiscard]] GapAction blank() const;
    [[nodiscard]] QPushButton* makeDeed(const char* name, void (GapEditor::*deed)());
    void keep();

    Ward& m_ward;
    std::optional<Gap> m_gap;
    WrapLabel* m_life;
    QLineEdit* m_owner;
    QComboBox* m_due;
    QLineEdit* m_measure;
    QLineEdit* m_remark;
    QPushButton* m_keep;
    QPushButton* m_recheck;
    QPushButton* m_mend;
    QPushButton* m_verify;
    WrapLabel* m_said;
    std::vector<QWidget*> m_fields;
};

}
