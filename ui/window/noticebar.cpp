// SPDX-License-Identifier: MIT
#include "ui/window/noticebar.h"

#include "ui/text/noticetext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QShortcut>

namespace cradlepost {

NoticeBar::NoticeBar(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_unit(ward.unit())
    , m_words(new WrapLabel({}, TextRole::Small))
    , m_seen(new QPushButton(tr("Seen · Alt+0")))
{
    const Theme& theme = themeOf(*this);
    setObjectName(QStringLiteral("noticeBar"));
    setAccessibleName(tr("Notice"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(theme.space(Space::Near), 0, theme.space(Space::Near), 0);
    row->setSpacing(theme.space(Space::Close));
    m_words->setObjectName(QStringLiteral("noticeWords"));
    m_words->setWeight(TextWeight::SemiBold);
    m_seen->setObjectName(QStringLiteral("noticeSeenButton"));
    // Somebody may be typing: neither showing, nor going, nor a click takes the keyboard away.
    setFocusPolicy(Qt::NoFocus);
    m_seen->setFocusPolicy(Qt::NoFocus);
    row->addWidget(m_words, 1, Qt::AlignVCenter);
    row->addWidget(m_seen, 0, Qt::AlignVCenter);
    connect(m_seen, &QPushButton::clicked, this, &NoticeBar::putAway);
    connect(new QShortcut(QKeySequence(Qt::ALT | Qt::Key_0), this), &QShortcut::activated, this,
        &NoticeBar::putAway);
    connect(&m_ward, &Ward::changed, this, &NoticeBar::refresh);
    refresh();
}

QString NoticeBar::text() const { return m_shown.empty() ? QString() : m_words->text(); }

void NoticeBar::refresh()
{
    if (m_unit != m_ward.unit()) {
        m_unit = m_ward.unit();
        m_desk = {};
    }
    m_shown = m_desk.toShow(m_ward.notices(), m_ward.now());
    setVisible(!m_shown.empty() && m_ward.view());
    if (!m_shown.empty() && m_ward.view()) {
        const NoticeText text(
            m_ward.store(), *m_ward.view(), m_ward.board(), m_ward.language(), m_ward.now());
        const QString first = text.sentence(m_shown.front());
        //: a notice, and how many more are due
        m_words->setText(m_shown.size() == 1
                ? first
                : tr("%1 · %n more", nullptr, static_cast<int>(m_shown.size()) - 1).arg(first));
    }
    Q_EMIT changed();
}

void NoticeBar::putAway()
{
    if (m_shown.empty())
        return;
    m_desk.putAway(m_shown.front(), m_ward.now());
    refresh();
}

void NoticeBar::paintEvent(QPaintEvent*)
{
    const Theme& theme = themeOf(*this);
    QPainter painter(this);
    const int wide = theme.px(3);
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    painter.fillRect(QRect(mirrored ? width() - wide : 0, 0, wide, height()), theme.roles.amber);
}

}
