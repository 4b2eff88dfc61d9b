// SPDX-License-Identifier: MIT
#include "ui/pages/month/spanbar.h"

#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QDate>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

SpanBar::SpanBar(const Language& language, QWidget* parent)
    : QWidget(parent)
    , m_language(language)
    , m_before(new QPushButton(tr("Month before")))
    , m_span(new WrapLabel({}, TextRole::Title))
    , m_after(new QPushButton(tr("Month after")))
    , m_choose(new QPushButton(tr("Choose days, shifts, items")))
    , m_filter(new WrapLabel)
    , m_report(new QPushButton(tr("Report…")))
{
    const Theme& theme = themeOf(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Near));
    m_span->setWeight(TextWeight::SemiBold);
    m_filter->setTone(Tone::Soft);
    m_before->setObjectName(QStringLiteral("monthBeforeButton"));
    m_after->setObjectName(QStringLiteral("monthAfterButton"));
    m_choose->setObjectName(QStringLiteral("chooseSpanButton"));
    m_choose->setCheckable(true);
    m_report->setObjectName(QStringLiteral("reportButton"));
    m_report->setProperty("primary", true);
    // With large text the two halves stand below each other, each still on one line.
    const auto half = [&](std::initializer_list<QWidget*> parts, QWidget* wide) {
        auto* side = new FoldingRow;
        side->setSpacing(theme.space(Space::Near));
        for (QWidget* part : parts)
            side->addWidget(part, part == wide ? 1 : 0, Qt::AlignVCenter);
        row->addWidget(side, wide == nullptr ? 0 : 1);
    };
    half({m_span, m_before, m_after}, nullptr);
    half({m_choose, m_filter, m_report}, m_filter);
    column->addWidget(row);
    connect(m_before, &QPushButton::clicked, this, [this] { Q_EMIT monthWanted(-1); });
    connect(m_after, &QPushButton::clicked, this, [this] { Q_EMIT monthWanted(+1); });
    connect(m_choose, &QPushButton::toggled, this, &SpanBar::panelWanted);
    connect(m_report, &QPushButton::clicked, this, &SpanBar::reportWanted);
}

QString SpanBar::spanWords(const ReviewChoice& choice) const
{
    const auto qDate = [](Date date) {
        return QDate(static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day())));
    };
    const QLocale& locale = m_language.locale();
    if (choice.isMonth())
        return locale.toString(qDate(choice.span.from), QStringLiteral("MMMM yyyy"));
    const QString form = QStringLiteral("d MMM yyyy");
    //: a span of days
    return tr("%1 to %2")
        .arg(locale.toString(qDate(choice.span.from), form),
            locale.toString(qDate(addDays(choice.span.to, -1)), form));
}

void SpanBar::show(const ReviewChoice& choice, Date today, const QString& filterWords)
{
    m_span->setText(spanWords(choice));
    m_filter->setText(filterWords);
    m_after->setEnabled(choice.monthBeside(1).from <= today);
}

void SpanBar::setPanelOpen(bool open) { m_choose->setChecked(open); }

}
