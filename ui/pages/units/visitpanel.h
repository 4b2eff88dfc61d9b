// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/report/district/districtscene.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QDateEdit;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace cradlepost {

class WrapLabel;

/** A visit: its sheet to take along, and what its sample found, entered when the supervisor is back. */
class VisitPanel : public Sheet
{
    Q_OBJECT
public:
    explicit VisitPanel(Ward& ward, QWidget* parent = nullptr);

    /** Units in the order in which they call for a visit. Both must outlive what is shown. */
    void show(const DistrictScene& scene, const DistrictHistory& history, Date today);
    /** Nothing can be entered or written. */
    void clear();
    /** The sheet of the unit that is chosen, by the ending of `path`. */
    Result<void> writeSheet(const QString& path);

Q_SIGNALS:
    void kept();

private:
    void makeFields();
    void choose();
    void keep();
    void askForSheet();
    [[nodiscard]] std::size_t unit() const;

    Ward& m_ward;
    const DistrictScene* m_scene = nullptr;
    const DistrictHistory* m_history = nullptr;
    Date m_today;
    QComboBox* m_which;
    QPushButton* m_sheet;
    QDateEdit* m_day;
    QSpinBox* m_looked;
    QSpinBox* m_notMet;
    QLineEdit* m_by;
    QPushButton* m_keep;
    WrapLabel* m_rule;
    WrapLabel* m_before;
    WrapLabel* m_said;
};

}
