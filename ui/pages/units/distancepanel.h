// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QDoubleSpinBox;
class QLineEdit;

namespace cradlepost {

class WrapLabel;

/** The ways between units, by which stock is moved: read from a table, or one by one. */
class DistancePanel : public Sheet
{
    Q_OBJECT
public:
    explicit DistancePanel(Ward& ward, QWidget* parent = nullptr);

    /** Reads units and ways again. */
    void show();
    /** Takes in a table from,to,km, all of it or nothing. */
    Result<void> read(const QString& path);

Q_SIGNALS:
    void kept();

private:
    void makeFields();
    void keepOne();
    void askForTable();
    void say(const Result<void>& done, int ways);
    void showKnown();

    Ward& m_ward;
    WrapLabel* m_known;
    QComboBox* m_from;
    QComboBox* m_to;
    QDoubleSpinBox* m_km;
    QLineEdit* m_by;
    WrapLabel* m_said;
};

}
