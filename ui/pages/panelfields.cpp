// SPDX-License-Identifier: MIT
#include "ui/pages/panelfields.h"

#include "ui/pages/ward.h"
#include "ui/text/errortext.h"
#include "ui/widgets/wraplabel.h"

#include <QLineEdit>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int longestInitials = 12;
}

WrapLabel* addField(Sheet& sheet, const QString& name, QWidget* field)
{
    auto* label = new WrapLabel(name, TextRole::Small); // a QLabel would stand where its letters run to
    field->setAccessibleName(name);
    sheet.content().addWidget(label);
    sheet.content().addWidget(field);
    return label;
}

QLineEdit* initialsField(const Ward& ward, const char* objectName)
{
    auto* field = new QLineEdit(qs(ward.actor()));
    field->setObjectName(QLatin1String(objectName));
    field->setMaxLength(longestInitials);
    return field;
}

void sayKept(WrapLabel& said, const QString& kept, const Result<void>& done)
{
    said.setTone(done ? Tone::Soft : Tone::Warning);
    said.setText(done ? kept : ErrorText::told(done.error()));
    said.show();
}

}
