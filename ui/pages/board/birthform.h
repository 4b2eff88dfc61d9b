// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QCheckBox;
class QSpinBox;

namespace cradlepost {

class ValueField;

/** When a birth is expected, how many babies, preterm or not; nothing else, so that nothing says who. */
class BirthForm : public Sheet
{
    Q_OBJECT
public:
    explicit BirthForm(Ward& ward, QWidget* parent = nullptr);

    void takeFocus();

Q_SIGNALS:
    /** It is on the board. */
    void done();
    void mistyped(const QString& time);
    void refused(const cradlepost::Error& why);

private:
    void putUp();

    Ward& m_ward;
    ValueField* m_time;
    QSpinBox* m_babies;
    QCheckBox* m_preterm;
};

}
