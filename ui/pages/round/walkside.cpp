// SPDX-License-Identifier: MIT
#include "ui/pages/round/walkside.h"

#include "ui/pages/round/standingsheet.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int sideWidth = 272;
}

WalkSide::WalkSide(const QString& title, const QString& walker, QWidget* parent)
    : QScrollArea(parent)
    , m_list(new SectionList)
    , m_standing(new StandingSheet(false))
{
    const Theme& theme = themeOf(*this);
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.space(Space::Close));
    auto* heading = new WrapLabel(title, TextRole::Body);
    heading->setTone(Tone::Soft);
    heading->setWeight(TextWeight::SemiBold);
    auto* who = new WrapLabel(walker, TextRole::Small);
    who->setTone(Tone::Hint);
    m_list->setObjectName(QStringLiteral("sectionList"));
    auto* leave = new QPushButton(tr("Leave it for now"));
    leave->setObjectName(QStringLiteral("leaveButton"));
    leave->setFocusPolicy(Qt::TabFocus);
    column->addWidget(heading);
    column->addWidget(who);
    column->addWidget(m_list);
    column->addSpacing(theme.space(Space::Close));
    column->addWidget(m_standing);
    column->addWidget(leave, 0, Qt::AlignLeft);
    column->addStretch(1);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFixedWidth(theme.px(sideWidth));
    setWidget(body);
    connect(m_list, &SectionList::sectionChosen, this, &WalkSide::sectionChosen);
    connect(m_list, &PaintedList::activated, this, &WalkSide::sectionEntered);
    connect(leave, &QPushButton::clicked, this, &WalkSide::leaveWanted);
}

void WalkSide::setSections(const std::vector<SectionEntry>& entries)
{
    const QSignalBlocker quiet(m_list);
    const int count = static_cast<int>(entries.size());
    if (m_list->itemCount() != count)
        return m_list->setSections(entries);
    for (int i = 0; i < count; ++i)
        m_list->setProgress(i, entries[static_cast<std::size_t>(i)].done);
}

void WalkSide::setSection(int section)
{
    const QSignalBlocker quiet(m_list);
    m_list->setCursorAt(section);
}

void WalkSide::setStanding(Readiness state, const QString& sentence)
{
    m_standing->setStanding(state, sentence);
}

void WalkSide::takeFocus(Qt::FocusReason reason) { m_list->setFocus(reason); }

}
