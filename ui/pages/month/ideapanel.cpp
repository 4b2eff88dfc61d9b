// SPDX-License-Identifier: MIT
#include "ui/pages/month/ideapanel.h"

#include "ui/pages/panelfields.h"
#include "ui/text/qdays.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr int longestTitle = 120;
constexpr int longestHope = 200;

}

IdeaPanel::IdeaPanel(Ward& ward, QWidget* parent)
    : Sheet(tr("What is tried, and since when"), parent)
    , m_ward(ward)
    , m_which(new QComboBox)
    , m_title(new QLineEdit)
    , m_from(new QDateEdit)
    , m_about(new QComboBox)
    , m_hope(new QLineEdit)
    , m_keep(new QPushButton(tr("Keep the idea")))
    , m_end(new QPushButton(tr("It ends today")))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    const Theme& theme = themeOf(*this);
    m_which->setObjectName(QStringLiteral("ideaComboBox"));
    m_title->setObjectName(QStringLiteral("ideaTitleEdit"));
    m_title->setMaxLength(longestTitle);
    m_title->setPlaceholderText(tr("For example: count the kits at handover"));
    m_from->setObjectName(QStringLiteral("ideaFromEdit"));
    m_from->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    m_from->setLocale(m_ward.language().locale());
    m_from->setCalendarPopup(true);
    m_about->setObjectName(QStringLiteral("ideaAboutComboBox"));
    m_hope->setObjectName(QStringLiteral("ideaHopeEdit"));
    m_hope->setMaxLength(longestHope);
    m_hope->setPlaceholderText(tr("Nothing about a patient"));
    m_keep->setObjectName(QStringLiteral("keepIdeaButton"));
    m_end->setObjectName(QStringLiteral("endIdeaButton"));
    addField(*this, tr("Idea"), m_which);
    addField(*this, tr("What is tried"), m_title);
    addField(*this, tr("From"), m_from);
    addField(*this, tr("For"), m_about);
    addField(*this, tr("What we expect"), m_hope);
    auto* buttons = new FoldingRow;
    buttons->setSpacing(theme.space(Space::Close));
    buttons->addWidget(m_keep);
    buttons->addWidget(m_end);
    content().addWidget(buttons, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    m_said->hide();
    connect(m_which, &QComboBox::activated, this, &IdeaPanel::choose);
    connect(m_keep, &QPushButton::clicked, this, [this] { keep(false); });
    connect(m_end, &QPushButton::clicked, this, [this] { keep(true); });
}

void IdeaPanel::show(const Checklist& checklist, Date today)
{
    m_today = today;
    m_ideas = m_ward.store().changeIdeas(m_ward.unit()).value_or(std::vector<ChangeIdea>());
    m_which->clear();
    m_which->addItem(tr("A new one"));
    for (const ChangeIdea& idea : m_ideas)
        m_which->addItem(qs(idea.title));
    m_about->clear();
    m_about->addItem(tr("All items"), QString());
    for (const Section& section : checklist.sections) {
        QStringList ids;
        for (const Item& item : section.items)
            ids.append(qs(item.id));
        m_about->addItem(m_ward.language().wording(section.title), ids.join(QLatin1Char(' ')));
        for (const Item& item : section.items)
            m_about->addItem(QStringLiteral("   ") + m_ward.language().wording(item.label), qs(item.id));
    }
    choose(0);
}

void IdeaPanel::choose(int index)
{
    m_which->setCurrentIndex(index);
    const bool isNew = index <= 0;
    const ChangeIdea idea
        = isNew ? ChangeIdea{.from = m_today} : m_ideas[static_cast<std::size_t>(index - 1)];
    m_title->setText(qs(idea.title));
    m_from->setDate(toQDate(idea.from));
    m_hope->setText(qs(idea.hope));
    QStringList ids;
    for (const std::string& id : idea.items)
        ids.append(qs(id));
    const int about = m_about->findData(ids.join(QLatin1Char(' ')));
    if (about < 0)
        m_about->addItem(tr("%n item(s)", nullptr, static_cast<int>(ids.size())), ids.join(QLatin1Char(' ')));
    m_about->setCurrentIndex(about < 0 ? m_about->count() - 1 : about);
    m_end->setVisible(!isNew && !idea.until);
}

ChangeIdea IdeaPanel::typed() const
{
    const int index = m_which->currentIndex();
    ChangeIdea idea = index <= 0 ? ChangeIdea{} : m_ideas[static_cast<std::size_t>(index - 1)];
    idea.title = m_title->text().trimmed().toStdString();
    idea.from = fromQDate(m_from->date());
    idea.hope = m_hope->text().trimmed().toStdString();
    idea.items.clear();
    for (const QString& id : m_about->currentData().toString().split(QLatin1Char(' '), Qt::SkipEmptyParts))
        idea.items.push_back(id.toStdString());
    return idea;
}

void IdeaPanel::keep(bool ended)
{
    ChangeIdea idea = typed();
    if (ended)
        idea.until = m_today;
    const auto done = m_ward.store().noteChange(m_ward.unit(), idea, m_ward.actor());
    sayKept(*m_said, tr("Kept."), done ? Result<void>() : tl::unexpected(done.error()));
    if (done)
        Q_EMIT kept();
}

}
