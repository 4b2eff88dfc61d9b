// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QLineEdit>

namespace cradlepost {

/** The initials that go into a record: one person for all pages of the ward. */
class InitialsEdit : public QLineEdit
{
    Q_OBJECT
public:
    explicit InitialsEdit(Ward& ward, QWidget* parent = nullptr);

    /** Takes what is typed; whether somebody is named now. Has the keyboard when nobody is. */
    bool take();

private:
    Ward& m_ward;
};

}
