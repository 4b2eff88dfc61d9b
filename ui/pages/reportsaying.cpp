// SPDX-License-Identifier: MIT
#include "ui/pages/reportsaying.h"

#include "ui/text/errortext.h"
#include "ui/widgets/wraplabel.h"

#include <QFileDialog>

namespace cradlepost {

void ReportSaying::ask(QWidget* over, WrapLabel& said, const QString& name,
    const std::function<Result<void>(const QString& path)>& write)
{
    const QString path = QFileDialog::getSaveFileName(over, tr("Report"), name,
        tr("PDF (*.pdf);;Web page (*.html);;Spreadsheet (*.xlsx);;CSV (*.csv);;JSON (*.json)"));
    if (!path.isEmpty())
        say(said, path, write(path));
}

void ReportSaying::say(WrapLabel& said, const QString& path, const Result<void>& written)
{
    said.setText(written ? tr("Report written: %1").arg(path)
                         : QStringLiteral("%1 %2").arg(
                             ErrorText::sentence(written.error()), ErrorText::advice(written.error())));
    said.setTone(written ? Tone::Soft : Tone::Warning);
    said.show();
}

}
