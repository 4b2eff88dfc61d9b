// SPDX-License-Identifier: MIT
#include "ui/pages/panelfields.h"

#include "ui/pages/ward.h"
#include "ui/text/errortext.h"
#include "ui/widgets/wraplabel.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int longestInitials = 12;
}

QLabel* addField(Sheet& sheet, const QString& name, QWidget* field)
{
    auto* label = new QLabel(name);
    label->setFont(themeOf(sheet).font(TextRole::Small));
    label->setBuddy(field);
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
    said.setText(done ? kept
                      : QStringLiteral("%1 %2 %3")
                            .arg(ErrorText::sentence(done.error()), qs(done.error().message),
                                ErrorText::advice(done.error()))
                            .trimmed());
    said.show();
}

}
