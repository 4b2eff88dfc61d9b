// SPDX-License-Identifier: MIT
#include "ui/pages/handover/handoverpage.h"

#include "ui/output/output.h"
#include "ui/pages/round/whorow.h"
#include "ui/report/handover/handoverdocument.h"
#include "ui/report/pdfreport.h"
#include "ui/report/reportpages.h"
#include "ui/text/errortext.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/sheet.h"
#include "ui/widgets/wraplabel.h"

#include <QFileDialog>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace cradlepost {

HandoverPage::HandoverPage(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_answer(new WrapLabel({}, TextRole::Finding))
    , m_company(new WrapLabel({}, TextRole::Lead))
    , m_who(new WhoRow(ward))
    , m_signed(new WrapLabel)
    , m_said(new WrapLabel)
{
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    const int wide = theme.space(Space::Wide);
    page->setContentsMargins(wide, theme.space(Space::Near), wide, theme.space(Space::Near));
    page->setSpacing(theme.space(Space::Near));
    m_answer->setObjectName(QStringLiteral("handoverAnswer"));
    m_answer->setWeight(TextWeight::SemiBold);
    m_changes = makePart("changesPart");
    page->addWidget(m_answer);
    page->addWidget(m_company);
    page->addWidget(makeParts());
    page->addWidget(makeSigning());
    page->addStretch(1);
    connect(new QShortcut(Qt::Key_Escape, this), &QShortcut::activated, this, &HandoverPage::leaveWanted);
    connect(&m_ward, &Ward::changed, this, [this] {
        if (isVisible())
            refresh();
    });
    connect(&m_ward, &Ward::actorChanged, this, &HandoverPage::showSigning);
    refresh();
}

HandoverPage::PartSheet HandoverPage::makePart(const char* name)
{
    PartSheet part{.sheet = new Sheet, .lines = new WrapLabel};
    part.sheet->setPadding(Space::Near);
    part.lines->setObjectName(QLatin1String(name));
    part.sheet->content().addWidget(part.lines);
    part.sheet->content().addStretch(1);
    return part;
}

QWidget* HandoverPage::makeParts()
{
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    const char* names[] = {"situationPart", "backgroundPart", "assessmentPart", "recommendationPart"};
    for (std::size_t at = 0; at < m_parts.size(); ++at)
        m_parts[at] = makePart(names[at]);
    for (const auto& [left, right] :
        {std::pair(m_changes.sheet, m_parts[0].sheet), std::pair(m_parts[1].sheet, m_parts[2].sheet)}) {
        auto* pair = new FoldingRow;
        pair->setSpacing(theme.space(Space::Near));
        pair->addWidget(left, 1);
        pair->addWidget(right, 1);
        column->addWidget(pair);
    }
    column->addWidget(m_parts[3].sheet);
    return holder;
}

QPushButton* HandoverPage::makeButton(const QString& text, const char* name)
{
    auto* button = new QPushButton(text);
    button->setObjectName(QLatin1String(name));
    return button;
}

QWidget* HandoverPage::makeSigning()
{
    const Theme& theme = themeOf(*this);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Near));
    m_sign = makeButton({}, "signButton");
    m_sign->setProperty("primary", true);
    m_sign->setAutoDefault(true);
    auto* pdf = makeButton(tr("Save as PDF"), "savePdfButton");
    auto* paper = makeButton(tr("Print"), "printButton");
    auto* back = makeButton(tr("Back to this shift · Esc"), "backButton");
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Near));
    for (QPushButton* button : {m_sign, pdf, paper, back})
        row->addWidget(button);
    row->addWidget(m_signed, 1, Qt::AlignVCenter);
    m_signed->setObjectName(QStringLiteral("signedLabel"));
    m_said->setObjectName(QStringLiteral("handoverSaid"));
    m_said->hide();
    column->addWidget(m_who);
    column->addWidget(row);
    column->addWidget(m_said);
    connect(m_who, &WhoRow::chosen, this, [this] { m_sign->setFocus(Qt::OtherFocusReason); });
    connect(m_who, &WhoRow::entered, this, &HandoverPage::sign);
    connect(m_sign, &QPushButton::clicked, this, &HandoverPage::sign);
    connect(pdf, &QPushButton::clicked, this, &HandoverPage::saveAsked);
    connect(paper, &QPushButton::clicked, this, &HandoverPage::printAsked);
    connect(back, &QPushButton::clicked, this, &HandoverPage::leaveWanted);
    return holder;
}

void HandoverPage::takeFocus() { m_who->takeFocus(); }

void HandoverPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    m_said->hide();
    refresh();
}

void HandoverPage::refresh()
{
    const auto view = m_ward.handover();
    if (!view) {
        m_answer->setText(ErrorText::sentence(view.error()));
        m_company->setText(ErrorText::advice(view.error()));
        return;
    }
    m_words
        = HandoverText(m_ward.store(), *m_ward.view(), m_ward.board(), *view, m_ward.language(), m_ward.now())
              .words();
    m_takes = view->last && !view->last->taken;
    m_answer->setText(tr("Handover: %1").arg(m_words.answer));
    m_company->setText(m_words.company);
    m_company->setVisible(!m_words.company.isEmpty());
    show(m_changes, m_words.changes);
    for (std::size_t at = 0; at < m_parts.size(); ++at)
        show(m_parts[at], m_words.parts[at]);
    m_who->refresh();
    showSigning();
}

void HandoverPage::show(const PartSheet& part, const HandoverPart& words)
{
    part.sheet->setTitle(words.title);
    const QStringList lines = words.allLines();
    part.lines->setText(lines.join(QLatin1Char('\n')));
    part.lines->setVisible(!lines.isEmpty());
}

void HandoverPage::showSigning()
{
    QStringList parts;
    for (const QString& one : {m_words.given, m_words.taken}) {
        if (!one.isEmpty())
            parts << one;
    }
    if (m_takes)
        parts << tr("It waits for who comes: choose your initials and take it.");
    m_signed->setText(parts.isEmpty() ? tr("Nobody has signed in this shift.") : parts.join(tr(". ")));
    const QString who = qs(m_ward.actor());
    if (m_ward.actor().empty())
        m_sign->setText(m_takes ? tr("Take over") : tr("Hand over"));
    else
        m_sign->setText(m_takes ? tr("Take over as %1").arg(who) : tr("Hand over as %1").arg(who));
}

void HandoverPage::sign()
{
    m_who->take();
    if (m_ward.actor().empty()) {
        m_who->takeFocus();
        return warn(tr("First say who signs: choose or type initials."));
    }
    const bool takes = m_takes;
    say(takes ? m_ward.takeHandover() : m_ward.giveHandover(), takes ? tr("Taken.") : tr("Given."));
}

void HandoverPage::say(const Result<void>& done, const QString& well)
{
    if (!done)
        return warn(ErrorText::told(done.error()));
    m_said->setTone(Tone::Soft);
    m_said->setText(well);
    m_said->show();
}

void HandoverPage::warn(const QString& what)
{
    m_said->setTone(Tone::Warning);
    m_said->setText(what);
    m_said->show();
}

Result<void> HandoverPage::save(const QString& path) const
{
    return writeHandover(m_ward.store(), m_words, m_ward.language(), m_ward.times(), m_ward.now(), path);
}

void HandoverPage::saveAsked()
{
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Handover"), QStringLiteral("handover.pdf"), tr("PDF (*.pdf)"));
    if (!path.isEmpty())
        say(save(path), tr("Saved."));
}

void HandoverPage::printAsked()
{
    const auto to = output();
    if (!to)
        return say(tl::unexpected(to.error()), {});
    const Printing done = (*to)->print(this, [this](QPagedPaintDevice& printer) { return print(printer); });
    if (done == Printing::Cancelled)
        return;
    if (done == Printing::Printed)
        return say({}, tr("Sent to the printer."));
    warn(tr("The printer takes no pages. Look at it, then try again."));
}

bool HandoverPage::print(QPagedPaintDevice& printer) const
{
    const ReportDocument document
        = handoverDocument(m_ward.store(), m_words, m_ward.language(), m_ward.times(), m_ward.now());
    const ReportPages pages(document);
    QPageLayout layout(QPageSize(QPageSize::A4), QPageLayout::Portrait, {});
    layout.setMode(QPageLayout::FullPageMode);
    printer.setPageLayout(layout);
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    for (int page = 0; page < pages.count(); ++page) {
        if (page > 0)
            printer.newPage();
        painter.resetTransform();
        const double scale = printer.logicalDpiX() / pages.paper().unitsPerInch();
        painter.scale(scale, scale);
        pages.paint(painter, page);
    }
    return true;
}

}
