// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "ui/widgets/sheet.h"

class QLineEdit;

namespace cradlepost {

class Ward;
class WrapLabel;

/** Adds a field to a sheet under its name, which is its accessible name too; gives the name's label. */
WrapLabel* addField(Sheet& sheet, const QString& name, QWidget* field);
/** A field for the initials of whoever enters, filled with those of the ward's page. */
QLineEdit* initialsField(const Ward& ward, const char* objectName);

/** What came of keeping something: `kept`, or why not, as a warning. */
void sayKept(WrapLabel& said, const QString& kept, const Result<void>& done);

}
