// SPDX-License-Identifier: MIT
#include "ui/widgets/sheet.h"
#include "ui/theme/plate.h"
#include "ui/widgets/wraplabel.h"

#include <QEvent>
#include <QPainter>
#include <QVBoxLayout>

namespace cradlepost {

Sheet::Sheet(const QString& title, QWidget* parent)
    : QWidget(parent)
    , m_title(new WrapLabel({}, TextRole::Small, this))
    , m_content(new QVBoxLayout(this))
{
    m_title->setTone(Tone::Soft);
    m_title->setWeight(TextWeight::SemiBold);
    m_content->addWidget(m_title);
    spaceOut();
    setTitle(title);
}

void Sheet::setTitle(const QString& title)
{
    m_title->setText(title);
    m_title->setVisible(!title.isEmpty());
    setAccessibleName(title);
}

void Sheet::setPadding(Space padding)
{
    m_padding = padding;
    spaceOut();
}

void Sheet::spaceOut()
{
    const Theme& theme = themeOf(*this);
    const int margin = theme.space(m_padding);
    m_content->setContentsMargins(margin, margin, margin, margin);
    m_content->setSpacing(theme.space(Space::Close));
}

void Sheet::paintEvent(QPaintEvent* /*event*/)
{
    const Roles& roles = themeOf(*this).roles;
    QPainter painter(this);
    paintPlate(painter, rect(), roles.sheet, roles.line);
}

void Sheet::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::StyleChange)
        spaceOut();
    QWidget::changeEvent(event);
}

}
