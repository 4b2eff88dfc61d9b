// SPDX-License-Identifier: MIT
#include "ui/pages/month/paperpanel.h"

#include "core/exchange/papertemplate.h"
#include "core/exchange/wholefile.h"
#include "ui/charts/charttableview.h"
#include "ui/text/errortext.h"
#include "ui/text/papertext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QFile>
#include <QFileDialog>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

QString guideBeside(const QString& path)
{
    const bool hasEnding = path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive);
    return (hasEnding ? path.chopped(4) : path) + QStringLiteral("-guide.csv");
}

QString wordsOf(const Error& error)
{
    return QStringLiteral("%1 %2").arg(ErrorText::sentence(error), ErrorText::advice(error));
}

}

PaperPanel::PaperPanel(Ward& ward, QWidget* parent)
    : Sheet(tr("Rounds that were walked on paper"), parent)
    , m_ward(ward)
    , m_said(new WrapLabel)
    , m_faults(new ChartTableView)
    , m_enter(new QPushButton)
{
    auto* empty = new QPushButton(tr("Write an empty sheet…"));
    empty->setObjectName(QStringLiteral("emptySheetButton"));
    auto* filled = new QPushButton(tr("Read a filled sheet…"));
    filled->setObjectName(QStringLiteral("filledSheetButton"));
    m_enter->setObjectName(QStringLiteral("enterSheetButton"));
    m_faults->setObjectName(QStringLiteral("paperFaults"));
    m_faults->setAccessibleName(tr("Faults of the sheet"));
    m_said->setObjectName(QStringLiteral("paperSaid"));
    auto* buttons = new FoldingRow;
    buttons->setSpacing(themeOf(*this).space(Space::Close));
    for (QPushButton* button : {empty, filled, m_enter})
        buttons->addWidget(button);
    content().addWidget(new WrapLabel(
        tr("A sheet is taken in whole or not at all. Its rounds are marked as entered from paper: "
           "nothing is said of their time and pace.")));
    content().addWidget(buttons, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    content().addWidget(m_faults);
    m_said->hide();
    m_faults->hide();
    m_enter->hide();
    connect(empty, &QPushButton::clicked, this, &PaperPanel::askForTemplate);
    connect(filled, &QPushButton::clicked, this, &PaperPanel::askForSheet);
    connect(m_enter, &QPushButton::clicked, this, [this] { enter(); });
}

void PaperPanel::say(const QString& text, bool isFault)
{
    m_said->setTone(isFault ? Tone::Warning : Tone::Ink);
    m_said->setText(text);
    m_said->show();
}

Result<void> PaperPanel::preview(const QString& path)
{
    m_preview.reset();
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        say(tr("%1 cannot be read: %2").arg(path, file.errorString()), true);
        return fail(ErrorCode::NotFound, path.toStdString() + " cannot be read");
    }
    const QByteArray bytes = file.read(static_cast<qint64>(maxPaperBytes) + 1);
    auto read = readPaperRounds(m_ward.store(), m_ward.unit(), bytes.toStdString(), m_ward.now());
    if (!read) {
        say(wordsOf(read.error()), true);
        return tl::unexpected(read.error());
    }
    m_preview = std::move(*read);
    showPreview();
    return {};
}

void PaperPanel::showPreview()
{
    ChartTable table{
        .headers = {tr("Where"), tr("What is wrong, and how to write it")}, .rows = {}, .numbers = {}};
    for (const auto* list : {&m_preview->faults, &m_preview->warnings}) {
        for (const PaperFault& fault : *list)
            table.rows.push_back({PaperText::place(fault), PaperText::sentence(fault)});
    }
    m_faults->setTable(table);
    m_faults->setVisible(!table.rows.empty());
    const int rounds = static_cast<int>(m_preview->rounds.size());
    m_enter->setVisible(m_preview->isSound());
    m_enter->setText(tr("Enter %n round(s)", nullptr, rounds));
    if (m_preview->isSound())
        say(tr("%n round(s) can be entered.", nullptr, rounds), false);
    else
        say(tr("%n fault(s): nothing was entered. Mend the sheet and read it again.", nullptr,
                static_cast<int>(m_preview->faults.size())),
            true);
}

Result<void> PaperPanel::enter()
{
    if (!m_preview || !m_preview->isSound())
        return fail(ErrorCode::InvalidArgument, "there is no sound sheet to enter");
    const auto done = importPaperRounds(m_ward.store(), m_ward.unit(), *m_preview);
    m_enter->hide();
    if (!done) {
        say(wordsOf(done.error()), true);
        return tl::unexpected(done.error());
    }
    say(tr("%n round(s) entered from paper.", nullptr, static_cast<int>(done->size())), false);
    m_preview.reset();
    m_ward.refresh();
    Q_EMIT entered();
    return {};
}

Result<void> PaperPanel::writeTemplate(const QString& path)
{
    const Date today = m_ward.times().zone().toLocal(m_ward.now()).date;
    const auto adopted = m_ward.store().checklistFor(m_ward.unit(), RoundKind::Shift, today);
    if (!adopted)
        return tl::unexpected(adopted.error());
    const std::string guide = paperGuide(adopted->checklist, m_ward.language().code().toStdString());
    if (const auto sheet = writeWholeFile(path.toStdString(), paperTemplate(adopted->checklist)); !sheet)
        return sheet;
    return writeWholeFile(guideBeside(path).toStdString(), guide);
}

void PaperPanel::askForSheet()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("A filled sheet"), {}, tr("Sheets (*.csv)"));
    if (!path.isEmpty())
        preview(path);
}

void PaperPanel::askForTemplate()
{
    const QString path = QFileDialog::getSaveFileName(
        this, tr("An empty sheet"), QStringLiteral("rounds.csv"), tr("Sheets (*.csv)"));
    if (path.isEmpty())
        return;
    const auto written = writeTemplate(path);
    if (written)
        say(tr("Written: %1, and beside it what its columns mean.").arg(path), false);
    else
        say(wordsOf(written.error()), true);
}

}
